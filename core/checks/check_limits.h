#pragma once

// What checks are held to: the card's limits, else what is usual.

#include <cstdint>

#include "core/card/card.h"
#include "core/checks/injector.h"

namespace bathside {

/// `card` null: before there is any.
[[nodiscard]] DoseLimits doseLimitsOn(const Card* card);
/// The card's section, null where it has none.
[[nodiscard]] const DoseCheckRules* doseRulesOn(const Card* card);

/// As the record has them: of a thousand.
struct CoverageLimits {
    std::int64_t targetPerMille = 0;
    std::int64_t confidencePerMille = 0;

    [[nodiscard]] double target() const { return static_cast<double>(targetPerMille) / 1'000; }
    [[nodiscard]] double confidence() const
    {
        return static_cast<double>(confidencePerMille) / 1'000;
    }
};
/// Where a site sets no other: 95 of 100 birds have it well. Common practice, from memory.
inline constexpr CoverageLimits kUsualCoverage{950, 950};

[[nodiscard]] CoverageLimits coverageLimitsOn(const Card* card);
[[nodiscard]] const BirdCheckRules* birdRulesOn(const Card* card);

}  // namespace bathside
