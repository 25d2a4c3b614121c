#pragma once

// The level of a vessel over its days, as a chart: dips as dots, a new line from each fill on, and
// the minimum as a rule.

#include <string>

#include "core/checks/vessel_log.h"
#include "ui/charts/chart.h"

namespace bathside::ui {

/// Only dips that the dipstick's table holds; without lines where there is none of them.
[[nodiscard]] ChartContent levelContent(const VesselLog& log, const std::string& zone);

}  // namespace bathside::ui
