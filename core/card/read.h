#pragma once

// A card from its document, or the one thing that is wrong with it.

#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/card/card.h"
#include "core/card/fault.h"

namespace bathside {

using CardFault = DocumentFault;

/// Strict: JSON, schema version 1, no unknown, missing or repeated key, every value in its range,
/// every limit in order. The hash is SHA-256 over the document's RFC 8785 text.
[[nodiscard]] Result<Card, CardFault> cardFrom(std::string_view document);

}  // namespace bathside
