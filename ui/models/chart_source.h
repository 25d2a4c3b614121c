#pragma once

// What the charts over time ask of the trail: the points of some days, answered by one signal, and
// the shift in which one of them was made.

#include <chrono>
#include <optional>
#include <vector>

#include "core/record/trend.h"
#include "ui/models/shift_source.h"

namespace bathside::ui {

struct PointsWanted {
    std::chrono::year_month_day first{}, last{};  // local days, both within
    std::vector<SeqRange> baselines;              // wanted besides, wherever they are
    int ask = 0;                                  // told with the answer
};

struct PointsAnswer {
    int ask = 0;
    TrendPoints points;
    std::optional<StoreTrouble> trouble;  // reading broke off
};

class ChartSource : public ShiftSource {
    Q_OBJECT

public:
    using ShiftSource::ShiftSource;

    virtual void readPoints(const PointsWanted& wanted) = 0;

signals:
    void pointsRead(const bathside::ui::PointsAnswer& answer);
};

}  // namespace bathside::ui
