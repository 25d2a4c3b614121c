#pragma once

// What a live-cell budget is reckoned with: a card's section `live_cells`. Indicative, never a
// release decision.
//
// Optional as a whole and key by key, and off and empty by default: rates and minimum are those of
// a source that the site names, and without one nothing is shown. (Spec: live-cell budget.)

#include <cstdint>
#include <optional>
#include <string>

#include "core/base/time.h"

namespace bathside {

/// First-order loss, as a band of half-lives: 0 < shortest <= longest.
struct CellLoss {
    Millis shortest{}, longest{};
    std::string source;  // never empty
    friend bool operator==(const CellLoss&, const CellLoss&) = default;
};

struct LiveCellRules {
    bool isShown = false;
    std::optional<std::int64_t> minimum;  // PFU a dose, at the bag's end of life
    std::string minimumSource;
    std::int64_t titreOffPercent = 0;  // of the certificate's titre, to both sides
    std::optional<CellLoss> inBath;
    std::optional<CellLoss> inBag;
    friend bool operator==(const LiveCellRules&, const LiveCellRules&) = default;
};

}  // namespace bathside
