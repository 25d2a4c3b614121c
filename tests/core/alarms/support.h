#pragma once

// Looking up one alarm in what is due; a bench with one ampoule out.

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "core/alarms/alarms.h"
#include "tests/support/benches.h"

namespace bathside::test {

inline constexpr const char* kExposure = "exposure ampoule:1/1";
inline constexpr const char* kThaw = "thaw ampoule:1/1";

inline BenchMaker outAt(Micros time)
{
    BenchMaker maker;
    maker.out({1, 1}, time);
    return maker;
}

inline BenchMaker outInLastBoot(Micros time)
{
    BenchMaker maker = outAt(time);
    maker.ampouleOf({1, 1}).steps[0]->at = inLastBoot(time);
    return maker;
}

inline std::optional<Alarm> alarmIn(const Alarms& state, const std::string& id)
{
    const auto found = std::ranges::find(state.due, id, &Alarm::id);
    return found == state.due.end() ? std::nullopt : std::optional(*found);
}

inline std::optional<Level> levelIn(const Alarms& state, const std::string& id)
{
    const auto alarm = alarmIn(state, id);
    return alarm ? std::optional(alarm->level) : std::nullopt;
}

inline std::vector<std::string> idsIn(const Alarms& state)
{
    std::vector<std::string> ids;
    for (const Alarm& alarm : state.due)
        ids.push_back(alarm.id);
    return ids;
}

}  // namespace bathside::test
