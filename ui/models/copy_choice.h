#pragma once

// What a site sets up about copies of its record: where they go, and when one is made by itself.

#include <QString>

#include "core/record/copy_due.h"

namespace bathside::ui {

struct CopyChoice {
    QString folder;      // empty: this computer's documents
    int everyHours = 0;  // zero: not by the clock
    bool atShiftEnd = false;
    [[nodiscard]] CopyPlan plan() const
    {
        return {.every = std::chrono::hours(everyHours), .atShiftEnd = atShiftEnd};
    }
    friend bool operator==(const CopyChoice&, const CopyChoice&) = default;
};

}  // namespace bathside::ui
