#include "ui/frame/edge.h"

#include <QPainter>
#include <QPainterPath>

#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {

Edge::Edge(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("edge"));
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
    hide();
}

void Edge::show(std::optional<Level> level)
{
    if (level == m_level)
        return;
    m_level = level;
    setVisible(level.has_value());
    raise();
    update();
}

void Edge::paintEvent(QPaintEvent*)
{
    if (!m_level)
        return;
    constexpr double kStepMm = 9;
    const Metrics& metrics = theme().metrics();
    const Role role = roleOf(*m_level);
    const Tone& tone = theme().tone(role);
    const double thick = metrics.px(kThickMm);
    const QRectF outer(rect());

    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    QPainterPath path;
    path.addRect(outer);
    path.addRect(outer.adjusted(thick, thick, -thick, -thick));
    painter.fillPath(path, tone.edge);

    const auto draw = [&](double x, double y) {
        drawMark(painter, QRectF(x, y, thick, thick).adjusted(1, 1, -1, -1), markOf(role),
                 tone.fill);
    };
    for (double x = thick; x < outer.width() - 2 * thick; x += metrics.px(kStepMm)) {
        draw(x, 0);
        draw(x, outer.height() - thick);
    }
    for (double y = thick; y < outer.height() - 2 * thick; y += metrics.px(kStepMm)) {
        draw(0, y);
        draw(outer.width() - thick, y);
    }
}

}  // namespace bathside::ui
