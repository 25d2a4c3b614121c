#pragma once

// Facts to and from payload text: the canonical JSON (RFC 8785) of a fact's members.
//
// Reading is strict: an unknown kind, a missing or extra member, a wrong type or a number that is
// not whole is a fault that names the key. Absent optional members are left out of the text. Text
// must be the very one `payloadOf` writes: what reads, reads back to the same bytes.
//
// Payloads hold whole numbers only. A `Document` that does too stands in them as the object it is;
// one with other numbers (a probe's) stands there as a string that holds its canonical text.

#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/facts/facts.h"

namespace bathside {

struct PayloadFault {
    std::string key;       // the member, or the kind when it is not known
    std::string expected;  // e.g. "a whole number"
    friend bool operator==(const PayloadFault&, const PayloadFault&) = default;
};

[[nodiscard]] std::string payloadOf(const Fact& fact);
[[nodiscard]] Result<Fact, PayloadFault> factFrom(std::string_view kind, std::string_view payload);

}  // namespace bathside
