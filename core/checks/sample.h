#pragma once

// Mean and spread of repeated measurements, and the interval of the mean.
//
// Standard deviation with n − 1; interval by Student's t, which supposes that the values scatter
// normally about one mean. The unit is that of the values.

#include <optional>
#include <span>

#include "core/base/quantiles.h"

namespace bathside {

struct Sample {
    std::size_t count = 0;
    double mean = 0;
    double deviation = 0;  // 0 with fewer than two values
};

/// At least one value: asserted.
[[nodiscard]] Sample sampleOf(std::span<const double> values);

/// None with fewer than two values. `confidence` between 0 and 1.
[[nodiscard]] std::optional<Interval> meanInterval(const Sample& sample, double confidence);

}  // namespace bathside
