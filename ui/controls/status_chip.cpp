#include "ui/controls/status_chip.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/controls/paint.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kMainMm = 4.4, kDetailMm = Metrics::kSmall, kMarkMm = 6;

}  // namespace

struct StatusChip::Rooms {
    QRectF level, mark, main, detail;
};

StatusChip::StatusChip(const QString& name, QWidget* parent) : Control(parent)
{
    setObjectName(name);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
}

void StatusChip::setStatus(Role role, Mark mark, const QString& main, const QString& detail)
{
    const bool wider = main != m_main || detail != m_detail;
    m_role = role;
    m_mark = mark;
    m_main = main;
    m_detail = detail;
    suggestAccessibleName(detail.isEmpty() ? main : QStringLiteral("%1, %2").arg(main, detail));
    if (wider)
        updateGeometry();
    update();
}

// What it is about (drop, note, sheet), unless the words need its room; the level's own mark; the
// words.
StatusChip::Rooms StatusChip::rooms() const
{
    const Metrics& metrics = theme().metrics();
    const double by = metrics.px(1.6);
    QRectF rest = QRectF(rect()).adjusted(by, by / 2, -by, -by / 2);
    Rooms at;
    const double side = std::min(metrics.px(kMarkMm), rest.height());
    const auto take = [&](QRectF& room) {
        room = QRectF(rest.left(), rest.center().y() - side / 2, side, side);
        rest.setLeft(room.right() + metrics.px(1));
    };
    if (m_mark != Mark::None && width() >= minimumSizeHint().width() + metrics.px(kMarkMm + 1))
        take(at.mark);
    if (markOf(m_role) != Mark::None)
        take(at.level);
    at.main = rest;
    if (!m_detail.isEmpty()) {
        at.main.setHeight(0.53 * rest.height());
        at.detail = rest.adjusted(0, at.main.height(), 0, 0);
    }
    return at;
}

QList<PlacedText> StatusChip::texts() const
{
    const Rooms at = rooms();
    const QColor ink = theme().tone(m_role).ink;
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    return {{m_main, at.main, left, {kMainMm, Metrics::kSmall, Weight::Strong, 2}, ink},
            {m_detail, at.detail, left, {kDetailMm, kDetailMm, Weight::Regular, 1}, ink}};
}

QSize StatusChip::sizeHint() const
{
    const Metrics& metrics = theme().metrics();
    const int marks = (m_mark != Mark::None ? 1 : 0) + (markOf(m_role) != Mark::None ? 1 : 0);
    const double words = std::max(widthOf(m_main, kMainMm, Weight::Strong),
                                  widthOf(m_detail, kDetailMm, Weight::Regular));
    const double width = words + metrics.px(4 + marks * (kMarkMm + 1));
    return {static_cast<int>(std::ceil(width)), metrics.ceilPx(Metrics::kStrip)};
}

// One mark and the words at their least height: on two lines where there is no detail.
QSize StatusChip::minimumSizeHint() const
{
    const Metrics& metrics = theme().metrics();
    double words = widthOf(m_detail, kDetailMm, Weight::Regular);
    const QStringList parts = m_detail.isEmpty() ? m_main.split(u' ') : QStringList{m_main};
    for (const QString& part : parts)
        words = std::max(words, widthOf(part, Metrics::kSmall, Weight::Strong));
    const double mark = markOf(m_role) == Mark::None ? 0 : kMarkMm + 1;
    return {static_cast<int>(std::ceil(words + metrics.px(3.4 + mark))),
            metrics.ceilPx(Metrics::kStrip)};
}

void StatusChip::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Tone& tone = theme().tone(m_role);
    const Rooms at = rooms();
    drawPlate(painter, QRectF(rect()), tone);
    drawMark(painter, at.mark, m_mark, tone.ink);
    drawMark(painter, at.level.adjusted(1, 1, -1, -1), markOf(m_role), tone.ink);
    drawAll(painter, texts());
}

}  // namespace bathside::ui
