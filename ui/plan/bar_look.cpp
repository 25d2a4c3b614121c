#include "ui/plan/bar_look.h"

#include "ui/theme/theme.h"

namespace bathside::ui {

Role roleOf(const TimelineBar& bar)
{
    if (bar.small)
        return Role::HeadsUp;
    switch (bar.kind) {
        case TimelineBar::Kind::Planned:
            return Role::Neutral;
        case TimelineBar::Kind::Mixed:
        case TimelineBar::Kind::Open:
            return Role::Good;
        case TimelineBar::Kind::Making:
            return bar.next ? Role::Primary : Role::Neutral;
    }
    Q_UNREACHABLE();
}

bool hasMark(const PlacedBar& placed)
{
    return placed.bar.small && placed.bar.kind != TimelineBar::Kind::Making &&
           placed.plate.width() > theme().metrics().px(3 * kBarMark);
}

QRectF markRoom(const PlacedBar& placed)
{
    const double side = theme().metrics().px(kBarMark);
    return {placed.plate.left() + side / 4, placed.plate.center().y() - side / 2, side, side};
}

QRectF textRoom(const PlacedBar& placed)
{
    const double by = theme().metrics().px(1);
    const double mark = hasMark(placed) ? markRoom(placed).right() - placed.plate.left() : 0;
    return placed.plate.adjusted(by + mark, by / 3, -by, -by / 3);
}

}  // namespace bathside::ui
