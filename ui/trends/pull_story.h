#pragma once

// What the record says of one point: the sentences of its pull, or of its check, with whatever
// mended them or followed from them.

#include <vector>

#include "core/trail/entry.h"
#include "ui/record/field_sheet.h"
#include "ui/trends/aliases.h"

namespace bathside::ui {

/// `entries`: of the whole shift. By time and person, each with its sentence.
[[nodiscard]] QList<Field> storyOf(const ChartPoint& point, const std::vector<Entry>& entries,
                                   const Aliases& people, const std::string& zone);

}  // namespace bathside::ui
