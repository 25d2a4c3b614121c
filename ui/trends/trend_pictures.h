#pragma once

// A trend as two charts: the single values with their limits, and beneath them how far each is from
// the one before. Across: the points in order, from 1.

#include "ui/charts/chart.h"
#include "ui/trends/trend_words.h"

namespace bathside::ui {

struct TrendLook {
    QString title;  // of both, in words
    ChartSeries series{};
    const Aliases& people;
    std::string zone;
};

[[nodiscard]] ChartContent valuesContent(const Trend& trend, const TrendLook& look);
[[nodiscard]] ChartContent rangesContent(const Trend& trend, const TrendLook& look);

}  // namespace bathside::ui
