#include "ui/controls/big_clock.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/controls/paint.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kLeastDigitsMm = 10;

}  // namespace

struct BigClock::Rooms {
    QRectF time, label, mark, level;
};

BigClock::BigClock(QWidget* parent) : Control(parent)
{
    setObjectName(QStringLiteral("clock"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void BigClock::setState(const BigClockState& state)
{
    if (state == m_state)
        return;
    m_state = state;
    QStringList parts{state.time, state.label, state.level};
    parts.removeAll(QString());
    suggestAccessibleName(parts.join(QStringLiteral(", ")));
    update();
}

QSize BigClock::sizeHint() const
{
    const double digits = theme().metrics().digitsMm();
    const double width =
        theme().metrics().mm(widthOf(QStringLiteral("0:00"), digits, Weight::Strong));
    return sizeOfMm(width + 2 * Metrics::kInset, digits + 16 + 2 * Metrics::kInset);
}

// Digits above; under them the level's mark and word before what the time is left until.
BigClock::Rooms BigClock::rooms() const
{
    const Metrics& metrics = theme().metrics();
    const double by = metrics.px(Metrics::kInset);
    const QRectF all = QRectF(rect()).adjusted(by, by, -by, -by);
    Rooms at;
    const double below =
        std::min(metrics.px(m_state.level.isEmpty() ? 10 : 17), 0.42 * all.height());
    at.time = all.adjusted(0, 0, 0, -below);
    QRectF rest = all;
    rest.setTop(at.time.bottom());
    if (!m_state.level.isEmpty()) {
        const double side = std::min(metrics.px(8), rest.height() / 2);
        const double width = widthOf(m_state.level, 5, Weight::Strong) + 1;
        const double left = rest.center().x() - (side + by + width) / 2;
        at.mark = QRectF(std::max(rest.left(), left), rest.top(), side, side);
        at.level =
            QRectF(at.mark.right() + by, rest.top(), rest.right() - at.mark.right() - by, side);
        rest.setTop(at.mark.bottom());
    }
    at.label = rest;
    return at;
}

QList<PlacedText> BigClock::texts() const
{
    const Rooms at = rooms();
    const QColor ink = theme().tone(m_state.role).ink;
    const double digits = std::max(theme().metrics().digitsMm(), kLeastDigitsMm);
    return {
        {m_state.time, at.time, Qt::AlignCenter, {digits, kLeastDigitsMm, Weight::Strong, 1}, ink},
        {m_state.level,
         at.level,
         Qt::AlignLeft | Qt::AlignVCenter,
         {5, Metrics::kSmall, Weight::Strong, 1},
         ink},
        {m_state.label, at.label, Qt::AlignCenter, {5, Metrics::kSmall, Weight::Regular, 2}, ink}};
}

double BigClock::shownDigitsMm() const
{
    const PlacedText time = texts().first();
    const FittedText set = fitted(time.text, time.room.size(), time.wish);
    return theme().metrics().mm(QFontMetricsF(set.font).capHeight());
}

void BigClock::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Tone& tone = theme().tone(m_state.role);
    drawPlate(painter, QRectF(rect()), tone);
    if (!m_state.level.isEmpty())
        drawMark(painter, rooms().mark, markOf(m_state.role), tone.ink);
    drawAll(painter, texts());
}

}  // namespace bathside::ui
