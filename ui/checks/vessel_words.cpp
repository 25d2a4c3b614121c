// A vessel's figures in words.

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

#include "core/checks/room_air_case.h"
#include "ui/checks/check_words.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

struct VesselText {
    Q_DECLARE_TR_FUNCTIONS(VesselText)
};

const QString kLitres = QStringLiteral("L");

QString vacuumText(Vacuum vacuum)
{
    switch (vacuum) {
        case Vacuum::Sound:
            return VesselText::tr("The vacuum is sound: the vessel loses no more than usual.");
        case Vacuum::Suspect:
            return VesselText::tr(
                "The vacuum is suspect: the vessel loses more than usual. Read its level more "
                "often.");
        case Vacuum::Failing:
            return VesselText::tr(
                "The vacuum is failing: the vessel loses far more than usual. Move the ampoules.");
    }
    Q_UNREACHABLE();
}

Role roleOf(const VesselAnswer& answer)
{
    if (answer.isBelowMinimum || answer.vacuum == Vacuum::Failing)
        return Role::Limit;
    if (!answer.vacuum)
        return Role::Neutral;
    return *answer.vacuum == Vacuum::Sound ? Role::Good : Role::HeadsUp;
}

QString titleOf(const VesselAnswer& answer)
{
    if (answer.isBelowMinimum)
        return VesselText::tr("The level is below its minimum: fill it now.");
    if (answer.vacuum)
        return vacuumText(*answer.vacuum);
    return answer.evaporation
               ? VesselText::tr("The readings show no loss: read the level again tomorrow.")
               : VesselText::tr("Read the level again tomorrow: a loss takes two readings.");
}

QString dateText(const VesselAnswer& answer, double days, const std::string& zone)
{
    const auto at = dateAfter(answer.last, days);
    return at ? dayText(std::chrono::year_month_day(localDay(*at, zone)))
              : VesselText::tr("not for a thousand years");
}

QString lossText(const Evaporation& evaporation)
{
    const QString unit = VesselText::tr("L a day");
    const QString rate = figure(evaporation.rate, 2, unit);
    return evaporation.interval
               ? VesselText::tr("%1; it lies in %2", "a loss and its interval")
                     .arg(rate, rangeText(*evaporation.interval, 2, unit))
               : VesselText::tr("%1; too few readings to say how surely").arg(rate);
}

QString lateText(const Evaporation& loss)
{
    const QString rate = figure(loss.rate, 2, VesselText::tr("L a day"));
    return loss.interval
               ? rate
               : VesselText::tr("%1; one more reading has to confirm that", "a loss").arg(rate);
}

/// In L/day; none where no loss is shown.
std::optional<double> lossOf(const std::optional<VesselAnswer>& known)
{
    const bool isKnown = known && known->evaporation;
    const bool isConfirmed = known && known->ofLate && known->ofLate->interval;
    const double loss =
        std::max(isKnown ? known->evaporation->rate : 0, isConfirmed ? known->ofLate->rate : 0);
    return loss > 0 ? std::optional(loss) : std::nullopt;
}

void addFill(CheckSheet& sheet, const VesselAnswer& answer, const std::string& zone)
{
    if (!answer.refill)
        return;
    sheet.fields.append({VesselText::tr("fill by"), dateText(answer, answer.refill->days, zone)});
    sheet.fields.append(
        {VesselText::tr("at the soonest"), dateText(answer, answer.refill->earliest, zone)});
}

QString cautionText(AirCaution caution)
{
    switch (caution) {
        case AirCaution::None:
            return VesselText::tr("no lack of oxygen by this estimate");
        case AirCaution::Warning:
            return VesselText::tr("too little oxygen: below 19.5 %");
        case AirCaution::Leave:
            return VesselText::tr("leave the room: below 18 %");
        case AirCaution::Impaired:
            return VesselText::tr("danger to life: below 14 % nobody helps himself");
    }
    Q_UNREACHABLE();
}

void addAir(CheckSheet& sheet, const Vessel& vessel, const std::optional<VesselAnswer>& known)
{
    if (!vessel.room)
        return;
    RoomAirCase room;
    room.boilOff.room = vessel.room->cubicMetres;
    room.boilOff.litres = known ? known->litres : vessel.dipstick.fullest();
    room.litresPerDay = lossOf(known).value_or(vessel.usual);
    room.airChanges = vessel.room->airChanges;
    const RoomAirAnswer air = answered(room);
    sheet.fields.append({VesselText::tr("oxygen, if all of it boils off at once"),
                         VesselText::tr("%1: %2", "oxygen, and what that means")
                             .arg(figure(air.atOnce, 1, kPercent), cautionText(air.caution))});
    sheet.fields.append(
        {VesselText::tr("oxygen, with its usual loss"),
         air.daysToWarning ? VesselText::tr("a closed room: below 19.5 % after %1, and falling on")
                                 .arg(figure(*air.daysToWarning, 1, VesselText::tr("days")))
                           : figure(air.ventilated.value_or(kOxygenOfAir), 1, kPercent)});
    sheet.fields.append(
        {VesselText::tr("caution"),
         VesselText::tr("An estimate. Cold gas sinks and does not spread evenly: a meter at the "
                        "bench stays necessary, and local rules go first.")});
}

}  // namespace

CheckSheet sheetOf(const VesselLog& log, const std::string& zone)
{
    if (!log.vessel)
        return {.title = VesselText::tr("Describe the vessel first: its dipstick's table, its "
                                        "minimum, its usual loss.")};
    const Vessel& vessel = *log.vessel;
    const auto answer = log.answer();
    CheckSheet sheet{
        .role = answer ? roleOf(*answer) : Role::Neutral,
        .title = answer ? titleOf(*answer) : VesselText::tr("Dip the vessel and enter its level.")};
    if (answer) {
        sheet.fields.append(
            {VesselText::tr("level"), VesselText::tr("%1 of %2; minimum: %3", "litres")
                                          .arg(figure(answer->litres, 1, kLitres),
                                               figure(vessel.dipstick.fullest(), 1, kLitres),
                                               figure(vessel.minimum, 1, kLitres))});
        if (answer->evaporation && answer->evaporation->rate > 0)
            sheet.fields.append({VesselText::tr("loss"), lossText(*answer->evaporation)});
        if (answer->ofLate)
            sheet.fields.append({VesselText::tr("of late"), lateText(*answer->ofLate)});
        addFill(sheet, *answer, zone);
    }
    sheet.fields.append(
        {VesselText::tr("too high from"),
         VesselText::tr("%1 a day; usual: %2")
             .arg(figure(vessel.alarm, 2, kLitres), figure(vessel.usual, 2, kLitres))});
    addAir(sheet, vessel, answer);
    return sheet;
}

}  // namespace bathside::ui
