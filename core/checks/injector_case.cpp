#include "core/checks/injector_case.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/bath/heat_matter.h"
#include "core/checks/confidence.h"

namespace bathside {
namespace {

constexpr NumberRange kDose{0.01, 50, "mL"};
constexpr std::size_t kFewest = 2;

double airIn(JsonObject& root)
{
    double celsius = 22;
    double pressure = 1013;
    double humidity = 50;
    if (auto air = root.objectIfAny("air")) {
        celsius = air->number("celsius", {10, 30, "°C"});
        pressure = air->number("hpa", {600, 1100, "hPa"});
        humidity = air->number("humidity", {0, 100, "%"});
        air->noOthers();
    }
    return airDensity(celsius, pressure, humidity);
}

double densityIn(JsonObject liquid)
{
    constexpr double kPerMillilitre = 1'000;  // (g/mL) in kg/m³
    const double density = liquid.has("water_c")
                               ? waterDensity(liquid.number("water_c", {0, 40, "°C"}))
                               : liquid.number("density_g_ml", {0.8, 1.5, "g/mL"}) * kPerMillilitre;
    liquid.noOthers();
    return density;
}

DoseErrors weighed(JsonObject& root, InjectorCase& check, double confidence)
{
    constexpr double kGrams = 1e-3;  // in a mg
    check.factor = weighingFactor(densityIn(root.object("liquid")), airIn(root));
    auto volumes = root.numbers("weights_mg", kFewest, kMostValues, {0.1, 100'000, "mg"});
    if (volumes.size() < kFewest)
        return {};
    std::ranges::for_each(volumes, [&](double& value) { value *= kGrams * *check.factor; });
    return errorsOf(volumes, check.dose, confidence);
}

DoseErrors measured(JsonObject& root, const InjectorCase& check, double confidence)
{
    const auto volumes = root.numbers("volumes_ml", kFewest, kMostValues, {0.0001, 100, "mL"});
    return volumes.size() < kFewest ? DoseErrors{} : errorsOf(volumes, check.dose, confidence);
}

DoseErrors collected(JsonObject cylinder, const InjectorCase& check)
{
    const auto shots = static_cast<int>(cylinder.whole("shots", {1, 10'000, ""}));
    const double volume = cylinder.number("collected_ml", {0.1, 10'000, "mL"});
    const double graduation = cylinder.number("graduation_ml", {0.001, 100, "mL"});
    cylinder.noOthers();
    return errorsInCylinder(shots, volume, graduation, check.dose);
}

DoseErrors errorsIn(JsonObject& root, InjectorCase& check)
{
    const double confidence = confidenceIn(root);
    if (root.has("cylinder"))
        return collected(root.object("cylinder"), check);
    if (root.has("volumes_ml"))
        return measured(root, check, confidence);
    return weighed(root, check, confidence);
}

DoseLimits limitsIn(JsonObject object)
{
    const DoseLimits limits{object.number("systematic_percent", {0.01, 100, "%"}),
                            object.number("random_percent", {0.01, 100, "%"})};
    object.noOthers();
    return limits;
}

}  // namespace

Result<InjectorCase, DocumentFault> injectorCaseFrom(std::string_view document)
{
    StrictJson json(document);
    JsonObject root = json.root();
    InjectorCase check;
    check.dose = root.number("dose_ml", kDose);
    check.errors = errorsIn(root, check);
    check.limits = limitsIn(root.object("limits"));
    root.noOthers();
    if (json.fault())
        return failure(*json.fault());
    return check;
}

JudgedDose judged(const InjectorCase& check)
{
    return judged(check.errors, check.dose, check.limits);
}

std::string toJson(const InjectorCase& check)
{
    using Json = nlohmann::ordered_json;
    const auto orNull = [](const std::optional<double>& value) {
        return value ? Json(*value) : Json();
    };
    const DoseErrors& errors = check.errors;
    const JudgedDose verdict = judged(check);
    Json json{{"shots", errors.shots},
              {"mean_ml", errors.mean},
              {"systematic_ml", errors.systematic},
              {"systematic_percent", errors.systematicPercent},
              {"random_ml", orNull(errors.random)},
              {"random_percent", orNull(errors.randomPercent)},
              {"mean_low_ml", errors.interval ? Json(errors.interval->low) : Json()},
              {"mean_high_ml", errors.interval ? Json(errors.interval->high) : Json()},
              {"verdict", nameOf(verdict.verdict)},
              {"is_certain", verdict.isCertain}};
    if (check.factor)
        json["ml_per_g"] = *check.factor;
    return json.dump();
}

}  // namespace bathside
