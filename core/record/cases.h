#pragma once

// What waits for a shift lead, worst first: bags on hold, deviations, and what they touched.
//
// By the severity on the card, then by the overrun as a share of its limit (a second over ten
// weighs more than a second over ninety), then the oldest. (Spec: the job, 2.7.)

#include <optional>
#include <vector>

#include "core/bench/state.h"

namespace bathside {

struct ReviewCase {
    std::optional<DeviationOnRecord> deviation;  // none: a bag on hold, for whatever reason
    std::optional<BagId> bag;                    // of this shift
    std::optional<std::int64_t> birds;           // that were served from it
    bool isCarried = false;                      // from a shift before: no more is known of it
    bool isOpen = true;
    Severity severity{};
    std::int64_t share = 0;  // overrun in thousandths of the limit
};

/// Open ones first, each worst first; then what was reviewed in this shift.
[[nodiscard]] std::vector<ReviewCase> reviewCases(const Bench& bench);

/// Birds that the line went on by while the bag hung there; none for a bag that never hung.
[[nodiscard]] std::optional<std::int64_t> birdsServed(const Bench& bench, const BagId& bag);

/// From a shift before, whose bags and ampoules had the same names as today's.
[[nodiscard]] bool isCarried(const Bench& bench, const DeviationOnRecord& deviation);

/// The card it was judged by; of one from before, the card in force.
[[nodiscard]] const Card* cardOf(const Bench& bench, const DeviationOnRecord& deviation);

/// The limit, in the unit that `over` is in; none where the card has none of that unit.
[[nodiscard]] std::optional<std::int64_t> limitOf(const Bench& bench,
                                                  const DeviationOnRecord& deviation);

}  // namespace bathside
