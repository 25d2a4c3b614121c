#pragma once

// Which alarms a day must raise and end, and when: reckoned a second time from the paper of the job
// (section 3), from the day's own words, with other means than the program's and none of its code.

#include <map>
#include <string>
#include <vector>

#include "core/alarms/level.h"
#include "core/bath/card_heat.h"
#include "tests/core/alarms/day.h"

namespace bathside::test {

struct Period {
    Level level{};
    Millis from{}, to{};
    friend bool operator==(const Period&, const Period&) = default;
};

/// By the alarm's id; in order of time, nothing of length zero, nothing that continues its like.
using Periods = std::map<std::string, std::vector<Period>>;

/// `learned`: what the record says that the shifts before taught of the time to slush; null:
/// nothing.
[[nodiscard]] Periods expectedAlarms(const Day& day, const SlushScale* learned);
[[nodiscard]] Periods tidied(Periods periods);

/// The one difference from the default card: what serotype 1 has of its own.
inline constexpr const char* kYearsCard = R"({"recipe": [
    {"component": "serotype 3"},
    {"component": "serotype 1",
     "exposure": {"heads_up_ms": 5000, "at_ms": 8000, "overrun_ms": 12000},
     "thaw": {"heads_up_ms": 70000, "at_ms": 85000, "overrun_ms": 92000}}]})";

}  // namespace bathside::test
