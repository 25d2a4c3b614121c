#pragma once

// What the one big button says has been done, and what a tap on it means: an intent, or a question
// that has to be asked first. Enabled by the rule that will judge the tap. Pure but for the model
// it asks.

#include <QString>
#include <optional>

#include "core/bench/intent.h"
#include "ui/models/pull_draft.h"
#include "ui/models/station_model.h"

namespace bathside::ui {

struct BigStep {
    /// What is asked, or done, when there is no intent yet.
    enum class Asks : std::uint8_t { Nothing, Person, SetUp, Bag, Ampoules, Lot, Line, Label };

    QString word;
    QString line;
    QString reason;  // not empty: it would be refused now, and why
    std::optional<Intent> intent;
    Asks asks = Asks::Nothing;
    std::optional<BagId> bag;  // the bag it is about
};

[[nodiscard]] BigStep bigStep(const StationModel& model, const PullDraft& draft);

/// What stands beside the big button: a later step, for when the next one was missed (which it
/// implies), the inspection's other outcome, or the label of the bag that is mixed (not in the
/// critical window). None: nothing.
[[nodiscard]] std::optional<BigStep> sideStep(const StationModel& model);

/// "B7" after "B6": the last bag's name with its number one up; "B1" at first.
[[nodiscard]] BagId nextBagName(const Bench& bench);

/// The line a mixed bag can only mean: the one line that has none; none when several are or none
/// is.
[[nodiscard]] std::optional<LineId> onlyFreeLine(const Bench& bench);

}  // namespace bathside::ui
