#pragma once

// One entry in words: who, when, what became of it, what the linked ones are to it, and its exact
// content as it is hashed.

#include "ui/record/record_text.h"

namespace bathside::ui {

/// Who, and how sure the record is of it; both clocks; what became of it.
[[nodiscard]] QString aboutText(const DayRow& row, const std::string& zone);
/// What `other` is to `row`: "its correction". `other` null: it is not of these days.
[[nodiscard]] QString bondText(const DayRow& row, const DayRow* other);
/// The exact content of an entry, as it is hashed.
[[nodiscard]] Sheet sheetOf(const DayRow& row, const std::string& zone);

}  // namespace bathside::ui
