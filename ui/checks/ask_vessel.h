#pragma once

// Describes a vessel figure by figure: its dipstick's table, its minimum, its usual loss, its room.
//
// What was typed stays in the draft and on the shelf, so that whoever is called away goes on where
// he was, also after the program has ended.

#include "core/checks/check_drafts.h"
#include "ui/checks/check_view.h"

namespace bathside::ui {

inline const QString kVesselDraft = QStringLiteral("vessel");  // on the shelf

/// The next figure that is missing; says it when there is none. Both outlive the question.
void askVessel(CheckContext& context, VesselDraft& draft);

}  // namespace bathside::ui
