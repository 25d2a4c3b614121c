#pragma once

// How a bar of the timeline looks, for its plate and its words alike: the role, and the mark of a
// small margin.

#include "ui/plan/timeline_layout.h"
#include "ui/theme/role.h"

namespace bathside::ui {

[[nodiscard]] Role roleOf(const TimelineBar& bar);
/// A bag's margin is small, and the bar is wide enough for the mark beside words.
[[nodiscard]] bool hasMark(const PlacedBar& placed);
[[nodiscard]] QRectF markRoom(const PlacedBar& placed);
/// Beside the mark, where there is one.
[[nodiscard]] QRectF textRoom(const PlacedBar& placed);
/// A mark's height and width, mm.
inline constexpr double kBarMark = 5;

}  // namespace bathside::ui
