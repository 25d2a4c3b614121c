#pragma once

// The stores as the search of a line's plan sees them: numbered states, and what a bag of a size
// costs in each.
//
// `Plentiful` has one state: everything that can be had stays, and every bag comes from the
// cheapest lot that it might come from. No plan costs less than that, so its optimum is the true
// one where the stores then happen to give just this. `Counted` (counted.h) follows the stores bag
// by bag.

#include <cstdint>
#include <optional>
#include <vector>

#include "core/plan/cover.h"
#include "core/plan/line_rules.h"
#include "core/plan/stores.h"

namespace bathside::plan {

using SupplyState = std::uint32_t;

class Supply {
public:
    struct Offer {
        Count doses = 0;
        SupplyState next = 0;
    };

    Supply() = default;
    virtual ~Supply() = default;
    Supply(const Supply&) = delete;
    Supply& operator=(const Supply&) = delete;

    /// State 0 is the beginning. None: a bag of that size cannot be made.
    [[nodiscard]] virtual std::optional<Offer> offer(SupplyState state, std::size_t size) = 0;
    /// A bound: no bags for so many birds cost less. None: there are no such bags.
    [[nodiscard]] virtual std::optional<Cost> least(SupplyState state, Count birds) = 0;
};

/// One bag of that size, at the least it can cost from this level on, serving the most birds it can
/// serve; none: it cannot be made any more.
[[nodiscard]] std::optional<Way> cheapestBag(const LineRules& rules, const Stores& stores,
                                             const Level& level, std::size_t size);

class Plentiful final : public Supply {
public:
    Plentiful(const LineRules& rules, const Stores& stores, const Level& level);

    [[nodiscard]] std::optional<Offer> offer(SupplyState state, std::size_t size) override;
    [[nodiscard]] std::optional<Cost> least(SupplyState state, Count birds) override;

private:
    std::vector<std::optional<Way>> m_bags;  // by size
    Cover m_cover;
};

}  // namespace bathside::plan
