#pragma once

// What would happen, or why it may not. Pure: no clock, no trail, no signal.
//
// Facts come in the order in which they are to be written: what was said, the steps it implies
// before it, then what follows (a pull's end, deviations, holds, rejudgements). An empty list is a
// tap that was already taken (the same place within the lock, or the same tap id): harmless, not
// logged.

#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/bench/intent.h"
#include "core/bench/state.h"

namespace bathside {

enum class RefusalCode : std::uint8_t {
    NoCard,  // no procedure card is adopted
    ShiftNotOpen,
    ShiftAlreadyOpen,
    AmpouleStillOpen,  // subject: which
    BagStillOpen,      // subject: which
    NoPerson,          // initials are missing
    UnknownCheck,      // detail: which
    CheckStillOpen,    // a blocking one; detail: which
    ReasonMissing,
    BagExists,
    NoSuchBag,
    WhichBag,  // several fit (or none): one has to be named
    BagIsDown,
    BagIsHeld,
    BagNotHeld,
    BagNotInspected,
    BagIsEmpty,  // no ampoule in it yet
    BagNotMixed,
    BagAlreadyMixed,
    AlreadyInspected,
    AlreadyDrawn,
    BagNotHung,
    LineHasBag,    // subject: the line; detail: the bag on it
    AlreadyThere,  // the bag hangs there
    NoAmpoule,     // the list is empty, or none can go that way
    NoSuchAmpoule,
    AmpouleExists,
    AmpouleIsLost,
    AmpouleInBag,
    StepAlreadyDone,
    NoOpenPull,
    WhichLine,
    LineStopped,
    LineGoing,
    CountGoesBack,  // detail: the total so far
    NoSuchAlarm,
    NothingToTakeBack,
    NotInThisShift,  // a correction of an event that is not in the journal
    NoSuchField,     // detail: the field
    BadValue,        // detail: what was expected
    NothingChanges,
    NoSuchQuestion,
    NoSuchChoice,
    OutOfRange,   // detail: what was expected
    BadDocument,  // detail: the key
    StationNotStarted,
    LotExpired,       // detail: the lot
    LotInQuarantine,  // detail: the lot
    LotUnknown,       // the stores hold others, not this one; detail: the lot
    LotDiffers,       // received with other doses, expiry or titre than before; detail: the lot
    NotInStores,      // there is none of that, or none there; detail: the lot or the place
    NotEnough,        // fewer are there than were said; detail: how many
    NoSuchPerson,     // not on the list, or left; detail: the initials
    NotAllowed,       // not for this person's role; detail: the initials
    NoPin,            // the person has none yet; detail: the initials
    NoSuchDeviation,
    NoSuchNote,
    NoSuchVessel,
    WrongLot,     // scanned, and another is expected; detail: that one, empty: none of its sort
    NobodyAsked,  // a person's code, where it is not asked who it is; detail: the initials
};

template <>
struct Names<RefusalCode> {
    static constexpr std::array<std::string_view, 60> all{"no card",
                                                          "shift not open",
                                                          "shift already open",
                                                          "ampoule still open",
                                                          "bag still open",
                                                          "no person",
                                                          "unknown check",
                                                          "check still open",
                                                          "reason missing",
                                                          "bag exists",
                                                          "no such bag",
                                                          "which bag",
                                                          "bag is down",
                                                          "bag is held",
                                                          "bag not held",
                                                          "bag not inspected",
                                                          "bag is empty",
                                                          "bag not mixed",
                                                          "bag already mixed",
                                                          "already inspected",
                                                          "already drawn",
                                                          "bag not hung",
                                                          "line has bag",
                                                          "already there",
                                                          "no ampoule",
                                                          "no such ampoule",
                                                          "ampoule exists",
                                                          "ampoule is lost",
                                                          "ampoule in bag",
                                                          "step already done",
                                                          "no open pull",
                                                          "which line",
                                                          "line stopped",
                                                          "line going",
                                                          "count goes back",
                                                          "no such alarm",
                                                          "nothing to take back",
                                                          "not in this shift",
                                                          "no such field",
                                                          "bad value",
                                                          "nothing changes",
                                                          "no such question",
                                                          "no such choice",
                                                          "out of range",
                                                          "bad document",
                                                          "station not started",
                                                          "lot expired",
                                                          "lot in quarantine",
                                                          "lot unknown",
                                                          "lot differs",
                                                          "not in stores",
                                                          "not enough",
                                                          "no such person",
                                                          "not allowed",
                                                          "no pin",
                                                          "no such deviation",
                                                          "no such note",
                                                          "no such vessel",
                                                          "wrong lot",
                                                          "nobody asked"};
};

struct Refusal {
    RefusalCode code{};
    Subject subject;
    std::string detail;
};

using Decision = Result<std::vector<Fact>, Refusal>;

[[nodiscard]] Decision decide(const State& state, const Intent& intent, const Tap& tap);

}  // namespace bathside
