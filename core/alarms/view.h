#pragma once

// The bench at one instant, as the rows look at it. There has to be a card in force.

#include "core/alarms/course.h"

namespace bathside {

struct View {
    const Bench& bench;
    const Stamp& now;

    [[nodiscard]] Origin origin(const Stamp& from) const { return originOf(bench, from, now); }
    [[nodiscard]] const Limit& limit(LimitName name) const { return bench.card->limit(name); }
    [[nodiscard]] const Card& cardOf(const Bag& bag) const
    {
        return *(bag.card ? bag.card : bench.card);
    }
};

}  // namespace bathside
