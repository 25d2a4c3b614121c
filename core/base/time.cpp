#include "core/base/time.h"

#include <algorithm>

namespace bathside {

Elapsed elapsed(const Stamp& from, const Stamp& to)
{
    const bool sameBoot = from.bootId == to.bootId;
    const Micros time = sameBoot ? to.boot - from.boot : Micros(to.wall - from.wall);
    return {.time = std::max(time, Micros::zero()), .certain = sameBoot};
}

bool wentBackOverRestart(const Stamp& from, const Stamp& to)
{
    return from.bootId != to.bootId && to.wall < from.wall;
}

Stamp shifted(const Stamp& at, Micros by)
{
    const Micros wall = at.wall.time_since_epoch() + by;
    return {.wall = WallTime(std::chrono::floor<Millis>(wall)),
            .boot = at.boot + by,
            .bootId = at.bootId};
}

}  // namespace bathside
