#pragma once

// An event: one fact with who, when, by which tap and judged by which card. What state is folded
// from.

#include <cstdint>
#include <optional>

#include "core/base/ids.h"
#include "core/base/time.h"
#include "core/facts/facts.h"

namespace bathside {

/// How sure the record is of who it was.
enum class Proof : std::uint8_t {
    Claimed,  // by one tap on a name
    Proven,   // by PIN or badge
};
template <>
struct Names<Proof> {
    static constexpr std::array<std::string_view, 2> all{"claimed", "proven"};
};

struct Person {
    PersonId id;
    Proof proof = Proof::Claimed;
    friend bool operator==(const Person&, const Person&) = default;
};

/// What is the same for every fact of one tap.
struct Tap {
    TapId id;                // unique; made before the commit
    PlaceId place;           // empty: not a tap of a person
    Stamp at;                // the instant of the tap itself
    bool byReceipt = false;  // the input's own time was not plausible: `at` is when it was received
};

struct Event {
    Seq seq = 0;
    Stamp at;
    bool byReceipt = false;
    std::optional<Person> person;
    TapId tap;
    PlaceId place;
    CardHash card;  // the card in force; empty before the first shift
    Fact fact;
};

}  // namespace bathside
