#include "core/plan/lot_bound.h"

#include <algorithm>
#include <utility>

namespace bathside::plan {
namespace {

// Beyond these the bound is taken more loosely: it stays a bound, and the plan stays exact.
constexpr std::size_t kMostReckoned = 50'000;  // ampoules of a lot
constexpr Count kMostSteps = 64;               // ampoules that may be left of it

}  // namespace

LotBound::LotBound(const LineRules& rules, const Stores& stores, const Level& level, Count birds)
{
    for (const auto& lots : stores.lots()) {
        m_lots.emplace_back();
        for (const Stores::UsableLot& lot : lots)
            m_lots.back().push_back(reachOf(rules, stores, lot, level[lot.at], birds));
    }
}

LotBound::LotReach LotBound::reachOf(const LineRules& rules, const Stores& stores,
                                     const Stores::UsableLot& lot, Count ampoules, Count birds)
{
    LotReach reach{lot.doses, lot.at, 0, {0}};
    std::vector<Bag> bags;
    for (std::size_t size = 0; size < stores.sizes().size(); ++size) {
        const Bag bag{static_cast<std::size_t>(stores.ampoules(size, lot)),
                      rules.mostBirds(stores.sizes()[size].volume, Tubes::Full)};
        if (bag.birds == 0)
            continue;
        bags.push_back(bag);
        reach.most = std::max(reach.most, stores.ampoules(size, lot));
    }
    if (!bags.empty())
        reach.serve(bags, ampoules, birds);
    return reach;
}

/// A knapsack, ampoule by ampoule, until all birds are served or there are no more.
void LotBound::LotReach::serve(const std::vector<Bag>& bags, Count ampoules, Count birds)
{
    while (serves.back() < birds && static_cast<Count>(serves.size()) <= ampoules) {
        Count next = serves.size() < kMostReckoned ? serves.back() : birds;
        for (const Bag& bag : bags)
            if (bag.ampoules <= serves.size())
                next = std::max(next, serves[serves.size() - bag.ampoules] + bag.birds);
        serves.push_back(next);
    }
}

std::optional<Count> LotBound::leastDoses(const Level& level, Count birds) const
{
    Count doses = 0;
    for (const auto& lots : m_lots) {
        const auto least = leastFrom(lots, level, birds);
        if (!least)
            return std::nullopt;
        doses += *least;
    }
    return doses;
}

/// Lot by lot: either this one does all the rest, or it is used up but for less than a bag takes.
std::optional<Count> LotBound::leastFrom(const std::vector<LotReach>& lots, const Level& level,
                                         Count birds)
{
    std::optional<Count> least;
    std::vector<Served> before{{0, 0}};
    for (const LotReach& lot : lots) {
        std::vector<Served> after;
        for (const Served& served : before) {
            const Count needed = lot.ampoulesFor(birds - served.birds);
            if (needed <= level[lot.at])
                least = std::min(least.value_or(kUnlimited), served.doses + needed * lot.doses);
            addUsedUp(lot, level[lot.at], served, after);
        }
        before = theBest(std::move(after), least.value_or(kUnlimited));
    }
    return least;
}

void LotBound::addUsedUp(const LotReach& lot, Count left, const Served& before,
                         std::vector<Served>& after)
{
    if (left == kUnlimited)
        return;
    const Count least = std::max<Count>(left - lot.most + 1, 0);
    if (left - least > kMostSteps) {
        after.push_back({before.doses + least * lot.doses, before.birds + lot.birdsFrom(left)});
        return;
    }
    for (Count used = least; used <= left; ++used)
        after.push_back({before.doses + used * lot.doses, before.birds + lot.birdsFrom(used)});
}

/// Of these, what no other does for fewer doses, and only while it is below `least`.
std::vector<LotBound::Served> LotBound::theBest(std::vector<Served> all, Count least)
{
    std::ranges::sort(all, {},
                      [](const Served& served) { return std::pair(served.doses, -served.birds); });
    std::vector<Served> best;
    for (const Served& served : all)
        if (served.doses < least && (best.empty() || served.birds > best.back().birds))
            best.push_back(served);
    return best;
}

Count LotBound::LotReach::birdsFrom(Count ampoules) const
{
    const auto longest = static_cast<Count>(serves.size()) - 1;
    return serves[static_cast<std::size_t>(std::min(ampoules, longest))];
}

/// More than there ever are, where they cannot do it.
Count LotBound::LotReach::ampoulesFor(Count birds) const
{
    const auto enough = std::ranges::lower_bound(serves, birds);
    return enough == serves.end() ? kUnlimited + 1 : enough - serves.begin();
}

}  // namespace bathside::plan
