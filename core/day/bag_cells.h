#pragma once

// Live cells left in a dose of one bag, from what the record has of it. Indicative: the label
// decides, and no bag is released or held by it.
//
// Each ampoule in the bag brings its lot's doses × titre, less what is lost in the bath (from *in
// bath* to its diluent; from *out of cryogen* where *in bath* was not tapped) and in the bag (from
// its diluent on); the bag gives its volume / the card's dose. Where the card, the stores or the
// record lack something there is no band, but why. (Spec: temperatures, live-cell budget; losses
// and band: core/checks/live_cells.h.)

#include <cstdint>
#include <vector>

#include "core/base/result.h"
#include "core/bench/bench.h"
#include "core/checks/live_cells.h"

namespace bathside {

/// Of one component, as titre and minimum are.
struct BagCells {
    ComponentId component;
    Interval now;      // PFU a dose
    Interval atLimit;  // when the bag's life ends by its card; as now, once that is past
    double minimum = 0;
};

enum class CellsGap : std::uint8_t {
    Off,         // on the card
    NoMinimum,   // on the card
    NoBathLoss,  // on the card
    NoBagLoss,   // on the card
    NotMixed,    // the bag is not made up
    NoTitre,     // of a lot in the bag
    NoTimes,     // an ampoule's, or the clock cannot be relied on
};

/// What the card lacks before any bag can have a band; none: nothing.
[[nodiscard]] std::optional<CellsGap> gapOn(const LiveCellRules& rules);

/// The component that has least by the bag's limit, in proportion nothing else: one minimum holds
/// for all.
[[nodiscard]] Result<BagCells, CellsGap> cellsOf(const Bench& bench, const Bag& bag,
                                                 const Stamp& now);

struct CellsPoint {
    double minutes = 0;  // since the bag's first ampoule in diluent
    Interval perDose;
};

/// That component's band from mixed to the bag's limit; empty where there is none.
[[nodiscard]] std::vector<CellsPoint> cellsCourse(const Bench& bench, const Bag& bag,
                                                  const Stamp& now);

}  // namespace bathside
