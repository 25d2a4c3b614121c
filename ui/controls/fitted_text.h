#pragma once

// Text that finds its room: as high as wanted, else smaller down to the least height, broken into
// lines where a line is not enough; never cut with dots.

#include <QColor>
#include <QFont>
#include <QList>
#include <QRectF>
#include <QString>
#include <QStringList>

#include "ui/theme/metrics.h"

class QPainter;

namespace bathside::ui {

/// Heights are reckoned from the height of capitals, not from the font's generous line box: one
/// line takes kLineShare capitals (accents above, descenders below), each further one kPitchShare.
/// Digits alone take 1.
inline constexpr double kLineShare = 1.64, kPitchShare = 1.6;

struct TextWish {
    double capMm = Metrics::kWords;    // height of capitals as wanted
    double leastMm = Metrics::kSmall;  // and at least
    Weight weight = Weight::Regular;
    int maxLines = 99;
};

struct FittedText {
    QFont font;
    QStringList lines;
    QSizeF size;        // of all lines as drawn
    bool whole = true;  // everything is inside the room at no less than the least height
};

[[nodiscard]] FittedText fitted(const QString& text, const QSizeF& room, const TextWish& wish);
/// In the painter's pen colour.
void drawFitted(QPainter& painter, const QRectF& room, Qt::Alignment alignment,
                const FittedText& text);

/// One text with its place on a widget: what is drawn is what is checked for room.
struct PlacedText {
    QString text{};
    QRectF room;
    Qt::Alignment alignment = Qt::AlignCenter;
    TextWish wish;
    QColor ink;
};
[[nodiscard]] bool allFit(const QList<PlacedText>& texts);
void drawAll(QPainter& painter, const QList<PlacedText>& texts);

/// Height that lines of that height of capitals take, px.
[[nodiscard]] double heightOf(int lines, double capMm, Weight weight);
/// Width of one line at that height, px.
[[nodiscard]] double widthOf(const QString& text, double capMm, Weight weight);

}  // namespace bathside::ui
