#include "core/bench/dose.h"

namespace bathside {

bool doseIsInDoubt(const Line& line)
{
    return line.failedDose && line.failedDose->to == line.since.seq;
}

std::int64_t birdsTouched(const Line& line)
{
    const std::int64_t before = line.failedDose ? line.failedDose->amount : 0;
    return before + line.birds - line.birdsAtDoseCheck;
}

}  // namespace bathside
