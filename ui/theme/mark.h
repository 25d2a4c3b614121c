#pragma once

// Draws the marks (role.h) in floating point, centred in a square that fits the rectangle.

#include <QColor>
#include <QRectF>

#include "ui/theme/role.h"

class QPainter;

namespace bathside::ui {

void drawMark(QPainter& painter, const QRectF& where, Mark mark, const QColor& colour);

}  // namespace bathside::ui
