#pragma once

// Quantiles of the distributions that the station's intervals rest on, from Boost.Math.
//
// `p` is a probability strictly between 0 and 1, degrees of freedom and shapes are above 0:
// asserted, because whoever reads them from outside has checked the range.

namespace bathside {

[[nodiscard]] double normalQuantile(double p);
[[nodiscard]] double studentQuantile(double p, double degrees);
[[nodiscard]] double betaQuantile(double p, double a, double b);
[[nodiscard]] double chiSquareQuantile(double p, double degrees);

/// A range that holds the true value with the probability that was asked for.
struct Interval {
    double low = 0;
    double high = 0;
};

/// The upper p of a two-sided interval: 0.95 gives 0.975.
[[nodiscard]] constexpr double upperTail(double confidence) { return (1 + confidence) / 2; }

}  // namespace bathside
