#include "ui/controls/label.h"

#include <QPainter>
#include <cmath>

#include "ui/controls/paint.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {

Label::Label(QWidget* parent) : Control(parent)
{
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
}

void Label::setText(const QString& text)
{
    if (text == m_text)
        return;
    m_text = text;
    suggestAccessibleName(text);
    updateGeometry();
    update();
}

void Label::setCapMm(double want, double least)
{
    m_capMm = want;
    m_leastMm = std::min(want, least);
    updateGeometry();
    update();
}

void Label::setWeight(Weight weight)
{
    m_weight = weight;
    updateGeometry();
    update();
}

void Label::setAlignment(Qt::Alignment alignment)
{
    m_alignment = alignment;
    update();
}

void Label::setSoft(bool soft)
{
    m_soft = soft;
    update();
}

void Label::setRole(Role role)
{
    m_role = role;
    updateGeometry();
    update();
}

void Label::setMaxLines(int lines)
{
    m_lines = lines;
    updateGeometry();
}

// Room for the plate's inset and the mark, where there is a plate.
QRectF Label::textRoom() const
{
    QRectF room(rect());
    if (m_role == Role::Neutral)
        return room;
    const double by = theme().metrics().px(Metrics::kInset);
    room.adjust(by, by / 2, -by, -by / 2);
    if (markOf(m_role) != Mark::None)
        room.setLeft(room.left() + 1.6 * theme().metrics().px(m_capMm));
    return room;
}

QSize Label::sizeHint() const
{
    const Metrics& metrics = theme().metrics();
    const double cap = metrics.px(m_capMm);
    const double around = m_role == Role::Neutral ? 0 : metrics.px(Metrics::kInset);
    const double mark = markOf(m_role) == Mark::None ? 0 : 1.6 * cap;
    const double height = heightOf(m_lines, m_capMm, m_weight) + around;
    const double width = widthOf(m_text, m_capMm, m_weight) / m_lines + 2 * around + mark;
    return {static_cast<int>(std::ceil(width)) + 1, static_cast<int>(std::ceil(height)) + 1};
}

QSize Label::minimumSizeHint() const
{
    const double least = heightOf(1, m_leastMm, m_weight);
    return {theme().metrics().ceilPx(Metrics::kMinimum), static_cast<int>(std::ceil(least)) + 1};
}

QList<PlacedText> Label::texts() const
{
    const Palette& palette = theme().palette();
    const QColor plain = m_soft ? palette.softInk() : palette.ink();
    const QColor ink = m_role == Role::Neutral ? plain : theme().tone(m_role).ink;
    return {{m_text, textRoom(), m_alignment, {m_capMm, m_leastMm, m_weight}, ink}};
}

void Label::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    if (m_role != Role::Neutral && !m_text.isEmpty()) {
        const Tone& tone = theme().tone(m_role);
        drawPlate(painter, QRectF(rect()), tone);
        const double side = 1.2 * theme().metrics().px(m_capMm),
                     by = theme().metrics().px(Metrics::kInset);
        drawMark(painter, QRectF(by, (height() - side) / 2, side, side), markOf(m_role), tone.ink);
    }
    drawAll(painter, texts());
}

}  // namespace bathside::ui
