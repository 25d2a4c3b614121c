#include "core/bath/heat_case.h"

#include <nlohmann/json.hpp>

#include "core/bath/heat_matter.h"
#include "core/card/strict_json.h"

namespace bathside {
namespace {

constexpr double kGrams = 1e-3;  // kg
constexpr NumberRange kGramRange{0, 1000, "g"};
constexpr NumberRange kBathRange{0, 60, "°C"};
constexpr NumberRange kWatts{0, 100'000, "W"};
constexpr std::size_t kMostDips = 1000;

LoggedDip dipFrom(JsonObject& object)
{
    LoggedDip dip;
    dip.ampoules = static_cast<int>(object.whole("ampoules", {1, kMostAmpoules, ""}));
    dip.start = object.number("start_c", kBathRange);
    dip.end = object.number("end_c", kBathRange);
    object.noOthers();
    return dip;
}

std::vector<LoggedDip> dipsFrom(JsonObject& root)
{
    std::vector<LoggedDip> dips;
    if (root.has("dips"))
        for (JsonObject& dip : root.objects("dips", 1, kMostDips))
            dips.push_back(dipFrom(dip));
    return dips;
}

ColdAmpoule ampouleFrom(JsonObject object)
{
    const ColdAmpoule ampoule{object.number("fill_g", kGramRange) * kGrams,
                              object.number("glass_g", kGramRange) * kGrams};
    if (ampoule.fill + ampoule.glass <= 0)
        object.refuse("fill_g", "an ampoule that weighs something");
    object.noOthers();
    return ampoule;
}

/// No water: it is to be fitted.
WaterBath bathFrom(JsonObject object, bool mayLackWater)
{
    constexpr NumberRange kKilograms{0.01, 10'000, "kg"};
    WaterBath bath;
    if (!mayLackWater || object.has("water_kg"))
        bath.water = object.number("water_kg", kKilograms);
    bath.heater = object.number("heater_w", kWatts);
    bath.holding = object.numberIfAny("holding_w", kWatts).value_or(0);
    object.noOthers();
    return bath;
}

HeatBudget budgetFrom(JsonObject& root, bool mayLackWater)
{
    HeatBudget budget;
    budget.ampoule = ampouleFrom(root.object("ampoule"));
    budget.bath = bathFrom(root.object("bath"), mayLackWater);
    budget.start = root.number("start_c", kBathRange);
    budget.cryogen = root.numberIfAny("cryogen_c", {-200, 0, "°C"}).value_or(kCryogenCelsius);
    budget.glassHeat =
        root.numberIfAny("glass_j_per_g_k", {0.1, 2, "J/(g K)"}).value_or(kGlassHeat * kGrams) /
        kGrams;
    return budget;
}

void fitInto(HeatCase& heat, JsonObject& root, const std::vector<LoggedDip>& dips)
{
    const auto fit = fittedMass(heat.budget, dips);
    if (!fit) {
        root.refuse("dips", "dips in which the bath cools");
        return;
    }
    heat.fit = *fit;
    if (heat.budget.bath.water <= 0)
        heat.budget.bath.water = fit->mass;
}

}  // namespace

Result<HeatCase, DocumentFault> heatCaseFrom(std::string_view document)
{
    StrictJson json(document);
    JsonObject root = json.root();
    HeatCase heat;
    heat.ampoules = static_cast<int>(root.whole("ampoules", {0, kMostAmpoules, ""}));
    const std::vector<LoggedDip> dips = dipsFrom(root);
    heat.budget = budgetFrom(root, !dips.empty());
    heat.tolerance.target = root.number("target_c", kBathRange);
    heat.tolerance.tolerance = root.number("tolerance_c", {0.01, 20, "°C"});
    heat.tolerance.guard = root.numberIfAny("guard", {0, 10, ""}).value_or(1);
    heat.expanded = root.numberIfAny("expanded_u_c", {0, 20, "°C"}).value_or(0);
    if (lowestInside(heat.tolerance, heat.expanded) < 0)
        root.refuse("target_c", "a target whose guard band lies above 0 °C");
    root.noOthers();
    if (!json.fault() && !dips.empty())
        fitInto(heat, root, dips);
    if (json.fault())
        return failure(*json.fault());
    return heat;
}

HeatAnswer answered(const HeatCase& heat)
{
    HeatAnswer answer;
    answer.dip = dipOf(heat.budget, heat.ampoules);
    answer.lowest = lowestInside(heat.tolerance, heat.expanded);
    answer.most = mostAmpoules(heat.budget, answer.lowest);
    answer.staysInside = heat.ampoules <= answer.most && heat.budget.start >= answer.lowest;
    answer.water = heat.budget.bath.water;
    answer.fit = heat.fit;
    return answer;
}

namespace {

using Json = nlohmann::ordered_json;

Json jsonOf(const std::optional<double>& value) { return value ? Json(*value) : Json(); }

Json jsonOf(const MassFit& fit)
{
    const auto end = [&](double Interval::*side) {
        return fit.interval ? Json((*fit.interval).*side) : Json();
    };
    return {{"mass_kg", fit.mass},
            {"low_kg", end(&Interval::low)},
            {"high_kg", end(&Interval::high)},
            {"rms_c", fit.rms},
            {"predicted_c", fit.predicted}};
}

}  // namespace

std::string toJson(const HeatAnswer& answer)
{
    const auto dip = answer.dip.value_or(BathDip{});
    const auto ofDip = [&](double value) { return answer.dip ? Json(value) : Json(); };
    Json json{{"end_c", ofDip(dip.end)},          {"dip_c", ofDip(dip.depth)},
              {"heat_j", ofDip(dip.heat)},        {"recovery_s", jsonOf(dip.recovery)},
              {"lowest_inside_c", answer.lowest}, {"stays_inside", answer.staysInside},
              {"most_ampoules", answer.most},     {"water_kg", answer.water}};
    if (answer.fit)
        json["fit"] = jsonOf(*answer.fit);
    return json.dump();
}

}  // namespace bathside
