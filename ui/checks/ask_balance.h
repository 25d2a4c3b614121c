#pragma once

// Asks which balance weighs the shots, and how its lines are read: port, speed, unit, how a weight
// that is still is told. What is chosen holds at once.

#include "ui/bench/asker.h"
#include "ui/models/preferences.h"

namespace bathside::ui {

struct BalanceDesk {
    WeightSource& source;
    Preferences& preferences;

    [[nodiscard]] const BalanceChoice& now() const { return preferences.now().balance; }
    [[nodiscard]] bool isSet() const { return !now().port.empty(); }
};

/// The port's own name, or that there is none.
[[nodiscard]] QString balanceLine(const BalanceDesk& desk);
/// Why a line is no weight, and what to do.
[[nodiscard]] QString faultText(WeightFault fault);

void askBalance(Asker& asker, const BalanceDesk& desk, const std::function<void()>& done);

}  // namespace bathside::ui
