#pragma once

// The level of a vessel over its days, with its minimum: a plain chart, painted by one function.

#include <vector>

#include "core/checks/vessel_log.h"
#include "ui/controls/control.h"

namespace bathside::ui {

struct LevelSeries {
    struct Point {
        WallTime at{};
        double litres = 0;
        bool filled = false;  // since the point before
    };
    std::vector<Point> points;  // by time
    double minimum = 0, fullest = 0;
    QString from, to;  // its first and last day in words
};

/// What the dipstick's table holds of it.
[[nodiscard]] LevelSeries levelsOf(const VesselLog& log, const std::string& zone);

/// The chart alone, without words. A fill breaks the line.
void paintLevels(QPainter& painter, const QRectF& room, const LevelSeries& levels);

class LevelChart final : public Control {
    Q_OBJECT

public:
    explicit LevelChart(QWidget* parent = nullptr);

    void show(LevelSeries levels);
    [[nodiscard]] const LevelSeries& levels() const noexcept { return m_levels; }
    [[nodiscard]] QSize sizeHint() const override { return sizeOfMm(60, 40); }

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QRectF chart() const;

    LevelSeries m_levels;
};

}  // namespace bathside::ui
