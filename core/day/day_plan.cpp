#include "core/day/day_plan.h"

#include <algorithm>
#include <chrono>
#include <cmath>

#include "core/day/line_supply.h"
#include "core/plan/line_clock.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;

constexpr Millis kWorthWriting = 30s;  // a start that moves by less is the same one
constexpr Millis kWorthSaying = 1min;

NextBag nextBag(const DayToday& today, const plan::Plan& plan, const DayClock& clock,
                const plan::ScheduledBag& slot)
{
    const plan::DayInput& input = today.input;
    const plan::PlannedBag& bag = plan.lines[slot.place.line]->bags[slot.place.bag];
    NextBag next{.line = today.lines[slot.place.line].planned.line, .volume = bag.volume};
    for (const plan::Draw& draw : bag.draws) {
        const plan::Component& component = input.recipe[draw.component];
        next.parts.push_back(
            {{component.name}, {component.lots[draw.lot].name}, static_cast<int>(draw.ampoules)});
    }
    next.earliest =
        clock.instant(bag.turn.lastBird - input.useLimit + input.diluteTime - input.prepareTime);
    next.start = clock.instant(slot.start);
    next.mixedBy = clock.instant(bag.mixedBy);
    next.firstBird = clock.instant(bag.turn.firstBird);
    next.lastBird = clock.instant(bag.turn.lastBird);
    next.birds = bag.turn.birds;
    return next;
}

std::optional<BagForecast> forecast(const Bench& bench, const Supply& supply, const DayToday& today,
                                    const LineToday& line, const DayClock& clock)
{
    if (!line.openBag)
        return std::nullopt;
    const Bag& bag = *bench.bag(*line.openBag);
    if (!bag.firstDiluent)
        return std::nullopt;
    const plan::DayInput& input = today.input;
    const plan::MadeBag made = supply.madeBag(bag.id);
    const auto usable = std::max<std::int64_t>(0, (made.left - input.residual).count);
    BagForecast found{.line = line.planned.line, .bag = bag.id, .latest = {}};
    found.birds = usable / input.dose.count;
    const auto emptyAt = [&](double perHour) {
        const auto rate = std::max<std::int64_t>(1, std::llround(perHour));
        const plan::LineClock at(breaksOf(line.planned, clock), rate);
        return clock.instant(at.endOf(*input.now, at.workFor(found.birds)));
    };
    const auto& flow = line.flow;
    found.empty = emptyAt(static_cast<double>(flow.ratePerHour));
    found.earliest = flow.measured ? emptyAt(flow.measured->interval.high) : found.empty;
    if (!flow.measured)
        found.latest = found.empty;
    else if (flow.measured->interval.low > 0)
        found.latest = emptyAt(flow.measured->interval.low);
    found.limit = clock.instant(made.firstInDiluent + input.useLimit);
    const plan::LineClock rate(breaksOf(line.planned, clock), flow.ratePerHour);
    const Millis work = rate.workBetween(*input.now, clock.elapsedAt(found.limit));
    found.wasted = std::max<std::int64_t>(0, found.birds - rate.birdsIn(work));
    return found;
}

// Where the plan itself lets the line stand still: between two of its bags, or before its first.
void addWaits(std::vector<DayRemark>& remarks, const DayToday& today, const plan::Plan& plan,
              const DayClock& clock)
{
    for (std::size_t i = 0; i < plan.lines.size(); ++i) {
        if (!plan.lines[i])
            continue;
        const plan::LineClock at(today.input.lines[i].breaks, 1);
        plan::DayTime free = std::max(today.input.lines[i].start, *today.input.now);
        for (const plan::PlannedBag& bag : plan.lines[i]->bags) {
            if (at.workBetween(free, bag.turn.firstBird) >= kWorthSaying)
                remarks.emplace_back(LineWaits{today.lines[i].planned.line, clock.instant(free),
                                               clock.instant(bag.turn.firstBird)});
            free = bag.turn.lastBird + today.input.changeover;
        }
    }
}

void addStands(std::vector<DayRemark>& remarks, const Bench& bench, const DayToday& today)
{
    for (const LineToday& line : today.lines) {
        const auto found = bench.lines.find(line.planned.line);
        if (found != bench.lines.end() && found->second.stopped)
            remarks.emplace_back(LineStands{line.planned.line, found->second.stateSince.at.wall});
    }
}

}  // namespace

std::optional<DayPlan> dayPlan(const Bench& bench, const DayClock& clock, const Stamp& now)
{
    auto today = dayToday(bench, clock, now);
    if (!today)
        return std::nullopt;
    DayPlan day{.midnight = clock.midnight(),
                .today = std::move(*today),
                .plan = {},
                .next = {},
                .forecasts = {},
                .remarks = {}};
    day.plan = plan::planDay(day.today.input, plan::Effort(plan::Effort::kAtTheBench));
    const auto& schedule = day.plan.bench.schedule;
    if (!schedule.empty())
        day.next = nextBag(day.today, day.plan, clock, schedule.front());
    const Supply supply(bench, clock, now);
    for (const LineToday& line : day.today.lines) {
        if (const auto found = forecast(bench, supply, day.today, line, clock))
            day.forecasts.push_back(*found);
    }
    addStands(day.remarks, bench, day.today);
    addWaits(day.remarks, day.today, day.plan, clock);
    if (bench.nextPull && day.next && now.wall - *bench.nextPull >= kWorthSaying)
        day.remarks.emplace_back(PullLate{day.next->line, now.wall - *bench.nextPull});
    return day;
}

std::optional<WallTime> movedStart(const Bench& bench, const DayPlan& plan, WallTime now)
{
    if (!plan.next)
        return std::nullopt;
    const WallTime start = plan.next->start;
    if (!bench.nextPull)
        return start;
    const bool same = std::chrono::abs(start - *bench.nextPull) < kWorthWriting;
    const bool late = *bench.nextPull <= now && start < now + kWorthSaying;
    if (same || late)
        return std::nullopt;
    return start;
}

}  // namespace bathside
