#pragma once

// Words for the small closed sets of core, in the language of the screen. No set has a default: a
// new enumerator does not compile without its words.

#include <QString>

#include "core/alarms/alarms.h"
#include "core/alarms/level.h"
#include "core/bath/probe.h"
#include "core/bench/bench.h"
#include "core/bench/next.h"
#include "core/facts/event.h"
#include "core/facts/words.h"
#include "core/trail/ports.h"

namespace bathside::ui {

/// The sentence with a capital at its beginning.
[[nodiscard]] QString capitalised(QString text);

/// What has just been done, for the big button: "IN BATH", "OPENED". For `MoveOn` by its step; in
/// some languages the word depends on how many.
[[nodiscard]] QString doneWord(NextDeed deed, Step step, int ampoules = 1);
/// The line under it: "2 ampoules", "bag B4"; empty where there is nothing to add.
[[nodiscard]] QString doneLine(const Next& next);
[[nodiscard]] QString ampoulesText(int count);

[[nodiscard]] QString wordOf(Step step);                  // where an ampoule stands: "in bath"
[[nodiscard]] QString stateText(const Ampoule& ampoule);  // "in bath", "lost: broken", "in bag B4"
[[nodiscard]] QString whatText(const Ampoule& ampoule);   // component and lot
[[nodiscard]] QString wordOf(Level level);                // "heads-up", "limit", "overrun"
[[nodiscard]] QString wordOf(LossReason why);
[[nodiscard]] QString wordOf(bathside::Role role);
[[nodiscard]] QString wordOf(Meaning meaning);
[[nodiscard]] QString wordOf(HoldReason why);
[[nodiscard]] QString wordOf(DownReason why);
[[nodiscard]] QString wordOf(LimitName limit);     // the rule's name
[[nodiscard]] QString untilText(LimitName limit);  // under the clock: "until in the bath"
[[nodiscard]] QString pastText(LimitName limit);   // under the clock when it counts up
[[nodiscard]] QString wordOf(StationCause cause);  // the alarm's name
[[nodiscard]] QString wordOf(Verdict verdict);
[[nodiscard]] QString wordOf(ReadingFault fault);       // a sentence: why this is no reading
[[nodiscard]] QString shortWordOf(ReadingFault fault);  // the same in two or three words
[[nodiscard]] QString wordOf(ReadingWarning warning);
[[nodiscard]] QString wordOf(Proof proof);
[[nodiscard]] QString wordOf(Severity severity);
[[nodiscard]] QString wordOf(Sort sort);
[[nodiscard]] QString wordOf(RecordState::Health health);  // the chip: "recorded", "NOT RECORDED"

}  // namespace bathside::ui
