#pragma once

// Which earlier entries a fact is about: what it corrects, takes back, follows from, reviews,
// comments on or signs. The trail's index finds them the other way round by the same rule. Pure.

#include <vector>

#include "core/facts/facts.h"

namespace bathside {

/// By their seqs, as the fact has them; mostly none.
[[nodiscard]] std::vector<Seq> pointsAt(const Fact& fact);

}  // namespace bathside
