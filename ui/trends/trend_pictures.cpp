#include "ui/trends/trend_pictures.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <map>

namespace bathside::ui {
namespace {

struct TrendPictureText {
    Q_DECLARE_TR_FUNCTIONS(TrendText)
};

constexpr int kFewestAcross = 10;     // so that few points are not torn apart
constexpr double kWordsShare = 0.3;   // kept free at the right, for the words of the limits
constexpr double kAround = 0.12;      // of what is drawn, above and below
constexpr double kWordsApart = 0.25;  // of the whole width: marks closer than that share words

ChartAxis acrossOf(const Trend& trend)
{
    const auto many = std::max(static_cast<int>(trend.points.size()), kFewestAcross);
    return {.unit = {}, .low = 0, .high = std::ceil((1 + kWordsShare) * many) + 1, .decimals = 0};
}

/// Grows with what is drawn.
class Span {
public:
    void add(double value)
    {
        m_low = m_isEmpty ? value : std::min(m_low, value);
        m_high = m_isEmpty ? value : std::max(m_high, value);
        m_isEmpty = false;
    }
    void add(const std::optional<double>& value)
    {
        if (value)
            add(*value);
    }
    [[nodiscard]] ChartAxis axis(ChartSeries series, bool neverNegative) const
    {
        const double wide = m_high > m_low ? m_high - m_low : std::max(1.0, std::abs(m_high));
        const double low = m_low - kAround * wide;
        return {.unit = unitOf(series),
                .low = neverNegative ? std::max(0.0, low) : low,
                .high = m_high + kAround * wide,
                .decimals = decimalsOf(series)};
    }

private:
    double m_low = 0, m_high = 1;
    bool m_isEmpty = true;
};

ChartRule ruleAt(double value, const QString& words, ChartSeries series,
                 Stroke stroke = Stroke::Dashed)
{
    return {.words = QStringLiteral("%1 %2").arg(words, valueText(series, value)),
            .at = value,
            .stroke = stroke};
}

/// The worst rule that holds at each point.
std::map<std::size_t, RunRule> worstOf(const Trend& trend)
{
    std::map<std::size_t, RunRule> worst;
    for (const RunSignal& signal : trend.breaks) {
        const auto [place, isNew] = worst.try_emplace(signal.at, signal.rule);
        if (!isNew)
            place->second = std::min(place->second, signal.rule);
    }
    return worst;
}

Role roleOf(RunRule rule) { return rule == RunRule::OneBeyondThree ? Role::Limit : Role::HeadsUp; }

/// Words where there is room for them; a point that is picked says its own besides.
QList<ChartMark> marksOf(const Trend& trend)
{
    QList<ChartMark> marks;
    const double apart = kWordsApart * acrossOf(trend).high;
    double last = -apart;
    for (const auto& [at, rule] : worstOf(trend)) {
        const double x = static_cast<double>(at) + 1;
        const bool hasRoom = x - last >= apart;
        marks.append({.words = hasRoom ? wordOf(rule) : QString(),
                      .at = {x, trend.points[at].value.value_or(0)},
                      .role = roleOf(rule)});
        if (hasRoom)
            last = x;
    }
    return marks;
}

/// The card's limit as it was at each point.
ChartLine cardLine(const Trend& trend, std::optional<double> ChartPoint::*limit)
{
    ChartLine line{.name = TrendPictureText::tr("the card's limit"),
                   .points = {},
                   .stroke = Stroke::Dotted,
                   .whens = {}};
    for (std::size_t i = 0; i < trend.points.size(); ++i) {
        if (const auto& at = trend.points[i].*limit)
            line.points.append({static_cast<double>(i) + 1, *at});
    }
    return line;
}

}  // namespace

ChartContent valuesContent(const Trend& trend, const TrendLook& look)
{
    ChartContent content;
    content.title = look.title;
    content.across = acrossOf(trend);
    content.across.hasNumbers = false;  // they stand under the ranges
    ChartLine values{.dots = true};
    Span span;
    for (const ChartPoint& point : trend.points) {
        values.points.append({static_cast<double>(values.points.size()) + 1, *point.value});
        values.whens.append(pointText(point, look.people, look.zone));
        span.add(*point.value);
        span.add(point.lower);
        span.add(point.upper);
    }
    if (!trend.points.empty())
        content.lines.append(values);
    for (const auto limit : {&ChartPoint::upper, &ChartPoint::lower}) {
        const ChartLine line = cardLine(trend, limit);
        if (!line.points.isEmpty())
            content.lines.append(line);
    }
    if (trend.chart) {
        const IndividualsChart& chart = *trend.chart;
        content.rules = {
            ruleAt(chart.centre, TrendPictureText::tr("centre"), look.series, Stroke::Solid),
            ruleAt(chart.upper, TrendPictureText::tr("upper limit"), look.series),
            ruleAt(chart.lower, TrendPictureText::tr("lower limit"), look.series)};
        content.rules.back().end = Qt::AlignRight | Qt::AlignTop;
        span.add(chart.upper);
        span.add(chart.lower);
        content.marks = marksOf(trend);
    }
    content.up = span.axis(look.series, isNeverNegative(look.series));
    return content;
}

ChartContent rangesContent(const Trend& trend, const TrendLook& look)
{
    // A distance has no sign.
    const ChartSeries series =
        look.series == ChartSeries::DoseError ? ChartSeries::DoseSpread : look.series;
    ChartContent content;
    content.title = TrendPictureText::tr("Moving range: how far each is from the one before");
    content.across = acrossOf(trend);
    ChartLine ranges{.dots = true};
    Span span;
    span.add(0.0);
    const auto values = movingRanges(valuesOf(trend));
    for (std::size_t i = 0; i < values.size(); ++i) {
        ranges.points.append({static_cast<double>(i) + 2, values[i]});
        span.add(values[i]);
    }
    if (!values.empty())
        content.lines.append(ranges);
    if (trend.chart) {
        content.rules = {
            ruleAt(trend.chart->meanRange, TrendPictureText::tr("mean range"), series,
                   Stroke::Solid),
            ruleAt(trend.chart->rangeUpper, TrendPictureText::tr("limit of the range"), series)};
        span.add(trend.chart->rangeUpper);
        for (const std::size_t at : trend.wideRanges)
            content.marks.append({.words = {},
                                  .at = {static_cast<double>(at) + 1, values[at - 1]},
                                  .role = Role::Limit});
        if (!content.marks.isEmpty())
            content.marks.front().words = TrendPictureText::tr("beyond its limit");
    }
    content.up = span.axis(series, true);
    return content;
}

}  // namespace bathside::ui
