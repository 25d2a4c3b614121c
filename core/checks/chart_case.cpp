#include "core/checks/chart_case.h"

#include <nlohmann/json.hpp>

#include "core/checks/confidence.h"

namespace bathside {
namespace {

constexpr NumberRange kAny{-1e12, 1e12, ""};

std::vector<RunRule> rulesIn(JsonObject& root)
{
    if (!root.has("rules"))
        return {kUsualRules.begin(), kUsualRules.end()};
    std::vector<RunRule> rules;
    for (const std::string& name : root.texts("rules", Names<RunRule>::all.size(), 40)) {
        const auto rule = named<RunRule>(name);
        if (!rule)
            root.refuse("rules", "names of run rules, such as \"1 beyond 3\"");
        rules.push_back(rule.value_or(RunRule{}));
    }
    return rules;
}

std::optional<ChartLimit> limitIn(JsonObject& root)
{
    auto object = root.objectIfAny("limit");
    if (!object)
        return std::nullopt;
    const ChartLimit limit{object->number("at", kAny), object->word<LimitSide>("side")};
    object->noOthers();
    return limit;
}

}  // namespace

Result<ChartCase, DocumentFault> chartCaseFrom(std::string_view document)
{
    StrictJson json(document);
    JsonObject root = json.root();
    ChartCase chart;
    chart.values = root.numbers("values", 2, kMostValues, kAny);
    chart.baseline = chart.values.size();
    if (const auto baseline = root.wholeIfAny("baseline", {2, kMostValues, "values"}))
        chart.baseline = static_cast<std::size_t>(*baseline);
    if (chart.baseline > chart.values.size())
        root.refuse("baseline", "no more than there are values");
    chart.rules = rulesIn(root);
    chart.limit = limitIn(root);
    root.noOthers();
    if (json.fault())
        return failure(*json.fault());
    return chart;
}

ChartAnswer answered(const ChartCase& chart)
{
    ChartAnswer answer;
    answer.chart = individualsOf(std::span(chart.values).first(chart.baseline));
    answer.signals = signalsIn(chart.values, answer.chart, chart.rules);
    answer.wideRanges = wideRangesIn(chart.values, answer.chart);
    if (chart.limit && answer.chart.sigma > 0)
        answer.capability =
            capability(answer.chart.centre, answer.chart.sigma, chart.limit->at, chart.limit->side);
    return answer;
}

std::string toJson(const ChartAnswer& answer)
{
    using Json = nlohmann::ordered_json;
    Json signals = Json::array();
    for (const RunSignal& signal : answer.signals)
        signals.push_back({{"at", signal.at}, {"rule", nameOf(signal.rule)}});
    const IndividualsChart& chart = answer.chart;
    Json json{{"centre", chart.centre},
              {"sigma", chart.sigma},
              {"lower", chart.lower},
              {"upper", chart.upper},
              {"mean_range", chart.meanRange},
              {"range_upper", chart.rangeUpper},
              {"signals", signals},
              {"wide_ranges", answer.wideRanges}};
    if (answer.capability)
        json["capability"] = *answer.capability;
    return json.dump();
}

}  // namespace bathside
