#pragma once

// What is due and what to do about it, in one sentence.
//
// For a limit the words are the card's, by language and level; for the station's own causes they
// are ours.

#include <QString>
#include <string>

#include "core/alarms/alarms.h"
#include "core/card/card.h"

namespace bathside::ui {

/// "Ampoule 2: look for slush". `language` is ISO 639-1, as Language::code() gives it. `card` may
/// be null: then the limit's name stands for its words. `fault`: why the thermometer gives none.
[[nodiscard]] QString alarmText(const Alarm& alarm, const Card* card, const std::string& language,
                                std::optional<ReadingFault> fault = {});
/// How long is left or over, or how many birds; empty where it is not a matter of either.
[[nodiscard]] QString alarmAmount(const Alarm& alarm);

[[nodiscard]] QString nothingDue();
[[nodiscard]] QString moreAlarms(int count);  // "+2 more"

}  // namespace bathside::ui
