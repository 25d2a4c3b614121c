#pragma once

// The two things everything is painted with: a plate and a bar. Device-independent, floating point.

#include <QRectF>

#include "ui/theme/palette.h"

class QPainter;

namespace bathside::ui {

enum class Outline { Plain, Strong, Dashed };

/// A rounded plate that fills `where`, its outline inside it.
void drawPlate(QPainter& painter, const QRectF& where, const Tone& tone,
               Outline outline = Outline::Plain);
/// The keyboard's focus, just inside `where`.
void drawFocus(QPainter& painter, const QRectF& where, const QColor& colour);

/// A fuse: solid from what has burnt (`used`, 1 at the limit) to its end, hollow before it, a notch
/// where the heads-up stands. Past the limit nothing is left solid. `used` below zero draws
/// nothing.
void drawFuse(QPainter& painter, const QRectF& where, double used, double headsUp,
              const Tone& tone);

}  // namespace bathside::ui
