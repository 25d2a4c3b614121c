#pragma once

// What pulls have taught of a bath, as one shift leaves it to the next: what was logged, the
// figures that follow, and how the cue for slush goes by them.
//
// A fitted figure is used from three pulls on that agree (fit_stand.h), else the card's. Opening
// comes after slush, so a film coefficient is at most that of slush; the cue allows for it
// (core/bench/next.cpp). The document in the trail holds all of it in whole numbers: what was
// logged, so that it can be fitted again, and what the cue went by. (Spec: temperatures, heat
// budget and thaw time.)

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/bath/card_heat.h"
#include "core/bath/fit_stand.h"
#include "core/bath/heat_fit.h"
#include "core/bath/thaw_fit.h"
#include "core/card/fault.h"

namespace bathside {

inline constexpr std::size_t kMostLearned = 12;  // pulls that count, the last ones; ours

template <typename T>
void keepLast(std::vector<T>& pulls)
{
    if (pulls.size() > kMostLearned)
        pulls.erase(pulls.begin(), pulls.end() - static_cast<std::ptrdiff_t>(kMostLearned));
}

struct LearnedFigure {
    FitStand stand = FitStand::TooFew;
    int pulls = 0;
    double value = 0;                  // kg, or W/(m² K)
    std::optional<Interval> interval;  // 95 %
    double rms = 0;                    // °C, or s: of what it foresees less what was logged
};

struct BathLearned {
    std::vector<LoggedDip> dips;  // oldest first
    std::vector<LoggedThaw> opens;
    std::optional<LearnedFigure> mass;  // none: nothing was logged that gives one
    std::optional<LearnedFigure> film;
    CardHash card;                          // whose ampoules and target the film was fitted with
    std::shared_ptr<const SlushScale> cue;  // with the film that is used; null: the card's own
};

[[nodiscard]] std::optional<LearnedFigure> learnedMass(const HeatRules& heat,
                                                       const std::vector<LoggedDip>& dips);
/// Some hundred runs of the thaw model.
[[nodiscard]] std::optional<LearnedFigure> learnedFilm(const HeatRules& heat,
                                                       const std::vector<LoggedThaw>& opens);

/// With what was fitted and is used in the place of the card's.
[[nodiscard]] HeatRules heatWith(HeatRules heat, const std::optional<LearnedFigure>& mass,
                                 const std::optional<LearnedFigure>& film);

/// All of it from what was logged; some hundred runs of the thaw model.
[[nodiscard]] BathLearned learnedFrom(std::vector<LoggedDip> dips, std::vector<LoggedThaw> opens,
                                      const Card& card);

[[nodiscard]] std::string documentOf(const BathLearned& learned);
[[nodiscard]] Result<BathLearned, DocumentFault> bathLearnedFrom(std::string_view document);

}  // namespace bathside
