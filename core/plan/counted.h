#pragma once

// The stores followed bag by bag, for the search of a line's plan where they bite.

#include <deque>
#include <map>
#include <unordered_map>
#include <vector>

#include "core/plan/supply.h"

namespace bathside::plan {

class Counted final : public Supply {
public:
    Counted(const LineRules& rules, const Stores& stores, Level level);

    [[nodiscard]] std::optional<Offer> offer(SupplyState state, std::size_t size) override;
    [[nodiscard]] std::optional<Cost> least(SupplyState state, Count birds) override;

private:
    struct Known {
        bool isKnown = false;
        std::optional<Offer> offer;
    };
    struct State {
        const Level* level = nullptr;
        std::vector<Known> offers;  // by size
        Cover* cover = nullptr;
        Count mostBirds = 0;
    };
    struct HashLevel {
        std::size_t operator()(const Level& level) const;
    };

    SupplyState stateOf(Level level);
    Cover& coverFor(const Level& level);
    [[nodiscard]] std::optional<Offer> found(const Level& level, std::size_t size);
    /// A bound: no bags from this level serve more birds.
    [[nodiscard]] Count mostBirds(const Level& level) const;
    [[nodiscard]] Count mostFrom(const Level& level, std::size_t component) const;
    void measureLot(const Stores::UsableLot& lot, Count ampoules);

    const LineRules& m_rules;
    const Stores& m_stores;
    std::vector<Count> m_birds;                // at most, by size
    std::vector<std::vector<Count>> m_served;  // by place in a level, then ampoules: most birds
    std::deque<State> m_states;
    std::unordered_map<Level, SupplyState, HashLevel> m_numbers;
    std::map<std::vector<Cover::Bag>, Cover> m_covers;
};

}  // namespace bathside::plan
