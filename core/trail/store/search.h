#pragma once

// The entries of many days that are about something, in stretches: what the Record page shows of a
// month or of ten years. Answered by the index alone, so that a stretch costs the same however long
// the trail is. On the trail's thread; a failure is the store's.

#include <string>
#include <vector>

#include "core/trail/store/queries.h"

namespace bathside::store {

/// All that is set must hold; the default is everything.
struct Search {
    std::vector<std::string> kinds{};  // one of them; none: any
    bool orMended = false;             // or whatever was corrected or taken back, of any kind
    std::string person{};              // who said it, or whom it names
    std::string bag{}, lot{};          // it names it, or is about an ampoule of it: as said, and as
                                       // corrected at any time
};

/// How many entries are looked at first.
inline constexpr Seq kFirstStretch = 50'000;

/// The newest `limit` of those in the runs that come before `before`. Looks back from there in
/// stretches that grow, so that what is frequent is found in the first and what is rare in few.
[[nodiscard]] Result<std::set<Seq>, StoreTrouble> search(const TrailDb& trail, const Search& wanted,
                                                         const std::vector<SeqRange>& runs,
                                                         Seq before, int limit,
                                                         Seq stretch = kFirstStretch);

/// The entries that point at one of these, in order.
[[nodiscard]] Result<std::vector<Entry>, StoreTrouble> pointingAt(const TrailDb& trail,
                                                                  const std::set<Seq>& seqs);

/// Every kind of entry that the trail has.
[[nodiscard]] Result<std::vector<std::string>, StoreTrouble> kindsIn(const TrailDb& trail);

}  // namespace bathside::store
