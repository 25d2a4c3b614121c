#include "core/plan/line_plan.h"

#include <algorithm>
#include <utility>

#include "core/plan/counted.h"
#include "core/plan/limits.h"

namespace bathside::plan {
namespace {

SearchEnd bestIfPlentiful(const LineRules& rules, const Stores& stores, const Level& level,
                          Effort& effort)
{
    Plentiful plentiful(rules, stores, level);
    return bestOfLine(rules, stores, plentiful, effort);
}

/// Whether the stores give these bags, at this cost.
bool isTrue(const SearchEnd& end, const Stores& stores, Level level)
{
    Count doses = 0;
    for (const HungBag& bag : end.bags) {
        if (bag.from == HungBag::From::Ready)
            continue;
        const auto opened = stores.dosesOpened(level, bag.bag);
        if (!opened)
            return false;
        doses += *opened;
        stores.take(level, bag.bag);
    }
    return doses == end.worth.cost.doses;
}

PlannedBag newBag(const DayInput& input, const HungBag& hung, const Stores& stores, Level& level)
{
    const Stores::Size& size = stores.sizes()[hung.bag];
    PlannedBag bag;
    bag.volume = size.volume;
    bag.doses = size.charged;
    bag.draws = stores.draws(level, hung.bag);
    stores.take(level, hung.bag);
    bag.turn = hung.turn;
    bag.mixedBy = hung.turn.firstBird - input.hangTime;
    bag.pullStart = bag.mixedBy - input.prepareTime;
    return bag;
}

PlannedBag readyBag(const DayInput& input, const HungBag& hung, const ReadyBag& ready)
{
    PlannedBag bag;
    bag.made = ready.hangs ? PlannedBag::Made::Open : PlannedBag::Made::Mixed;
    bag.volume = ready.bag.volume;
    bag.doses = (ready.bag.left.count + input.dose.count - 1) / input.dose.count;
    bag.turn = hung.turn;
    bag.ageAtLast = hung.turn.lastBird - ready.bag.firstInDiluent;
    bag.margin = input.useLimit - bag.ageAtLast;
    return bag;
}

}  // namespace

SearchEnd bestFrom(const LineRules& rules, const Stores& stores, const Level& level, Effort& effort)
{
    const SearchEnd rough = bestIfPlentiful(rules, stores, level, effort);
    if (rough.kind != SearchEnd::Kind::Optimal || isTrue(rough, stores, level))
        return rough;
    const Level biting = whatCanBite(rules, stores, level, effort);
    const SearchEnd finer = bestIfPlentiful(rules, stores, biting, effort);
    if (finer.kind != SearchEnd::Kind::Optimal || isTrue(finer, stores, level))
        return finer;
    Counted counted(rules, stores, biting, effort);
    return bestOfLine(rules, stores, counted, effort);
}

Result<LinePlan, SearchEnd> planLine(const DayInput& input, const Line& line, const Stores& stores,
                                     Level& level, Effort& effort)
{
    const LineRules rules(input, line);
    SearchEnd end = bestFrom(rules, stores, level, effort);
    if (end.kind != SearchEnd::Kind::Optimal)
        return failure(std::move(end));
    LinePlan plan{{}, end.worth};
    for (const HungBag& hung : end.bags)
        plan.bags.push_back(hung.from == HungBag::From::Ready
                                ? readyBag(input, hung, rules.ready()[hung.bag])
                                : newBag(input, hung, stores, level));
    return plan;
}

}  // namespace bathside::plan
