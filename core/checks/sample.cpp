#include "core/checks/sample.h"

#include <cassert>
#include <cmath>
#include <numeric>

namespace bathside {

Sample sampleOf(std::span<const double> values)
{
    assert(!values.empty());
    const auto count = static_cast<double>(values.size());
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / count;
    double squares = 0;
    for (const double value : values)
        squares += (value - mean) * (value - mean);
    return {values.size(), mean, values.size() < 2 ? 0 : std::sqrt(squares / (count - 1))};
}

std::optional<Interval> meanInterval(const Sample& sample, double confidence)
{
    if (sample.count < 2)
        return std::nullopt;
    const auto count = static_cast<double>(sample.count);
    const double half =
        studentQuantile(upperTail(confidence), count - 1) * sample.deviation / std::sqrt(count);
    return Interval{sample.mean - half, sample.mean + half};
}

}  // namespace bathside
