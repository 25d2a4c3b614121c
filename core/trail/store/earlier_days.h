#pragma once

// What the earlier files of a trail that goes on after damage have of some days.
//
// By the rule itself (DayFinder) over all that is sound in them, as their indexes may be damaged,
// too. That takes a while: on a thread of its own. What cannot be read is not there.

#include <functional>
#include <optional>
#include <vector>

#include "core/record/export.h"
#include "core/trail/store/continuation.h"

namespace bathside::store {

struct EarlierDays {
    Head origin;                 // what the first file's first entry follows
    std::vector<SeqRange> runs;  // what the record of the days is, in order, apart
    std::vector<Entry> entries;  // of the runs; the one before each; the last sound one
    std::vector<Entry> context;  // of kContextKinds, whenever
    std::vector<Entry> later;    // that point back into a shift of the runs
};

[[nodiscard]] EarlierDays earlierDays(const std::vector<SoundPart>& parts, const LocalDay& period);

/// All that is sound in them, in order.
void readEarlier(const std::vector<SoundPart>& parts,
                 const std::function<void(const Entry&)>& take);

/// The entry there with that seq; none: it is not among what is sound.
[[nodiscard]] std::optional<Entry> entryIn(const std::vector<SoundPart>& parts, Seq seq);

/// The order for those days in the last file, with what the earlier ones have of them before it.
[[nodiscard]] Result<void, StoreTrouble> prepend(const EarlierDays& earlier, const TrailDb& last,
                                                 ExportOrder& order);

/// Of the last shift there; UTC before the first one.
[[nodiscard]] std::string zoneOf(const std::vector<SoundPart>& parts);

/// When the shift was opened that an entry there belongs to; outside any, when it was itself
/// written. None: there is no such entry.
[[nodiscard]] std::optional<WallTime> openingFor(const std::vector<SoundPart>& parts, Seq seq);

}  // namespace bathside::store
