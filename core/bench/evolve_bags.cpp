// Rows of `evolve`: a bag, from its start to its end.

#include <algorithm>

#include "core/bench/card_in_force.h"
#include "core/bench/evolve_rows.h"

namespace bathside::folds {

Bag* bagIn(Bench& bench, const BagId& id)
{
    const auto found = std::ranges::find(bench.bags, id, &Bag::id);
    return found == bench.bags.end() ? nullptr : &*found;
}

void on(Bench& bench, const Event& event, const BagStarted& fact)
{
    if (bench.next && mayHold(bench, bench.next->hash()))
        bench.card = std::exchange(bench.next, nullptr);
    Bag bag;
    bag.id = fact.bag;
    bag.volume = fact.volume;
    bag.diluentLot = fact.diluentLot;
    bag.lotStanding = fitness(bench.stores, diluentOf(fact.volume, fact.diluentLot));
    bag.temperature = fact.temperature;
    bag.card = bench.card;
    bag.started = momentOf(event);
    bench.bags.push_back(std::move(bag));
}

void on(Bench& bench, const Event& event, const BagInspected& fact)
{
    if (Bag* bag = bagIn(bench, fact.bag); bag && fact.ok)
        bag->inspected = momentOf(event);
}

void on(Bench& bench, const Event& event, const DiluentDrawn& fact)
{
    if (Bag* bag = bagIn(bench, fact.bag))
        bag->drawn = momentOf(event);
}

void on(Bench& bench, const Event& event, const BagMixed& fact)
{
    if (Bag* bag = bagIn(bench, fact.bag))
        bag->mixed = bag->swirled = momentOf(event);
}

void on(Bench& bench, const Event& event, const BagHung& fact)
{
    Bag* bag = bagIn(bench, fact.bag);
    if (!bag)
        return;
    bag->line = fact.line;
    bag->hung = momentOf(event);
    Line& line = lineIn(bench, fact.line, event);
    bag->hungAtBirds = line.birds;
    if (line.counts.empty())
        line.counts.push_back({event.at.wall, line.birds});
}

void on(Bench& bench, const Event& event, const BagSwirled& fact)
{
    Bag* bag = bagIn(bench, fact.bag);
    if (!bag)
        return;
    if (bag->swirled) {
        const auto gap = std::chrono::floor<Millis>(elapsed(bag->swirled->at, event.at).time);
        widen(bag->longestSwirlGap, gap.count(), bag->swirled->seq, event.seq);
    }
    bag->swirled = momentOf(event);
}

void on(Bench& bench, const Event& event, const BagHeld& fact)
{
    if (Bag* bag = bagIn(bench, fact.bag))
        bag->holds.push_back({momentOf(event), fact.why, fact.words.value_or("")});
}

/// Every hold that stands; of a bag of a shift before only the one that is named.
void on(Bench& bench, const Event& event, const BagReleased& fact)
{
    Bag* bag = bagIn(bench, fact.bag);
    if (!bag)
        return;
    for (BagHold& hold : bag->holds) {
        if (!hold.released && fact.of.value_or(hold.moment.seq) == hold.moment.seq)
            hold.released = {momentOf(event), fact.by, fact.why};
    }
}

void on(Bench& bench, const Event& event, const BagDown& fact)
{
    if (Bag* bag = bagIn(bench, fact.bag))
        bag->down = BagEnd{momentOf(event), fact.why, fact.left};
}

}  // namespace bathside::folds
