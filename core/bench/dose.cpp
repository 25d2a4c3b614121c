#include "core/bench/dose.h"

namespace bathside {

bool doseIsInDoubt(const Line& line)
{
    return line.failedDose && line.failedDose->to == line.since.seq;
}

std::int64_t birdsTouched(const Line& line)
{
    return line.failedDose ? line.failedDose->amount + line.birds - line.birdsAtDoseCheck
                           : line.birds - line.birdsAtGoodDose;
}

std::optional<std::vector<UnprovenBirds>> unprovenBirds(const Bench& bench)
{
    std::vector<UnprovenBirds> unproven;
    const auto leave = [&](const LineId& line, std::int64_t birds) {
        if (birds > 0)
            unproven.push_back({line, birds});
    };
    for (const auto& [id, line] : bench.lines)
        leave(id, line.birds - line.birdsAtGoodDose);
    for (const auto& [id, birds] : bench.unproven) {
        if (!bench.lines.contains(id))  // it did not run in this shift
            leave(id, birds);
    }
    return unproven.empty() ? std::nullopt : std::optional(std::move(unproven));
}

}  // namespace bathside
