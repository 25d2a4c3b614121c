#include "core/record/deviations.h"

#include <algorithm>

namespace bathside {
namespace {

Deviation& rowFor(std::vector<Deviation>& rows, const Event& event, const JudgementKey& key)
{
    const auto found = std::ranges::find(rows, key, &Deviation::key);
    if (found != rows.end())
        return *found;
    return rows.emplace_back(
        Deviation{.seq = event.seq, .at = event.at.wall, .key = key, .bag = {}, .over = {}});
}

}  // namespace

std::vector<Deviation> deviationsOf(const State& state)
{
    std::vector<Deviation> rows;
    for (const auto& event : state.journal) {
        if (const auto* found = std::get_if<DeviationFound>(&event->fact)) {
            Deviation& row = rowFor(rows, *event, {found->limit, found->subject});
            row.bag = found->bag;
            row.over = found->over;
        } else if (const auto* again = std::get_if<Rejudged>(&event->fact)) {
            Deviation& row = rowFor(rows, *event, {again->limit, again->subject});
            row.bag = again->bag;
            row.over = again->over;
            row.rejudged = true;
        }
    }
    return rows;
}

}  // namespace bathside
