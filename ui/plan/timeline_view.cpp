#include "ui/plan/timeline_view.h"

#include <QPainter>
#include <algorithm>

#include "ui/controls/paint.h"
#include "ui/plan/bar_look.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

using Kind = TimelineBar::Kind;

constexpr double kNow = 0.7;  // mm

Outline outlineOf(Kind kind)
{
    switch (kind) {
        case Kind::Planned:
            return Outline::Dashed;
        case Kind::Mixed:
        case Kind::Making:
            return Outline::Plain;
        case Kind::Open:
            return Outline::Strong;
    }
    Q_UNREACHABLE();
}

// Hatched: a break, whose colour says nothing. Thin over a bar that hangs through it.
void hatch(QPainter& painter, const QRectF& where, const QColor& colour)
{
    painter.setPen(Qt::NoPen);
    painter.fillRect(where, QBrush(colour, Qt::BDiagPattern));
}

QColor thin(QColor colour)
{
    constexpr float kThin = 0.3F;
    colour.setAlphaF(kThin);
    return colour;
}

void paintLife(QPainter& painter, const PlacedBar& placed)
{
    const Tone& tone = theme().tone(roleOf(placed.bar));
    const QColor colour = placed.bar.small ? tone.edge : theme().palette().softInk();
    painter.fillRect(placed.age, colour);
    painter.setPen(QPen(colour, theme().metrics().px(0.3)));
    painter.setBrush(QBrush(colour, Qt::Dense6Pattern));
    painter.drawRect(placed.margin);
    const double half = theme().metrics().px(0.3), over = theme().metrics().px(0.5);
    const double x = placed.margin.right();
    painter.fillRect(
        QRectF(x - half, placed.margin.top() - over, 2 * half, placed.margin.height() + 2 * over),
        colour);
}

}  // namespace

TimelineView::TimelineView(QWidget* parent) : Control(parent)
{
    setObjectName(QStringLiteral("plan.timeline"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void TimelineView::show(const DayPlan& day, const PlanClock& clock)
{
    m_day = day;
    m_clock = clock;
    m_timeline = timelineOf(day);
    m_sheet = std::min(m_sheet, sheets() - 1);
    describe();
    update();
}

TimelineLayout TimelineView::layout() const
{
    if (!m_day)
        return {};
    return layOut(m_timeline, static_cast<std::size_t>(m_sheet * linesEach()), QRectF(rect()),
                  theme().metrics());
}

int TimelineView::linesEach() const
{
    return static_cast<int>(linesThatFit(m_timeline, QRectF(rect()), theme().metrics()));
}

int TimelineView::sheets() const
{
    if (!m_day)
        return 1;
    const auto lines = static_cast<int>(m_day->plan.lines.size()), each = linesEach();
    return std::max(1, (lines + each - 1) / each);
}

void TimelineView::turn()
{
    m_sheet = (m_sheet + 1) % sheets();
    update();
}

// --- picture -------------------------------------------------------------------------------------

void TimelineView::paintGround(QPainter& painter, const TimelineLayout& all) const
{
    const Palette& palette = theme().palette();
    for (const PlacedRow& row : all.rows) {
        painter.fillRect(row.track, palette.panel());
        painter.setPen(QPen(palette.rule(), 1));
        for (const auto& hour : all.hours)
            painter.drawLine(QPointF(hour.x, row.track.top()), QPointF(hour.x, row.track.bottom()));
        for (const QRectF& pause : row.breaks) {
            painter.fillRect(pause, palette.track());
            hatch(painter, pause, palette.softInk());
        }
    }
}

void TimelineView::paint(QPainter& painter, const PlacedRow& row) const
{
    const double side = theme().metrics().px(kBarMark);
    if (!m_timeline.rows[row.row].hasPlan) {
        const Tone& tone = theme().tone(Role::Limit);
        drawPlate(painter, row.track, tone);
        drawMark(painter,
                 QRectF(row.track.left() + side / 3, row.track.center().y() - side / 2, side, side),
                 markOf(Role::Limit), tone.ink);
    }
    for (const PlacedBar& placed : row.bars) {
        const Tone& tone = theme().tone(roleOf(placed.bar));
        drawPlate(painter, placed.plate, tone, outlineOf(placed.bar.kind));
        for (const QRectF& pause : row.breaks)
            hatch(painter, pause & placed.plate, thin(tone.ink));
        if (placed.bar.kind != Kind::Making)
            paintLife(painter, placed);
        if (hasMark(placed))
            drawMark(painter, markRoom(placed), markOf(Role::HeadsUp), tone.ink);
    }
}

/// Over every row but one that says why it has no plan.
void TimelineView::paintNow(QPainter& painter, const TimelineLayout& all) const
{
    const double wide = theme().metrics().px(kNow);
    for (const PlacedRow& row : all.rows) {
        if (all.now && m_timeline.rows[row.row].hasPlan)
            painter.fillRect(QRectF(*all.now - wide / 2, row.room.top(), wide, row.room.height()),
                             theme().palette().ink());
    }
}

void TimelineView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const TimelineLayout all = layout();
    painter.setRenderHint(QPainter::Antialiasing);
    paintGround(painter, all);
    for (const PlacedRow& row : all.rows)
        paint(painter, row);
    paintNow(painter, all);
    drawAll(painter, texts());
}

}  // namespace bathside::ui
