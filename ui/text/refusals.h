#pragma once

// Why a tap was not taken, as a whole sentence that says what to do. No default: a new refusal does
// not compile without words.

#include <QString>

#include "core/bench/decide.h"

namespace bathside::ui {

[[nodiscard]] QString refusalText(const Refusal& refusal);

}  // namespace bathside::ui
