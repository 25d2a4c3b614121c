#include "core/checks/charts.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

#include "core/checks/sample.h"

namespace bathside {
namespace {

constexpr double kRangeToSigma = 1.128;
constexpr double kRangeLimit = 3.267;

using Values = std::span<const double>;  // in sigma from the centre, the newest last

/// `count` of the last `of` values, and the newest itself, lie beyond `limit` on its side.
bool someBeyond(Values values, std::size_t count, std::size_t of, double limit)
{
    if (values.size() < count || std::abs(values.back()) <= limit)
        return false;
    const double side = values.back() > 0 ? 1 : -1;
    const auto last = values.last(std::min(of, values.size()));
    const auto beyond =
        std::ranges::count_if(last, [&](double value) { return side * value > limit; });
    return static_cast<std::size_t>(beyond) >= count;
}

bool allOnOneSide(Values values, std::size_t count) { return someBeyond(values, count, count, 0); }

bool allOf(Values values, std::size_t count, const auto& holds)
{
    return values.size() >= count && std::ranges::all_of(values.last(count), holds);
}

/// `holds` for the two steps around each of the last `count` values but the first and last.
bool allSteps(Values values, std::size_t count, const auto& holds)
{
    if (values.size() < count)
        return false;
    const Values last = values.last(count);
    for (std::size_t i = 2; i < last.size(); ++i)
        if (!holds(last[i - 1] - last[i - 2], last[i] - last[i - 1]))
            return false;
    return true;
}

bool sameWay(double before, double after) { return before * after > 0; }
bool otherWay(double before, double after) { return before * after < 0; }
bool isWithinOne(double value) { return std::abs(value) < 1; }
bool isBeyondOne(double value) { return std::abs(value) > 1; }

bool holds(RunRule rule, Values values)
{
    switch (rule) {
        case RunRule::OneBeyondThree:
            return someBeyond(values, 1, 1, 3);
        case RunRule::TwoOfThreeBeyondTwo:
            return someBeyond(values, 2, 3, 2);
        case RunRule::FourOfFiveBeyondOne:
            return someBeyond(values, 4, 5, 1);
        case RunRule::EightOnOneSide:
            return allOnOneSide(values, 8);
        case RunRule::NineOnOneSide:
            return allOnOneSide(values, 9);
        case RunRule::SixRisingOrFalling:
            return allSteps(values, 6, sameWay);
        case RunRule::FourteenAlternating:
            return allSteps(values, 14, otherWay);
        case RunRule::FifteenWithinOne:
            return allOf(values, 15, isWithinOne);
        case RunRule::EightBeyondOne:
            return allOf(values, 8, isBeyondOne);
    }
    return false;
}

}  // namespace

std::vector<double> movingRanges(std::span<const double> values)
{
    std::vector<double> ranges;
    for (std::size_t i = 1; i < values.size(); ++i)
        ranges.push_back(std::abs(values[i] - values[i - 1]));
    return ranges;
}

IndividualsChart individualsOf(std::span<const double> baseline)
{
    assert(baseline.size() >= 2);
    IndividualsChart chart;
    chart.centre = sampleOf(baseline).mean;
    chart.meanRange = sampleOf(movingRanges(baseline)).mean;
    chart.sigma = chart.meanRange / kRangeToSigma;
    chart.upper = chart.centre + 3 * chart.sigma;
    chart.lower = chart.centre - 3 * chart.sigma;
    chart.rangeUpper = kRangeLimit * chart.meanRange;
    return chart;
}

namespace {

/// Where nothing scattered in the baseline, whatever differs is endlessly far off.
double standardised(double value, const IndividualsChart& chart)
{
    const double off = value - chart.centre;
    if (chart.sigma > 0 || off == 0)
        return off == 0 ? 0 : off / chart.sigma;
    return std::copysign(std::numeric_limits<double>::infinity(), off);
}

}  // namespace

std::vector<RunSignal> signalsIn(std::span<const double> values, const IndividualsChart& chart,
                                 std::span<const RunRule> rules)
{
    std::vector<double> standard;
    std::vector<RunSignal> signals;
    for (std::size_t i = 0; i < values.size(); ++i) {
        standard.push_back(standardised(values[i], chart));
        for (const RunRule rule : rules)
            if (holds(rule, standard))
                signals.push_back({rule, i});
    }
    return signals;
}

std::vector<std::size_t> wideRangesIn(std::span<const double> values, const IndividualsChart& chart)
{
    std::vector<std::size_t> wide;
    const auto ranges = movingRanges(values);
    for (std::size_t i = 0; i < ranges.size(); ++i)
        if (ranges[i] > chart.rangeUpper)
            wide.push_back(i + 1);
    return wide;
}

double capability(double mean, double sigma, double limit, LimitSide side)
{
    assert(sigma > 0);
    const double room = side == LimitSide::Upper ? limit - mean : mean - limit;
    return room / (3 * sigma);
}

}  // namespace bathside
