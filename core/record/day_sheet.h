#pragma once

// The record of some local days as one sheet for whoever inspects it: values to be drawn.
//
// Collected from the fold of the record's own entries and from what the other rooms have judged;
// nothing is judged anew here. Each shift stands as its record left it, with what came after its
// closing, on whatever day (corrections, reviews, signatures). (Spec: the job, 2.7 and 2.8.)

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/record/bag_content.h"
#include "core/record/cases.h"
#include "core/record/deviations.h"
#include "core/record/export.h"
#include "core/stores/reconcile.h"

namespace bathside {

/// How long something took, beside what is allowed.
struct SheetTime {
    std::optional<Elapsed> took;  // none: one of its two steps is missing
    std::optional<Millis> limit;
    bool isOver = false;  // a deviation stands
    bool isTimed = true;  // false: a step was implied by a later one
};

struct SheetAmpoule {
    AmpouleRef ref;
    ComponentId component;
    LotId lot;
    std::optional<BagId> bag;
    WallTime out{};
    SheetTime toBath, toDiluent;
    std::optional<LossReason> lost;
};

struct SheetBag {
    Bag bag;
    BagContent content;
    SheetTime age;  // first ampoule in diluent → down
    std::optional<std::int64_t> birds;
};

/// The bath as a pull's first ampoule went in; the reading that it was judged by.
struct SheetBath {
    int pull = 0;
    std::optional<WallTime> at;
    std::optional<Verdict> verdict;
    std::optional<ReadingTaken> reading;
    bool isOver = false;
};

struct SheetLine {
    LineId line;
    std::optional<LinePlanned> planned;
    std::int64_t birds = 0;
    int bags = 0;
    std::optional<WallTime> firstHung, lastDown;
};

struct SheetCheck {
    Check check;
    std::optional<CheckState> state;  // none: it was left open
};

struct SheetNote {
    WallTime at{};
    std::optional<PersonId> person;
    std::string text;
    std::vector<NoteComment> comments;
};

struct SheetSignature {
    WallTime at{};
    PersonId person;
    Meaning meaning{};
    std::vector<Seq> of;      // entries; none: the shift, or what was said by the same tap:
    std::string card, chart;  // that card's name and version; the chart whose baseline it is
    std::string words;
};

struct SheetShift {
    std::string zone;
    WallTime opened{};
    std::optional<WallTime> closed;
    std::shared_ptr<const Card> card;
    bool isCardApproved = false;
    std::vector<SheetLine> lines;
    std::vector<SheetCheck> checks;
    std::vector<SheetBag> bags;
    std::vector<SheetAmpoule> ampoules;
    std::vector<SheetBath> baths;
    std::vector<std::shared_ptr<const Probe>> probes;  // that those readings are of
    CardHash cardHash;                // as the opening says, whether that card is known or not
    std::vector<ReviewCase> cases;    // of this shift
    std::vector<ReviewCase> carried;  // still open when it began
    std::vector<std::optional<std::int64_t>> limits;  // of each case, in its unit
    std::vector<Deviation> kept;                      // which a correction has shown to be none
    std::vector<SheetNote> notes;
    std::optional<Reconciliation> sums;
};

struct SheetSeal {
    Seq seq = 0;
    WallTime at{};
    DaySealed seal;
};

/// Its name among the files of an export.
inline constexpr std::string_view kSheetFile = "day-sheet.pdf";

struct DaySheet {
    std::chrono::year_month_day first, last;  // within
    std::string zone;
    std::string version;  // of the program
    StationId station;
    bool rehearsal = false;
    Head head;  // of the trail when the sheet was made
    std::int64_t entries = 0;
    std::vector<SheetShift> shifts;
    std::vector<SheetSignature> signatures;
    std::vector<SheetSeal> seals;  // of these days; where none comes after them, the next one
    People people;
};

[[nodiscard]] Result<DaySheet, ExportFault> daySheetOf(const TrailStore& trail,
                                                       const ExportOrder& order);

}  // namespace bathside
