#pragma once

// The whole truth about a trail file: pages, chain, projections. For verify, and for a copy of a
// station's trail; it reads everything once (a million events take about a second or two).

#include "core/trail/store/trail_db.h"
#include "core/trail/verify.h"

namespace bathside::store {

struct Soundness {
    std::string pages;  // SQLite's own words about the first damage found; empty: none
    Verification chain;
    std::optional<bool> projectionsAgree;  // none: they could not be compared
    std::optional<StoreTrouble> trouble;   // reading broke off
    [[nodiscard]] bool isSound() const
    {
        return pages.empty() && !chain.flaw && !chain.badSeal && projectionsAgree.value_or(false) &&
               !trouble;
    }
};

/// The chain alone, from the file's origin on; `witnesses` are heads that were kept elsewhere.
[[nodiscard]] Result<Verification, StoreTrouble> verifyChain(const TrailDb& trail,
                                                             std::vector<Head> witnesses = {});

/// The last entry up to which it can be read and the chain holds.
[[nodiscard]] Head soundHead(const TrailDb& trail);

/// `key`: the public key of the seals, where it is known from elsewhere.
[[nodiscard]] Soundness check(const TrailDb& trail, std::vector<Head> witnesses = {},
                              std::optional<std::string> key = std::nullopt);

}  // namespace bathside::store
