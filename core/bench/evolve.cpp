#include "core/bench/evolve_rows.h"

namespace bathside {

Moment folds::momentOf(const Event& event, bool timed) { return {event.at, timed, event.seq}; }

Bench evolve(Bench bench, const Event& event)
{
    std::visit([&](const auto& fact) { folds::on(bench, event, fact); }, event.fact);
    evolve(bench.stores, event);
    evolve(bench.people, event);
    evolve(bench.reviews, event);
    if (!event.place.empty())
        bench.lastTapAt[event.place] = event.at;
    bench.last = event.at;
    bench.lastSeq = event.seq;
    return bench;
}

}  // namespace bathside
