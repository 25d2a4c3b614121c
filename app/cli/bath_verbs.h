#pragma once

// `bathside-cli ohms | heat | thaw FILE`: resistance thermometers, the bath's heat budget, the
// thaw.
//
// What the documents hold stands in core/bath/resistance_case.h, heat_case.h and thaw_case.h.

#include <vector>

#include "app/cli/document_verb.h"

namespace bathside::cli {

[[nodiscard]] std::vector<DocumentVerb> bathVerbs();

}  // namespace bathside::cli
