#include "core/bench/state.h"

#include <algorithm>

#include "core/bench/amend.h"

namespace bathside {
namespace {

using Journal = std::vector<std::shared_ptr<const Event>>;

Journal::iterator placeOf(Journal& journal, Seq seq)
{
    const auto found =
        std::ranges::lower_bound(journal, seq, {}, [](const auto& event) { return event->seq; });
    return found != journal.end() && (*found)->seq == seq ? found : journal.end();
}

void strike(Journal& journal, const FactTakenBack& fact)
{
    for (const Seq seq : fact.seqs) {
        if (const auto place = placeOf(journal, seq); place != journal.end())
            journal.erase(place);
    }
}

void amend(Journal& journal, const FactCorrected& fact)
{
    const auto place = placeOf(journal, fact.seq);
    if (place == journal.end())
        return;
    const auto event = amended(**place, fact.field, fact.value);
    if (!event)
        return;
    if (*event)
        *place = std::make_shared<const Event>(**event);
    else
        journal.erase(place);
}

Bench folded(Bench bench, const Journal& journal)
{
    for (const auto& event : journal)
        bench = evolve(std::move(bench), *event);
    return bench;
}

}  // namespace

State evolve(State state, const Event& event)
{
    if (std::holds_alternative<ShiftOpened>(event.fact)) {
        state.opening = state.bench;
        state.journal.clear();
    }
    const auto* takenBack = std::get_if<FactTakenBack>(&event.fact);
    const auto* corrected = std::get_if<FactCorrected>(&event.fact);
    if (takenBack)
        strike(state.journal, *takenBack);
    if (corrected)
        amend(state.journal, *corrected);

    state.journal.push_back(std::make_shared<const Event>(event));
    state.bench = takenBack || corrected ? folded(state.opening, state.journal)
                                         : evolve(std::move(state.bench), event);
    return state;
}

const Event* eventAt(const State& state, Seq seq)
{
    const auto found = std::ranges::lower_bound(state.journal, seq, {},
                                                [](const auto& event) { return event->seq; });
    return found != state.journal.end() && (*found)->seq == seq ? found->get() : nullptr;
}

}  // namespace bathside
