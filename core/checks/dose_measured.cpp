#include "core/checks/dose_measured.h"

#include <nlohmann/json.hpp>

namespace bathside {
namespace {

using Json = nlohmann::ordered_json;

double thousandths(std::int64_t count) { return static_cast<double>(count) / 1'000; }

Json liquidOf(const ShotLiquid& liquid)
{
    if (const auto* water = std::get_if<Water>(&liquid))
        return {{"water_c", thousandths(water->temperature.count)}};
    return {{"density_g_ml", thousandths(std::get<OtherLiquid>(liquid).density)}};
}

void write(Json& document, const WeighedShots& shots)
{
    auto weights = Json::array();
    for (const std::int64_t tenths : shots.tenthsOfMilligram)
        weights.push_back(static_cast<double>(tenths) / 10);
    document["weights_mg"] = std::move(weights);
    document["liquid"] = liquidOf(shots.liquid);
}

void write(Json& document, const CollectedShots& shots)
{
    document["cylinder"] = {{"shots", shots.shots},
                            {"collected_ml", thousandths(shots.collected.count)},
                            {"graduation_ml", thousandths(shots.graduation.count)}};
}

}  // namespace

std::string documentOf(const DoseMeasured& measured)
{
    Json document{{"dose_ml", thousandths(measured.dose.count)}};
    std::visit([&](const auto& how) { write(document, how); }, measured.how);
    document["limits"] = {{"systematic_percent", measured.limits.systematicPercent},
                          {"random_percent", measured.limits.randomPercent}};
    return document.dump();
}

}  // namespace bathside
