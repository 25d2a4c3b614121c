#include "core/plan/warnings.h"

#include <algorithm>

namespace bathside::plan {
namespace {

constexpr auto kSmallMargin = std::chrono::minutes(5);

void addForBag(const LineClock& clock, const PlannedBag& bag, BagPlace place,
               std::vector<Warning>& warnings)
{
    if (bag.turn.idle > Millis(0))
        warnings.emplace_back(IdlesToSpare{place, bag.turn.idle});
    const Break* pause = clock.breakAfter(bag.turn.firstBird);
    for (; pause != nullptr && pause->from < bag.turn.lastBird; pause = clock.breakAfter(pause->to))
        warnings.emplace_back(RunsThroughBreak{place, *pause});
    if (bag.margin < kSmallMargin)
        warnings.emplace_back(SmallMargin{place, bag.margin});
}

bool isUsed(const Totals& totals, std::size_t component, std::size_t lot)
{
    return std::ranges::any_of(totals.ampoules, [&](const LotUse& use) {
        return use.component == component && use.lot == lot;
    });
}

}  // namespace

std::vector<Warning> warningsFor(const DayInput& input, const Plan& plan, const Stores& stores,
                                 const Level& left)
{
    std::vector<Warning> warnings;
    for (std::size_t line = 0; line < plan.lines.size(); ++line) {
        const LineClock clock(input.lines[line].breaks, input.lines[line].ratePerHour);
        for (std::size_t bag = 0; plan.lines[line] && bag < plan.lines[line]->bags.size(); ++bag)
            addForBag(clock, plan.lines[line]->bags[bag], {line, bag}, warnings);
    }
    for (std::size_t component = 0; component < stores.lots().size(); ++component)
        for (const Stores::UsableLot& lot : stores.lots()[component])
            if (left[lot.at] == 0 && isUsed(plan.totals, component, lot.lot))
                warnings.emplace_back(NoSpareLeft{component, lot.lot});
    return warnings;
}

}  // namespace bathside::plan
