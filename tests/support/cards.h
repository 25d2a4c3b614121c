#pragma once

// Procedure cards for tests: the default one, and it with some keys changed.

#include <memory>
#include <string_view>

#include "core/card/card.h"

namespace bathside::test {

/// resources/cards/default.json, read once.
[[nodiscard]] std::shared_ptr<const Card> defaultCard();

/// The default card after an RFC 7386 merge patch. Ends the test program where that is no card.
[[nodiscard]] std::shared_ptr<const Card> cardWith(std::string_view patch);

}  // namespace bathside::test
