#include "core/bath/silence.h"

#include <algorithm>
#include <vector>

namespace bathside {
namespace {

Micros patience(std::span<const RawReading> said)
{
    if (said.size() < 2)
        return kUnknownSilence;
    std::vector<Micros> pauses;
    for (std::size_t i = 1; i < said.size(); ++i)
        pauses.push_back(elapsed(said[i - 1].at, said[i].at).time);
    const auto middle = pauses.begin() + static_cast<std::ptrdiff_t>(pauses.size() / 2);
    std::ranges::nth_element(pauses, middle);
    return std::max<Micros>(kShortestSilence, kMissed * *middle);
}

}  // namespace

bool isSilent(std::span<const RawReading> said, const Stamp& since, const Stamp& now)
{
    if (!said.empty() && std::holds_alternative<ReadingFault>(said.back().value))
        return false;
    Micros quiet = elapsed(since, now).time;
    if (!said.empty())
        quiet = std::min(quiet, elapsed(said.back().at, now).time);
    return quiet >= kShortestSilence && quiet >= patience(said);
}

}  // namespace bathside
