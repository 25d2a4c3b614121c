#pragma once

// What a line's dose checks come to: whether its injector is in doubt, and how many birds that
// touches. (Spec: checks, dose check.)

#include "core/bench/bench.h"

namespace bathside {

/// The last check failed: the dose is in doubt until one is good.
[[nodiscard]] bool doseIsInDoubt(const Line& line);

/// What a check that fails now puts on record: the birds of this shift that were done since a good
/// check when one failed, and those that the shifts before left unproven. As they were counted
/// last.
[[nodiscard]] std::int64_t birdsTouched(const Line& line);

/// What this shift leaves to the next check of each line; none: nothing.
[[nodiscard]] std::optional<std::vector<UnprovenBirds>> unprovenBirds(const Bench& bench);

}  // namespace bathside
