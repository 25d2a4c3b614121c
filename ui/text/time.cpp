#include "ui/text/time.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QTimeZone>

#include "ui/text/numbers.h"

namespace bathside::ui {
namespace {

struct TimeText {
    Q_DECLARE_TR_FUNCTIONS(Time)
};

using std::chrono::ceil;
using std::chrono::duration_cast;
using std::chrono::floor;
using std::chrono::minutes;
using std::chrono::seconds;

QString twoDigits(qint64 number)
{
    return QStringLiteral("%1").arg(number, 2, 10, QLatin1Char('0'));
}

QString clockText(seconds time)
{
    const qint64 all = time.count(), hours = all / 3600, min = all / 60 % 60, sec = all % 60;
    if (hours > 0)
        return QStringLiteral("%1:%2:%3").arg(hours).arg(twoDigits(min), twoDigits(sec));
    return QStringLiteral("%1:%2").arg(min).arg(twoDigits(sec));
}

QDateTime localTime(WallTime at, const std::string& zone)
{
    const QTimeZone there(QByteArray::fromStdString(zone));
    return QDateTime::fromMSecsSinceEpoch(at.time_since_epoch().count(),
                                          there.isValid() ? there : QTimeZone::utc());
}

}  // namespace

QString countdownText(Micros left)
{
    if (left >= Micros::zero())
        return clockText(ceil<seconds>(left));
    return QStringLiteral("+") + clockText(floor<seconds>(-left));
}

QString ageText(Micros age)
{
    if (age < minutes(1))
        return TimeText::tr("%1 s", "seconds").arg(floor<seconds>(age).count());
    return TimeText::tr("%1 min", "minutes").arg(floor<minutes>(age).count());
}

QString leftText(Micros left)
{
    if (left < Micros::zero())
        return TimeText::tr("%1 over", "how long past the limit, e.g. 2 min over")
            .arg(ageText(-left));
    return TimeText::tr("%1 left", "how long until the limit, e.g. 41 min left").arg(ageText(left));
}

QString durationText(Millis time)
{
    const QLocale locale;
    const auto whole = floor<minutes>(time);
    const QString rest = scaledText((time - whole).count(), 3, 1, locale);
    if (whole == minutes::zero())
        return TimeText::tr("%1 s", "seconds").arg(rest);
    return TimeText::tr("%1 min %2 s", "minutes and seconds").arg(whole.count()).arg(rest);
}

QString localTimeText(WallTime at, const std::string& zone)
{
    return localTime(at, zone).toString(QStringLiteral("HH:mm:ss"));
}

std::chrono::sys_days localDay(WallTime at, const std::string& zone)
{
    const QDate date = localTime(at, zone).date();
    return std::chrono::sys_days(std::chrono::days(QDate(1970, 1, 1).daysTo(date)));
}

QString localMinuteText(WallTime at, const std::string& zone)
{
    return localTime(at, zone).toString(QStringLiteral("HH:mm"));
}

QString dayText(std::chrono::year_month_day day)
{
    const QDate date(int(day.year()), static_cast<int>(unsigned(day.month())),
                     static_cast<int>(unsigned(day.day())));
    return QLocale().toString(date, QStringLiteral("ddd d MMMM yyyy"));
}

QString dayMinuteText(Millis sinceMidnight)
{
    const auto all = floor<minutes>(sinceMidnight).count();
    return QStringLiteral("%1:%2").arg(twoDigits(all / 60), twoDigits(all % 60));
}

QString localDateTimeText(WallTime at, const std::string& zone)
{
    const QDateTime local = localTime(at, zone);
    const int offset = local.offsetFromUtc() / 60, size = std::abs(offset);
    const QString sign = offset < 0 ? QStringLiteral("−") : QStringLiteral("+");
    return QStringLiteral("%1 %2%3:%4")
        .arg(local.toString(QStringLiteral("yyyy-MM-dd HH:mm:ss")), sign, twoDigits(size / 60),
             twoDigits(size % 60));
}

}  // namespace bathside::ui
