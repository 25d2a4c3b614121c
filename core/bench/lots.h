#pragma once

// Which lot the next ampoules are to be of, and what in the stores a scanned code is on.
//
// The lot chosen goes first; then the one that the bag being made up has already, as one bag takes
// one lot; the plan's; the one used last; the fit one that expires first. Each gives way to the
// next where it is not fit or has not as many left as the bag takes.

#include <vector>

#include "core/bench/bench.h"
#include "core/scan/scanned_code.h"

namespace bathside {

/// How many of that component the bag being made up still takes, going by the bag before it; at
/// least 1.
[[nodiscard]] std::int64_t ampoulesToTake(const Bench& bench, const ComponentId& component);

/// Where no lot has any left, the one chosen or used last; empty: none is known.
/// `planned`: the plan's for that bag; empty: none.
[[nodiscard]] LotId expectedLot(const Bench& bench, const ComponentId& component,
                                const LotId& planned = {});

/// Whether the next ampoule may be of that lot: the one expected, or the one that would be if a
/// single ampoule were wanted, so that the last of a lot can be used up.
[[nodiscard]] bool mayGoNext(const Bench& bench, const ComponentId& component, const LotId& lot);

/// The lot that the code names. Plain text counts where it is, to the letter, a lot in the stores.
[[nodiscard]] std::optional<LotId> lotOn(const ScannedCode& code, const Stores& stores);
/// All that the stores know of that lot, of whatever kind; by the label's expiry where several
/// things have a lot of that name and some expire then.
[[nodiscard]] std::vector<Stock> stockOf(const ScannedCode& code, const Stores& stores);

}  // namespace bathside
