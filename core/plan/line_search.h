#pragma once

// The best plan of one line, exactly.
//
// Best-first search over (birds to do, time, stores) finds the least worth there is: doses opened,
// bags, diluent, time of the last bird. A second walk, larger bags and earlier turns first, then
// finds the first of the plans that have it. (Spec: planning, rule 6.)

#include <compare>
#include <cstdint>
#include <optional>
#include <vector>

#include "core/plan/effort.h"
#include "core/plan/supply.h"

namespace bathside::plan {

struct Worth {
    Cost cost;
    DayTime lastBird{};
    friend auto operator<=>(const Worth&, const Worth&) = default;
};

struct HungBag {
    enum class From : std::uint8_t { Ready, Stores };
    From from = From::Stores;
    std::size_t bag = 0;  // which ready bag, or which size
    Turn turn;
    friend bool operator==(const HungBag&, const HungBag&) = default;
};

struct SearchEnd {
    enum class Kind : std::uint8_t { Optimal, Impossible, OutOfEffort };
    Kind kind = Kind::Impossible;
    Worth worth;                // of the optimum; out of effort: no plan is better than this
    std::vector<HungBag> bags;  // the optimum; out of effort: none
};

/// What a plan costs that goes, at each bag, where the bound is lowest; none: that led nowhere.
[[nodiscard]] std::optional<Cost> costOfSomePlan(const LineRules& rules, const Stores& stores,
                                                 Supply& supply);

[[nodiscard]] SearchEnd bestOfLine(const LineRules& rules, const Stores& stores, Supply& supply,
                                   Effort& effort);

}  // namespace bathside::plan
