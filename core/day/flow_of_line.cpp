#include "core/day/flow_of_line.h"

#include <algorithm>
#include <cmath>

namespace bathside {
namespace {

using namespace std::chrono_literals;

constexpr double kConfidence = 0.95;
constexpr Millis kEnough = 10min;  // of running on record; from memory

/// One stretch between two counts, or between a stop and what it interrupts.
struct Stretch {
    WallTime from{};
    WallTime to{};
};

Millis running(const Line& line, const plan::LineClock& breaks, const DayClock& clock,
               const Stretch& span)
{
    Millis total = breaks.workBetween(clock.elapsedAt(span.from), clock.elapsedAt(span.to));
    for (const StandStill& stop : line.stops) {
        const WallTime from = std::max(stop.from, span.from);
        const WallTime to = std::min(stop.to.value_or(span.to), span.to);
        if (from < to)
            total -= breaks.workBetween(clock.elapsedAt(from), clock.elapsedAt(to));
    }
    return std::max(total, 0ms);
}

std::vector<FlowPiece> piecesOf(const Line& line, const plan::LineClock& breaks,
                                const DayClock& clock)
{
    std::vector<FlowPiece> pieces;
    for (std::size_t i = 1; i < line.counts.size(); ++i) {
        const BirdCount &a = line.counts[i - 1], &b = line.counts[i];
        const auto ran = running(line, breaks, clock, {a.at, b.at});
        if (ran > 0ms)
            pieces.push_back(
                {std::chrono::duration<double>(ran).count(), static_cast<int>(b.total - a.total)});
    }
    return pieces;
}

std::optional<Flow> measured(const std::vector<FlowPiece>& pieces)
{
    double seconds = 0;
    std::int64_t birds = 0;
    for (const FlowPiece& piece : pieces) {
        seconds += piece.seconds;
        birds += piece.birds;
    }
    if (birds == 0 || seconds < std::chrono::duration<double>(kEnough).count())
        return std::nullopt;
    return measuredFlow(pieces, kConfidence);
}

std::int64_t reckoned(const Line& line, const plan::LineClock& breaks, const DayClock& clock,
                      std::int64_t perHour, WallTime now)
{
    if (line.counts.empty())
        return 0;
    const auto ran = running(line, breaks, clock, {line.counts.back().at, now});
    return line.birds + ran.count() * perHour / Millis(1h).count();
}

}  // namespace

std::vector<plan::Break> breaksOf(const LinePlanned& planned, const DayClock& clock)
{
    std::vector<plan::Break> breaks;
    for (const DaySpan& span : planned.breaks)
        breaks.push_back({clock.elapsedAt(span.from), clock.elapsedAt(span.to)});
    return breaks;
}

LineFlow flowOf(const Bench& bench, const LinePlanned& planned, const DayClock& clock, WallTime now)
{
    LineFlow flow{.measured = {}, .ratePerHour = planned.birdsPerHour, .countedAt = {}};
    const auto found = bench.lines.find(planned.line);
    if (found == bench.lines.end())
        return flow;
    const Line& line = found->second;
    const plan::LineClock breaks(breaksOf(planned, clock), 1);
    flow.measured = measured(piecesOf(line, breaks, clock));
    if (flow.measured)
        flow.ratePerHour = std::max<std::int64_t>(1, std::llround(flow.measured->perHour));
    if (!line.counts.empty())
        flow.countedAt = line.counts.back().at;
    flow.birdsNow = std::min(reckoned(line, breaks, clock, flow.ratePerHour, now),
                             std::max(planned.birds, line.birds));
    return flow;
}

}  // namespace bathside
