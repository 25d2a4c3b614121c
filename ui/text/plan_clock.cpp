#include "ui/text/plan_clock.h"

#include <QDateTime>
#include <QTimeZone>

#include "ui/text/time.h"

namespace bathside::ui {

Millis PlanClock::shown(plan::DayTime elapsed) const
{
    const QTimeZone there(QByteArray::fromStdString(m_zone));
    if (!there.isValid())
        return elapsed;
    const auto offset = [&there](WallTime at) {
        return std::chrono::seconds(there.offsetFromUtc(
            QDateTime::fromMSecsSinceEpoch(at.time_since_epoch().count(), QTimeZone::utc())));
    };
    return elapsed + offset(m_midnight + elapsed) - offset(m_midnight);
}

QString PlanClock::text(plan::DayTime elapsed) const { return dayMinuteText(shown(elapsed)); }

}  // namespace bathside::ui
