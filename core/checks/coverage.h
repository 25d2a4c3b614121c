#pragma once

// How many birds are vaccinated well, from some that were looked at.
//
// Exact binomial bounds (Clopper & Pearson, Biometrika 26 (1934) 404): lower Beta⁻¹(α; x, n − x +
// 1), upper Beta⁻¹(1 − α; x + 1, n − x), with α/2 for two sides. The verdict is one-sided: a target
// is shown when the lower bound at the asked confidence reaches it, and missed when the upper bound
// stays below it. Supposes that the birds were picked at random. Shares from 0 to 1. (Spec: checks,
// vaccination check.)

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

#include "core/base/quantiles.h"
#include "core/facts/names.h"

namespace bathside {

struct Looked {
    int good = 0;   // 0 to `birds`
    int birds = 0;  // > 0
};

/// Two-sided.
[[nodiscard]] Interval shareGood(const Looked& looked, double confidence);

enum class CoverageVerdict : std::uint8_t { Shown, Undecided, Missed };

template <>
struct Names<CoverageVerdict> {
    static constexpr std::array<std::string_view, 3> all{"shown", "undecided", "missed"};
};

[[nodiscard]] CoverageVerdict judged(const Looked& looked, double target, double confidence);

/// The fewest birds to look at so that `target` is shown although `misses` of them are not good;
/// none: more than a million. `target` strictly between 0 and 1.
[[nodiscard]] std::optional<int> birdsNeeded(double target, double confidence, int misses);

}  // namespace bathside
