#pragma once

// Is this trail what was once written? Follows the chain entry by entry and names the first bad
// seq.
//
// What the chain alone can show: anything changed, left out, put in or moved before the last entry.
// What it cannot: a tail cut off, or a whole file written anew. For these it takes witnesses: heads
// that were kept elsewhere (a manifest, a day sheet, a seal). Without a witness the answer is about
// inner consistency only. A station may be renamed: an entry that follows is its own, whatever the
// name. Streams: keeps one entry's text, needs no store. One thread at a time.
// (Spec: the trail; RFC 8785 for the text, FIPS 180-4 for the hash.)

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/trail/entry.h"
#include "core/trail/seal_check.h"
#include "core/trail/seq_range.h"

namespace bathside {

enum class FlawKind : std::uint8_t {
    Unreadable,      // no entry can be made of it
    NotCanonical,    // an entry, but not in the form that is hashed
    BadTime,         // its time names no instant
    BadHash,         // its hash does not follow from the one before and its content
    Missing,         // the entry with this seq is not there
    Reordered,       // it is there, but later
    Duplicate,       // it is there twice
    ForeignStation,  // it is another station's: by its name, and it does not follow
    Unlisted,        // it lies beyond what the manifest lists
    HeadMismatch,    // sound in itself, but not the trail that the witness saw
    Truncated,       // the trail ends before what the witness saw
};
template <>
struct Names<FlawKind> {
    static constexpr std::array<std::string_view, 11> all{
        "unreadable", "not canonical", "bad time",      "bad hash",        "missing",
        "reordered",  "duplicate",     "other station", "not in manifest", "not the witnessed head",
        "truncated"};
};

/// The first thing that is wrong.
struct Flaw {
    Seq seq = 0;
    FlawKind kind{};
    std::int64_t position = 0;  // which entry or line in the order they came, from 1
    std::string detail;         // the member or the other station's name, where that helps
    friend bool operator==(const Flaw&, const Flaw&) = default;
};

/// The first seal that does not fit a chain that is sound in itself.
struct BadSeal {
    Seq seq = 0;
    SealFlaw flaw{};
    friend bool operator==(const BadSeal&, const BadSeal&) = default;
};

/// Where a file goes on from one that was damaged, by its first entry's own words.
struct ContinuedFrom {
    Head head;         // that file's last good one
    std::string file;  // its name
    friend bool operator==(const ContinuedFrom&, const ContinuedFrom&) = default;
};

struct Verification {
    std::int64_t count = 0;    // entries or lines taken
    std::optional<Seq> first;  // the first sound entry
    Head head;                 // the last sound entry
    std::optional<Flaw> flaw;
    std::int64_t seals = 0;
    std::optional<BadSeal> badSeal{};
    std::optional<ContinuedFrom> continues{};
    // No flaw, as order is `seq`: the computer's clock was set back, or went back while it was off.
    std::int64_t setBacks = 0;
    Seq firstSetBack = 0;
    friend bool operator==(const Verification&, const Verification&) = default;
};

/// What the verifier is told beforehand.
struct Expectation {
    std::optional<Head>
        before;  // what the first entry follows; none: it says so itself (`previous`)
    std::vector<SeqRange> runs;        // from the manifest; empty: one run, as far as it goes
    std::vector<Head> witnesses;       // in any order
    std::optional<StationId> station;  // the last entry's; none: whatever it is
    std::optional<std::string> key{};  // public, of the seals; none: that of the first seal
};

class Verifier {
public:
    /// The default is a whole trail: from seq 1 on.
    explicit Verifier(Expectation expected = {
                          .before = Head{}, .runs = {}, .witnesses = {}, .station = {}});

    void take(const Entry& entry, const std::optional<Hash>& previous = std::nullopt);
    /// A line of an export, without its end.
    void takeLine(std::string_view line);
    /// Something of which no entry could be made; seq 0 where it is not known.
    void takeUnreadable(Seq seq, FlawKind kind, std::string detail = {});

    /// The answer, once nothing more comes.
    [[nodiscard]] Verification finish();
    [[nodiscard]] bool isSound() const { return !m_result.flaw; }

private:
    [[nodiscard]] bool starts(const Entry& entry, const std::optional<Hash>& previous);
    [[nodiscard]] bool isNext(const Entry& entry);
    void check(const Entry& entry);
    void accept(const Entry& entry);
    void takeWord(const Entry& entry);
    void watchClock(const Entry& entry);
    void meet(const Head& head);
    void lookBack(Seq seq);
    void blame(Seq seq, FlawKind kind, std::string detail = {});

    Expectation m_expected;
    Verification m_result;
    SealCheck m_seals;
    std::size_t m_run = 0;      // of m_expected.runs, the one being read
    std::size_t m_witness = 0;  // the next one to come by
    std::optional<Head> m_last;
    std::optional<StationId> m_station;  // of the last sound entry
    std::optional<WallTime> m_lastAt;
    std::string m_text;
};

}  // namespace bathside
