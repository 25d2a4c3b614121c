#pragma once

// The rate at which a line runs, from running totals of birds, and when a bag will be empty.
//
// Rate: birds over running time (breaks left out by whoever gives the pieces). Interval: counts
// scatter as a Poisson process times a dispersion that the pieces show (quasi-Poisson, Student's
// t); never narrower than Poisson's own exact interval (Garwood, Biometrika 28 (1936) 437), which
// alone holds for a single piece. (Spec: checks, flow of the day.)

#include <optional>
#include <span>

#include "core/base/quantiles.h"

namespace bathside {

struct FlowPiece {
    double seconds = 0;  // running, > 0
    int birds = 0;
};

struct Flow {
    double perHour = 0;
    Interval interval;  // birds per hour
};

/// At least one piece: asserted.
[[nodiscard]] Flow measuredFlow(std::span<const FlowPiece> pieces, double confidence);

struct EmptyIn {
    double seconds = 0;
    double earliest = 0;
    std::optional<double> latest;  // none: the rate may be 0
};

/// When `birds` more have been served; none where the rate is 0.
[[nodiscard]] std::optional<EmptyIn> emptyIn(const Flow& flow, int birds);

}  // namespace bathside
