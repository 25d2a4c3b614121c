#include "ui/plan/sheet_of_plan.h"

namespace bathside::ui {
namespace {

PlanSheet::Bag bagOf(const plan::DayInput& input, const plan::PlannedBag& bag,
                     const PlanClock& clock)
{
    PlanSheet::Bag made{.volume = bag.volume, .lots = {}};
    for (const plan::Draw& draw : bag.draws) {
        const plan::Component& component = input.recipe[draw.component];
        made.lots.push_back(
            {component.name, component.lots[draw.lot].name, static_cast<int>(draw.ampoules)});
    }
    made.pullStart = clock.shown(bag.pullStart);
    made.mixedBy = clock.shown(bag.mixedBy);
    made.firstBird = clock.shown(bag.turn.firstBird);
    made.lastBird = clock.shown(bag.turn.lastBird);
    made.birds = bag.turn.birds;
    return made;
}

}  // namespace

PlanSheet planSheetFrom(const DayPlan& day, const PlanClock& clock, const SheetHead& head)
{
    const plan::DayInput& input = day.today.input;
    PlanSheet sheet{.day = input.day,
                    .site = head.site,
                    .made = head.made,
                    .zone = clock.zone(),
                    .lines = {},
                    .rehearsal = head.rehearsal};
    for (std::size_t i = 0; i < input.lines.size(); ++i) {
        PlanSheet::Line line{input.lines[i].name, {}};
        if (const auto& planned = day.plan.lines[i]) {
            for (const plan::PlannedBag& bag : planned->bags) {
                if (bag.made == plan::PlannedBag::Made::New)
                    line.bags.push_back(bagOf(input, bag, clock));
            }
        }
        sheet.lines.push_back(std::move(line));
    }
    return sheet;
}

}  // namespace bathside::ui
