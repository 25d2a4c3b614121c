#pragma once

// How a script's verbs are read: each from its entry's keys to a statement.

#include <functional>
#include <map>
#include <optional>
#include <string>

#include "core/card/strict_json.h"
#include "core/replay/script.h"

namespace bathside {

using Verbs = std::map<std::string, std::function<Statement(JsonObject&)>, std::less<>>;

inline constexpr std::size_t kShortText = 64;  // ids, lots, initials
inline constexpr std::size_t kLongText = 500;  // reasons, notes

/// The line that an entry names, if it does.
[[nodiscard]] std::optional<LineId> lineIn(JsonObject& entry);

/// dose-check, birds-check, vessel, dip.
void addCheckVerbs(Verbs& verbs);
/// person, pin, pin-refused, sign, review, comment, adopt-card,
/// approve-card.
void addPeopleVerbs(Verbs& verbs);

}  // namespace bathside
