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
constexpr double kPlusShare = 0.5, kUnitShare = 0.25;  // of the digits' height
constexpr double kBelowShare = 0.7;                    // of the height that the digits leave
constexpr double kInsetMm = 0.5, kBesideMm = 1, kOneLineMm = 5.4, kTwoLinesMm = 17;

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
    const double plus = widthOf(QStringLiteral("+"), kPlusShare * digits, Weight::Narrow);
    const double wide =
        theme().metrics().mm(plus + widthOf(QStringLiteral("0:00"), digits, Weight::Narrow));
    return sizeOfMm(wide + 2 * kBesideMm, digits + kOneLineMm + 2 * kInsetMm);
}

// Digits above; under them the level's mark and word and what the time is left until: in one line,
// or where there is height to spare in two.
BigClock::Rooms BigClock::rooms() const
{
    const Metrics& metrics = theme().metrics();
    const double by = metrics.px(kInsetMm);
    const double beside = metrics.px(kBesideMm);
    const QRectF all = QRectF(rect()).adjusted(beside, by, -beside, -by);
    const double spare = all.height() - metrics.px(metrics.digitsMm());
    const bool high = kBelowShare * spare >= metrics.px(kTwoLinesMm);
    constexpr double kRounding = 1;  // px: letters come in whole sizes
    const double below = std::clamp(kBelowShare * (spare - kRounding), metrics.px(kOneLineMm),
                                    metrics.px(kTwoLinesMm));
    Rooms at;
    at.time = all.adjusted(0, 0, 0, -below);
    at.label = QRectF(QPointF(all.left(), at.time.bottom()), all.bottomRight());
    if (m_state.level.isEmpty())
        return at;
    const double cap = high ? Metrics::kWords : Metrics::kSmall;
    const double side = std::min(metrics.px(8), high ? below / 2 : below);
    const double word = widthOf(m_state.level, cap, Weight::Strong) + metrics.px(1);
    const double start =
        high ? std::max(all.left(), all.center().x() - (side + by + word) / 2) : all.left();
    at.mark = QRectF(start, at.label.top(), side, side);
    at.level = QRectF(at.mark.right() + by, at.label.top(), word, side);
    if (high)
        at.label.setTop(at.mark.bottom());
    else
        at.label.setLeft(at.level.right() + by);
    return at;
}

// A plus before the digits and a unit after them are smaller, so that the digits have the width.
QList<PlacedText> BigClock::digits(const QRectF& room, const QColor& ink) const
{
    const bool past = m_state.time.startsWith(u'+');
    const QString plus = past ? QStringLiteral("+") : QString(),
                  main = m_state.time.mid(past ? 1 : 0);
    const double cap = std::max(theme().metrics().digitsMm(), kLeastDigitsMm);
    const double widePlus = past ? widthOf(plus, kPlusShare * cap, Weight::Narrow) : 0;
    const double wide = widthOf(main, cap, Weight::Narrow) + 1;
    const double unit =
        m_state.unit.isEmpty() ? 0 : widthOf(m_state.unit, kUnitShare * cap, Weight::Strong) + 1;
    const double shrink = std::min(1.0, room.width() / (widePlus + wide + unit));
    double left = room.center().x() - shrink * (widePlus + wide + unit) / 2;
    const auto next = [&](double width) {
        const QRectF part(left, room.top(), shrink * width, room.height());
        left = part.right();
        return part;
    };
    const QRectF atPlus = next(widePlus), atMain = next(wide), atUnit = next(unit);
    return {{main, atMain, Qt::AlignCenter, {cap, kLeastDigitsMm, Weight::Narrow, 1}, ink},
            {plus,
             atPlus,
             Qt::AlignCenter,
             {kPlusShare * cap, Metrics::kWords, Weight::Narrow, 1},
             ink},
            {m_state.unit,
             atUnit,
             Qt::AlignCenter,
             {kUnitShare * cap, Metrics::kSmall, Weight::Strong, 1},
             ink}};
}

QList<PlacedText> BigClock::texts() const
{
    const Rooms at = rooms();
    const QColor ink = theme().tone(m_state.role).ink;
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    const bool beside = at.label.left() > at.level.right() && !m_state.level.isEmpty();
    QList<PlacedText> all = digits(at.time, ink);
    all.append({m_state.level,
                at.level,
                left,
                {Metrics::kWords, Metrics::kSmall, Weight::Strong, 1},
                ink});
    all.append({m_state.label,
                at.label,
                beside ? left : Qt::Alignment(Qt::AlignCenter),
                {Metrics::kWords, Metrics::kSmall, Weight::Regular, 2},
                ink});
    return all;
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
