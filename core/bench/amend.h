#pragma once

// An event as a correction makes it: one field changed, everything else as it was.

#include <optional>
#include <string>

#include "core/base/result.h"
#include "core/facts/event.h"

namespace bathside {

enum class AmendFault : std::uint8_t {
    NoSuchField,     // this fact does not have it
    BadValue,        // not such a value
    NothingChanges,  // it is that already
};

/// False: who somebody is, signatures, what was signed, seals, and whatever was said by a person
/// who was proven. It stands as it was said; what takes its place is said anew.
[[nodiscard]] bool isMendable(const Event& event);

/// No event within the result: the correction says that it did not happen (`broken` false of a
/// loss). `at` takes RFC 3339 and makes an implied step a timed one.
[[nodiscard]] Result<std::optional<Event>, AmendFault> amended(const Event& event,
                                                               const std::string& field,
                                                               const std::string& value);

}  // namespace bathside
