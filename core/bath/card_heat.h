#pragma once

// What the card says of bath and ampoules, as the heat budget and the thaw model take it.
//
// `SlushScale` tells how a bath's temperature moves the slush time: a factor on the time at the
// card's target, 1 there, from the thaw model at a few temperatures with straight lines between
// their rates (within 0.3 s of the model). It is made once a card, some tens of ms, and asked at
// every tick. Units: °C, s, SI.

#include <memory>
#include <optional>
#include <vector>

#include "core/base/piecewise.h"
#include "core/bath/heat_budget.h"
#include "core/bath/thaw_model.h"
#include "core/card/card.h"

namespace bathside {

[[nodiscard]] HeatBudget budgetOf(const HeatRules& rules, double start);
[[nodiscard]] ThawSetting thawSettingOf(const HeatRules& rules, double bath);
[[nodiscard]] Tolerance toleranceOf(const BathRules& rules);

class SlushScale {
public:
    struct Point {
        MilliCelsius bath;
        Millis slush{};  // above 0
    };

    SlushScale(const HeatRules& rules, MilliCelsius target);
    /// With a film coefficient that is not the card's: still on the time at the target by the
    /// card's own.
    SlushScale(const HeatRules& rules, MilliCelsius target, double film);
    /// As it was kept: `usual` is the time at the target, and above 0; `points` by rising
    /// temperature, at least one.
    SlushScale(Millis usual, std::vector<Point> points);

    /// None: outside the card's range, or of a bath in which nothing thaws within the model's time.
    [[nodiscard]] std::optional<double> at(MilliCelsius bath) const;

    [[nodiscard]] Millis usual() const;
    /// Where something thaws.
    [[nodiscard]] std::vector<Point> points() const;

private:
    MilliCelsius m_lowest, m_highest;
    std::vector<Piecewise::Point> m_points;  // 1/s by °C
    Piecewise m_rate;
    double m_rateAtTarget = 0;
};

/// That of the default heat rules is made once in the program's life.
[[nodiscard]] std::shared_ptr<const SlushScale> slushScaleOf(const Card::Content& card);

}  // namespace bathside
