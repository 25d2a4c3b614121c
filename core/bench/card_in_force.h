#pragma once

// Which card comes into force, and when: at the next bag or shift; where people are listed, not
// before a shift lead has approved it. (Spec: the job, section 3.)

#include "core/bench/bench.h"

namespace bathside {

/// It may come into force.
[[nodiscard]] bool mayHold(const Bench& bench, const CardHash& card);

/// What the next bag is made by; null before there is any card.
[[nodiscard]] const Card* cardOfNextBag(const Bench& bench);

/// Adopted, and waits for a shift lead's signature; null: none does.
[[nodiscard]] const Card* unapproved(const Bench& bench);

}  // namespace bathside
