#include "core/plan/plan_json.h"

#include <nlohmann/json.hpp>

#include "core/plan/day_time.h"

namespace bathside::plan {
namespace {

using nlohmann::ordered_json;

double millilitres(MicroLitres volume) { return static_cast<double>(volume.count) / 1000; }

double minutes(Millis time) { return static_cast<double>(time.count()) / 60000; }

ordered_json ampoules(const DayInput& input, std::size_t component, std::size_t lot,
                      const char* counted, Count count)
{
    return {{"component", input.recipe[component].name},
            {"lot", input.recipe[component].lots[lot].name},
            {counted, count}};
}

ordered_json bagJson(const DayInput& input, const PlannedBag& bag)
{
    ordered_json json{{"volume_ml", millilitres(bag.volume)}};
    auto lots = ordered_json::array();
    for (const Draw& draw : bag.draws)
        lots.push_back(ampoules(input, draw.component, draw.lot, "ampoules", draw.ampoules));
    if (bag.made != PlannedBag::Made::New)
        json["made"] = bag.made == PlannedBag::Made::Open ? "open" : "mixed";
    json["lots"] = lots;
    json["birds"] = bag.turn.birds;
    if (bag.made == PlannedBag::Made::New) {
        json["pull_start"] = dayTimeText(bag.pullStart);
        json["mixed_by"] = dayTimeText(bag.mixedBy);
    }
    json["first_bird"] = dayTimeText(bag.turn.firstBird);
    json["last_bird"] = dayTimeText(bag.turn.lastBird);
    json["age_at_last_min"] = minutes(bag.ageAtLast);
    json["margin_min"] = minutes(bag.margin);
    json["doses_left"] = bag.doses - bag.turn.birds;
    return json;
}

ordered_json plannedJson(const DayInput& input, const Line& line, const LinePlan& plan)
{
    auto bags = ordered_json::array();
    for (const PlannedBag& bag : plan.bags)
        bags.push_back(bagJson(input, bag));
    return {{"name", line.name},
            {"feasible", true},
            {"doses_opened", plan.worth.cost.doses},
            {"diluent_ml", millilitres({plan.worth.cost.volume})},
            {"finish", dayTimeText(plan.worth.lastBird)},
            {"bags", bags}};
}

ordered_json lineJson(const DayInput& input, const Line& line,
                      const Result<LinePlan, std::vector<Reason>>& planned, const PlanWords& words)
{
    if (planned)
        return plannedJson(input, line, *planned);
    ordered_json json{
        {"name", line.name}, {"feasible", false}, {"why", words.why(planned.error())}};
    if (const auto* undecided = std::get_if<Undecided>(&planned.error().front()))
        json["doses_at_least"] = undecided->atLeast.doses;
    return json;
}

ordered_json placeJson(const DayInput& input, const BagPlace& place)
{
    return {{"line", input.lines[place.line].name}, {"bag", place.bag + 1}};
}

ordered_json benchJson(const DayInput& input, const BenchPlan& bench)
{
    ordered_json json{{"feasible", !bench.cannotMeet},
                      {"preparers_needed", bench.preparersNeeded},
                      {"slack_needed_min", nullptr}};
    if (bench.slackNeeded)
        json["slack_needed_min"] = bench.slackNeeded->count();
    if (bench.cannotMeet)
        json["cannot_meet"] = placeJson(input, *bench.cannotMeet);
    json["schedule"] = ordered_json::array();
    for (const ScheduledBag& slot : bench.schedule) {
        ordered_json entry = placeJson(input, slot.place);
        entry["preparer"] = slot.preparer + 1;
        entry["start"] = dayTimeText(slot.start);
        entry["mixed"] = dayTimeText(slot.mixed);
        json["schedule"].push_back(entry);
    }
    return json;
}

ordered_json totalsJson(const DayInput& input, const Totals& totals)
{
    ordered_json json{
        {"doses_opened", totals.dosesOpened},       {"birds", totals.birds},
        {"doses_discarded", totals.dosesDiscarded}, {"bags", totals.bags},
        {"bags_by_size", ordered_json::array()},    {"ampoules", ordered_json::array()}};
    for (const SizeUse& use : totals.sizes)
        json["bags_by_size"].push_back(
            {{"volume_ml", millilitres(use.volume)}, {"count", use.bags}});
    for (const LotUse& use : totals.ampoules)
        json["ampoules"].push_back(ampoules(input, use.component, use.lot, "count", use.ampoules));
    return json;
}

}  // namespace

std::string toJson(const DayInput& input, const Plan& plan, const PlanWords& words)
{
    auto lines = ordered_json::array();
    for (std::size_t line = 0; line < plan.lines.size(); ++line)
        lines.push_back(lineJson(input, input.lines[line], plan.lines[line], words));
    auto warnings = ordered_json::array();
    for (const Warning& warning : plan.warnings)
        warnings.push_back(words.warning(warning));
    return ordered_json{{"feasible", plan.isFeasible()},
                        {"lines", lines},
                        {"bench", benchJson(input, plan.bench)},
                        {"totals", totalsJson(input, plan.totals)},
                        {"warnings", warnings}}
        .dump();
}

}  // namespace bathside::plan
