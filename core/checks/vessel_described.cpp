#include "core/checks/vessel_described.h"

#include <nlohmann/json.hpp>

namespace bathside {
namespace {

double tenths(std::int64_t count) { return static_cast<double>(count) / 10; }

}  // namespace

std::string documentOf(const VesselDescription& vessel)
{
    using Json = nlohmann::ordered_json;
    constexpr double kMicroLitres = 1e6;  // in a litre
    auto rows = Json::array();
    for (const auto& row : vessel.dipstick)
        rows.push_back({{"mm", row.millimetres}, {"litres", tenths(row.decilitres)}});
    Json document{
        {"name", vessel.name},
        {"dipstick", std::move(rows)},
        {"minimum_litres", tenths(vessel.minimumDecilitres)},
        {"usual_litres_per_day", static_cast<double>(vessel.usualPerDay.count) / kMicroLitres}};
    if (vessel.room)
        document["room"] = {{"m3", vessel.room->cubicMetres},
                            {"air_changes_per_hour", tenths(vessel.room->tenthsOfAirChange)}};
    return document.dump();
}

}  // namespace bathside
