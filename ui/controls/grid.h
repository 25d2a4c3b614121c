#pragma once

// Where targets stand in rows and columns: even, with the theme's gap, at whole pixels.

#include <QRect>

namespace bathside::ui {

struct GridShape {
    int columns = 1;
    int rows = 1;
};

/// Cell number `index` (row by row) of `room`, `across` cells wide.
[[nodiscard]] QRect cellOf(const QRect& room, const GridShape& shape, int index, int across = 1);

}  // namespace bathside::ui
