#include "core/plan/day_bench.h"

#include <algorithm>

#include "core/plan/bench_schedule.h"

namespace bathside::plan {
namespace {

constexpr Millis kOneMilli{1};

struct BenchWork {
    std::vector<BagPlace> places;
    std::vector<StartWindow> windows;
};

/// Mixed later than (last bird − limit + dilute time), and not later than (first bird − hang time).
StartWindow windowOf(const DayInput& input, const PlannedBag& bag)
{
    const DayTime mixedFrom = bag.turn.lastBird - input.useLimit + input.diluteTime + kOneMilli;
    const DayTime earliest = mixedFrom - input.prepareTime;
    return {input.now ? std::max(earliest, *input.now) : earliest, bag.mixedBy - input.prepareTime};
}

BenchWork workOf(const DayInput& input, const PlannedLines& lines)
{
    BenchWork work;
    for (std::size_t line = 0; line < lines.size(); ++line)
        for (std::size_t bag = 0; lines[line] && bag < lines[line]->bags.size(); ++bag)
            if (lines[line]->bags[bag].made == PlannedBag::Made::New) {
                work.places.push_back({line, bag});
                work.windows.push_back(windowOf(input, lines[line]->bags[bag]));
            }
    return work;
}

Count dosesOpened(const PlannedLines& lines)
{
    Count doses = 0;
    for (const auto& line : lines)
        doses += line ? line->worth.cost.doses : 0;
    return doses;
}

/// Every line that has a plan keeps one, no dose more is opened, and the bench meets all.
bool wouldDo(const DayInput& input, const Stores& stores, const PlannedLines& before,
             Effort& effort)
{
    Level level = stores.full();
    const PlannedLines lines = planLines(input, stores, level, effort);
    for (std::size_t line = 0; line < lines.size(); ++line)
        if (before[line] && !lines[line])
            return false;
    const BenchWork work = workOf(input, lines);
    return dosesOpened(lines) <= dosesOpened(before) &&
           latestSchedule(work.windows, input.prepareTime, input.preparers).has_value();
}

std::optional<std::chrono::minutes> slackNeeded(DayInput input, const Stores& stores,
                                                const PlannedLines& lines, Effort& effort)
{
    for (std::chrono::minutes slack{0}; slack < input.useLimit; ++slack) {
        input.benchSlack = slack;
        if (wouldDo(input, stores, lines, effort))
            return slack;
    }
    return std::nullopt;
}

}  // namespace

PlannedLines planLines(const DayInput& input, const Stores& stores, Level& level, Effort& effort)
{
    PlannedLines lines;
    for (const Line& line : input.lines)
        lines.push_back(planLine(input, line, stores, level, effort));
    return lines;
}

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
