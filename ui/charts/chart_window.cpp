#include "ui/charts/chart_window.h"

#include <algorithm>

namespace bathside::ui {

void ChartWindow::setWhole(const QRectF& whole)
{
    const bool wasWhole = isWhole();
    m_whole = whole;
    if (wasWhole)
        return showWhole();
    keepInside();
}

void ChartWindow::zoom(double factor, const QPointF& about)
{
    if (factor <= 0)
        return;
    const double now = m_whole.width() / m_shown.width();
    const double by = std::clamp(now * factor, 1.0, kDeepest) / now;
    m_shown = {about + (m_shown.topLeft() - about) / by, m_shown.size() / by};
    keepInside();
}

void ChartWindow::move(const QPointF& by)
{
    m_shown.translate(by);
    keepInside();
}

void ChartWindow::keepInside()
{
    const QSizeF size = m_shown.size().boundedTo(m_whole.size());
    const double left = std::clamp(m_shown.left(), m_whole.left(), m_whole.right() - size.width());
    const double top = std::clamp(m_shown.top(), m_whole.top(), m_whole.bottom() - size.height());
    m_shown = {QPointF(left, top), size};
}

}  // namespace bathside::ui
