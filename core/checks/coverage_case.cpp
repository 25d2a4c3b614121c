#include "core/checks/coverage_case.h"

#include <nlohmann/json.hpp>

#include "core/checks/confidence.h"

namespace bathside {

Result<CoverageCase, DocumentFault> coverageCaseFrom(std::string_view document)
{
    constexpr WholeRange kBirds{1, 100'000, "birds"};
    StrictJson json(document);
    JsonObject root = json.root();
    CoverageCase check;
    check.looked.birds = static_cast<int>(root.whole("looked_at", kBirds));
    check.looked.good = static_cast<int>(root.whole("good", {0, kBirds.to, "birds"}));
    if (check.looked.good > check.looked.birds)
        root.refuse("good", "no more than looked_at");
    check.target = root.number("target", {0.01, 0.9999, ""});
    check.confidence = confidenceIn(root);
    root.noOthers();
    if (json.fault())
        return failure(*json.fault());
    return check;
}

CoverageAnswer answered(const CoverageCase& check)
{
    const Looked& looked = check.looked;
    CoverageAnswer answer;
    answer.share = static_cast<double>(looked.good) / looked.birds;
    answer.interval = shareGood(looked, check.confidence);
    answer.verdict = judged(looked, check.target, check.confidence);
    answer.neededAtBest = birdsNeeded(check.target, check.confidence, 0);
    if (answer.verdict != CoverageVerdict::Missed)
        answer.needed = birdsNeeded(check.target, check.confidence, looked.birds - looked.good);
    return answer;
}

std::string toJson(const CoverageAnswer& answer)
{
    using Json = nlohmann::ordered_json;
    const auto orNull = [](const std::optional<int>& value) {
        return value ? Json(*value) : Json();
    };
    return Json{{"share", answer.share},
                {"low", answer.interval.low},
                {"high", answer.interval.high},
                {"verdict", nameOf(answer.verdict)},
                {"needed_without_miss", orNull(answer.neededAtBest)},
                {"needed_with_these_misses", orNull(answer.needed)}}
        .dump();
}

}  // namespace bathside
