#pragma once

// Live cells left in a dose after time in the bath and in the bag: indicative, never a release
// decision.
//
// Titre of the certificate × doses put in / doses the bag gives × the share that first-order losses
// leave, all as bands from low to high. Loss rates are card fields with their published source
// beside them: without a source, or without a rate for a time that is not 0, there is no band.
// Titre in plaque-forming units per dose, times in hours. (Spec: temperatures, live-cell budget;
// published half-lives of a turkey herpesvirus vaccine in diluent range from 1 to 5 h at 4 °C.)

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/quantiles.h"
#include "core/facts/names.h"

namespace bathside {

struct LossRate {
    Interval halfLife;   // h, both above 0
    std::string source;  // as it stands beside the field; empty: no rate
};

struct LiveCells {
    Interval titre;       // per dose, from the lot's certificate
    double dosesIn = 0;   // doses opened into the bag
    double dosesOut = 0;  // doses the bag gives, > 0
    double bathHours = 0;
    double bagHours = 0;
    std::optional<LossRate> bathLoss;
    std::optional<LossRate> bagLoss;
};

/// The share left, low to high; none: no published rate.
[[nodiscard]] std::optional<Interval> shareLeft(const LiveCells& cells);

/// Per dose, low to high; none: no published rate.
[[nodiscard]] std::optional<Interval> perDose(const LiveCells& cells);

enum class CellsVerdict : std::uint8_t {
    Above,      // the whole band is at or above the minimum
    Undecided,  // the minimum lies within the band
    Below,
};

template <>
struct Names<CellsVerdict> {
    static constexpr std::array<std::string_view, 3> all{"above", "undecided", "below"};
};

[[nodiscard]] CellsVerdict judged(const Interval& band, double minimum);

}  // namespace bathside
