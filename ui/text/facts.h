#pragma once

// A fact in plain language, one whole sentence, for the record.

#include <QString>
#include <string>

#include "core/facts/event.h"
#include "core/facts/facts.h"

namespace bathside::ui {

[[nodiscard]] QString factText(const Fact& fact);
/// A deviation's amount in its own unit: "1.2 s", "0.4 °C", "150 birds".
[[nodiscard]] QString overText(LimitName limit, std::int64_t over);
/// Time, person and sentence: "09:41:07  MK  Ampoule 2 of pull 3 went into the bath."
[[nodiscard]] QString eventText(const Event& event, const std::string& zone);

}  // namespace bathside::ui
