#include "ui/controls/paint.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

double edgeWidth(Outline outline)
{
    const double mm = outline == Outline::Strong ? Metrics::kFocusEdge : Metrics::kEdge;
    return theme().metrics().px(mm);
}

QRectF inset(const QRectF& where, double by) { return where.adjusted(by, by, -by, -by); }

}  // namespace

void drawPlate(QPainter& painter, const QRectF& where, const Tone& tone, Outline outline)
{
    const double width = edgeWidth(outline), corner = theme().metrics().px(Metrics::kCorner);
    QPen pen(tone.edge, width);
    if (outline == Outline::Dashed)
        pen.setDashPattern({3, 2});
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(pen);
    painter.setBrush(tone.fill);
    painter.drawRoundedRect(inset(where, width / 2), corner, corner);
}

void drawFocus(QPainter& painter, const QRectF& where, const QColor& colour)
{
    const double width = theme().metrics().px(Metrics::kFocusEdge);
    const double corner = theme().metrics().px(Metrics::kCorner);
    painter.setPen(QPen(colour, width));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(inset(where, width / 2), corner, corner);
}

void drawFuse(QPainter& painter, const QRectF& where, double used, double headsUp, const Tone& tone)
{
    if (used < 0)
        return;
    const double line = theme().metrics().px(0.4), round = where.height() / 2;
    const double burnt = where.width() * std::clamp(used, 0.0, 1.0);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    QPainterPath shape;
    shape.addRoundedRect(inset(where, line / 2), round, round);
    if (used < 1) {
        painter.setClipRect(where.adjusted(burnt, 0, 0, 0));
        painter.fillPath(shape, tone.bar);
        painter.setClipping(false);
    }
    painter.strokePath(shape, QPen(tone.bar, line));
    if (headsUp > 0 && headsUp < 1) {
        const double x = where.left() + headsUp * where.width(), half = theme().metrics().px(0.5);
        const bool solid = used < headsUp;
        painter.fillRect(QRectF(x - half, where.top(), 2 * half, where.height()),
                         solid ? tone.fill : tone.bar);
    }
    painter.restore();
}

}  // namespace bathside::ui
