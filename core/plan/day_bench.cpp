#include "core/plan/day_bench.h"

#include <algorithm>

#include "core/plan/bench_schedule.h"

namespace bathside::plan {
namespace {

constexpr Millis kNextMilli{1};

struct BenchWork {
    std::vector<BagPlace> places;
    std::vector<StartWindow> windows;
};

/// Mixed later than (last bird − limit + dilute time), and not later than (first bird − hang time).
StartWindow windowOf(const DayInput& input, const PlannedBag& bag)
{
    const DayTime mixedFrom = bag.turn.lastBird - input.useLimit + input.diluteTime + kNextMilli;
    const DayTime earliest = mixedFrom - input.prepareTime;
    return {input.now ? std::max(earliest, *input.now) : earliest, bag.mixedBy - input.prepareTime};
}

void addWork(const DayInput& input, std::size_t line, const LinePlan& plan, BenchWork& work)
{
    for (std::size_t bag = 0; bag < plan.bags.size(); ++bag) {
        if (plan.bags[bag].made != PlannedBag::Made::New)
            continue;
        work.places.push_back({line, bag});
        work.windows.push_back(windowOf(input, plan.bags[bag]));
    }
}

BenchWork workOf(const DayInput& input, const PlannedLines& lines)
{
    BenchWork work;
    for (std::size_t line = 0; line < lines.size(); ++line)
        if (lines[line])
            addWork(input, line, *lines[line], work);
    return work;
}

Count dosesOpened(const PlannedLines& lines)
{
    Count doses = 0;
    for (const auto& line : lines)
        doses += line ? line->worth.cost.doses : 0;
    return doses;
}

enum class WouldDo : std::uint8_t { Yes, No, Unproven };

/// Every line that has a plan keeps one, no dose more is opened, and the bench meets all.
WouldDo wouldDo(const DayInput& input, const Stores& stores, const PlannedLines& before,
                Effort& effort)
{
    Level level = stores.full();
    BenchWork work;
    Count dosesLeft = dosesOpened(before);
    for (std::size_t line = 0; line < before.size(); ++line) {
        const auto plan = planLine(input, input.lines[line], stores, level, effort);
        if (!plan && plan.error().kind == SearchEnd::Kind::OutOfEffort)
            return WouldDo::Unproven;
        if (!plan && before[line])
            return WouldDo::No;
        dosesLeft -= plan ? plan->worth.cost.doses : 0;
        if (dosesLeft < 0)
            return WouldDo::No;
        if (plan)
            addWork(input, line, *plan, work);
    }
    return latestSchedule(work.windows, input.prepareTime, input.preparers) ? WouldDo::Yes
                                                                            : WouldDo::No;
}

std::optional<std::chrono::minutes> slackNeeded(DayInput input, const Stores& stores,
                                                const PlannedLines& lines, Effort& effort)
{
    for (std::chrono::minutes slack{0}; slack < input.useLimit; ++slack) {
        input.benchSlack = slack;
        switch (wouldDo(input, stores, lines, effort)) {
            case WouldDo::Yes:
                return slack;
            case WouldDo::No:
                break;
            case WouldDo::Unproven:
                return std::nullopt;
        }
    }
    return std::nullopt;
}

}  // namespace

BenchPlan planBench(const DayInput& input, const Stores& stores, const PlannedLines& lines,
                    Effort& effort)
{
    const BenchWork work = workOf(input, lines);
    BenchPlan bench;
    bench.preparersNeeded = preparersNeeded(work.windows, input.prepareTime);
    const auto slots = latestSchedule(work.windows, input.prepareTime, input.preparers);
    if (!slots) {
        bench.cannotMeet = work.places[slots.error()];
        bench.slackNeeded = slackNeeded(input, stores, lines, effort);
        return bench;
    }
    for (const BenchSlot& slot : *slots)
        bench.schedule.push_back(
            {work.places[slot.bag], slot.preparer, slot.start, slot.start + input.prepareTime});
    return bench;
}

}  // namespace bathside::plan
