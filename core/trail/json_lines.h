#pragma once

// One entry as one line of JSON: the form in which a trail leaves the house.
//
// A line is the entry's canonical text with one member more, `hash`, in its sorted place; it is
// itself canonical. Where the entry before it is not in the file (an export that begins in
// mid-trail), the line also has `previous`: that entry's hash. So who takes `hash` and `previous`
// out of a line has the bytes that were hashed. (Spec: the trail, export.)

#include <optional>
#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/trail/entry.h"

namespace bathside {

struct JsonLine {
    Entry entry;
    std::optional<Hash> previous;
    friend bool operator==(const JsonLine&, const JsonLine&) = default;
};

struct LineFault {
    enum class Kind : std::uint8_t {
        NotJson,
        NotCanonical,  // the same in canonical form would be read
        BadTime,       // `at` names no instant
        NotAnEntry,    // a member is missing, unknown or of another form
    };
    Kind kind = Kind::NotJson;
    Seq seq = 0;      // where it could be made out
    std::string key;  // NotAnEntry: the first member that is not as it must be
    friend bool operator==(const LineFault&, const LineFault&) = default;
};

/// Without the line's end.
[[nodiscard]] std::string toLine(const JsonLine& line);

/// Strict: what is read gives the same bytes again.
[[nodiscard]] Result<JsonLine, LineFault> lineFrom(std::string_view text);

}  // namespace bathside
