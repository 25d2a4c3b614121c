#pragma once

// Short lines one over the other, each whole by itself: what a bar or a cell says.

#include <QStringList>

#include "ui/controls/fitted_text.h"

namespace bathside::ui {

/// In the smallest letters, evenly over the height of the room.
[[nodiscard]] QList<PlacedText> stacked(const QStringList& lines, const QRectF& room,
                                        Qt::Alignment across, const QColor& ink);
/// The first of them that is whole in that room; empty: none is.
[[nodiscard]] QStringList firstThatFits(const QList<QStringList>& wishes, const QRectF& room);

}  // namespace bathside::ui
