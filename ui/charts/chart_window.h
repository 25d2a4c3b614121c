#pragma once

// The part of a chart that is in sight: moved and zoomed by fingers, never beyond what there is.

#include <QRectF>

namespace bathside::ui {

class ChartWindow {
public:
    static constexpr double kDeepest = 40;  // times as large as the whole

    explicit ChartWindow(const QRectF& whole = {0, 0, 1, 1}) : m_whole(whole), m_shown(whole) {}

    [[nodiscard]] const QRectF& whole() const noexcept { return m_whole; }
    [[nodiscard]] const QRectF& shown() const noexcept { return m_shown; }
    [[nodiscard]] bool isWhole() const { return m_shown == m_whole; }

    /// What there is has changed. All of it stays in sight; a part that was looked at keeps its
    /// size and is moved no further than it must.
    void setWhole(const QRectF& whole);
    void showWhole() { m_shown = m_whole; }
    /// By `factor` (above 1: larger) about a point that stays where it is.
    void zoom(double factor, const QPointF& about);
    /// By a distance in the chart's own units.
    void move(const QPointF& by);

private:
    void keepInside();

    QRectF m_whole, m_shown;
};

}  // namespace bathside::ui
