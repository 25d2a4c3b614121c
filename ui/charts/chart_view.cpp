#include "ui/charts/chart_view.h"

#include <QChart>
#include <QMouseEvent>
#include <QPainter>
#include <QTouchEvent>
#include <QValueAxis>
#include <algorithm>
#include <cmath>
#include <vector>

#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kMarkMm = 4, kAsideMm = 1, kDotMm = 0.8, kRuleMm = 0.35;
constexpr double kWheelStep = 1.25;  // of one notch

double distance(const QPointF& a, const QPointF& b)
{
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

}  // namespace

Qt::PenStyle styleOf(Stroke stroke)
{
    switch (stroke) {
        case Stroke::Solid:
            return Qt::SolidLine;
        case Stroke::Dashed:
            return Qt::DashLine;
        case Stroke::Dotted:
            return Qt::DotLine;
    }
    Q_UNREACHABLE();
}

ChartView::ChartView(QChart* chart, const ChartContent& content, Fingers fingers, QWidget* parent)
    : QChartView(chart, parent), m_content(content), m_fingers(std::move(fingers))
{
    setRenderHint(QPainter::Antialiasing);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setViewportUpdateMode(QGraphicsView::FullViewportUpdate);
    viewport()->setAttribute(Qt::WA_AcceptTouchEvents);
}

void ChartView::setLooked(std::optional<double> x)
{
    m_looked = x;
    viewport()->update();
}

QPointF ChartView::valueAt(const QPointF& px) const { return chart()->mapToValue(px); }

// By the axes: the chart itself maps by a series only, and there may be none yet.
QPointF ChartView::placeOf(const QPointF& value) const
{
    const QRectF plot = chart()->plotArea();
    const auto share = [this](Qt::Orientation along, double at) {
        const auto axes = chart()->axes(along);
        const auto* axis = axes.isEmpty() ? nullptr : qobject_cast<QValueAxis*>(axes.first());
        return axis && axis->max() > axis->min() ? (at - axis->min()) / (axis->max() - axis->min())
                                                 : 0;
    };
    return {plot.left() + share(Qt::Horizontal, value.x()) * plot.width(),
            plot.bottom() - share(Qt::Vertical, value.y()) * plot.height()};
}

void ChartView::lookAt(const QPointF& px)
{
    if (chart()->plotArea().contains(px))
        m_fingers.looked(valueAt(px).x());
}

// --- fingers ----------------------------------------------------------------------------------

bool ChartView::viewportEvent(QEvent* event)
{
    switch (event->type()) {
        case QEvent::TouchBegin:
        case QEvent::TouchUpdate:
        case QEvent::TouchEnd:
            return touched(*static_cast<QTouchEvent*>(event));
        default:
            return QChartView::viewportEvent(event);
    }
}

// Two fingers: what was between them follows their middle and their distance.
bool ChartView::touched(const QTouchEvent& touch)
{
    const auto& points = touch.points();
    if (points.size() == 1 && touch.type() != QEvent::TouchEnd)
        lookAt(points.front().position());
    if (points.size() != 2 || touch.type() == QEvent::TouchBegin)
        return true;
    const QPointF before = (points[0].lastPosition() + points[1].lastPosition()) / 2;
    const QPointF now = (points[0].position() + points[1].position()) / 2;
    const double wide = distance(points[0].lastPosition(), points[1].lastPosition());
    if (wide > 1)
        m_fingers.zoomed(distance(points[0].position(), points[1].position()) / wide,
                         valueAt(before));
    m_fingers.moved(valueAt(before) - valueAt(now));
    return true;
}

void ChartView::mousePressEvent(QMouseEvent* event) { lookAt(event->position()); }

void ChartView::mouseMoveEvent(QMouseEvent* event)
{
    if (event->buttons() != Qt::NoButton)
        lookAt(event->position());
}

void ChartView::mouseReleaseEvent(QMouseEvent*) {}

void ChartView::wheelEvent(QWheelEvent* event)
{
    constexpr double kNotch = 120;  // QWheelEvent's eighths of a degree
    m_fingers.zoomed(std::pow(kWheelStep, event->angleDelta().y() / kNotch),
                     valueAt(event->position()));
    event->accept();
}

// --- words and marks --------------------------------------------------------------------------

void ChartView::drawForeground(QPainter* painter, const QRectF&)
{
    painter->save();
    painter->setFont(theme().metrics().font(Metrics::kSmall));
    painter->setClipRect(chart()->plotArea());
    drawBandWords(*painter);
    drawRules(*painter);
    drawLooked(*painter);
    drawDots(*painter);
    drawNames(*painter);
    drawMarks(*painter);
    painter->restore();
}

/// `at` is the corner or edge that `alignment` names; kept inside the plot.
QRectF ChartView::roomFor(const QPainter& painter, const QPointF& at, Qt::Alignment alignment,
                          const QString& words) const
{
    const QRectF plot = chart()->plotArea();
    QRectF room(QPointF(), painter.fontMetrics().size(Qt::TextSingleLine, words));
    room.moveTopLeft(at);
    if (alignment & Qt::AlignRight)
        room.moveRight(at.x());
    if (alignment & Qt::AlignHCenter)
        room.moveLeft(at.x() - room.width() / 2);
    if (alignment & Qt::AlignBottom)
        room.moveBottom(at.y());
    if (alignment & Qt::AlignVCenter)
        room.moveTop(at.y() - room.height() / 2);
    room.moveLeft(
        std::clamp(room.left(), plot.left(), std::max(plot.left(), plot.right() - room.width())));
    room.moveTop(
        std::clamp(room.top(), plot.top(), std::max(plot.top(), plot.bottom() - room.height())));
    return room;
}

void ChartView::write(QPainter& painter, const QPointF& at, Qt::Alignment alignment,
                      const QString& words, Ground ground) const
{
    if (words.isEmpty())
        return;
    const QRectF room = roomFor(painter, at, alignment, words);
    if (ground == Ground::Plate)
        painter.fillRect(room, theme().palette().panel());
    painter.drawText(room, Qt::AlignCenter | Qt::TextDontClip, words);
}

void ChartView::drawBandWords(QPainter& painter) const
{
    const QRectF plot = chart()->plotArea();
    const double aside = theme().metrics().px(kAsideMm);
    painter.setPen(theme().palette().ink());
    for (const ChartBand& band : m_content.bands) {
        const double top = std::max(placeOf({0, band.high}).y(), plot.top());
        const double low = std::min(placeOf({0, band.low}).y(), plot.bottom());
        const bool atRight = band.corner & Qt::AlignRight, atLow = band.corner & Qt::AlignBottom;
        write(painter, {atRight ? plot.right() - aside : plot.left() + aside, atLow ? low : top},
              band.corner, band.words);
    }
}

void ChartView::drawRules(QPainter& painter) const
{
    const QRectF plot = chart()->plotArea();
    const Metrics& metrics = theme().metrics();
    std::vector<QPair<double, double>> taken;  // by words: top and bottom
    for (const ChartRule& rule : m_content.rules) {
        const double y = placeOf({m_content.across.low, rule.at}).y();
        if (y < plot.top() || y > plot.bottom())
            continue;
        painter.setPen(
            QPen(theme().palette().softInk(), metrics.px(kRuleMm), styleOf(rule.stroke)));
        painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
    }
    painter.setPen(theme().palette().ink());
    for (const ChartRule& rule : m_content.rules) {
        const double y = placeOf({m_content.across.low, rule.at}).y();
        if (y >= plot.top() && y <= plot.bottom())
            writeRule(painter, rule, y, taken);
    }
}

/// Moved away from its line where the words of another one stand.
void ChartView::writeRule(QPainter& painter, const ChartRule& rule, double y,
                          std::vector<QPair<double, double>>& taken) const
{
    const QRectF plot = chart()->plotArea();
    const double high = painter.fontMetrics().height(), aside = theme().metrics().px(kAsideMm);
    const bool isAbove = rule.end & Qt::AlignBottom, isAtRight = rule.end & Qt::AlignRight;
    for (const auto& [top, bottom] : taken) {
        const double from = isAbove ? y - high : y;
        if (from < bottom && from + high > top)
            y = isAbove ? top : bottom;
    }
    taken.emplace_back(isAbove ? y - high : y, isAbove ? y : y + high);
    write(painter, {isAtRight ? plot.right() - aside : plot.left() + aside, y}, rule.end,
          rule.words, Ground::Plate);
}

void ChartView::drawDots(QPainter& painter) const
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme().palette().ink());
    const double radius = theme().metrics().px(kDotMm);
    for (const ChartLine& line : m_content.lines) {
        if (!line.dots)
            continue;
        for (const QPointF& point : line.points)
            painter.drawEllipse(placeOf(point), radius, radius);
    }
    painter.setBrush(Qt::NoBrush);
}

void ChartView::drawNames(QPainter& painter) const
{
    painter.setPen(theme().palette().ink());
    for (const ChartName& name : m_content.names) {
        const Qt::Alignment side = name.below ? Qt::AlignTop : Qt::AlignBottom;
        write(painter, placeOf(name.at), Qt::AlignHCenter | side, name.words);
    }
}

/// Words that would stand on those of another mark go below them, as far as there is room; else
/// the mark alone says it, and what is under the finger is told beside the chart.
void ChartView::drawMarks(QPainter& painter) const
{
    std::vector<QRectF> taken;
    const double side = theme().metrics().px(kMarkMm), aside = theme().metrics().px(kAsideMm);
    for (const ChartMark& mark : m_content.marks) {
        const QPointF at = placeOf(mark.at);
        const QRectF where(at - QPointF(side, side) / 2, QSizeF(side, side));
        const bool isPlain = mark.role == Role::Neutral;
        drawMark(painter, where, isPlain ? Mark::Cross : markOf(mark.role),
                 isPlain ? theme().palette().ink() : theme().tone(mark.role).edge);
        painter.setPen(theme().palette().ink());
        const bool isAtRight = at.x() > chart()->plotArea().center().x();  // words go inwards
        const double beside = isAtRight ? -(side / 2 + aside) : side / 2 + aside;
        if (mark.words.isEmpty())
            continue;
        QRectF room =
            roomFor(painter, at + QPointF(beside, -aside),
                    (isAtRight ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignBottom, mark.words);
        const auto stands = [&room](const QRectF& other) { return other.intersects(room); };
        while (std::ranges::any_of(taken, stands) && room.bottom() <= chart()->plotArea().bottom())
            room.translate(0, room.height());
        if (room.bottom() > chart()->plotArea().bottom())
            continue;
        painter.drawText(room, Qt::AlignCenter | Qt::TextDontClip, mark.words);
        taken.push_back(room);
    }
}

void ChartView::drawLooked(QPainter& painter) const
{
    if (!m_looked)
        return;
    const QRectF plot = chart()->plotArea();
    const double x = placeOf({*m_looked, m_content.up.low}).x();
    painter.setPen(QPen(theme().palette().focus(), theme().metrics().px(Metrics::kEdge)));
    painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()));
}

}  // namespace bathside::ui
