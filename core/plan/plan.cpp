#include "core/plan/plan.h"

#include <algorithm>
#include <functional>
#include <map>
#include <utility>

#include "core/plan/day_bench.h"
#include "core/plan/warnings.h"

namespace bathside::plan {
namespace {

/// A new bag is as old as the bench makes it; where it has no schedule, as young as can be.
void setAges(const DayInput& input, Plan& plan)
{
    for (const ScheduledBag& slot : plan.bench.schedule)
        plan.lines[slot.place.line]->bags[slot.place.bag].pullStart = slot.start;
    for (auto& line : plan.lines) {
        if (!line)
            continue;
        for (PlannedBag& bag : line->bags) {
            if (bag.made != PlannedBag::Made::New)
                continue;
            const DayTime inDiluent = bag.pullStart + input.prepareTime - input.diluteTime;
            bag.ageAtLast = bag.turn.lastBird - inDiluent;
            bag.margin = input.useLimit - bag.ageAtLast;
        }
    }
}

class Counting {
public:
    explicit Counting(const DayInput& input) : m_input(input) {}

    void add(const PlannedBag& bag)
    {
        m_totals.birds += bag.turn.birds;
        if (bag.made != PlannedBag::Made::New)
            return;
        ++m_totals.bags;
        ++m_sizes[bag.volume];
        for (const Draw& draw : bag.draws) {
            m_lots[{draw.component, draw.lot}] += draw.ampoules;
            const Count doses = m_input.recipe[draw.component].lots[draw.lot].doses;
            m_totals.dosesOpened += draw.ampoules * doses;
            m_totals.dosesDiscarded += draw.ampoules * doses - bag.turn.birds;
        }
    }

    Totals totals()
    {
        for (const auto& [volume, bags] : m_sizes)
            m_totals.sizes.push_back({volume, bags});
        for (const auto& [lot, ampoules] : m_lots)
            m_totals.ampoules.push_back({lot.first, lot.second, ampoules});
        return std::move(m_totals);
    }

private:
    const DayInput& m_input;
    Totals m_totals;
    std::map<MicroLitres, Count, std::greater<>> m_sizes;
    std::map<std::pair<std::size_t, std::size_t>, Count> m_lots;
};

Totals totalsOf(const DayInput& input, const Plan& plan)
{
    Counting counting(input);
    for (const auto& line : plan.lines)
        if (line)
            std::ranges::for_each(line->bags, [&](const PlannedBag& bag) { counting.add(bag); });
    return counting.totals();
}

std::vector<Reason> whyNot(const DayInput& input, const Line& line, const SearchEnd& end,
                           const Stores& stores, const Level& level, Effort& effort)
{
    if (end.kind == SearchEnd::Kind::OutOfEffort)
        return {Undecided{end.worth.cost}};
    return reasonsFor(input, line, stores, level, effort);
}

/// Every line from what those before it left, with its part of the effort and what they did not
/// need.
PlannedLines planLines(const DayInput& input, const Stores& stores, Level& level, Effort& effort)
{
    PlannedLines lines;
    for (const Line& line : input.lines) {
        Effort part = effort.share(static_cast<std::int64_t>(input.lines.size() - lines.size()));
        auto plan = planLine(input, line, stores, level, part);
        if (plan)
            lines.emplace_back(std::move(*plan));
        else
            lines.emplace_back(failure(whyNot(input, line, plan.error(), stores, level, part)));
        effort.giveBack(part);
    }
    return lines;
}

}  // namespace

bool Plan::isFeasible() const
{
    return !bench.cannotMeet &&
           std::ranges::all_of(lines, [](const auto& line) { return line.has_value(); });
}

Plan planDay(const DayInput& input, Effort effort)
{
    const Stores stores(input);
    Level level = stores.full();
    Plan plan;
    Effort forBench = effort.share(3);
    plan.lines = planLines(input, stores, level, effort);
    plan.bench = planBench(input, stores, plan.lines, forBench);
    setAges(input, plan);
    plan.totals = totalsOf(input, plan);
    plan.warnings = warningsFor(input, plan, stores, level);
    return plan;
}

}  // namespace bathside::plan
