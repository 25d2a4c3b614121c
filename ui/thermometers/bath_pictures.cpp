#include "ui/thermometers/bath_pictures.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

#include "core/bath/water.h"
#include "core/bench/next.h"
#include "ui/text/time.h"
#include "ui/text/words.h"
#include "ui/thermometers/probe_words.h"

namespace bathside::ui {
namespace {

struct PictureText {
    Q_DECLARE_TR_FUNCTIONS(PictureText)
};

constexpr double kLiveMinutes = 5, kMostMinutes = 60;
constexpr double kAroundCelsius = 0.5;  // above and below what is drawn
constexpr double kAboutADip = 0.15;
constexpr double kLongestGap = 30. / 60;  // min between live readings that are still one line

const QString kCelsius = QStringLiteral("°C");

double minutesBefore(const Stamp& at, const Stamp& now)
{
    return -std::chrono::duration<double, std::ratio<60>>(elapsed(at, now).time).count();
}

bool isByHand(const Probe& probe) { return std::holds_alternative<ByHand>(probe.source); }

QString decimalText(double value, int decimals) { return QLocale().toString(value, 'f', decimals); }

/// Both limits of the tolerance; inside of them what counts as inside.
QList<ChartBand> bandsOf(const Tolerance& tolerance, double lowest, double highest)
{
    QList<ChartBand> bands{
        {.words = PictureText::tr("%1 ± %2 °C", "target, tolerance")
                      .arg(celsiusText(tolerance.target), celsiusText(tolerance.tolerance)),
         .low = tolerance.target - tolerance.tolerance,
         .high = tolerance.target + tolerance.tolerance,
         .role = Role::Quiet}};
    if (lowest < highest)
        bands.append({.words = wordOf(Verdict::Inside),
                      .low = lowest,
                      .high = highest,
                      .role = Role::Good,
                      .corner = Qt::AlignRight | Qt::AlignTop});
    return bands;
}

void widen(ChartAxis& axis, double value)
{
    axis.low = std::min(axis.low, value - kAroundCelsius);
    axis.high = std::max(axis.high, value + kAroundCelsius);
}

ChartAxis celsiusAxis(const Tolerance& tolerance, int decimals)
{
    return {.unit = kCelsius,
            .low = tolerance.target - tolerance.tolerance - kAroundCelsius,
            .high = tolerance.target + tolerance.tolerance + kAroundCelsius,
            .decimals = decimals};
}

/// The usual pull, the most at a time and one more.
bool isDrawn(int ampoules, int most, int usualPull)
{
    return ampoules == usualPull || ampoules == most || ampoules == most + 1;
}

ChartLine lineOf(const QString& name, const std::vector<CoursePoint>& course, Stroke stroke)
{
    ChartLine line{.name = name, .points = {}, .stroke = stroke};
    for (const CoursePoint& point : course)
        line.points.append({point.seconds, point.celsius});
    return line;
}

/// One line for each stretch without a gap.
QList<ChartLine> linesOf(const std::vector<TracePoint>& trace, double longestGap)
{
    QList<ChartLine> lines;
    bool isBroken = true;
    double before = 0;
    for (const TracePoint& point : trace) {
        if (!point.celsius) {
            isBroken = true;
            continue;
        }
        if (isBroken || point.minutes - before > longestGap)
            lines.append(ChartLine{});
        lines.back().points.append({point.minutes, *point.celsius});
        isBroken = false;
        before = point.minutes;
    }
    return lines;
}

/// Whether the record would take it for a reading.
bool isWater(const Bench& bench, MilliCelsius raw, const std::optional<TakenReading>& last,
             const Stamp& at)
{
    return !bench.card || !implausible(bench.card->content().bath, raw, last, at);
}

TakenReading takenAs(MilliCelsius raw, const RawReading& reading)
{
    return {reading.at,
            {.probe = reading.probe,
             .raw = raw,
             .corrected = raw,
             .expanded = {},
             .verdict = {},
             .fault = {}}};
}

}  // namespace

std::vector<TracePoint> traceOf(const Bench& bench, const Probe& probe,
                                const std::vector<RawReading>& live, const Stamp& now)
{
    std::vector<TracePoint> trace;
    if (isByHand(probe)) {
        for (const TakenReading& reading : bench.readings) {
            if (reading.fact.probe == probe.id && reading.fact.corrected)
                trace.push_back({minutesBefore(reading.at, now),
                                 static_cast<double>(reading.fact.corrected->count) / 1000});
        }
        return trace;
    }
    const Tolerance tolerance = bench.card ? toleranceOf(bench.card->content().bath) : Tolerance{};
    const auto today = std::chrono::floor<std::chrono::days>(now.wall);
    std::optional<TakenReading> good;
    for (const RawReading& reading : live) {
        TracePoint point{minutesBefore(reading.at, now), {}};
        const auto* raw = std::get_if<MilliCelsius>(&reading.value);
        if (raw && isWater(bench, *raw, good, reading.at)) {
            good = takenAs(*raw, reading);
            point.celsius =
                judged(probe, tolerance, static_cast<double>(raw->count) / 1000, today, 0)
                    .corrected;
        }
        trace.push_back(point);
    }
    return trace;
}

ChartContent traceContent(const Bench& bench, const Probe& probe,
                          const std::vector<TracePoint>& trace)
{
    const Tolerance tolerance =
        bench.card ? toleranceOf(bench.card->content().bath) : Tolerance{28, 1, 1};
    const auto latest = bench.latest.find(probe.id);
    double expanded = 0;
    if (latest != bench.latest.end() && latest->second.fact.expanded)
        expanded = static_cast<double>(latest->second.fact.expanded->count) / 1000;
    ChartContent content;
    content.title = isByHand(probe) ? PictureText::tr("What was typed in, corrected")
                                    : PictureText::tr("The last five minutes, corrected");
    content.across = {.unit = PictureText::tr("min", "unit of an axis: minutes before now"),
                      .low = -kLiveMinutes,
                      .high = 0,
                      .decimals = 1};
    content.up = celsiusAxis(tolerance, 2);
    if (!probe.points.empty())  // else it is undecided at best
        content.bands =
            bandsOf(tolerance, lowestInside(tolerance, expanded),
                    tolerance.target + tolerance.tolerance - tolerance.guard * expanded);
    content.lines = linesOf(trace, isByHand(probe) ? kMostMinutes : kLongestGap);
    for (const TracePoint& point : trace) {
        content.across.low =
            std::clamp(std::floor(point.minutes), -kMostMinutes, content.across.low);
        if (point.celsius && point.minutes >= -kMostMinutes)
            widen(content.up, *point.celsius);
        if (point.celsius && isByHand(probe))
            content.marks.append({.words = {}, .at = {point.minutes, *point.celsius}});
    }
    return content;
}

ChartContent dipContent(const BathForecast& forecast, int usualPull)
{
    ChartContent content;
    content.title = PictureText::tr("Ampoules go in; dashed: heater on");
    content.across = {.unit = PictureText::tr("s", "unit of an axis: seconds"),
                      .low = 0,
                      .high = forecast.seconds,
                      .decimals = 0};
    content.up = {.unit = kCelsius,
                  .low = forecast.tolerance.target - forecast.tolerance.tolerance,
                  .high = forecast.tolerance.target,
                  .decimals = 2};
    content.bands = bandsOf(forecast.tolerance, forecast.lowest, forecast.highest);
    content.bands.front().words.clear();
    content.bands.back().corner = Qt::AlignLeft | Qt::AlignBottom;  // where no line comes
    for (const PullForecast& pull : forecast.pulls) {
        if (pull.course.empty() || !isDrawn(pull.ampoules, forecast.most, usualPull))
            continue;
        const QString name = ampoulesText(pull.ampoules);
        const CoursePoint& end = pull.unheated.back();
        content.lines.append(lineOf(name + u':', pull.unheated, Stroke::Solid));
        content.lines.append(
            lineOf(PictureText::tr("heated:", "a value of a chart: with the heater on"),
                   pull.course, Stroke::Dashed));
        content.names.append({.words = name,
                              .at = {end.seconds, end.celsius},
                              .below = !content.names.isEmpty()});  // the least dip is on top
        content.up.low = std::min(content.up.low, end.celsius);
        content.up.high = std::max(content.up.high, pull.course.front().celsius);
    }
    content.up.low -= kAboutADip;
    content.up.high += kAboutADip;
    return content;
}

ChartContent slushContent(const std::vector<SlushPoint>& curve)
{
    ChartContent content;
    content.title = PictureText::tr("Time to slush over the bath's temperature");
    content.across = {.unit = kCelsius, .low = 20, .high = 40, .decimals = 0};
    content.up = {.unit = PictureText::tr("s", "unit of an axis: seconds"),
                  .low = 0,
                  .high = 2 * kUsualSlush.seconds,
                  .decimals = 0};
    if (curve.empty())
        return content;
    content.across.low = curve.front().celsius;
    content.across.high = curve.back().celsius;
    ChartLine line;
    for (const SlushPoint& point : curve) {
        line.points.append({point.celsius, point.seconds});
        content.up.high = std::max(content.up.high, 1.1 * point.seconds);
    }
    content.lines.append(line);
    content.marks.append({.words = PictureText::tr("common practice: %1 s at %2 °C")
                                       .arg(decimalText(kUsualSlush.seconds, 0),
                                            decimalText(kUsualSlush.celsius, 0)),
                          .at = {kUsualSlush.celsius, kUsualSlush.seconds},
                          .role = Role::Good});
    return content;
}

QString forecastText(const BathForecast& forecast, const BathNow& now, int usualPull)
{
    const QString bath =
        now.expanded > 0
            ? PictureText::tr("%1 ± %2 °C", "temperature, U")
                  .arg(decimalText(now.celsius, 1), decimalText(now.expanded, 1))
            : PictureText::tr("%1 °C, which is the card's and not measured,", "temperature")
                  .arg(decimalText(now.celsius, 1));
    QStringList said;
    said.append(forecast.most == 0
                    ? PictureText::tr("At %1 the bath takes no ampoule without leaving what counts "
                                      "as inside.")
                          .arg(bath)
                    : PictureText::tr("At %1 the bath takes up to %n ampoule(s) at a time.",
                                      nullptr, forecast.most)
                          .arg(bath));
    const auto usual = std::ranges::find(forecast.pulls, usualPull, &PullForecast::ampoules);
    if (usual != forecast.pulls.end() && usual->dip && usual->dip->recovery)
        said.append(
            PictureText::tr(
                "%n ampoule(s): down %1 °C without the heater, which gives that heat in %2.",
                nullptr, usualPull)
                .arg(decimalText(usual->dip->depth, 2),
                     durationText(Millis(std::llround(*usual->dip->recovery) * 1000))));
    said.append(PictureText::tr("This is a calculation; the thermometer decides."));
    return said.join(u' ');
}

BathFits fitsOf(const State& state, const HeatRules& heat)
{
    const Bench& bench = state.bench;
    const bool isInCue = bench.card && learnedScale(bench, *bench.card);
    return {.mass = massOf(state, heat),
            .film = filmOf(state, heat),
            .inCue = isInCue ? bench.learned->film : std::nullopt};
}

namespace {

/// Why a fitted figure is not used; empty: it is.
QString unusedText(FitStand stand)
{
    switch (stand) {
        case FitStand::Used:
            return {};
        case FitStand::TooFew:
            return PictureText::tr("Used: the card's, as it takes three pulls.");
        case FitStand::Scattered:
            return PictureText::tr("Used: the card's, as the pulls do not agree.");
        case FitStand::Implausible:
            return PictureText::tr("Used: the card's, as water cannot do that.");
    }
    Q_UNREACHABLE();
}

QString usedText(const LearnedFigure& figure, int decimals)
{
    const Interval range = figure.interval.value_or(Interval{figure.value, figure.value});
    return PictureText::tr("Used: %1 (%2 to %3).", "a figure and its interval")
        .arg(decimalText(figure.value, decimals), decimalText(range.low, decimals),
             decimalText(range.high, decimals));
}

/// The cue goes by the shifts before, so that it does not move within one.
QString cueText(const BathFits& fits)
{
    if (fits.inCue && fits.inCue->stand == FitStand::Used)
        return usedText(*fits.inCue, 0);
    const FitStand stand = fits.film->figure.stand;
    return stand == FitStand::Used ? PictureText::tr("Used from the next shift on.")
                                   : unusedText(stand);
}

}  // namespace

QString bathLine(const BathLearned* learned)
{
    const bool isFitted = learned && learned->mass && learned->mass->stand == FitStand::Used;
    return isFitted
               ? PictureText::tr("bath: %1 kg, fitted").arg(decimalText(learned->mass->value, 1))
               : PictureText::tr("and the bath");
}

QString fitsText(const BathFits& fits, const HeatRules& heat)
{
    QStringList said;
    if (const auto& mass = fits.mass) {
        const LearnedFigure& figure = mass->figure;
        said.append(PictureText::tr("From %n pull(s): the bath acts as %1 kg of water; the card's "
                                    "%2 kg foresaw its dips to %3 °C.",
                                    nullptr, figure.pulls)
                        .arg(decimalText(figure.value, 1),
                             decimalText(static_cast<double>(heat.waterGrams) / 1000, 1),
                             decimalText(mass->foreseen, 2)));
        said.append(figure.stand == FitStand::Used ? usedText(figure, 1)
                                                   : unusedText(figure.stand));
    }
    if (const auto& film = fits.film) {
        said.append(PictureText::tr("From %n pull(s): opened as with %1 W/(m² K) or more; the "
                                    "card's %2 foresaw it to %3 s.",
                                    nullptr, film->figure.pulls)
                        .arg(decimalText(film->figure.value, 0),
                             decimalText(static_cast<double>(heat.film), 0),
                             decimalText(film->foreseen, 1)));
        said.append(cueText(fits));
    }
    return said.join(u' ');
}

}  // namespace bathside::ui
