#include "core/checks/room_air_case.h"

#include <nlohmann/json.hpp>

#include "core/card/strict_json.h"

namespace bathside {

Result<RoomAirCase, DocumentFault> roomAirCaseFrom(std::string_view document)
{
    constexpr NumberRange kLitres{0, 10'000, "L"};
    StrictJson json(document);
    JsonObject root = json.root();
    RoomAirCase room;
    room.boilOff.room = root.number("room_m3", {1, 100'000, "m³"});
    room.boilOff.litres = root.number("litres", kLitres);
    room.boilOff.expansion =
        root.numberIfAny("expansion", {600, 750, ""}).value_or(room.boilOff.expansion);
    room.boilOff.base =
        root.numberIfAny("base_percent", {20, 21.5, "%"}).value_or(room.boilOff.base);
    if (root.has("litres_per_day") || root.has("air_changes_per_h")) {
        room.litresPerDay = root.number("litres_per_day", kLitres);
        room.airChanges = root.number("air_changes_per_h", {0, 100, "air changes an hour"});
    }
    root.noOthers();
    if (json.fault())
        return failure(*json.fault());
    return room;
}

RoomAirAnswer answered(const RoomAirCase& room)
{
    RoomAirAnswer answer;
    answer.atOnce = oxygenAtOnce(room.boilOff);
    answer.mixed = oxygenMixed(room.boilOff);
    answer.caution = cautionAt(answer.atOnce);
    answer.litresToWarning = litresTo(kWarningOxygen, room.boilOff);
    answer.litresToLeave = litresTo(kLeaveOxygen, room.boilOff);
    if (room.litresPerDay)
        answer.ventilated = oxygenVentilated(room.boilOff, *room.litresPerDay, room.airChanges);
    if (room.litresPerDay && room.airChanges <= 0)
        answer.daysToWarning = daysTo(kWarningOxygen, room.boilOff, *room.litresPerDay);
    return answer;
}

std::string toJson(const RoomAirAnswer& answer)
{
    nlohmann::ordered_json json{{"oxygen_at_once_percent", answer.atOnce},
                                {"oxygen_mixed_percent", answer.mixed},
                                {"caution", nameOf(answer.caution)},
                                {"litres_to_warning", answer.litresToWarning},
                                {"litres_to_leave", answer.litresToLeave}};
    if (answer.ventilated)
        json["oxygen_ventilated_percent"] = *answer.ventilated;
    if (answer.daysToWarning)
        json["closed_days_to_warning"] = *answer.daysToWarning;
    return json.dump();
}

}  // namespace bathside
