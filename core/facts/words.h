#pragma once

// The small closed sets that facts are made of, each with its word in the trail.

#include <cstdint>

#include "core/alarms/level.h"
#include "core/facts/names.h"

namespace bathside {

/// What happens to an ampoule, in order; `Rinsed` may come before or after `Bagged` (spec: the
/// critical steps).
enum class Step : std::uint8_t { Out, Bath, Opened, Diluent, Rinsed, Bagged };
inline constexpr std::size_t kSteps = 6;

enum class LossReason : std::uint8_t { Broken, Dropped, Abandoned, HandedOver };

enum class HoldReason : std::uint8_t {
    Leak,
    Colour,
    WrongLot,
    AgeUnknown,
    Inspection,
    Other,
    LotNotFit
};

enum class DownReason : std::uint8_t { Empty, Expired, Discarded, Finished };

enum class StockKind : std::uint8_t { Ampoule, Diluent, Consumable };

enum class DiscardReason : std::uint8_t { Used, Broken, Expired, Thawed, Other };

/// The rows of the procedure card that can fall due.
enum class LimitName : std::uint8_t {
    Exposure,          // ampoule: out of cryogen → in bath
    Thaw,              // ampoule: in bath → in diluent
    InUse,             // bag: first ampoule in diluent → down
    BathAtPull,        // pull: verdict at in bath
    Diluent,           // bag: temperature at start
    BathBetweenPulls,  // bath: verdict while a pull is due
    Reading,           // bath: age of the last reading
    Swirl,             // bag: mixed or last swirl → swirl
    Needle,            // line: birds since the last needle change
    DoseCheck,         // line: birds, or time, since the last one
    NextPull,          // bench: planned start
};
inline constexpr std::size_t kLimits = 11;

enum class Verdict : std::uint8_t { Inside, Undecided, Outside };

/// Why a reading is not a reading.
enum class ReadingFault : std::uint8_t {
    CheckFailed,  // the sensor's own checksum says no
    PowerOn,      // 85.000 °C: the sensor has not measured yet
    OpenLine,     // −127 °C: nothing is connected
    Shorted,      // all bytes zero
    Empty,        // the sensor gave no text
    Unreadable,   // text that is no reading
    Implausible,  // outside what a water bath can be
    Jump,         // faster than water can change
    Lost,         // the probe is gone
};

/// What a person may do follows from it: core/people/people.h.
enum class Role : std::uint8_t { Vaccinator, ShiftLead, Auditor };

/// What a signature says (21 CFR 11.50(a)(3): the meaning associated with it).
enum class Meaning : std::uint8_t {
    Done,      // I did this
    Reviewed,  // I looked at this and judged it
    Approved,  // this may be used from now on
    Witnessed  // I saw this
};

enum class SubjectKind : std::uint8_t { Ampoule, Pull, Bag, Line, Bath, Bench, Station };

/// What the station itself can have wrong with it.
enum class StoreFault : std::uint8_t {
    NoSpace,
    ReadOnly,
    NotPermitted,
    InUse,        // another program holds the file
    Damaged,      // not sound after its last good event
    Foreign,      // a database, but not a trail of this program
    Newer,        // a trail of a later version
    WriteFailed,  // the write did not happen
    Unconfirmed,  // the sync failed: it may or may not be there
    NotLocal,     // a network file system
    OutOfStep,    // the event does not continue the trail
    Unsafe,       // the database would not take the settings that durability rests on
};

template <>
struct Names<Level> {
    static constexpr std::array<std::string_view, 3> all{"heads-up", "limit", "overrun"};
};
template <>
struct Names<Step> {
    static constexpr std::array<std::string_view, kSteps> all{"out",     "bath",   "opened",
                                                              "diluent", "rinsed", "bagged"};
};
template <>
struct Names<LossReason> {
    static constexpr std::array<std::string_view, 4> all{"broken", "dropped", "abandoned",
                                                         "handed over"};
};
template <>
struct Names<HoldReason> {
    static constexpr std::array<std::string_view, 7> all{
        "leak", "colour", "wrong lot", "age unknown", "inspection", "other", "lot not fit"};
};
template <>
struct Names<DownReason> {
    static constexpr std::array<std::string_view, 4> all{"empty", "expired", "discarded",
                                                         "finished"};
};
template <>
struct Names<StockKind> {
    static constexpr std::array<std::string_view, 3> all{"ampoule", "diluent", "consumable"};
};
template <>
struct Names<DiscardReason> {
    static constexpr std::array<std::string_view, 5> all{"used", "broken", "expired", "thawed",
                                                         "other"};
};
template <>
struct Names<LimitName> {
    static constexpr std::array<std::string_view, kLimits> all{
        "exposure", "thaw",  "in use", "bath at pull", "diluent",  "bath between pulls",
        "reading",  "swirl", "needle", "dose check",   "next pull"};
};
template <>
struct Names<Verdict> {
    static constexpr std::array<std::string_view, 3> all{"inside", "undecided", "outside"};
};
template <>
struct Names<ReadingFault> {
    static constexpr std::array<std::string_view, 9> all{
        "check failed", "power-on value", "open line", "shorted", "empty",
        "unreadable",   "implausible",    "jump",      "lost"};
};
template <>
struct Names<Role> {
    static constexpr std::array<std::string_view, 3> all{"vaccinator", "shift lead", "auditor"};
};
template <>
struct Names<Meaning> {
    static constexpr std::array<std::string_view, 4> all{"done", "reviewed", "approved",
                                                         "witnessed"};
};
template <>
struct Names<SubjectKind> {
    static constexpr std::array<std::string_view, 7> all{"ampoule", "pull",  "bag",    "line",
                                                         "bath",    "bench", "station"};
};
template <>
struct Names<StoreFault> {
    static constexpr std::array<std::string_view, 12> all{
        "no space", "read-only",    "not permitted", "in use",    "damaged",     "foreign",
        "newer",    "write failed", "unconfirmed",   "not local", "out of step", "unsafe"};
};

}  // namespace bathside
