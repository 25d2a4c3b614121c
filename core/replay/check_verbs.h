#pragma once

// The verbs of a script that are about checks and the cryogen vessel. Not for others than
// script.cpp.

#include <functional>
#include <map>
#include <string>

#include "core/card/strict_json.h"
#include "core/replay/script.h"

namespace bathside {

/// Verbs, each with how its keys are read.
using ScriptVerbs = std::map<std::string, std::function<Statement(JsonObject&)>, std::less<>>;

[[nodiscard]] ScriptVerbs checkVerbs();

}  // namespace bathside
