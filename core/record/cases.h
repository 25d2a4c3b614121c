#pragma once

// What waits for a shift lead, worst first: bags on hold, down or not, deviations, and what they
// touched.
//
// By the severity on the card, then by the overrun as a share of its limit (a second over ten
// weighs more than a second over ninety), then the oldest. (Spec: the job, 2.7.)

#include <optional>
#include <vector>

#include "core/bench/state.h"
#include "core/review/causes.h"

namespace bathside {

/// A deviation or a hold, one of the two.
struct ReviewCase {
    std::optional<DeviationOnRecord> deviation;
    std::optional<HoldOnRecord> hold;
    std::optional<BagId> bag;           // of this shift
    std::optional<std::int64_t> birds;  // that were served from it
    bool isCarried = false;             // from a shift before: no more is known of it
    bool isOpen = true;
    Severity severity{};
    std::int64_t share = 0;  // overrun in thousandths of the limit

    [[nodiscard]] Seq seq() const { return deviation ? deviation->seq : hold->seq; }
    [[nodiscard]] WallTime at() const { return deviation ? deviation->at.wall : hold->at.wall; }
    /// The bag it is about, of whatever shift; none where it touched none.
    [[nodiscard]] std::optional<BagId> about() const
    {
        return deviation ? deviation->fact.bag : hold->fact.bag;
    }
};

/// Open ones first, each worst first; then what was reviewed in this shift.
[[nodiscard]] std::vector<ReviewCase> reviewCases(const Bench& bench);

/// Birds that the line went on by while the bag hung there; none for a bag that never hung.
[[nodiscard]] std::optional<std::int64_t> birdsServed(const Bench& bench, const BagId& bag);

/// What may become of a bag; of one that is down, what its end leaves open: it was used where it
/// hung on a line, and thrown away where something was left.
[[nodiscard]] std::vector<Disposition> dispositionsFor(const Bag& bag);

/// From a shift before, whose bags and ampoules had the same names as today's.
[[nodiscard]] bool isCarried(const Bench& bench, const DeviationOnRecord& deviation);

/// The card it was judged by; of one from before, the card in force.
[[nodiscard]] const Card* cardOf(const Bench& bench, const DeviationOnRecord& deviation);

/// The limit, in the unit that `over` is in; none where the card has none of that unit.
[[nodiscard]] std::optional<std::int64_t> limitOf(const Bench& bench,
                                                  const DeviationOnRecord& deviation);

}  // namespace bathside
