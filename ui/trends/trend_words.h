#pragma once

// A chart over time in words: its series, its rules, where its limits come from, how it stands to
// the card. Whole sentences.

#include <QString>
#include <string>

#include "core/record/trend.h"
#include "ui/trends/aliases.h"

namespace bathside::ui {

[[nodiscard]] QString wordOf(ChartSeries series);
[[nodiscard]] QString wordOf(RunRule rule);
/// In the series' unit: "8.3 s", "28.10 °C", "+2.5 %".
[[nodiscard]] QString valueText(ChartSeries series, double value);
[[nodiscard]] QString unitOf(ChartSeries series);
[[nodiscard]] int decimalsOf(ChartSeries series);
/// Below zero is nonsense: a time, a spread.
[[nodiscard]] bool isNeverNegative(ChartSeries series);

/// "in bath → in diluent, person AB, lot K07".
[[nodiscard]] QString wishText(const TrendWish& wish, const Aliases& people);
/// When, who, which ampoules or line.
[[nodiscard]] QString pointText(const ChartPoint& point, const Aliases& people,
                                const std::string& zone);
/// The rules that hold at that point, as a sentence; empty: none.
[[nodiscard]] QString brokenText(const Trend& trend, std::size_t at);

struct LimitsSaid {
    QString word, text;    // of a banner
    bool areGood = false;  // from a baseline, of enough points, and no rule is broken
};
[[nodiscard]] LimitsSaid limitsText(const Trend& trend);
/// How it stands to the nearer of the card's limits, and what of it is not shown.
[[nodiscard]] QString capabilityText(const Trend& trend, ChartSeries series);

}  // namespace bathside::ui
