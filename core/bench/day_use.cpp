#include "core/bench/day_use.h"

#include <algorithm>
#include <set>

namespace bathside {
namespace {

void addPulls(const Bench& bench, DayUse& use)
{
    for (const Pull& pull : bench.pulls) {
        for (const Ampoule& ampoule : pull.ampoules) {
            ++use.out;
            use.lost += ampoule.lost ? 1 : 0;
            if (!ampoule.bag)
                continue;
            ++use.bagged;
            ++use.baggedOf[ampoulesOf(ampoule.component, ampoule.lot)];
        }
    }
}

void addBags(const Bench& bench, DayUse& use)
{
    std::set<LineId> lines;
    for (const Bag& bag : bench.bags) {
        if (bag.line)
            lines.insert(*bag.line);
        if (!bag.down) {
            ++use.bagsOpen;
            continue;
        }
        use.in = use.in + bag.volume;
        use.left = use.left + bag.down->left;
    }
    use.lines = std::ssize(lines);
}

std::int64_t birdsToCome(const Bench& bench)
{
    std::int64_t birds = 0;
    for (const LinePlanned& plan : bench.planned) {
        const auto line = bench.lines.find(plan.line);
        const std::int64_t done = line == bench.lines.end() ? 0 : line->second.birds;
        birds += std::max<std::int64_t>(0, plan.birds - done);
    }
    return birds;
}

}  // namespace

DayUse dayUse(const Bench& bench)
{
    DayUse use;
    addPulls(bench, use);
    addBags(bench, use);
    for (const auto& [id, line] : bench.lines)
        use.birds += line.birds;
    return use;
}

std::vector<Demand> demands(const Bench& bench)
{
    std::vector<Demand> all;
    const std::int64_t birds = birdsToCome(bench);
    if (!bench.card || birds == 0)
        return all;
    for (const Component& part : bench.card->content().recipe)
        all.push_back({StockKind::Ampoule, part.id.text, {}, birds});
    return all;
}

}  // namespace bathside
