#pragma once

// Brings what a spool holds into the trail.
//
// An entry counts as there when the trail has one with the same tap, time, person, kind and payload
// after the point where the spool began: seq and hash may differ. What is not there is appended
// under the next seq, naming the spool's seq and hash. Broken off anywhere, it can be done again:
// nothing comes in twice. (Spec: the trail, faults.)

#include <span>
#include <unordered_map>

#include "core/trail/ports.h"

namespace bathside {

/// How often each event stands in a trail, whatever its seq and hash.
class Presence {
public:
    /// Of the entries with a seq above `after`.
    [[nodiscard]] static Result<Presence, StoreTrouble> of(const TrailStore& trail, Seq after);

    /// Whether it is there; each entry of the trail answers for one.
    [[nodiscard]] bool take(const Entry& entry);

private:
    std::unordered_map<std::string, int> m_counts;
};

/// How many were not there and are now.
[[nodiscard]] Result<std::int64_t, StoreTrouble> merge(TrailStore& trail,
                                                       std::span<const Entry> spooled, Seq after);

}  // namespace bathside
