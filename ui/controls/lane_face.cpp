#include "ui/controls/lane_face.h"

#include <QPainter>

#include "ui/controls/paint.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {

namespace {

constexpr double kCompactMm = 50;  // less than that is too narrow for all in one row

}  // namespace

struct LaneFace::Rooms {
    QRectF number, state, what, time, level, mark, fuse;
};

bool LaneFace::isCompact() const { return width() < theme().metrics().px(kCompactMm); }

LaneFace::LaneFace(const QString& place, QWidget* parent) : TapButton(place, parent)
{
    setSizeMm(70, Metrics::kMinimum);
}

void LaneFace::setState(const LaneState& state)
{
    if (state == m_state)
        return;
    m_state = state;
    TapButton::setRole(state.open ? state.role : Role::Quiet);
    describe();
    update();
}

void LaneFace::describe()
{
    QStringList parts{QString::number(m_state.number), m_state.state, m_state.time, m_state.level,
                      m_state.what};
    parts.removeAll(QString());
    suggestAccessibleName(parts.join(QStringLiteral(", ")));
    setAccessibleDescription(m_state.uncertain.isEmpty() ? reason() : m_state.uncertain);
}

// In a narrow lane: number and time above, where it stands below.
LaneFace::Rooms LaneFace::compactRooms() const
{
    const Metrics& metrics = theme().metrics();
    const double by = metrics.px(1.6);
    const QRectF all = QRectF(rect()).adjusted(by, by / 2, -by, -by / 2);
    Rooms at;
    QRectF rest = all;
    if (m_state.used >= 0) {
        at.fuse = QRectF(all.left(), all.bottom() - metrics.px(2.4), all.width(), metrics.px(2.4));
        rest.setBottom(at.fuse.top() - metrics.px(0.6));
    }
    const double low = heightOf(1, Metrics::kSmall, Weight::Strong) + metrics.px(0.6);
    at.number = QRectF(rest.left(), rest.top(), metrics.px(7), rest.height() - low);
    at.time = QRectF(at.number.right() + by / 2, rest.top(),
                     rest.right() - at.number.right() - by / 2, rest.height() - low);
    at.state = QRectF(rest.left(), rest.bottom() - low, rest.width(), low);
    if (!m_state.level.isEmpty()) {
        at.mark = QRectF(rest.left(), at.state.top(), low, low);
        at.state.setLeft(at.mark.right() + by / 2);
    }
    return at;
}

// Number at the left; beside it where it stands and the time, and under these what it is and the
// fuse.
LaneFace::Rooms LaneFace::rooms() const
{
    const Metrics& metrics = theme().metrics();
    if (isCompact())
        return compactRooms();
    const double by = metrics.px(1), gap = metrics.px(2);
    const QRectF all = QRectF(rect()).adjusted(gap, by, -gap, -by);
    Rooms at;
    at.number = QRectF(all.topLeft(), QSizeF(metrics.px(10), all.height()));
    QRectF rest = all.adjusted(at.number.width() + gap, 0, 0, 0);
    const double low = heightOf(1, Metrics::kSmall, Weight::Regular) + metrics.px(0.4);
    at.what = QRectF(rest.left(), rest.bottom() - low, rest.width(), low);
    rest.setBottom(at.what.top());
    if (m_state.used >= 0) {
        constexpr double kFuseShare = 0.28, kFuseMm = 3.4;
        const double wide = kFuseShare * rest.width(), high = metrics.px(kFuseMm);
        at.fuse = QRectF(rest.right() - wide, at.what.center().y() - high / 2, wide, high);
        at.what.setRight(at.fuse.left() - gap);
    }
    if (!m_state.time.isEmpty()) {
        const double wide = std::max(widthOf(QStringLiteral("+0:00"), 10, Weight::Strong),
                                     widthOf(m_state.time, 10, Weight::Strong)) +
                            1;
        at.time = rest.adjusted(rest.width() - std::min(wide, 0.5 * rest.width()), 0, 0, 0);
        rest.setRight(at.time.left() - gap);
    }
    if (!m_state.level.isEmpty()) {
        at.mark = QRectF(rest.left(), rest.top(), metrics.px(7), rest.height());
        rest.setLeft(at.mark.right() + metrics.px(1.2));
    }
    at.state = rest;
    return at;
}

QList<PlacedText> LaneFace::texts() const
{
    const Rooms at = rooms();
    const QColor ink = shownTone().ink;
    const TextWish small{Metrics::kSmall, Metrics::kSmall, Weight::Regular, 1};
    QString below = !m_state.uncertain.isEmpty() ? m_state.uncertain : m_state.what;
    if (!m_state.level.isEmpty())
        below = m_state.level;
    if (isCompact())
        below.clear();
    else if (widthOf(below, Metrics::kSmall, Weight::Regular) > at.what.width())
        below = below.section(QStringLiteral(" · "), -1);  // the lot alone
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    return {{QString::number(m_state.number),
             at.number,
             Qt::AlignCenter,
             {isCompact() ? 7.0 : 10.0, 5, Weight::Strong, 1},
             ink},
            {m_state.state, at.state, left, {10, Metrics::kSmall, Weight::Strong, 2}, ink},
            {below, at.what, left, small, ink},
            {m_state.time,
             at.time,
             Qt::AlignRight | Qt::AlignVCenter,
             {isCompact() ? 7.5 : 10.0, 5, Weight::Strong, 1},
             ink}};
}

void LaneFace::paintMarks(QPainter& painter) const
{
    const Rooms at = rooms();
    const Tone tone = shownTone();
    if (!m_state.level.isEmpty())
        drawMark(painter, at.mark, markOf(m_state.role), tone.ink);
    drawFuse(painter, at.fuse, m_state.used, m_state.headsUp, tone);
}

}  // namespace bathside::ui
