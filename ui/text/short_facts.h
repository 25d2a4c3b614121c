#pragma once

// All facts of one tap in a few words, for the bench: "in bath 1, 2", "mixed bag B4".
//
// Facts that merely follow (a deviation, a hold) are added after a comma; facts of the program's
// own are empty.

#include <QString>
#include <span>

#include "core/facts/facts.h"

namespace bathside::ui {

[[nodiscard]] QString shortText(std::span<const Fact> facts);
/// One fact alone; the ampoule by its number.
[[nodiscard]] QString shortText(const Fact& fact);

}  // namespace bathside::ui
