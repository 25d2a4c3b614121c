#pragma once

// A plain day to change one thing of: one line of 3,000 birds an hour from 07:00, bags of 400 mL
// and 800 mL, one lot of ampoules of 2,000 doses, nothing lost in bags or tubes.

#include "core/plan/input.h"

namespace bathside::plan::test {

[[nodiscard]] inline DayInput exampleDay(Count birds)
{
    using namespace std::chrono_literals;
    DayInput input;
    input.day = std::chrono::sys_days(2026y / 3 / 5);
    input.dose = {200};
    input.useLimit = 60min;
    input.prepareTime = 8min;
    Line line;
    line.name = "A";
    line.birds = birds;
    line.ratePerHour = 3000;
    line.start = 7h;
    input.lines = {line};
    input.bags = {{{400'000}, std::nullopt}, {{800'000}, std::nullopt}};
    input.recipe = {{"serotype 3", {{"K07", 2000, std::nullopt, input.day}}}};
    return input;
}

}  // namespace bathside::plan::test
