#pragma once

// Results of checks in words. Holds no state and no widget.

#include <QString>
#include <optional>
#include <span>

#include "core/bench/bench.h"
#include "core/checks/check_limits.h"
#include "core/checks/coverage_case.h"
#include "core/checks/dose_measured.h"
#include "core/checks/injector_case.h"
#include "ui/checks/check_view.h"

namespace bathside::ui {

inline const QString kPercent = QStringLiteral("%");

/// A figure with so many decimals, in the locale's way; `unit` as it is read: "mL", "%".
[[nodiscard]] QString figure(double value, int decimals, const QString& unit);
/// Always with its sign.
[[nodiscard]] QString signedFigure(double value, int decimals, const QString& unit);
[[nodiscard]] QString rangeText(const Interval& interval, int decimals, const QString& unit);

[[nodiscard]] QString liquidText(const ShotLiquid& liquid);
/// Weights as they were entered, in mg.
[[nodiscard]] QString weightsText(std::span<const std::int64_t> tenthsOfMilligram);

/// Where a check's limits come from, and what the card asks for beyond them; empty: it says
/// nothing.
struct LimitsSaid {
    QString from{};
    QString toDo{};
};
/// `rules` null: what is usual. `language` as `Language::cardCode` gives it.
template <typename Rules>
[[nodiscard]] LimitsSaid limitsSaid(const Rules* rules, const std::string& language);

/// Errors and verdict of what is measured but not recorded; `touched`: the birds that a failed
/// check would name.
[[nodiscard]] CheckSheet sheetOf(const InjectorCase& check, std::int64_t touched,
                                 const LimitsSaid& limits);
/// What is on record of a line's last dose check; null: nothing is known of the line.
[[nodiscard]] CheckSheet doseOnRecord(const Bench& bench, const Line* line,
                                      const std::string& zone);

[[nodiscard]] CheckSheet sheetOf(const CoverageCase& check, const LimitsSaid& limits);
/// Before any bird is looked at: how many it takes.
[[nodiscard]] CheckSheet birdsToLookAt(const CoverageLimits& held, const LimitsSaid& limits);

// vessel_words.cpp
/// Level, loss, next fill, vacuum and air of a vessel as it is known.
[[nodiscard]] CheckSheet sheetOf(const VesselLog& log, const std::string& zone);

}  // namespace bathside::ui
