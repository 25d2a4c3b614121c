#include "ui/theme/role.h"

#include <QtGlobal>

namespace bathside::ui {

Role roleOf(Level level)
{
    switch (level) {
        case Level::HeadsUp:
            return Role::HeadsUp;
        case Level::Limit:
            return Role::Limit;
        case Level::Overrun:
            return Role::Overrun;
    }
    Q_UNREACHABLE();
}

Role roleOf(std::optional<Level> level) { return level ? roleOf(*level) : Role::Good; }

Role roleOf(std::optional<Verdict> verdict)
{
    switch (verdict.value_or(Verdict::Undecided)) {
        case Verdict::Inside:
            return Role::Good;
        case Verdict::Undecided:
            return Role::HeadsUp;
        case Verdict::Outside:
            return Role::Limit;
    }
    Q_UNREACHABLE();
}

Mark markOf(Role role)
{
    switch (role) {
        case Role::Neutral:
        case Role::Quiet:
        case Role::Primary:
            return Mark::None;
        case Role::Good:
            return Mark::Ring;
        case Role::HeadsUp:
            return Mark::Hourglass;
        case Role::Limit:
            return Mark::Slab;
        case Role::Overrun:
            return Mark::Burst;
        case Role::Rehearsal:
            return Mark::Slants;
    }
    Q_UNREACHABLE();
}

}  // namespace bathside::ui
