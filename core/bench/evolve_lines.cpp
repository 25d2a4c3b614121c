// Rows of `evolve`: lines.

#include <algorithm>

#include "core/bench/dose.h"
#include "core/bench/evolve_rows.h"

namespace bathside::folds {
namespace {

void setGoing(Bench& bench, const Event& event, const LineId& id, bool stopped)
{
    Line& line = lineIn(bench, id, event);
    if (stopped && !line.stopped)
        line.stops.push_back({event.at.wall, {}});
    else if (!stopped && line.stopped)
        line.stops.back().to = event.at.wall;
    line.stopped = stopped;
    line.stateSince = momentOf(event);
}

}  // namespace

Line& lineIn(Bench& bench, const LineId& id, const Event& event)
{
    const auto found = bench.lines.find(id);
    if (found != bench.lines.end())
        return found->second;
    const Moment now = momentOf(event);
    const auto before = bench.unproven.find(id);
    return bench.lines
        .emplace(id, Line{.id = id,
                          .birdsAtGoodDose = before == bench.unproven.end() ? 0 : -before->second,
                          .since = now,
                          .needle = now,
                          .longestNeedleGap = {},
                          .stateSince = now})
        .first->second;
}

void widen(std::optional<Gap>& gap, std::int64_t amount, Seq from, Seq to)
{
    if (!gap || amount > gap->amount)
        gap = Gap{amount, from, to};
}

void on(Bench& bench, const Event& event, const BirdsCounted& fact)
{
    Line& line = lineIn(bench, fact.line, event);
    line.birds = fact.total;
    line.counts.push_back({event.at.wall, fact.total});
}

void on(Bench& bench, const Event& event, const NeedleChanged& fact)
{
    Line& line = lineIn(bench, fact.line, event);
    widen(line.longestNeedleGap, line.birds - line.birdsAtNeedle, line.needle.seq, event.seq);
    line.birdsAtNeedle = line.birds;
    line.needle = momentOf(event);
}

void on(Bench& bench, const Event& event, const LineStopped& fact)
{
    setGoing(bench, event, fact.line, true);
}
void on(Bench& bench, const Event& event, const LineGoing& fact)
{
    setGoing(bench, event, fact.line, false);
}

void on(Bench& bench, const Event&, const LinePlanned& fact)
{
    const auto known = std::ranges::find(bench.planned, fact.line, &LinePlanned::line);
    if (known == bench.planned.end() && !fact.removed)
        bench.planned.push_back(fact);
    else if (known != bench.planned.end() && fact.removed)
        bench.planned.erase(known);
    else if (known != bench.planned.end())
        *known = fact;
}

/// The entry that the birds which a failed check touches begin with.
Seq unprovenFrom(const Bench& bench, const Line& line)
{
    if (line.failedDose)
        return line.failedDose->from;
    return line.birdsAtGoodDose < 0 ? bench.shift->opened.seq : line.since.seq;
}

// Every check begins the count anew, good or not: failed ones add up what each of them touches, so
// that no bird is named twice and none is forgotten at the next good one.
void on(Bench& bench, const Event& event, const DoseChecked& fact)
{
    Line& line = lineIn(bench, fact.line, event);
    if (!fact.ok) {
        line.failedDose = Gap{birdsTouched(line), unprovenFrom(bench, line), event.seq};
    } else {
        line.birdsAtGoodDose = line.birds;
    }
    line.birdsAtDoseCheck = line.birds;
    line.since = momentOf(event);
}

void on(Bench& bench, const Event& event, const BirdsChecked& fact)
{
    lineIn(bench, fact.line, event).looked = {momentOf(event), fact.looked, fact.good,
                                              fact.targetPerMille, fact.confidencePerMille};
}

}  // namespace bathside::folds
