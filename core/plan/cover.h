#pragma once

// The least that so many birds can cost when breaks and the order of bags are no matter: the bound
// of the search, and the optimum where nothing of that bites.
//
// A covering knapsack, by cost instead of by birds: of all ways to cover birds those are kept of
// which no other costs less and covers as many.

#include <compare>
#include <functional>
#include <optional>
#include <queue>
#include <span>
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

/// A set of bags: what it costs, and how many birds it covers at most.
struct Way {
    Cost cost;
    Count birds = 0;
    friend auto operator<=>(const Way&, const Way&) = default;
    friend constexpr Way operator+(const Way& a, const Way& b)
    {
        return {a.cost + b.cost, a.birds + b.birds};
    }
};

/// Each costs and covers more than the one before it.
using Ways = std::vector<Way>;

/// The least cost that covers so many birds; none: no way does.
[[nodiscard]] std::optional<Cost> leastOf(std::span<const Way> ways, Count birds);

/// `ways` with up to `count` more of `bag`, as far as it takes to cover `birds`.
[[nodiscard]] Ways withBags(Ways ways, const Way& bag, Count count, Count birds);

/// Every way there is with as many bags as one likes; makes no more of them than it is asked for.
class Cover {
public:
    /// Bags that serve no bird are left out.
    explicit Cover(std::vector<Way> bags);

    /// As far as it takes to cover `birds`; all there are, if that cannot be.
    [[nodiscard]] std::span<const Way> ways(Count birds);
    [[nodiscard]] std::optional<Cost> least(Count birds) { return leastOf(ways(birds), birds); }

private:
    void findNext();

    std::vector<Way> m_bags;
    Ways m_ways;
    std::priority_queue<Way, std::vector<Way>, std::greater<>> m_open;
};

}  // namespace bathside::plan
