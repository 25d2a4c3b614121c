#include "core/bench/card_in_force.h"

namespace bathside {

bool mayHold(const Bench& bench, const CardHash& card)
{
    return !bench.people.areListed() || bench.approved.contains(card);
}

const Card* cardOfNextBag(const Bench& bench)
{
    const bool comes = bench.next && mayHold(bench, bench.next->hash());
    return comes ? bench.next.get() : bench.card.get();
}

const Card* unapproved(const Bench& bench)
{
    const bool waits = bench.next && !mayHold(bench, bench.next->hash());
    return waits ? bench.next.get() : nullptr;
}

}  // namespace bathside
