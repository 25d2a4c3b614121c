#pragma once

// What a colour means. A page names a role, never a colour; a status is always said three times, by
// mark (shape), word and colour, so that none of them carries it alone. Nothing blinks.

#include <optional>

#include "core/alarms/level.h"
#include "core/facts/words.h"

namespace bathside::ui {

enum class Role {
    Neutral,    // a panel: neither good nor bad
    Quiet,      // not needed now: faded back, still readable
    Primary,    // the next step
    Good,       // calm: inside its limit, recorded, proven
    HeadsUp,    // a limit is near, or not sure
    Limit,      // passed now
    Overrun,    // passed and nobody acted; not recorded; no sound
    Rehearsal,  // nothing here counts
};
inline constexpr int kRoles = 8;

/// Our own set of shapes, told apart by outline alone.
enum class Mark {
    None,
    Ring,       // good
    Hourglass,  // heads-up
    Slab,       // limit
    Burst,      // overrun
    Slants,     // rehearsal
    Tick,       // recorded
    OpenTick,   // taken, not recorded yet
    Cross,      // lost, wrong, close
    Note,       // sound
    Sheet,      // record
    Drop,       // bath
    Arrow,      // moves on
    Back,       // take back, delete the last sign
    Ear,        // heard
    Bag,
    Ampoule,
};
inline constexpr int kMarks = 17;

[[nodiscard]] Role roleOf(Level level);
/// No alarm is good.
[[nodiscard]] Role roleOf(std::optional<Level> level);
/// Of the bath: none (no valid reading) counts as not sure.
[[nodiscard]] Role roleOf(std::optional<Verdict> verdict);

/// The shape that goes with a role; none for Neutral, Quiet and Primary.
[[nodiscard]] Mark markOf(Role role);

}  // namespace bathside::ui
