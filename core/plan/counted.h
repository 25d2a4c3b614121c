#pragma once

// The stores followed bag by bag, for the search of a line's plan where they bite.

#include <deque>
#include <map>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/plan/effort.h"
#include "core/plan/lot_bound.h"
#include "core/plan/supply.h"

namespace bathside::plan {

class Counted final : public Supply {
public:
    /// Its bounds are part of the effort.
    Counted(const LineRules& rules, const Stores& stores, Level level, Effort& effort);

    [[nodiscard]] std::optional<Offer> offer(SupplyState state, std::size_t size) override;
    [[nodiscard]] std::optional<Cost> least(SupplyState state, Count birds) override;

private:
    struct Known {
        bool isKnown = false;
        std::optional<Offer> offer;
    };
    using CountedBags = std::vector<std::pair<Way, Count>>;
    /// What bags can cover, as far as it has been asked for.
    struct Reach {
        Ways ways;
        Count birds = -1;
    };
    struct State {
        const Level* level = nullptr;
        std::vector<Known> offers;  // by size
        Reach* reach = nullptr;     // none: not asked for yet
    };
    struct HashLevel {
        std::size_t operator()(const Level& level) const;
    };

    SupplyState stateOf(Level level);
    [[nodiscard]] std::optional<Offer> found(const Level& level, std::size_t size);
    [[nodiscard]] CountedBags bagsFrom(const Level& level) const;
    [[nodiscard]] std::optional<Cost> leastOfBags(State& state, Count birds);
    [[nodiscard]] Ways waysOf(const CountedBags& bags, Count birds);

    const LineRules& m_rules;
    const Stores& m_stores;
    Effort& m_effort;
    LotBound m_lots;
    std::deque<State> m_states;
    std::unordered_map<Level, SupplyState, HashLevel> m_numbers;
    std::map<CountedBags, Reach> m_reaches;
    std::map<std::vector<Way>, Cover> m_endless;  // bags without a limit
};

}  // namespace bathside::plan
