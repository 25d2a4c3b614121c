#include "core/plan/limits.h"

#include <algorithm>

#include "core/plan/counted.h"
#include "core/plan/line_search.h"

namespace bathside::plan {
namespace {

/// No more than `most` are ever taken, and there is never fewer than `spare` left then.
void loosen(Count& count, Count most, Count spare)
{
    if (count >= most + spare)
        count = kUnlimited;
}

/// The most ampoules of a lot that one bag takes: with fewer left, a bag may go past the lot.
Count mostAmpoules(const Stores& stores, const Stores::UsableLot& lot)
{
    Count most = 0;
    for (std::size_t size = 0; size < stores.sizes().size(); ++size)
        most = std::max(most, stores.ampoules(size, lot));
    return most;
}

}  // namespace

Level whatCanBite(const LineRules& rules, const Stores& stores, Level level, Effort& effort)
{
    Counted counted(rules, stores, level, effort);
    const auto known = costOfSomePlan(rules, stores, counted);
    if (!known)
        return level;
    for (std::size_t size = 0; size < stores.sizes().size(); ++size)
        if (const auto doses = stores.leastDoses(level, size))
            loosen(level[size], known->doses / std::max<Count>(*doses, 1), 0);
    // Of every other component at least a dose a bird is opened.
    const Count others = (static_cast<Count>(stores.lots().size()) - 1) *
                         rules.birdsBeyondReady(0, rules.birdsToDo());
    for (const auto& lots : stores.lots())
        for (const Stores::UsableLot& lot : lots)
            loosen(level[lot.at], (known->doses - others) / lot.doses, mostAmpoules(stores, lot));
    return level;
}

}  // namespace bathside::plan
