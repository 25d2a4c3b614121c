#include "core/checks/check_limits.h"

namespace bathside {

const DoseCheckRules* doseRulesOn(const Card* card)
{
    return card && card->content().checkRules.dose ? &*card->content().checkRules.dose : nullptr;
}

DoseLimits doseLimitsOn(const Card* card)
{
    constexpr double kPerCent = 10;  // per mille
    const DoseCheckRules* rules = doseRulesOn(card);
    return rules ? DoseLimits{static_cast<double>(rules->systematicPerMille) / kPerCent,
                              static_cast<double>(rules->randomPerMille) / kPerCent}
                 : kUsualDoseLimits;
}

const BirdCheckRules* birdRulesOn(const Card* card)
{
    return card && card->content().checkRules.birds ? &*card->content().checkRules.birds : nullptr;
}

CoverageLimits coverageLimitsOn(const Card* card)
{
    const BirdCheckRules* rules = birdRulesOn(card);
    return rules ? CoverageLimits{rules->targetPerMille, rules->confidencePerMille}
                 : kUsualCoverage;
}

}  // namespace bathside
