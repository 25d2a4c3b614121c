#include "ui/theme/mark.h"

#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>
#include <cmath>
#include <numbers>

// Every mark is drawn in a square from -1 to 1, y downwards; strokes are 0.34 wide, so that the
// shape still reads at 2 m when it is 6 mm high.

namespace bathside::ui {
namespace {

constexpr double kStroke = 0.34;

class Pencil {
public:
    Pencil(QPainter& painter, const QColor& colour) : m_painter(painter), m_colour(colour) {}

    void fill(const QPainterPath& path) { m_painter.fillPath(path, m_colour); }
    void fill(std::initializer_list<QPointF> corners)
    {
        QPainterPath path;
        path.addPolygon(QPolygonF(QList<QPointF>(corners)));
        path.closeSubpath();
        fill(path);
    }
    void stroke(const QPainterPath& path, double width = kStroke)
    {
        m_painter.strokePath(path,
                             QPen(m_colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    }
    void stroke(std::initializer_list<QPointF> points, double width = kStroke)
    {
        QPainterPath path;
        path.addPolygon(QPolygonF(QList<QPointF>(points)));
        stroke(path, width);
    }

private:
    QPainter& m_painter;
    QColor m_colour;
};

void ring(Pencil& pencil)
{
    QPainterPath path;
    path.addEllipse(QPointF(0, 0), 0.74, 0.74);
    pencil.stroke(path, 0.4);
}

void hourglass(Pencil& pencil)
{
    pencil.fill({{-0.8, -0.95}, {0.8, -0.95}, {0.12, 0}, {0.8, 0.95}, {-0.8, 0.95}, {-0.12, 0}});
}

void slab(Pencil& pencil)
{
    pencil.fill({{-0.85, -0.85}, {0.85, -0.85}, {0.85, 0.85}, {-0.85, 0.85}});
}

void burst(Pencil& pencil)
{
    constexpr int kSpikes = 8;
    QPainterPath path;
    for (int i = 0; i < 2 * kSpikes; ++i) {
        const double radius = i % 2 == 0 ? 1.0 : 0.52;
        const double angle = std::numbers::pi * (i / double{kSpikes} - 0.5);
        const QPointF corner(radius * std::cos(angle), radius * std::sin(angle));
        i == 0 ? path.moveTo(corner) : path.lineTo(corner);
    }
    path.closeSubpath();
    pencil.fill(path);
}

void slants(Pencil& pencil)
{
    for (const double x : {-0.72, 0.0, 0.72})
        pencil.stroke({{x - 0.22, 0.8}, {x + 0.22, -0.8}}, 0.3);
}

void tick(Pencil& pencil, double width)
{
    pencil.stroke({{-0.72, 0.08}, {-0.2, 0.6}, {0.75, -0.62}}, width);
}

// Two thin outlines of a tick: hollow, seen apart from the full one by shape.
void openTick(Pencil& pencil)
{
    QPainterPath outline;
    outline.addPolygon(QPolygonF({{-0.72, 0.08}, {-0.2, 0.6}, {0.75, -0.62}}));
    QPainterPathStroker stroker;
    stroker.setWidth(0.46);
    stroker.setCapStyle(Qt::RoundCap);
    stroker.setJoinStyle(Qt::RoundJoin);
    pencil.stroke(stroker.createStroke(outline).simplified(), 0.11);
}

void cross(Pencil& pencil)
{
    pencil.stroke({{-0.62, -0.62}, {0.62, 0.62}});
    pencil.stroke({{0.62, -0.62}, {-0.62, 0.62}});
}

void note(Pencil& pencil)
{
    QPainterPath head;
    head.addEllipse(QPointF(-0.3, 0.62), 0.42, 0.32);
    pencil.fill(head);
    pencil.stroke({{0.03, 0.6}, {0.03, -0.8}, {0.6, -0.45}}, 0.22);
}

void sheet(Pencil& pencil)
{
    QPainterPath page;
    page.addRect(QRectF(-0.62, -0.85, 1.24, 1.7));
    pencil.stroke(page, 0.2);
    for (const double y : {-0.4, 0.0, 0.4})
        pencil.stroke({{-0.3, y}, {0.3, y}}, 0.16);
}

void drop(Pencil& pencil)
{
    QPainterPath path(QPointF(0, -0.95));
    path.cubicTo({0.25, -0.4}, {0.68, -0.05}, {0.68, 0.32});
    path.cubicTo({0.68, 0.7}, {0.38, 0.95}, {0, 0.95});
    path.cubicTo({-0.38, 0.95}, {-0.68, 0.7}, {-0.68, 0.32});
    path.cubicTo({-0.68, -0.05}, {-0.25, -0.4}, {0, -0.95});
    pencil.fill(path);
}

void arrow(Pencil& pencil)
{
    pencil.stroke({{-0.7, 0}, {0.65, 0}});
    pencil.stroke({{0.1, -0.55}, {0.7, 0}, {0.1, 0.55}});
}

void back(Pencil& pencil)
{
    QPainterPath path(QPointF(-0.6, -0.3));
    path.lineTo(0.15, -0.3);
    path.arcTo(QRectF(-0.3, -0.3, 0.95, 0.95), 90, -180);
    path.lineTo(-0.3, 0.65);
    pencil.stroke(path, 0.28);
    pencil.stroke({{-0.2, -0.75}, {-0.68, -0.3}, {-0.2, 0.15}}, 0.28);
}

void ear(Pencil& pencil)
{
    QPainterPath outer(QPointF(-0.45, -0.2));
    outer.cubicTo({-0.5, -1.1}, {0.75, -1.1}, {0.6, -0.15});
    outer.cubicTo({0.52, 0.3}, {0.15, 0.25}, {0.1, 0.6});
    outer.cubicTo({0.05, 1.0}, {-0.5, 0.98}, {-0.45, 0.55});
    pencil.stroke(outer, 0.24);
    QPainterPath inner(QPointF(-0.12, -0.15));
    inner.cubicTo({-0.12, -0.6}, {0.3, -0.55}, {0.25, -0.15});
    pencil.stroke(inner, 0.18);
}

void bag(Pencil& pencil)
{
    QPainterPath body;
    body.addRoundedRect(QRectF(-0.55, -0.7, 1.1, 1.25), 0.25, 0.25);
    pencil.stroke(body, 0.2);
    pencil.stroke({{0, 0.6}, {0, 0.92}}, 0.2);
    pencil.stroke({{-0.15, -0.95}, {0.15, -0.95}}, 0.18);
    pencil.fill({{-0.5, -0.1}, {0.5, -0.1}, {0.5, 0.45}, {-0.5, 0.45}});
}

void ampoule(Pencil& pencil)
{
    QPainterPath path(QPointF(-0.12, -0.95));
    path.lineTo(0.12, -0.95);
    path.cubicTo({0.12, -0.45}, {0.38, -0.4}, {0.38, -0.1});
    path.lineTo(0.38, 0.9);
    path.lineTo(-0.38, 0.9);
    path.lineTo(-0.38, -0.1);
    path.cubicTo({-0.38, -0.4}, {-0.12, -0.45}, {-0.12, -0.95});
    pencil.stroke(path, 0.18);
    pencil.fill({{-0.3, 0.2}, {0.3, 0.2}, {0.3, 0.85}, {-0.3, 0.85}});
}

void draw(Pencil& pencil, Mark mark)
{
    switch (mark) {
        case Mark::None:
            return;
        case Mark::Ring:
            return ring(pencil);
        case Mark::Hourglass:
            return hourglass(pencil);
        case Mark::Slab:
            return slab(pencil);
        case Mark::Burst:
            return burst(pencil);
        case Mark::Slants:
            return slants(pencil);
        case Mark::Tick:
            return tick(pencil, kStroke);
        case Mark::OpenTick:
            return openTick(pencil);
        case Mark::Cross:
            return cross(pencil);
        case Mark::Note:
            return note(pencil);
        case Mark::Sheet:
            return sheet(pencil);
        case Mark::Drop:
            return drop(pencil);
        case Mark::Arrow:
            return arrow(pencil);
        case Mark::Back:
            return back(pencil);
        case Mark::Ear:
            return ear(pencil);
        case Mark::Bag:
            return bag(pencil);
        case Mark::Ampoule:
            return ampoule(pencil);
    }
}

}  // namespace

void drawMark(QPainter& painter, const QRectF& where, Mark mark, const QColor& colour)
{
    const double half = std::min(where.width(), where.height()) / 2;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(where.center());
    painter.scale(half, half);
    Pencil pencil(painter, colour);
    draw(pencil, mark);
    painter.restore();
}

}  // namespace bathside::ui
