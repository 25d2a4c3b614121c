#include "app/station/bench_day.h"

#include <QTimeZone>

#include "ui/bench/bench_page.h"

namespace bathside::app {

ui::Frame* frameFor(Session& session, const ui::Language& language, ui::Preferences& preferences)
{
    auto* frame = new ui::Frame(session.model(), language);
    const std::string zone = QTimeZone::systemTimeZoneId().toStdString();
    frame->addPage(QString::fromLatin1(ui::Frame::kBench),
                   new ui::BenchPage(session.model(), language, zone));
    (void)preferences;
    return frame;
}

}  // namespace bathside::app
