#pragma once

// What the questions of set-up share.

#include "ui/controls/choice_grid.h"

namespace bathside::ui {

inline constexpr auto kBack = "back";

[[nodiscard]] inline QString idOf(const char* id) { return QString::fromLatin1(id); }
[[nodiscard]] inline Mark tickIf(bool holds) { return holds ? Mark::Tick : Mark::None; }
[[nodiscard]] inline Choice back(const QString& word)
{
    return {.id = idOf(kBack), .word = word, .role = Role::Quiet, .mark = Mark::Back};
}

}  // namespace bathside::ui
