#pragma once

// Why a tap was not taken, as a whole sentence that says what to do. No default: a new refusal does
// not compile without words.

#include <QString>
#include <string>

#include "core/bench/decide.h"
#include "core/card/card.h"

namespace bathside::ui {

/// With a card, an open check is named by the card's words in that language, else by its id.
[[nodiscard]] QString refusalText(const Refusal& refusal, const Card* card = nullptr,
                                  const std::string& language = "en");

}  // namespace bathside::ui
