#pragma once

// What the ampoules in stores can do at best, taken component by component: a bound for the search.
//
// It keeps to the one thing that makes lots matter: a bag goes past a lot only when that lot has
// not enough left for it, so a lot behind is opened only when the lots before it are used up but
// for less than one bag takes.

#include <optional>
#include <vector>

#include "core/plan/line_rules.h"
#include "core/plan/stores.h"

namespace bathside::plan {

class LotBound {
public:
    /// For levels no higher than `level`, and no more than `birds` birds.
    LotBound(const LineRules& rules, const Stores& stores, const Level& level, Count birds);

    /// No bags for so many birds open fewer doses of all components; none: there is not enough.
    [[nodiscard]] std::optional<Count> leastDoses(const Level& level, Count birds) const;

private:
    struct Bag {
        std::size_t ampoules = 0;
        Count birds = 0;
    };
    struct LotReach {
        Count doses = 1;
        std::size_t at = 0;         // its place in a level
        Count most = 0;             // ampoules that one bag takes
        std::vector<Count> serves;  // by ampoules: birds in whole bags, at most

        void serve(const std::vector<Bag>& bags, Count ampoules, Count birds);
        [[nodiscard]] Count birdsFrom(Count ampoules) const;
        [[nodiscard]] Count ampoulesFor(Count birds) const;
    };
    struct Served {
        Count doses = 0;
        Count birds = 0;
    };

    static LotReach reachOf(const LineRules& rules, const Stores& stores,
                            const Stores::UsableLot& lot, Count ampoules, Count birds);
    static std::optional<Count> leastFrom(const std::vector<LotReach>& lots, const Level& level,
                                          Count birds);
    static void addUsedUp(const LotReach& lot, Count left, const Served& before,
                          std::vector<Served>& after);
    static std::vector<Served> theBest(std::vector<Served> all, Count least);

    std::vector<std::vector<LotReach>>
        m_lots;  // by component, in the order in which they are taken
};

}  // namespace bathside::plan
