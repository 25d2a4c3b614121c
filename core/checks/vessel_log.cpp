#include "core/checks/vessel_log.h"

#include <algorithm>
#include <chrono>
#include <span>

#include "core/checks/vessel_rows.h"

namespace bathside {
namespace {

using Days = std::chrono::duration<double, std::chrono::days::period>;

constexpr double kConfidence = 0.95;
constexpr double kRecentDays = 28;     // readings that the loss is taken from; ours
constexpr std::size_t kMostDips = 64;  // the last ones count: pairs grow with the square; ours

std::optional<VesselRoom> roomIn(JsonObject& root)
{
    if (!root.has("room"))
        return std::nullopt;
    JsonObject room = root.object("room");
    const VesselRoom found{room.number("m3", {1, 100'000, "m³"}),
                           room.number("air_changes_per_hour", {0, 1'000, "per hour"})};
    room.noOthers();
    return found;
}

}  // namespace

Result<Vessel, DocumentFault> vesselFrom(std::string_view document)
{
    StrictJson json(document);
    JsonObject root = json.root();
    const std::string name = root.text("name", 80);
    const auto dipstick = dipstickIn(root);
    const double minimum = root.number("minimum_litres", kVesselLitres);
    const double usual = root.number("usual_litres_per_day", kLitresPerDay);
    const double factor =
        root.numberIfAny("alarm_factor", kAlarmFactor).value_or(kUsualAlarmFactor);
    const auto room = roomIn(root);
    if (dipstick && minimum >= dipstick->fullest())
        root.refuse("minimum_litres", "less than the vessel holds by its table");
    root.noOthers();
    if (json.fault())
        return failure(*json.fault());
    return Vessel{name, *dipstick, minimum, usual, usual * factor, room};
}

std::optional<VesselAnswer> VesselLog::answer() const
{
    if (!vessel)
        return std::nullopt;
    const std::size_t first = dips.size() - std::min(dips.size(), kMostDips);
    VesselCase known{.log = {},
                     .last = {},
                     .minimum = vessel->minimum,
                     .alarm = vessel->alarm,
                     .error = vessel->dipstick.error(),
                     .recentDays = kRecentDays,
                     .confidence = kConfidence};
    bool filled = false;  // since the last dip that counts
    for (const Dip& dip : std::span(dips).subspan(first)) {
        filled = filled || dip.filled;
        const auto litres = vessel->dipstick.litresAt(static_cast<double>(dip.millimetres));
        if (!litres || (!known.log.empty() && dip.at <= known.last))
            continue;
        known.log.push_back({Days(dip.at - dips[first].at).count(), *litres, filled});
        known.last = dip.at;
        filled = false;
    }
    return known.log.empty() ? std::nullopt : std::optional(answered(known));
}

}  // namespace bathside
