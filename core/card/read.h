#pragma once

// A card from its document, or the one thing that is wrong with it.

#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/card/card.h"

namespace bathside {

struct CardFault {
    std::string key;       // path of the key, e.g. "limits.thaw.at_ms"; empty: the document itself
    std::string found;     // what stands there, shortened
    std::string expected;  // what should, e.g. "a whole number of ms from 1 to 86400000"
};

/// Strict: JSON, schema version 1, no unknown, missing or repeated key, every value in its range, every limit in
/// order. The hash is SHA-256 over the document's RFC 8785 text.
[[nodiscard]] Result<Card, CardFault> cardFrom(std::string_view document);

}  // namespace bathside
