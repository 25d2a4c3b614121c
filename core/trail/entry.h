#pragma once

// One row of the trail: an event in the form that is stored, hashed, exported and verified.
//
// The hash is SHA-256 over the 32 raw bytes of the previous entry's hash (32 zero bytes before the
// first) followed by the RFC 8785 text of the entry without `hash`. Order is `seq`, never `at`.
// (Spec: the trail.)

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/ids.h"
#include "core/base/time.h"
#include "core/facts/event.h"
#include "core/trail/hash.h"

namespace bathside {

/// Where a trail ends: the last entry's seq and hash; seq 0 and 32 zero bytes for an empty one.
struct Head {
    Seq seq = 0;
    Hash hash{};
    friend bool operator==(const Head&, const Head&) = default;
};

/// Where an entry first stood, if it was merged from a spool file.
struct SpoolOrigin {
    Seq seq = 0;
    Hash hash{};
    friend bool operator==(const SpoolOrigin&, const SpoolOrigin&) = default;
};

struct Entry {
    Seq seq = 0;
    WallTime at{};
    Micros boot{};
    BootId bootId{};
    StationId station;
    std::optional<Person> person;
    TapId tap;
    PlaceId place;           // empty: left out of the text
    bool byReceipt = false;  // true: stands in the text as "by_receipt":true
    CardHash card;           // empty: left out of the text
    std::string kind;
    std::string payload;  // canonical JSON object
    std::optional<SpoolOrigin> spool;
    Hash hash{};
    friend bool operator==(const Entry&, const Entry&) = default;
};

/// The RFC 8785 text of an entry, without `hash`. Keys: at, boot_id (hyphenated UUID text),
/// boot_us, by_receipt, card, kind, payload, person {id, proof}, place, seq, spool {hash, seq},
/// station, tap.
[[nodiscard]] std::string canonicalText(const Entry& entry);
void appendCanonicalText(std::string& out, const Entry& entry);

/// The same with what a line of an export has besides; null: left out (see json_lines.h).
struct LineExtras {
    const Hash* hash = nullptr;
    const Hash* previous = nullptr;
};
void appendText(std::string& out, const Entry& entry, LineExtras extras);

/// The hash of an entry with that text after one with hash `previous`.
[[nodiscard]] Hash chained(const Hash& previous, std::string_view text);

}  // namespace bathside
