#pragma once

// Looking up one alarm in what is due.

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "core/alarms/alarms.h"

namespace bathside::test {

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
