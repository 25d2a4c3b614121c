#include "ui/thermometers/ask_calibration.h"

#include <QCoreApplication>
#include <QDate>
#include <algorithm>
#include <cmath>

#include "ui/text/subjects.h"
#include "ui/thermometers/probe_words.h"

namespace bathside::ui {
namespace {

struct CalibrationText {
    Q_DECLARE_TR_FUNCTIONS(CalibrationText)
};

using Typed = std::function<void(double celsius)>;
using Day = std::chrono::sys_days;

constexpr int kLongestCertificate = 30;
constexpr std::size_t kMostPoints = 9;        // as many as there is room for
constexpr qint64 kHighest = 100'000;          // m°C of a bath's thermometer
constexpr qint64 kLowest = -50'000;           // as low as a card can go (core/card/read.cpp)
constexpr qint64 kLowestPlatinum = -200'000;  // IEC 60751
constexpr qint64 kLeastU = 1, kLargestU = 5'000;

void askNext(ThermoContext& context);

/// Eight digits, year first; none: no such day.
std::optional<Day> dayOf(qint64 typed)
{
    const QDate date(static_cast<int>(typed / 10'000), static_cast<int>(typed / 100 % 100),
                     static_cast<int>(typed % 100));
    if (!date.isValid())
        return std::nullopt;
    return Day(std::chrono::days(QDate(1970, 1, 1).daysTo(date)));
}

void askDay(ThermoContext& context, const QString& title, std::optional<Day> Probe::*which)
{
    constexpr qint64 kFirst = 20'000'101, kLast = 20'991'231;
    context.bench.asker.number(
        {.title = title, .unit = {}, .lowest = kFirst, .highest = kLast, .suggested = {}},
        [&context, which](qint64 typed, const AnswerTap&) {
            const auto day = dayOf(typed);
            if (!day)
                return context.refuse(
                    CalibrationText::tr("There is no such day. Year, month, day, as 20260305."));
            (*context.calibration).*which = *day;
            askNext(context);
        });
}

void askCertificate(ThermoContext& context)
{
    context.bench.asker.text({.title = CalibrationText::tr("Number of the certificate"),
                              .shortest = 1,
                              .longest = kLongestCertificate,
                              .suggested = fromCore(context.calibration->certificate)},
                             [&context](const QString& text, const AnswerTap&) {
                                 context.calibration->certificate = text.toStdString();
                                 askNext(context);
                             });
}

/// What its points can lie between.
std::pair<qint64, qint64> rangeOf(const Probe& probe)
{
    const auto* line = std::get_if<SerialLine>(&probe.source);
    const bool isPlatinum =
        line && (line->shows == LineUnit::Pt100 || line->shows == LineUnit::Pt1000);
    return {isPlatinum ? kLowestPlatinum : kLowest, kHighest};
}

void askValue(ThermoContext& context, const QString& title, std::pair<qint64, qint64> range,
              Typed answered)
{
    context.bench.asker.number({.title = title,
                                .unit = QStringLiteral("°C"),
                                .lowest = range.first,
                                .highest = range.second,
                                .decimals = 3,
                                .typedDecimals = 3,
                                .suggested = {},
                                .minus = range.first < 0},
                               [answered = std::move(answered)](qint64 value, const AnswerTap&) {
                                   answered(static_cast<double>(value) / 1000);
                               });
}

bool hasPointAt(const Probe& probe, double indicated)
{
    return std::ranges::any_of(probe.points, [indicated](const CalibrationPoint& point) {
        return std::llround(point.indicated * 1000) == std::llround(indicated * 1000);
    });
}

void addPoint(ThermoContext& context, const CalibrationPoint& point)
{
    auto& points = context.calibration->points;
    points.insert(
        std::ranges::upper_bound(points, point.indicated, {}, &CalibrationPoint::indicated), point);
    askNext(context);
}

/// Shown, reference, U: three numbers, one after the other.
void askPoint(ThermoContext& context)
{
    askValue(context, CalibrationText::tr("Point: what the thermometer showed"),
             rangeOf(*context.calibration), [&context](double indicated) {
                 if (hasPointAt(*context.calibration, indicated))
                     return context.refuse(CalibrationText::tr(
                         "There is a point with that value already. Remove it first."));
                 askValue(context, CalibrationText::tr("Point: what the reference was"),
                          rangeOf(*context.calibration), [&context, indicated](double reference) {
                              askValue(context, CalibrationText::tr("Point: its U at k = 2"),
                                       {kLeastU, kLargestU},
                                       [&context, indicated, reference](double expanded) {
                                           addPoint(context, {indicated, reference, expanded});
                                       });
                          });
             });
}

void askRemove(ThermoContext& context, std::size_t index)
{
    const QList<Choice> choices{
        {.id = QStringLiteral("remove"), .word = CalibrationText::tr("REMOVE THE POINT")},
        {.id = QStringLiteral("back"),
         .word = CalibrationText::tr("leave it"),
         .role = Role::Quiet,
         .mark = Mark::Back}};
    context.bench.asker.choose(
        pointText(context.calibration->points.at(index)), choices,
        [&context, index](const QString& id, const AnswerTap&) {
            if (id == QLatin1String("remove"))
                context.calibration->points.erase(context.calibration->points.begin() +
                                                  static_cast<std::ptrdiff_t>(index));
            askNext(context);
        });
}

/// What still keeps it from being saved, as a sentence; empty: nothing does.
QString missingIn(const Probe& probe)
{
    if (probe.certificate.empty())
        return CalibrationText::tr("The certificate's number is missing.");
    if (!probe.calibrated)
        return CalibrationText::tr("The day of the calibration is missing.");
    if (!probe.due)
        return CalibrationText::tr("The day on which it is due again is missing.");
    if (*probe.due < *probe.calibrated)
        return CalibrationText::tr("It cannot be due before it was calibrated.");
    if (probe.points.empty())
        return CalibrationText::tr("At least one point is needed.");
    return {};
}

QString dayOrNone(const std::optional<Day>& day)
{
    return day ? shortDayText(*day) : QStringLiteral("–");
}

QList<Choice> choicesOf(const Probe& probe)
{
    QList<Choice> choices{
        {.id = QStringLiteral("certificate"),
         .word = CalibrationText::tr("certificate …"),
         .line = probe.certificate.empty() ? QStringLiteral("–") : fromCore(probe.certificate)},
        {.id = QStringLiteral("date"),
         .word = CalibrationText::tr("calibrated on …"),
         .line = dayOrNone(probe.calibrated)},
        {.id = QStringLiteral("due"),
         .word = CalibrationText::tr("due on …"),
         .line = dayOrNone(probe.due)}};
    for (std::size_t i = 0; i < probe.points.size(); ++i)
        choices.append({.id = QStringLiteral("point:%1").arg(i),
                        .word = CalibrationText::tr("point %1 …").arg(i + 1),
                        .line = pointText(probe.points[i])});
    if (probe.points.size() < kMostPoints)
        choices.append({.id = QStringLiteral("add"), .word = CalibrationText::tr("add a point …")});
    choices.append({.id = QStringLiteral("drop"),
                    .word = CalibrationText::tr("forget what was typed"),
                    .role = Role::Quiet,
                    .mark = Mark::Back});
    choices.append({.id = QStringLiteral("save"),
                    .word = CalibrationText::tr("CALIBRATION SAVED"),
                    .role = Role::Primary,
                    .reason = missingIn(probe)});
    return choices;
}

void save(ThermoContext& context, const AnswerTap& tap)
{
    const QString missing = missingIn(*context.calibration);
    if (!missing.isEmpty())
        return context.refuse(missing);
    const Probe typed = *context.calibration;
    context.calibration.reset();
    const auto now = context.bench.bench().probes.find(typed.id);
    if (now == context.bench.bench().probes.end())
        return;
    Probe probe = *now->second;  // whatever else was said of it since stays
    probe.id = typed.id;
    probe.certificate = typed.certificate;
    probe.calibrated = typed.calibrated;
    probe.due = typed.due;
    probe.points = typed.points;
    context.describe(probe, tap);
}

void answer(ThermoContext& context, const QString& id, const AnswerTap& tap)
{
    if (!context.calibration)
        return context.bench.asker.close();
    if (id == QLatin1String("certificate"))
        return askCertificate(context);
    if (id == QLatin1String("date"))
        return askDay(context, CalibrationText::tr("Calibrated on: year, month, day, as 20260305"),
                      &Probe::calibrated);
    if (id == QLatin1String("due"))
        return askDay(context, CalibrationText::tr("Due on: year, month, day, as 20260305"),
                      &Probe::due);
    if (id == QLatin1String("add"))
        return askPoint(context);
    if (id == QLatin1String("save"))
        return save(context, tap);
    if (id.startsWith(QLatin1String("point:")))
        return askRemove(context, id.mid(6).toUInt());
    context.calibration.reset();
    context.bench.asker.close();
}

void askNext(ThermoContext& context)
{
    const Probe& probe = *context.calibration;
    context.bench.asker.choose(
        CalibrationText::tr("%1: its calibration. Nothing counts before it is saved.")
            .arg(nameText(probe)),
        choicesOf(probe),
        [&context](const QString& id, const AnswerTap& tap) { answer(context, id, tap); });
}

}  // namespace

void askCalibration(ThermoContext& context, const ProbeId& id)
{
    const auto found = context.bench.bench().probes.find(id);
    if (found == context.bench.bench().probes.end())
        return;
    if (!context.calibration || context.calibration->id != id) {
        if (context.calibration)
            context.setAside.insert_or_assign(context.calibration->id, *context.calibration);
        const auto left = context.setAside.extract(id);
        context.calibration = left ? left.mapped() : *found->second;
        context.calibration->id = id;
    }
    askNext(context);
}

}  // namespace bathside::ui
