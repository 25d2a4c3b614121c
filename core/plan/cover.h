#pragma once

// The least that so many birds can cost when breaks, the order of bags and what is in stores are
// no matter: the bound of the search, and the optimum where nothing of that bites.
//
// It keeps the ways to cover birds of which none costs less and covers as many (a covering
// knapsack, by cost instead of by birds), and makes as many of them as it is asked for.

#include <compare>
#include <optional>
#include <queue>
#include <vector>

#include "core/plan/input.h"

namespace bathside::plan {

/// What a line's plan is first judged by, in this order. (Spec: planning, rule 6.)
struct Cost {
    Count doses = 0;  // opened, all components
    Count bags = 0;
    Count volume = 0;  // µL of diluent
    friend constexpr auto operator<=>(const Cost&, const Cost&) = default;
    friend constexpr Cost operator+(const Cost& a, const Cost& b)
    {
        return {a.doses + b.doses, a.bags + b.bags, a.volume + b.volume};
    }
};

class Cover {
public:
    struct Bag {
        Count birds = 0;
        Cost cost;
        friend auto operator<=>(const Bag&, const Bag&) = default;
    };

    /// Bags that serve no bird are left out.
    explicit Cover(std::vector<Bag> bags);

    /// The least cost of bags for at least so many birds; none: there is no bag.
    [[nodiscard]] std::optional<Cost> least(Count birds);

private:
    struct Way {
        Cost cost;
        Count birds = 0;
        friend auto operator<=>(const Way&, const Way&) = default;
    };

    void findNext();

    std::vector<Bag> m_bags;
    std::vector<Way> m_ways;  // each costs and covers more than the one before it
    std::priority_queue<Way, std::vector<Way>, std::greater<>> m_open;
};

}  // namespace bathside::plan
