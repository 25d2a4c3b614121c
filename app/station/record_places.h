#pragma once

// Where exports and copies may go: this computer's documents, and the sticks that are mounted.

#include <vector>

#include "ui/models/record_source.h"

namespace bathside::app {

/// The documents first, then what is mounted where desktops mount sticks and can be written to.
[[nodiscard]] std::vector<ui::RecordPlace> recordPlaces();

/// `name`, or the first of `name-2`, `name-3` … that is not there yet in that folder.
[[nodiscard]] QString freeName(const QString& folder, const QString& name, const QString& ending);

}  // namespace bathside::app
