#include "core/record/trend.h"

#include <algorithm>
#include <utility>

namespace bathside {
namespace {

template <typename Id>
bool isOf(const Id& wanted, const Id& is)
{
    return wanted.empty() || wanted == is;
}

bool isWanted(const ChartPoint& point, const TrendWish& wish)
{
    return point.series == wish.series && isOf(wish.person, point.person) &&
           isOf(wish.bench, point.bench) && (wish.lot.empty() || point.lots.contains(wish.lot));
}

std::vector<double> valuesOf(std::span<const ChartPoint> points)
{
    std::vector<double> values;
    for (const ChartPoint& point : points)
        values.push_back(point.value.value_or(0));
    return values;
}

/// Those with a value.
std::vector<double> valuesIn(const Baseline& stretch, const TrendPoints& points,
                             const TrendWish& wish)
{
    std::vector<double> values;
    for (const ChartPoint& point : points.all) {
        const bool isWithin = point.seq >= stretch.from && point.seq <= stretch.to;
        if (isWithin && point.value && isWanted(point, wish))
            values.push_back(*point.value);
    }
    return values;
}

/// The values that the limits come from.
std::vector<double> baseOf(Trend& trend, const TrendPoints& points, const TrendWish& wish,
                           const std::map<std::string, Baseline>& baselines)
{
    for (const TrendWish& of : {wish, TrendWish{.series = wish.series}}) {
        const auto found = baselines.find(chartNameOf(of));
        if (found == baselines.end())
            continue;
        trend.from = LimitsFrom::Baseline;
        trend.baseline = found->first;
        return valuesIn(found->second, points, of);
    }
    return valuesOf(trend.points);
}

void addCapability(Trend& trend)
{
    if (trend.points.empty() || !trend.chart || trend.chart->sigma <= 0)
        return;
    const ChartPoint& last = trend.points.back();
    const auto add = [&](LimitSide side, const std::optional<double>& limit) {
        if (limit)
            trend.capability.push_back(
                {side, *limit, capability(trend.chart->centre, trend.chart->sigma, *limit, side)});
    };
    add(LimitSide::Lower, last.lower);
    add(LimitSide::Upper, last.upper);
}

}  // namespace

std::string chartNameOf(const TrendWish& wish)
{
    std::string name(nameOf(wish.series));
    if (!wish.person.empty())
        name += ", person " + wish.person.text;
    if (!wish.bench.empty())
        name += ", bench " + wish.bench.text;
    if (!wish.lot.empty())
        name += ", lot " + wish.lot.text;
    return name;
}

std::vector<double> valuesOf(const Trend& trend) { return valuesOf(std::span(trend.points)); }

Trend trendOf(const TrendPoints& points, const TrendWish& wish,
              const std::map<std::string, Baseline>& baselines, std::span<const RunRule> rules)
{
    Trend trend;
    for (const ChartPoint& point : points.all) {
        const bool isShown = std::ranges::any_of(points.days, [&](const SeqRange& days) {
            return point.seq >= days.first && point.seq <= days.last;
        });
        if (!isShown || !isWanted(point, wish))
            continue;
        if (point.value)
            trend.points.push_back(point);
        else
            ++trend.without;
    }
    const auto base = baseOf(trend, points, wish, baselines);
    trend.based = base.size();
    if (base.size() < kFewestForLimits)
        return trend;
    trend.chart = individualsOf(base);
    const auto values = valuesOf(trend);
    trend.breaks = signalsIn(values, *trend.chart, rules);
    trend.wideRanges = wideRangesIn(values, *trend.chart);
    addCapability(trend);
    return trend;
}

}  // namespace bathside
