#include "core/checks/room_air.h"

#include <algorithm>
#include <cmath>

namespace bathside {
namespace {

constexpr double kLitres = 1e-3;  // m³

/// Gas volume over room volume.
double gasShare(const BoilOff& boilOff)
{
    return boilOff.litres * kLitres * boilOff.expansion / boilOff.room;
}

}  // namespace

double oxygenAtOnce(const BoilOff& boilOff)
{
    return boilOff.base * std::max(1 - gasShare(boilOff), 0.0);
}

double oxygenMixed(const BoilOff& boilOff) { return boilOff.base * std::exp(-gasShare(boilOff)); }

double oxygenVentilated(const BoilOff& room, double litresPerDay, double airChanges)
{
    constexpr double kHoursADay = 24;
    BoilOff anHour = room;
    anHour.litres = litresPerDay / kHoursADay;
    if (airChanges <= 0)
        return litresPerDay > 0 ? 0 : room.base;
    return room.base * std::max(1 - gasShare(anHour) / airChanges, 0.0);
}

std::optional<double> daysTo(double oxygen, const BoilOff& room, double litresPerDay)
{
    BoilOff aDay = room;
    aDay.litres = litresPerDay;
    if (litresPerDay <= 0)
        return std::nullopt;
    return std::max(std::log(room.base / oxygen) / gasShare(aDay), 0.0);
}

double litresTo(double oxygen, const BoilOff& room)
{
    return (1 - oxygen / room.base) * room.room / (kLitres * room.expansion);
}

AirCaution cautionAt(double oxygen)
{
    if (oxygen < kImpairedOxygen)
        return AirCaution::Impaired;
    if (oxygen < kLeaveOxygen)
        return AirCaution::Leave;
    return oxygen < kWarningOxygen ? AirCaution::Warning : AirCaution::None;
}

}  // namespace bathside
