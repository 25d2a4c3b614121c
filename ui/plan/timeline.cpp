#include "ui/plan/timeline.h"

#include <algorithm>

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;
using plan::DayTime;

using HalfHours = std::chrono::duration<std::int64_t, std::ratio<1800>>;  // grain of the ends
constexpr Millis kPastShown = 1h;

TimelineBar::Kind kindOf(plan::PlannedBag::Made made)
{
    switch (made) {
        case plan::PlannedBag::Made::New:
            return TimelineBar::Kind::Planned;
        case plan::PlannedBag::Made::Mixed:
            return TimelineBar::Kind::Mixed;
        case plan::PlannedBag::Made::Open:
            return TimelineBar::Kind::Open;
    }
    return TimelineBar::Kind::Planned;
}

bool hasSmallMargin(const plan::Plan& plan, const plan::BagPlace& place)
{
    return std::ranges::any_of(plan.warnings, [&place](const plan::Warning& warning) {
        const auto* small = std::get_if<plan::SmallMargin>(&warning);
        return small && small->bag == place;
    });
}

TimelineBar barOf(const plan::Plan& plan, const plan::BagPlace& place)
{
    const plan::PlannedBag& bag = plan.lines[place.line]->bags[place.bag];
    TimelineBar bar{.kind = kindOf(bag.made), .place = place, .volume = bag.volume};
    bar.from = bag.turn.firstBird;
    bar.to = bag.turn.lastBird;
    bar.birds = bag.turn.birds;
    bar.born = bar.to - bag.ageAtLast;
    bar.limit = bar.to + bag.margin;
    bar.small = hasSmallMargin(plan, place);
    return bar;
}

TimelineRow rowOf(const DayPlan& day, std::size_t line)
{
    TimelineRow row{.line = line, .bars = {}, .breaks = day.today.input.lines[line].breaks};
    row.hasPlan = day.plan.lines[line].has_value();
    if (!row.hasPlan)
        return row;
    for (std::size_t bag = 0; bag < day.plan.lines[line]->bags.size(); ++bag)
        row.bars.push_back(barOf(day.plan, {line, bag}));
    return row;
}

TimelineRow benchOf(const DayPlan& day)
{
    TimelineRow row{.line = {},
                    .lanes = std::max<std::size_t>(1, day.today.input.preparers),
                    .bars = {},
                    .breaks = {}};
    row.hasPlan = !day.plan.bench.cannotMeet;
    for (const plan::ScheduledBag& slot : day.plan.bench.schedule) {
        TimelineBar bar = barOf(day.plan, slot.place);
        bar.kind = TimelineBar::Kind::Making;
        bar.from = slot.start;
        bar.to = slot.mixed;
        bar.lane = slot.preparer;
        bar.next = row.bars.empty();
        row.bars.push_back(bar);
    }
    return row;
}

// From an hour ago, where the day began before that, to the end of the last bag's life.
void setEnds(Timeline& timeline, const DayPlan& day)
{
    DayTime first = timeline.now, last = timeline.now + 1h;
    for (const plan::Line& line : day.today.input.lines)
        last = std::max(last, line.start);
    for (const TimelineRow& row : timeline.rows) {
        for (const TimelineBar& bar : row.bars) {
            first = std::min(first, row.line ? bar.born : bar.from);
            last = std::max(last, row.line ? bar.limit : bar.to);
        }
    }
    first = std::max(first, timeline.now - kPastShown);
    timeline.from = std::chrono::floor<HalfHours>(first);
    timeline.to = std::chrono::ceil<HalfHours>(last);
}

}  // namespace

Timeline timelineOf(const DayPlan& day)
{
    Timeline timeline{.now = *day.today.input.now, .rows = {}};
    for (std::size_t line = 0; line < day.plan.lines.size(); ++line)
        timeline.rows.push_back(rowOf(day, line));
    timeline.rows.push_back(benchOf(day));
    setEnds(timeline, day);
    return timeline;
}

}  // namespace bathside::ui
