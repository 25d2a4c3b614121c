#pragma once

// What was typed of a check and not yet said: shots weighed so far, a vessel half described. Kept
// outside the record, so that the end of the program does not lose it; nothing of it counts.
//
// As a document to be kept and read back. What cannot be read is no draft. (Spec: checks.)

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/ids.h"
#include "core/base/time.h"
#include "core/checks/dose_measured.h"
#include "core/checks/vessel_described.h"

namespace bathside {

struct WeighedDraft {
    LineId line;                          // empty: none was chosen
    std::vector<std::int64_t> weights{};  // tenths of a mg; none: nothing is unfinished
    std::optional<ShotLiquid> liquid{};
    std::optional<MicroLitres> dose{};
    WallTime since{};  // of the last weight
};

struct VesselDraft {
    VesselId vessel;
    std::vector<VesselDescription::Row> rows{};
    std::optional<std::int64_t> millimetres{};  // of a row without its litres
    bool isTable = false;                       // no more rows
    std::optional<std::int64_t> minimum{};      // dL
    std::optional<MicroLitres> usual{};         // a day
    std::optional<std::int64_t> cubicMetres{};

    [[nodiscard]] bool isBegun() const { return !rows.empty() || millimetres; }
};

/// Empty where nothing is unfinished.
[[nodiscard]] std::string documentOf(const WeighedDraft& draft);
[[nodiscard]] std::string documentOf(const VesselDraft& draft);

[[nodiscard]] std::optional<WeighedDraft> weighedDraftFrom(std::string_view document);
[[nodiscard]] std::optional<VesselDraft> vesselDraftFrom(std::string_view document);

}  // namespace bathside
