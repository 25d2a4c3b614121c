#include "ui/thermometers/probe_words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <cmath>

#include "core/bath/card_heat.h"
#include "ui/text/numbers.h"
#include "ui/text/readings.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

struct ProbeText {
    Q_DECLARE_TR_FUNCTIONS(ProbeText)
};

bool isOutOfUse(const Probe& probe) { return std::holds_alternative<OutOfUse>(probe.source); }

QString sourceText(const ByHand&) { return ProbeText::tr("read by hand"); }
QString sourceText(const OneWire& wire)
{
    return ProbeText::tr("one-wire %1", "a thermometer's connection").arg(fromCore(wire.device));
}
QString sourceText(const SerialLine& line)
{
    return ProbeText::tr("%1, %2 baud, pattern %3, %4", "port, speed, pattern, °C or element")
        .arg(portText(line.port), QString::number(line.baud), fromCore(line.pattern),
             unitText(line.shows));
}
QString sourceText(const OutOfUse&) { return ProbeText::tr("out of use"); }

}  // namespace

ProbeStanding standingOf(const Bench& bench, const Probe& probe,
                         const std::optional<TakenReading>& last, const Stamp& now)
{
    if (isOutOfUse(probe))
        return {Role::Quiet, ProbeText::tr("out of use"), {}};
    if (!last)
        return {Role::Neutral, ProbeText::tr("no reading yet"), {}};
    const ReadingTaken& fact = last->fact;
    if (fact.fault || !fact.corrected || !fact.verdict)
        return {Role::HeadsUp, ProbeText::tr("no reading"),
                fact.fault ? wordOf(*fact.fault) : QString()};
    const Millis age = std::chrono::duration_cast<Millis>(elapsed(last->at, now).time);
    const QString reading =
        ProbeText::tr("%1, %2 ago", "temperature, age").arg(readingText(bench, fact), ageText(age));
    if (isTooOld(bench, *last, now))
        return {Role::HeadsUp, ProbeText::tr("too old", "a reading"), reading};
    return {roleOf(fact.verdict), wordOf(*fact.verdict), reading};
}

QStringList doubtsOf(const Bench& bench, const Probe& probe,
                     const std::optional<TakenReading>& last, std::chrono::sys_days today)
{
    if (!last || !last->fact.raw || !last->fact.expanded || !last->fact.verdict || !bench.card)
        return {};
    const Judged found = judgedAgain(probe, toleranceOf(bench.card->content().bath),
                                     static_cast<double>(last->fact.raw->count) / 1000, today,
                                     static_cast<double>(last->fact.expanded->count) / 1000);
    QStringList doubts;
    for (const ReadingWarning warning : found.warnings) {
        if (warning == ReadingWarning::BeyondRange || warning == ReadingWarning::CannotDecide)
            doubts.append(wordOf(warning));
    }
    if (last->fact.verdict == Verdict::Undecided && !probe.points.empty())
        doubts.append(ProbeText::tr("to %1 % within tolerance", "how likely")
                          .arg(decimalText(100 * found.conformity, 0)));
    return doubts;
}

QString nameText(const Probe& probe)
{
    return probe.name.empty() ? idText(probe.id) : fromCore(probe.name);
}

QString dueText(const Probe& probe, std::chrono::sys_days today)
{
    if (probe.points.empty() || !probe.due)
        return ProbeText::tr("not calibrated", "a thermometer");
    if (today > *probe.due)
        return ProbeText::tr("overdue since %1", "a calibration; a day")
            .arg(shortDayText(*probe.due));
    return ProbeText::tr("due %1", "a calibration; a day").arg(shortDayText(*probe.due));
}

Role roleOfDue(const Probe& probe, std::chrono::sys_days today)
{
    const bool isGood = !probe.points.empty() && probe.due && today <= *probe.due;
    return isGood ? Role::Neutral : Role::HeadsUp;
}

QString calibrationText(const Probe& probe)
{
    if (probe.points.empty())
        return ProbeText::tr("Not calibrated: undecided at best.");
    QStringList points;
    for (const CalibrationPoint& point : probe.points)
        points.append(pointText(point));
    const QString certificate =
        probe.certificate.empty() ? QStringLiteral("–") : fromCore(probe.certificate);
    return ProbeText::tr("Certificate %1: %2", "its number; its points")
        .arg(certificate, points.join(QStringLiteral("; ")));
}

QString pointText(const CalibrationPoint& point)
{
    return ProbeText::tr("%1 is %2 ± %3 °C", "shown, reference, U")
        .arg(celsiusText(point.indicated), celsiusText(point.reference),
             celsiusText(point.expanded));
}

QString connectionText(const ProbeSource& source)
{
    return std::visit([](const auto& which) { return sourceText(which); }, source);
}

QString portText(const std::string& path)
{
    return fromCore(path.substr(path.rfind('/') + 1)).replace(u'_', u' ').replace(u'-', u' ');
}

QString unitText(LineUnit unit)
{
    switch (unit) {
        case LineUnit::Celsius:
            return QStringLiteral("°C");
        case LineUnit::Pt100:
            return ProbeText::tr("Ω of a Pt100");
        case LineUnit::Pt1000:
            return ProbeText::tr("Ω of a Pt1000");
        case LineUnit::Ntc:
            return ProbeText::tr("Ω of an NTC");
    }
    Q_UNREACHABLE();
}

QString celsiusText(double celsius)
{
    qint64 milli = std::llround(celsius * 1000);
    int shown = 3;
    for (; shown > 0 && milli % 10 == 0; --shown)
        milli /= 10;
    return scaledText(milli, shown, shown, QLocale());
}

QString shortDayText(std::chrono::sys_days day)
{
    const QDate date = QDate(1970, 1, 1).addDays(day.time_since_epoch().count());
    //: A day, as QDate::toString writes it; in some languages with "de".
    return QLocale().toString(date, ProbeText::tr("d MMM yyyy"));
}

}  // namespace bathside::ui
