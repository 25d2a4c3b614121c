#pragma once

// The face of a chart: fingers on it, and the words, marks and the looked-at line over it. Used by
// Chart alone.

#include <QChartView>
#include <functional>
#include <optional>
#include <vector>

#include "ui/charts/chart.h"

namespace bathside::ui {

[[nodiscard]] Qt::PenStyle styleOf(Stroke stroke);

class ChartView final : public QChartView {
public:
    struct Fingers {
        std::function<void(double x)> looked;
        std::function<void(double factor, const QPointF& about)> zoomed;
        std::function<void(const QPointF& by)> moved;  // in the chart's units
    };

    ChartView(QChart* chart, const ChartContent& content, Fingers fingers, QWidget* parent);

    void setLooked(std::optional<double> x);

protected:
    bool viewportEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void drawForeground(QPainter* painter, const QRectF& rect) override;

private:
    [[nodiscard]] QPointF valueAt(const QPointF& px) const;
    [[nodiscard]] QPointF placeOf(const QPointF& value) const;
    void lookAt(const QPointF& px);
    [[nodiscard]] bool touched(const QTouchEvent& touch);
    enum class Ground : std::uint8_t { Chart, Plate };  // a plate covers what runs under the words
    [[nodiscard]] QRectF roomFor(const QPainter& painter, const QPointF& at,
                                 Qt::Alignment alignment, const QString& words) const;
    void write(QPainter& painter, const QPointF& at, Qt::Alignment alignment, const QString& words,
               Ground ground = Ground::Chart) const;
    void drawBandWords(QPainter& painter) const;
    void drawRules(QPainter& painter) const;
    void writeRule(QPainter& painter, const ChartRule& rule, double y,
                   std::vector<QPair<double, double>>& taken) const;
    void drawDots(QPainter& painter) const;
    void drawNames(QPainter& painter) const;
    void drawMarks(QPainter& painter) const;
    void drawLooked(QPainter& painter) const;

    const ChartContent& m_content;
    Fingers m_fingers;
    std::optional<double> m_looked;
};

}  // namespace bathside::ui
