#pragma once

// What the shift lead has to look at: deviations, until they are reviewed, and bags on hold, until
// they are decided on. A fold over the trail; what is still open is carried from shift to shift.
// (Spec: the job, 2.5 and 2.7.)

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/facts/event.h"

namespace bathside {

struct Reviewed {
    std::string cause, words, action;
    PersonId by;
    Stamp at;
    bool isSigned = false;
};

/// A deviation as it was first written, with its last judgement.
struct DeviationOnRecord {
    Seq seq = 0;
    Stamp at;
    DeviationFound fact;  // `over` as last judged
    bool isKept = false;  // a correction has shown that the limit was kept
    std::optional<PersonId> onDuty;
    std::optional<Reviewed> reviewed;

    [[nodiscard]] bool isOpen() const { return !isKept && !reviewed; }
};

/// A bag on hold, down or not, until a shift lead has decided on it.
struct HoldOnRecord {
    Seq seq = 0;
    Stamp at;
    BagHeld fact;
};

/// What a shift lead said of a note.
struct NoteComment {
    Stamp at;
    std::optional<PersonId> by;
    std::string text;
    friend bool operator==(const NoteComment&, const NoteComment&) = default;
};

struct Reviews {
    std::map<Seq, DeviationOnRecord> deviations;  // of this shift, and the open ones from before
    std::map<Seq, HoldOnRecord> holds;            // undecided: one a bag, and those from before
    std::map<Seq, std::vector<NoteComment>> comments;  // by the note's seq, in order

    /// What nobody has reviewed yet, oldest first.
    [[nodiscard]] std::vector<Seq> open() const;
};

/// `opened` first forgets what was closed in shifts before.
void evolve(Reviews& reviews, const Event& event);

/// The open ones as the payload of `review.carried`, and back. None: nothing is open.
[[nodiscard]] std::optional<Document> carriedFrom(const Reviews& reviews);

}  // namespace bathside
