#pragma once

// What has to be exported for some local days of a trail: the ranges, and what they are judged by.

#include <chrono>

#include "core/record/export.h"
#include "core/trail/store/queries.h"

namespace bathside::store {

struct DaysWanted {
    std::chrono::year_month_day first;
    std::chrono::year_month_day last;  // within
    std::string version;               // of the program
    bool lines = true;
    std::vector<CsvDialect> sheets;
    std::shared_ptr<const SealKey> key{};  // signs the manifest
    std::string zone{};                    // by which days are cut; empty: see zoneOf
};

/// The zone by which a trail's days are cut: that of its last shift; UTC before the first one.
[[nodiscard]] Result<std::string, StoreTrouble> zoneOf(const TrailDb& trail);

[[nodiscard]] Result<ExportOrder, ExportFault> orderFor(const TrailDb& trail, const LocalDays& days,
                                                        const DaysWanted& wanted);

}  // namespace bathside::store
