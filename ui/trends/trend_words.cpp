#include "ui/trends/trend_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <algorithm>
#include <set>

#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

struct TrendText {
    Q_DECLARE_TR_FUNCTIONS(TrendText)
};

/// e-Handbook 6.1.6: 1.00 just fits, 1.33 is the usual least.
constexpr double kJustFits = 1, kUsualLeast = 1.33;

QString figureText(double value) { return QLocale().toString(value, 'f', 2); }

QString shortDay(WallTime at, const std::string& zone)
{
    const std::chrono::year_month_day day(localDay(at, zone));
    return dayText(day);
}

/// Points, not signals: one may break several rules.
int brokenPoints(const Trend& trend)
{
    std::set<std::size_t> at;
    for (const RunSignal& signal : trend.breaks)
        at.insert(signal.at);
    return static_cast<int>(at.size());
}

QString brokenSentence(const Trend& trend)
{
    const int broken = brokenPoints(trend);
    return broken == 0 ? TrendText::tr("No point breaks a rule.")
                       : TrendText::tr("%n point(s) break a rule.", nullptr, broken);
}

QString roomText(double capability)
{
    if (capability < kJustFits)
        return TrendText::tr("as it scatters, the limit will be passed");
    return capability < kUsualLeast ? TrendText::tr("the limit is just kept")
                                    : TrendText::tr("the limit is kept with room");
}

QString sideText(const SideCapability& side, ChartSeries series)
{
    const QString limit = valueText(series, side.limit);
    const QString sentence =
        side.side == LimitSide::Upper
            ? TrendText::tr("Up to the card's %1 the capability is %2: %3.", "limit, figure, words")
            : TrendText::tr("Down to the card's %1 the capability is %2: %3.",
                            "limit, figure, words");
    return sentence.arg(limit, figureText(side.capability), roomText(side.capability));
}

}  // namespace

QString wordOf(ChartSeries series)
{
    switch (series) {
        case ChartSeries::OutToBath:
            return TrendText::tr("out of cryogen → in bath");
        case ChartSeries::BathToDiluent:
            return TrendText::tr("in bath → in diluent");
        case ChartSeries::BathAtPull:
            return TrendText::tr("bath at pulls", "its temperature");
        case ChartSeries::DoseError:
            return TrendText::tr("dose: error of the mean");
        case ChartSeries::DoseSpread:
            return TrendText::tr("dose: spread of the shots");
    }
    Q_UNREACHABLE();
}

QString wordOf(RunRule rule)
{
    switch (rule) {
        case RunRule::OneBeyondThree:
            return TrendText::tr("1 beyond 3 sigma");
        case RunRule::TwoOfThreeBeyondTwo:
            return TrendText::tr("2 of 3 beyond 2 sigma");
        case RunRule::FourOfFiveBeyondOne:
            return TrendText::tr("4 of 5 beyond 1 sigma");
        case RunRule::EightOnOneSide:
            return TrendText::tr("8 on one side");
        case RunRule::NineOnOneSide:
            return TrendText::tr("9 on one side");
        case RunRule::SixRisingOrFalling:
            return TrendText::tr("6 rising or falling");
        case RunRule::FourteenAlternating:
            return TrendText::tr("14 up and down");
        case RunRule::FifteenWithinOne:
            return TrendText::tr("15 within 1 sigma");
        case RunRule::EightBeyondOne:
            return TrendText::tr("8 beyond 1 sigma");
    }
    Q_UNREACHABLE();
}

QString unitOf(ChartSeries series)
{
    switch (series) {
        case ChartSeries::OutToBath:
        case ChartSeries::BathToDiluent:
            return TrendText::tr("s", "unit: seconds");
        case ChartSeries::BathAtPull:
            return QStringLiteral("°C");
        case ChartSeries::DoseError:
        case ChartSeries::DoseSpread:
            return QStringLiteral("%");
    }
    Q_UNREACHABLE();
}

int decimalsOf(ChartSeries series) { return series == ChartSeries::BathAtPull ? 2 : 1; }

bool isNeverNegative(ChartSeries series)
{
    return series != ChartSeries::BathAtPull && series != ChartSeries::DoseError;
}

QString valueText(ChartSeries series, double value)
{
    const bool hasSign = series == ChartSeries::DoseError && value > 0;
    return QStringLiteral("%1%2 %3").arg(hasSign ? QStringLiteral("+") : QString(),
                                         QLocale().toString(value, 'f', decimalsOf(series)),
                                         unitOf(series));
}

QString wishText(const TrendWish& wish, const Aliases& people)
{
    QStringList parts{wordOf(wish.series)};
    if (!wish.person.empty())
        parts.append(people.areHidden() ? people.of(wish.person)
                                        : TrendText::tr("person %1").arg(idText(wish.person)));
    if (!wish.bench.empty())
        parts.append(TrendText::tr("bench %1").arg(idText(wish.bench)));
    if (!wish.lot.empty())
        parts.append(TrendText::tr("lot %1").arg(idText(wish.lot)));
    return parts.join(QStringLiteral(", "));
}

QString pointText(const ChartPoint& point, const Aliases& people, const std::string& zone)
{
    QStringList parts{shortDay(point.at, zone), localMinuteText(point.at, zone)};
    if (!point.person.empty())
        parts.append(people.of(point.person));
    QStringList numbers;
    for (const int no : point.ampoules)
        numbers.append(QString::number(no));
    if (point.pull > 0)
        parts.append(TrendText::tr("pull %1 (%2)", "number, ampoules")
                         .arg(point.pull)
                         .arg(numbers.join(QStringLiteral(", "))));
    else
        parts.append(subjectText(subjectOf(point.line)));
    return parts.join(QStringLiteral(" · "));
}

QString brokenText(const Trend& trend, std::size_t at)
{
    QStringList rules;
    for (const RunSignal& signal : trend.breaks) {
        if (signal.at == at)
            rules.append(wordOf(signal.rule));
    }
    return rules.isEmpty()
               ? QString()
               : TrendText::tr("Breaks a rule: %1.").arg(rules.join(QStringLiteral(", ")));
}

LimitsSaid limitsText(const Trend& trend)
{
    const auto based = static_cast<int>(trend.based);
    if (trend.points.empty())
        return {TrendText::tr("NO POINTS"),
                TrendText::tr("There is nothing of this in these days.")};
    if (!trend.chart)
        return {
            TrendText::tr("TOO FEW POINTS"),
            trend.from == LimitsFrom::Baseline
                ? TrendText::tr("The baseline has %1 of at least %2 points: no limits are drawn.")
                      .arg(based)
                      .arg(kFewestForLimits)
                : TrendText::tr("%1 of at least %2 points: no limits are drawn yet.")
                      .arg(based)
                      .arg(kFewestForLimits)};
    if (trend.from == LimitsFrom::Baseline)
        return {TrendText::tr("LIMITS FROM THE BASELINE"),
                TrendText::tr("Of %n point(s).", "limits come from", based) + u' ' +
                    brokenSentence(trend),
                trend.breaks.empty()};
    const QString few = trend.based < kUsualForLimits
                            ? TrendText::tr("These are few; 20 are usual.")
                            : TrendText::tr("No baseline is chosen.");
    return {TrendText::tr("LIMITS FROM THESE POINTS"),
            TrendText::tr("Of %n point(s).", "limits come from", based) + u' ' + few + u' ' +
                brokenSentence(trend)};
}

QString capabilityText(const Trend& trend, ChartSeries series)
{
    QStringList said;
    const auto worst = std::ranges::min_element(trend.capability, {}, &SideCapability::capability);
    if (worst != trend.capability.end())
        said.append(sideText(*worst, series));
    if (trend.chart && trend.chart->sigma <= 0)
        said.append(TrendText::tr("All points of the limits are alike: there is no capability."));
    if (trend.without > 0)
        said.append(TrendText::tr("%n more without a value: not timed, read or weighed.", nullptr,
                                  static_cast<int>(trend.without)));
    return said.join(u' ');
}

}  // namespace bathside::ui
