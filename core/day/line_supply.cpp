#include "core/day/line_supply.h"

#include <algorithm>
#include <ranges>

#include "core/bench/next.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;

bool isThere(const Bag& bag) { return bag.isOpen() && !bag.held() && !bag.line; }

WallTime since(const std::optional<Moment>& moment, WallTime otherwise)
{
    return moment ? moment->at.wall : otherwise;
}

}  // namespace

// What the last count says, less what was given since: since that count, or since it was hung.
MicroLitres Supply::left(const Bag& bag) const
{
    MicroLitres left = volumeLeft(m_bench, bag);
    if (!bag.line)
        return left;
    const auto planned = std::ranges::find(m_bench.planned, *bag.line, &LinePlanned::line);
    if (planned == m_bench.planned.end())
        return left;
    const LineFlow flow = flowOf(m_bench, *planned, m_clock, m_now.wall);
    const WallTime counted = flow.countedAt.value_or(m_now.wall);
    const WallTime from = std::max(counted, since(bag.hung, counted));
    const LineFlow then = flowOf(m_bench, *planned, m_clock, from);
    const auto given = std::max<std::int64_t>(0, flow.birdsNow - then.birdsNow);
    left.count -= given * m_bench.card->content().dose.count;
    return std::max(left, MicroLitres{0});
}

plan::MadeBag Supply::madeBag(const BagId& id) const
{
    const Bag& bag = *m_bench.bag(id);
    return {.volume = bag.volume,
            .left = left(bag),
            .firstInDiluent = m_clock.elapsedAt(since(bag.firstDiluent, m_now.wall))};
}

WallTime Supply::runsOut(const LineToday& line) const
{
    const std::int64_t dose = m_bench.card->content().dose.count;
    std::int64_t birds = 0;
    if (line.openBag)
        birds += left(*m_bench.bag(*line.openBag)).count / dose;
    for (const BagId& id : line.mixedBags)
        birds += m_bench.bag(id)->volume.count / dose;
    const WallTime start =
        std::max(m_now.wall, m_clock.instant(m_clock.elapsedAt(line.planned.start)));
    return start + Millis(birds * Millis(1h).count() / line.flow.ratePerHour);
}

void Supply::shareOut(std::vector<LineToday>& lines) const
{
    const auto needy = [](const LineToday& line) {
        return line.flow.birdsNow < line.planned.birds;
    };
    for (const Bag& bag : m_bench.bags | std::views::filter(isThere)) {
        LineToday* first = nullptr;
        for (LineToday& line : lines | std::views::filter(needy)) {
            if (!first || runsOut(line) < runsOut(*first))
                first = &line;
        }
        if (first)
            first->mixedBags.push_back(bag.id);
    }
}

}  // namespace bathside
