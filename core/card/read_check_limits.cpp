#include "core/card/read_check_limits.h"

#include "core/card/read_limits.h"

namespace bathside {
namespace {

constexpr WholeRange kError{1, 1'000, "per mille"};
constexpr WholeRange kDensity{800, 1'500, "g/L"};
constexpr WholeRange kShare{500, 999, "per mille"};

DoseCheckRules doseFrom(JsonObject dose, const std::vector<std::string>& languages)
{
    DoseCheckRules rules;
    rules.systematicPerMille = dose.whole("systematic_per_mille", kError);
    rules.randomPerMille = dose.whole("random_per_mille", kError);
    rules.density = dose.wholeIfAny("diluent_density_g_l", kDensity);
    rules.words = wordsFrom(dose, "words", languages);
    rules.source = dose.text("source", kLongestSource);
    dose.noOthers();
    return rules;
}

BirdCheckRules birdsFrom(JsonObject birds, const std::vector<std::string>& languages)
{
    BirdCheckRules rules;
    rules.targetPerMille = birds.whole("target_per_mille", kShare);
    rules.confidencePerMille =
        birds.wholeIfAny("confidence_per_mille", kShare).value_or(rules.confidencePerMille);
    rules.words = wordsFrom(birds, "words", languages);
    rules.source = birds.text("source", kLongestSource);
    birds.noOthers();
    return rules;
}

}  // namespace

CheckRules checkLimitsFrom(JsonObject limits, const std::vector<std::string>& languages)
{
    CheckRules rules;
    if (auto dose = limits.objectIfAny("dose"))
        rules.dose = doseFrom(*dose, languages);
    if (auto birds = limits.objectIfAny("birds"))
        rules.birds = birdsFrom(*birds, languages);
    limits.noOthers();
    return rules;
}

}  // namespace bathside
