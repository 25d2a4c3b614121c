#include "core/trail/seq_range.h"

#include <algorithm>

namespace bathside {

std::vector<SeqRange> joined(std::vector<SeqRange> runs)
{
    std::ranges::sort(runs, {}, &SeqRange::first);
    std::vector<SeqRange> joined;
    for (const SeqRange& run : runs) {
        if (!joined.empty() && run.first <= joined.back().last + 1)
            joined.back().last = std::max(joined.back().last, run.last);
        else
            joined.push_back(run);
    }
    return joined;
}

bool contain(const std::vector<SeqRange>& runs, Seq seq)
{
    return std::ranges::any_of(
        runs, [seq](const SeqRange& run) { return run.first <= seq && seq <= run.last; });
}

}  // namespace bathside
