#include "ui/controls/banner.h"

#include <QPainter>
#include <algorithm>

#include "ui/controls/paint.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {

struct Banner::Rooms {
    QRectF mark, word, text;
};

Banner::Banner(const QString& name, QWidget* parent) : Control(parent)
{
    setObjectName(name);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    hide();
}

void Banner::say(Role role, const QString& word, const QString& text)
{
    m_role = role;
    m_word = word;
    m_text = text;
    suggestAccessibleName(word.isEmpty() ? text : QStringLiteral("%1: %2").arg(word, text));
    setVisible(!word.isEmpty() || !text.isEmpty());
    update();
}

QSize Banner::sizeHint() const { return sizeOfMm(100, 10); }

Banner::Rooms Banner::rooms() const
{
    const Metrics& metrics = theme().metrics();
    QRectF rest = QRectF(rect()).adjusted(metrics.px(3), 0, -metrics.px(3), 0);
    Rooms at;
    if (markOf(m_role) != Mark::None) {
        const double side = std::min(metrics.px(6), 0.7 * rest.height());
        at.mark = QRectF(rest.left(), rest.center().y() - side / 2, side, side);
        rest.setLeft(at.mark.right() + metrics.px(2));
    }
    if (!m_word.isEmpty()) {
        const double wide = widthOf(m_word, 4.4, Weight::Strong) + 1;
        at.word = rest;
        at.word.setWidth(m_text.isEmpty() ? rest.width() : std::min(wide, 0.4 * rest.width()));
        rest.setLeft(at.word.right() + metrics.px(3));
    }
    at.text = rest;
    return at;
}

QList<PlacedText> Banner::texts() const
{
    const Rooms at = rooms();
    const QColor ink = theme().tone(m_role).ink;
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    return {{m_word, at.word, left, {4.4, Metrics::kSmall, Weight::Strong, 2}, ink},
            {m_text, at.text, left, {4, Metrics::kSmall, Weight::Regular, 3}, ink}};
}

void Banner::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Tone& tone = theme().tone(m_role);
    drawPlate(painter, QRectF(rect()), tone);
    drawMark(painter, rooms().mark, markOf(m_role), tone.ink);
    drawAll(painter, texts());
}

}  // namespace bathside::ui
