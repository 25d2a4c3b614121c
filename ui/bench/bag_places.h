#pragma once

// Which bag stands in which tile, and what its tile says and does.
//
// A bag keeps its place until it is down; a new one takes the lowest place that is free. Pure.

#include <optional>
#include <vector>

#include "core/bench/intent.h"
#include "ui/controls/bag_tile.h"
#include "ui/models/station_model.h"

namespace bathside::ui {

/// One entry a place, in order; null where a place is free again. Open bags only.
[[nodiscard]] std::vector<const Bag*> bagPlaces(const Bench& bench);

[[nodiscard]] BagState bagState(const Bag& bag, const Alarms& due, const Stamp& now);

/// What a tap on the tile says within the critical window, where nothing may be asked: one ampoule
/// into this bag while two are being made up, or a swirl that is due. None: the tile is faded back.
[[nodiscard]] std::optional<Intent> deedInWindow(const StationModel& model, const Bag& bag);

}  // namespace bathside::ui
