#pragma once

// A script: taps, scans and readings in order of time, one JSON object a line.
//
// Reading is strict and comes before anything is written: a line that is no entry is a fault that
// names the line and the key. What an entry implies (a bag's inspection and its diluent, unless
// they follow as entries) is written out here, so that whoever plays a script plays statements
// only. (Spec: command line, replay.)

#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/base/time.h"
#include "core/bench/intent.h"
#include "core/card/fault.h"

namespace bathside {

/// Opens the shift; with `allChecks` every check of the card is recorded as passed after it.
struct OpenShiftEntry {
    OpenShift shift;
    bool allChecks = false;
};
/// Corrects what the entry `of` became; of several ampoules only `ampoule`, unless that is 0.
struct CorrectEntry {
    std::string of;
    int ampoule = 0;
    std::string field, value, why;
};
/// The machine goes down and comes back at the entry's time.
struct RestartEntry {
    bool synchronised = true;
};

/// A delivery's file; what of it can be taken is taken.
struct DeliveryEntry {
    std::string file, csv;
};

/// Signs what the entries `of` became; none: the shift.
struct SignEntry {
    Sign sign;
    std::vector<std::string> of;
};
/// Reviews the last deviation of that limit and subject.
struct ReviewEntry {
    LimitName limit{};
    Subject subject;
    ReviewDeviation review;
};
/// Comments the note that the entry `of` became.
struct CommentEntry {
    std::string of;
    CommentNote comment;
};
/// Approves the card whose hash begins so; empty: the one that waits.
struct ApproveEntry {
    PersonId by;
    std::string hash;
};

using Statement = std::variant<Intent, OpenShiftEntry, CorrectEntry, RestartEntry, DeliveryEntry,
                               SignEntry, ReviewEntry, CommentEntry, ApproveEntry>;

struct ScriptEntry {
    int line = 0;  // from 1
    WallTime at{};
    std::string verb;
    PlaceId place;  // the same for the same statement about the same things
    std::string id;
    bool refused = false;  // expected to be
    Statement statement;
};

struct ScriptFault {
    int line = 0;
    DocumentFault fault;
};

/// Blank lines are skipped; at least one entry.
[[nodiscard]] Result<std::vector<ScriptEntry>, ScriptFault> scriptFrom(std::string_view text);

}  // namespace bathside
