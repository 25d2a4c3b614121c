#pragma once

// The bath's effective mass from dips that were logged, and how good the prediction was.
//
// Least squares through the origin of the measured dips on the heat taken, in terms of 1/mass; the
// interval is Student's t on the residuals (95 %), which needs two dips at least. Effective means:
// water, tank and what mixes with them within a dip, less what the heater gave back by then. Dips
// that show no cooling at all give no mass.

#include <cstdint>
#include <optional>
#include <vector>

#include "core/base/quantiles.h"
#include "core/base/result.h"
#include "core/bath/heat_budget.h"

namespace bathside {

struct LoggedDip {
    int ampoules = 0;
    double start = 0;  // °C before, corrected
    double end = 0;    // °C at the lowest, corrected
};

struct MassFit {
    double mass = 0;                   // kg
    std::optional<Interval> interval;  // kg, 95 %; none with one dip, or where it has no upper end
    double rms = 0;                    // °C, of predicted less measured dips, with the fitted mass
    std::vector<double> predicted;     // °C, one a dip, in order
};

enum class FitFault : std::uint8_t { NoData, NoDip };

/// `budget` gives the ampoules; its bath's mass and start are not looked at.
[[nodiscard]] Result<MassFit, FitFault> fittedMass(const HeatBudget& budget,
                                                   const std::vector<LoggedDip>& dips);

}  // namespace bathside
