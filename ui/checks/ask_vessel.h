#pragma once

// Describes a vessel figure by figure: its dipstick's table, its minimum, its usual loss, its room.
//
// What was typed stays in the draft, so that whoever is called away goes on where he was.

#include "core/checks/vessel_described.h"
#include "ui/checks/check_view.h"

namespace bathside::ui {

struct VesselDraft {
    VesselId vessel;
    std::vector<VesselDescription::Row> rows;
    std::optional<std::int64_t> millimetres;  // of a row without its litres
    bool isTable = false;                     // no more rows
    std::optional<std::int64_t> minimum;      // dL
    std::optional<MicroLitres> usual;         // a day
    std::optional<std::int64_t> cubicMetres;
};

/// The next figure that is missing; says it when there is none. Both outlive the question.
void askVessel(CheckContext& context, VesselDraft& draft);

}  // namespace bathside::ui
