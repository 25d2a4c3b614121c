#pragma once

// What everything that is asked at the bench needs: the model, the pull being planned, the asker.
//
// The questions are free functions over this; it outlives every one of them (the page owns it).

#include <functional>
#include <string>

#include "ui/bench/asker.h"
#include "ui/models/pull_draft.h"
#include "ui/models/station_model.h"
#include "ui/text/language.h"

namespace bathside::ui {

/// Somebody who may judge has shown by their PIN who they are.
using JudgedBy = std::function<void(const PersonId& by)>;

struct BenchContext {
    StationModel& model;
    PullDraft& draft;
    Asker& asker;
    const Language& language;
    std::string zone;  // IANA name of the site's zone, for a new shift
    std::function<void(const QString& page)> goTo;
    std::function<void()> draftChanged;
    std::function<void()> later;                     // what is asked can wait
    std::function<void(const BagId&)> printLabel{};  // none: no label is offered here
    /// Asks for a lead's PIN under the sentence that is signed; none: nothing is judged here.
    std::function<void(const QString& meaning, JudgedBy)> sign{};

    [[nodiscard]] const Bench& bench() const { return model.bench(); }
    /// The shift's zone, else the site's.
    [[nodiscard]] const std::string& zoneNow() const
    {
        return bench().shift ? bench().shift->zone : zone;
    }
    /// Says it and closes what is asked; leaves it open when it was refused.
    void say(const Intent& intent, const AnswerTap& tap) const
    {
        if (model.say(intent, tap.inputMs, tap.place))
            asker.close();
    }
};

}  // namespace bathside::ui
