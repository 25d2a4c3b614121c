#pragma once

// Control charts for single values: individuals and moving range, run rules, one-sided capability.
//
// NIST/SEMATECH e-Handbook 6.3.2.2: centre x̄, sigma MR̄/1.128, limits x̄ ± 3 sigma, range chart up to
// 3.267 MR̄ (the handbook's rounded constants, so that its own examples come out). Run rules:
// Western Electric (1 to 4) and Nelson (J. Quality Technology 16 (1984) 237); beyond a line is
// strictly beyond. Capability: e-Handbook 6.1.6. Limits come from a baseline, the rules may look at
// more.

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

#include "core/facts/names.h"

namespace bathside {

struct IndividualsChart {
    double centre = 0;
    double meanRange = 0;  // of two values in a row
    double sigma = 0;
    double upper = 0;
    double lower = 0;
    double rangeUpper = 0;
};

/// At least two values: asserted.
[[nodiscard]] IndividualsChart individualsOf(std::span<const double> baseline);

/// |xi − xi−1|, one fewer than values.
[[nodiscard]] std::vector<double> movingRanges(std::span<const double> values);

enum class RunRule : std::uint8_t {
    OneBeyondThree,       // 1 beyond 3 sigma
    TwoOfThreeBeyondTwo,  // on one side
    FourOfFiveBeyondOne,  // on one side
    EightOnOneSide,       // Western Electric's length
    NineOnOneSide,        // Nelson's length
    SixRisingOrFalling,
    FourteenAlternating,
    FifteenWithinOne,
    EightBeyondOne,  // on either side
};

template <>
struct Names<RunRule> {
    static constexpr std::array<std::string_view, 9> all{
        "1 beyond 3",     "2 of 3 beyond 2", "4 of 5 beyond 1",
        "8 on one side",  "9 on one side",   "6 rising or falling",
        "14 alternating", "15 within 1",     "8 beyond 1"};
};

/// The four of Western Electric: what is looked for unless somebody wants others.
inline constexpr std::array kUsualRules{RunRule::OneBeyondThree, RunRule::TwoOfThreeBeyondTwo,
                                        RunRule::FourOfFiveBeyondOne, RunRule::EightOnOneSide};

struct RunSignal {
    RunRule rule{};
    std::size_t at = 0;  // the value that completes the pattern

    friend bool operator==(const RunSignal&, const RunSignal&) = default;
};

/// Every value at which one of `rules` holds, in order of values, then of rules as given.
[[nodiscard]] std::vector<RunSignal> signalsIn(std::span<const double> values,
                                               const IndividualsChart& chart,
                                               std::span<const RunRule> rules);

/// Every value whose moving range, to the one before, is beyond the range chart's limit.
[[nodiscard]] std::vector<std::size_t> wideRangesIn(std::span<const double> values,
                                                    const IndividualsChart& chart);

enum class LimitSide : std::uint8_t { Upper, Lower };

template <>
struct Names<LimitSide> {
    static constexpr std::array<std::string_view, 2> all{"upper", "lower"};
};

/// Cpu = (limit − mean) / 3 sigma, or Cpl = (mean − limit) / 3 sigma; sigma > 0.
[[nodiscard]] double capability(double mean, double sigma, double limit, LimitSide side);

}  // namespace bathside
