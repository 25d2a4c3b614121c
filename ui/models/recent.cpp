#include "ui/models/recent.h"

#include <algorithm>

namespace bathside::ui {
namespace {

bool isSaid(const Event& event)
{
    return !event.place.empty() && !std::holds_alternative<TapRefused>(event.fact);
}

}  // namespace

std::vector<Said> lastSaid(const State& state, Seq recorded, std::size_t most)
{
    std::vector<Said> found;
    TapId tap;
    for (auto event = state.journal.rbegin(); event != state.journal.rend(); ++event) {
        if (!isSaid(**event))
            continue;
        if (found.empty() || (*event)->tap != tap) {
            if (found.size() == most)
                break;
            found.push_back({.seqs = {}, .facts = {}, .at = (*event)->at, .recorded = true});
            tap = (*event)->tap;
        }
        Said& said = found.back();
        said.seqs.push_back((*event)->seq);
        said.facts.push_back((*event)->fact);
        said.recorded = said.recorded && (*event)->seq <= recorded;
    }
    for (Said& said : found) {
        std::ranges::reverse(said.seqs);
        std::ranges::reverse(said.facts);
    }
    return found;
}

}  // namespace bathside::ui
