#pragma once

// Whether a figure that was fitted to pulls may be used instead of the card's.

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

#include "core/facts/names.h"

namespace bathside {

inline constexpr int kFewestPulls = 3;  // two may agree by chance; ours
// How surely it must be known, either way at 95 %, as a share; ours.
inline constexpr double kWidestMass = 0.25;
inline constexpr double kWidestTime = 0.1;  // of the time to slush

enum class FitStand : std::uint8_t {
    Used,
    TooFew,       // pulls
    Scattered,    // the pulls do not agree on one figure
    Implausible,  // they agree on one that water cannot have
};
template <>
struct Names<FitStand> {
    static constexpr std::array<std::string_view, 4> all{"used", "too-few", "scattered",
                                                         "implausible"};
};

/// `sureTo`: half the figure's interval as a share; none: not known at all.
[[nodiscard]] constexpr FitStand fitStand(int pulls, std::optional<double> sureTo, double widest)
{
    if (pulls < kFewestPulls)
        return FitStand::TooFew;
    return sureTo && *sureTo <= widest ? FitStand::Used : FitStand::Scattered;
}

}  // namespace bathside
