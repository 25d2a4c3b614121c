#pragma once

// What can hurt at the bench: the usual cautions, behind the label, local rules and licensed
// practice. (Spec: the job, section 5.)

#include <QString>

namespace bathside::ui {

[[nodiscard]] QString cautionsText();

}  // namespace bathside::ui
