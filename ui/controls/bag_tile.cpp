#include "ui/controls/bag_tile.h"

#include <QPainter>

#include "ui/controls/paint.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {

struct BagTile::Rooms {
    QRectF name, line, left, next, mark, fuse;
};

BagTile::BagTile(const QString& place, QWidget* parent) : TapButton(place, parent)
{
    setSizeMm(36, Metrics::kPrimary);
}

void BagTile::setState(const BagState& state)
{
    if (state == m_state)
        return;
    m_state = state;
    setRole(state.role);
    describe();
    update();
}

void BagTile::describe()
{
    QStringList parts{m_state.name, m_state.line, m_state.level, m_state.left, m_state.next};
    parts.removeAll(QString());
    suggestAccessibleName(parts.join(QStringLiteral(", ")));
    setAccessibleDescription(reason());
}

// Four rows: name and line, what is left, what is next, the fuse.
BagTile::Rooms BagTile::rooms() const
{
    const Metrics& metrics = theme().metrics();
    const double by = metrics.px(1.5);
    QRectF rest = QRectF(rect()).adjusted(by, metrics.px(1.6), -by, -metrics.px(1.8));
    Rooms at;
    if (m_state.used >= 0) {
        at.fuse =
            QRectF(rest.left(), rest.bottom() - metrics.px(2.6), rest.width(), metrics.px(2.6));
        rest.setBottom(at.fuse.top() - metrics.px(0.6));
    }
    const double row = rest.height() / (m_state.next.isEmpty() ? 2 : 3);
    QRectF top(rest.left(), rest.top(), rest.width(), row);
    if (!m_state.level.isEmpty()) {
        const double side = std::min(row, metrics.px(5));
        at.mark = QRectF(top.left(), top.center().y() - side / 2, side, side);
        top.setLeft(at.mark.right() + metrics.px(1));
    }
    at.name = top;
    if (!m_state.line.isEmpty()) {
        const double width =
            std::min(widthOf(m_state.line, 3.6, Weight::Regular) + 1, 0.68 * top.width());
        at.line = top.adjusted(top.width() - width, 0, 0, 0);
        at.name.setRight(at.line.left() - metrics.px(1.2));
    }
    at.left = QRectF(rest.left(), top.bottom(), rest.width(), row);
    at.next = QRectF(rest.left(), at.left.bottom(), rest.width(), row);
    return at;
}

QList<PlacedText> BagTile::texts() const
{
    const Rooms at = rooms();
    const QColor ink = shownTone().ink;
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    return {{m_state.name, at.name, left, {4.2, Metrics::kSmall, Weight::Strong, 1}, ink},
            {m_state.line,
             at.line,
             Qt::AlignRight | Qt::AlignVCenter,
             {3.6, Metrics::kSmall, Weight::Regular, 1},
             ink},
            {m_state.left, at.left, left, {5.5, Metrics::kSmall, Weight::Strong, 2}, ink},
            {m_state.next, at.next, left, {3.6, Metrics::kSmall, Weight::Regular, 1}, ink}};
}

void BagTile::paintMarks(QPainter& painter) const
{
    const Rooms at = rooms();
    const Tone tone = shownTone();
    if (!m_state.level.isEmpty())
        drawMark(painter, at.mark, markOf(m_state.role), tone.ink);
    drawFuse(painter, at.fuse, m_state.used, m_state.headsUp, tone);
}

}  // namespace bathside::ui
