#pragma once

// Trails of any length, fast: days of 3,000 events, one transaction each. On each day after the
// first something of the day before is signed.

#include <filesystem>

#include "core/trail/store/trail_db.h"
#include "tests/support/trail_days.h"

namespace bathside::test {

inline constexpr int kEventsADay = 3000;

/// At least so many events, in whole days; how many it became, or 0 where the disk would not.
inline Seq writeBigTrail(const std::filesystem::path& file, Seq events)
{
    auto trail = store::TrailDb::open(file, store::Mode::New);
    TrailDays days;
    Seq before = 0;
    while (trail && days.head().seq < events) {
        const Seq first = days.head().seq + 1;
        std::vector<Entry> day = days.day(kEventsADay);
        if (before > 0)
            day.push_back(days.entry(RecordSigned{Meaning::Reviewed, {before + 10}, {}}));
        before = first;
        if (!(*trail)->append(day))
            return 0;
    }
    return trail ? days.head().seq : 0;
}

}  // namespace bathside::test
