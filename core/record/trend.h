#pragma once

// A chart over time, ready to be drawn: the points that are wanted, the limits, the points that
// break a rule, and the capability against the card.
//
// Limits come from the baseline that a shift lead chose for this very chart; else from the one of
// its series, whoever it is filtered by; else from the points shown. All figures are core/checks
// charts.h. Fewer than ten values give no limits, as few as in the e-Handbook's example (6.3.2.2);
// twenty and more are common practice, from memory. (Spec: checks, review charts.)

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/checks/charts.h"
#include "core/record/chart_points.h"
#include "core/trail/seq_range.h"

namespace bathside {

inline constexpr std::size_t kFewestForLimits = 10;
inline constexpr std::size_t kUsualForLimits = 20;

/// Empty: of all.
struct TrendWish {
    ChartSeries series{};
    PersonId person{};
    StationId bench{};
    LotId lot{};
};

/// What its baseline is kept under: "out to bath", "out to bath, person AB, lot K07".
[[nodiscard]] std::string chartNameOf(const TrendWish& wish);

/// As they were read: those of the days wanted, and those of baselines from other days.
struct TrendPoints {
    std::vector<ChartPoint> all;  // by seq
    std::vector<SeqRange> days;
};

enum class LimitsFrom : std::uint8_t { PointsShown, Baseline };

struct SideCapability {
    LimitSide side{};
    double limit = 0;  // of the card, at the last point
    double capability = 0;
};

struct Trend {
    std::vector<ChartPoint> points;  // that have a value, by seq
    std::size_t without = 0;         // as many more have none
    LimitsFrom from = LimitsFrom::PointsShown;
    std::string baseline;                   // the chart's name it is kept under
    std::size_t based = 0;                  // points that the limits come from
    std::optional<IndividualsChart> chart;  // none: too few
    std::vector<RunSignal> breaks;          // `at`: of `points`
    std::vector<std::size_t> wideRanges;
    std::vector<SideCapability> capability;  // none where nothing scatters
};

[[nodiscard]] std::vector<double> valuesOf(const Trend& trend);

[[nodiscard]] Trend trendOf(const TrendPoints& points, const TrendWish& wish,
                            const std::map<std::string, Baseline>& baselines,
                            std::span<const RunRule> rules);

}  // namespace bathside
