#include "ui/controls/grid.h"

#include "ui/theme/theme.h"

namespace bathside::ui {

QRect cellOf(const QRect& room, const GridShape& shape, int index, int across)
{
    const int gap = theme().metrics().gapPx();
    const int wide = (room.width() - (shape.columns - 1) * gap) / shape.columns;
    const int high = (room.height() - (shape.rows - 1) * gap) / shape.rows;
    const int column = index % shape.columns, row = index / shape.columns;
    return {room.left() + column * (wide + gap), room.top() + row * (high + gap),
            across * wide + (across - 1) * gap, high};
}

}  // namespace bathside::ui
