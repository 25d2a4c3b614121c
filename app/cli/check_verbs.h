#pragma once

// `bathside-cli injector | coverage | flow | vessel | room-air | live-cells | chart FILE`: the
// checks and their statistics.
//
// What the documents hold stands in core/checks/*_case.h.

#include <vector>

#include "app/cli/document_verb.h"

namespace bathside::cli {

[[nodiscard]] std::vector<DocumentVerb> checkVerbs();

}  // namespace bathside::cli
