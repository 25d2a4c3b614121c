#pragma once

// Which ampoule stands in which lane of the bench screen, and what its lane has to say.
//
// A place never changes while its ampoule is open: a new ampoule takes the lowest free lane, and
// when all were used, that of one that had ended before it came out. Pure.

#include <optional>
#include <vector>

#include "core/alarms/alarms.h"
#include "core/bench/next.h"
#include "ui/models/pull_draft.h"

namespace bathside::ui {

struct Lane {
    enum class Kind : std::uint8_t { Free, Planned, Running, InBag, Lost };
    Kind kind = Kind::Free;
    std::size_t planned = 0;  // its place in the draft, when Planned
    AmpouleRef ampoule;       // from Running on
    ComponentId component;
    LotId lot;
    Step reached{};
    std::optional<Step> next;  // none: nothing more to tap
    std::optional<Countdown> countdown;
    std::optional<Level> level;  // of its alarm
    std::optional<LossReason> lost;
    std::optional<BagId> bag;
};

/// Always PullDraft::kMost of them: the pull in hand, then what is planned.
[[nodiscard]] std::vector<Lane> lanes(const Bench& bench, const PullDraft& draft, const Alarms& due,
                                      const Stamp& now);

/// The pull in hand: the open one, or the last one for as long as the critical window lasts.
[[nodiscard]] const Pull* pullInHand(const Bench& bench, const Stamp& now);

/// Open ampoules for which there is no lane, because more are out than the screen has.
[[nodiscard]] int ampoulesWithoutLane(const Bench& bench, const Stamp& now);

}  // namespace bathside::ui
