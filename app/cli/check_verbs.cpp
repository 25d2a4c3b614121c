#include "app/cli/check_verbs.h"

#include "core/base/rfc3339.h"
#include "core/checks/chart_case.h"
#include "core/checks/coverage_case.h"
#include "core/checks/flow_case.h"
#include "core/checks/injector_case.h"
#include "core/checks/live_cells_case.h"
#include "core/checks/room_air_case.h"
#include "core/checks/vessel_case.h"

namespace bathside::cli {
namespace {

using TellingOr = Result<Told, DocumentFault>;

std::string percent(double share) { return fixed(100 * share, 2) + " %"; }

std::string wordsOf(const InjectorCase& check)
{
    const DoseErrors& errors = check.errors;
    const JudgedDose verdict = judged(check);
    std::string words =
        "Mean of " + std::to_string(errors.shots) + " shots " + fixed(errors.mean, 4) + " mL";
    if (errors.interval)
        words += " (" + fixed(errors.interval->low, 4) + " to " + fixed(errors.interval->high, 4) +
                 " mL)";
    words += ": " + fixed(errors.systematicPercent, 2) + " % off.\n";
    if (errors.randomPercent)
        words += "Scatter " + fixed(*errors.randomPercent, 2) + " %.\n";
    words +=
        verdict.verdict == DoseVerdict::Good ? "The dose is good" : "The dose check has failed";
    return words + (verdict.isCertain ? ".\n" : "; more shots would make that certain.\n");
}

TellingOr tellInjector(std::string_view document)
{
    const auto check = injectorCaseFrom(document);
    if (!check)
        return failure(check.error());
    return Told{toJson(*check), wordsOf(*check),
                judged(*check).verdict == DoseVerdict::Good ? Exit::Done : Exit::No};
}

std::string sentenceOf(CoverageVerdict verdict)
{
    switch (verdict) {
        case CoverageVerdict::Shown:
            return "The target is shown.\n";
        case CoverageVerdict::Undecided:
            return "Undecided: too few birds were looked at.\n";
        case CoverageVerdict::Missed:
            return "The target is missed.\n";
    }
    return {};
}

std::string birdsText(const std::optional<int>& birds)
{
    return birds ? std::to_string(*birds) + " birds" : std::string("more than a million birds");
}

std::string wordsOf(const CoverageAnswer& answer)
{
    const std::string found = percent(answer.share) + " are good (" + percent(answer.interval.low) +
                              " to " + percent(answer.interval.high) + "). " +
                              sentenceOf(answer.verdict);
    const std::string atBest =
        "To show the target it takes " + birdsText(answer.neededAtBest) + " without a miss";
    return answer.verdict == CoverageVerdict::Missed
               ? found + atBest + ".\n"
               : found + atBest + ", or " + birdsText(answer.needed) + " with as many misses.\n";
}

TellingOr tellCoverage(std::string_view document)
{
    const auto check = coverageCaseFrom(document);
    if (!check)
        return failure(check.error());
    const CoverageAnswer answer = answered(*check);
    return Told{toJson(answer), wordsOf(answer),
                answer.verdict == CoverageVerdict::Missed ? Exit::No : Exit::Done};
}

std::string wordsOf(const FlowAnswer& answer)
{
    const auto minutes = [](double seconds) { return fixed(seconds / 60, 1); };
    std::string words = fixed(answer.flow.perHour, 0) + " birds an hour (" +
                        fixed(answer.flow.interval.low, 0) + " to " +
                        fixed(answer.flow.interval.high, 0) + ").\n";
    if (answer.empty)
        words += "Empty in " + minutes(answer.empty->seconds) + " min (" +
                 minutes(answer.empty->earliest) + " to " +
                 (answer.empty->latest ? minutes(*answer.empty->latest) + " min" : "never") +
                 ").\n";
    return words;
}

TellingOr tellFlow(std::string_view document)
{
    const auto line = flowCaseFrom(document);
    if (!line)
        return failure(line.error());
    const FlowAnswer answer = answered(*line);
    return Told{toJson(answer), wordsOf(answer), Exit::Done};
}

std::string sentenceOf(const std::optional<Vacuum>& vacuum)
{
    if (!vacuum)
        return "Too few readings for a rate.\n";
    switch (*vacuum) {
        case Vacuum::Sound:
            return "The vacuum is sound.\n";
        case Vacuum::Suspect:
            return "The vacuum is suspect: the vessel loses more than usual.\n";
        case Vacuum::Failing:
            return "The vacuum is failing: the vessel loses far more than usual.\n";
    }
    return {};
}

std::string dayText(WallTime from, double days)
{
    const auto date = dateAfter(from, days);
    return date ? toRfc3339(*date).substr(0, 10) : std::string("a far day");
}

std::string wordsOf(const VesselAnswer& answer)
{
    std::string words = fixed(answer.litres, 1) + " L" +
                        (answer.isBelowMinimum ? ", below the minimum" : "") + ".\n";
    const auto rate = [](const Evaporation& loss) { return fixed(loss.rate, 3) + " L a day"; };
    if (answer.evaporation && answer.evaporation->rate > 0)
        words += "It loses " + rate(*answer.evaporation) + ".\n";
    if (answer.ofLate)
        words += "Of late it loses " + rate(*answer.ofLate) +
                 (answer.ofLate->interval ? ".\n" : "; one more reading has to confirm that.\n");
    words += answer.evaporation && !answer.vacuum
                 ? "The readings show no loss: read the level again tomorrow.\n"
                 : sentenceOf(answer.vacuum);
    if (answer.refill)
        words += "To be filled by " + dayText(answer.last, answer.refill->earliest) + " (" +
                 dayText(answer.last, answer.refill->days) + " if all goes on as usual).\n";
    return words;
}

TellingOr tellVessel(std::string_view document)
{
    const auto vessel = vesselCaseFrom(document);
    if (!vessel)
        return failure(vessel.error());
    const VesselAnswer answer = answered(*vessel);
    const bool isBad = answer.isBelowMinimum || answer.vacuum == Vacuum::Failing;
    return Told{toJson(answer), wordsOf(answer), isBad ? Exit::No : Exit::Done};
}

std::string sentenceOf(AirCaution caution)
{
    switch (caution) {
        case AirCaution::None:
            return "That is no less than 19.5 %.\n";
        case AirCaution::Warning:
            return "Below 19.5 %: the air is short of oxygen.\n";
        case AirCaution::Leave:
            return "Below 18 %: leave the room.\n";
        case AirCaution::Impaired:
            return "Below 14 %: people are impaired before they notice.\n";
    }
    return {};
}

std::string wordsOf(const RoomAirAnswer& answer)
{
    std::string words = "Oxygen if all boils off at once: " + fixed(answer.atOnce, 1) +
                        " % at worst, " + fixed(answer.mixed, 1) + " % where it mixes. " +
                        sentenceOf(answer.caution) + fixed(answer.litresToWarning, 2) +
                        " L at once are enough for 19.5 %, " + fixed(answer.litresToLeave, 2) +
                        " L for 18 %.\n";
    if (answer.ventilated)
        words +=
            "With the vessel's usual loss and this ventilation: " + fixed(*answer.ventilated, 2) +
            " %.\n";
    return words + "An estimate: cold gas lies low. It does not replace an oxygen monitor.\n";
}

TellingOr tellRoomAir(std::string_view document)
{
    const auto room = roomAirCaseFrom(document);
    if (!room)
        return failure(room.error());
    const RoomAirAnswer answer = answered(*room);
    return Told{toJson(answer), wordsOf(answer),
                answer.caution == AirCaution::None ? Exit::Done : Exit::No};
}

std::string sentenceOf(CellsVerdict verdict)
{
    switch (verdict) {
        case CellsVerdict::Above:
            return "All of that is at or above the minimum.\n";
        case CellsVerdict::Undecided:
            return "The minimum lies within.\n";
        case CellsVerdict::Below:
            return "All of that is below the minimum.\n";
    }
    return {};
}

TellingOr tellLiveCells(std::string_view document)
{
    const auto budget = liveCellsCaseFrom(document);
    if (!budget)
        return failure(budget.error());
    const auto band = perDose(budget->cells);
    if (!band)
        return Told{toJson(*budget), "No published loss rate is given: nothing to show.\n",
                    Exit::Done};
    const CellsVerdict verdict = judged(*band, budget->minimum);
    return Told{toJson(*budget),
                "Live units per dose: " + fixed(band->low, 0) + " to " + fixed(band->high, 0) +
                    ". " + sentenceOf(verdict) + "Indicative only, never a release decision.\n",
                verdict == CellsVerdict::Below ? Exit::No : Exit::Done};
}

std::string wordsOf(const ChartAnswer& answer)
{
    std::string words = "Centre " + fixed(answer.chart.centre, 4) + ", limits " +
                        fixed(answer.chart.lower, 4) + " to " + fixed(answer.chart.upper, 4) +
                        ".\n";
    for (const RunSignal& signal : answer.signals)
        words += "Value " + std::to_string(signal.at + 1) + ": " +
                 std::string(nameOf(signal.rule)) + ".\n";
    for (const std::size_t at : answer.wideRanges)
        words += "Value " + std::to_string(at + 1) + ": a step beyond the range limit.\n";
    if (answer.capability)
        words += "Capability " + fixed(*answer.capability, 3) + ".\n";
    return words;
}

TellingOr tellChart(std::string_view document)
{
    const auto chart = chartCaseFrom(document);
    if (!chart)
        return failure(chart.error());
    const ChartAnswer answer = answered(*chart);
    const bool isQuiet = answer.signals.empty() && answer.wideRanges.empty();
    return Told{toJson(answer), wordsOf(answer), isQuiet ? Exit::Done : Exit::No};
}

}  // namespace

std::vector<DocumentVerb> checkVerbs()
{
    return {
        {"injector", "A dose check, weighed or measured", "The shots",
         "0 the dose is good, 1 it is not, 2 unusable input",
         R"({"dose_ml": 0.2, "weights_mg": [199.2, 199.8, 200.1], "liquid": {"water_c": 22}, "limits": {"systematic_percent": 5, "random_percent": 5}})",
         tellInjector},
        {"coverage", "A vaccination check: how many birds are good", "The birds looked at",
         "0 shown or undecided, 1 missed, 2 unusable input",
         R"({"good": 97, "looked_at": 100, "target": 0.95})", tellCoverage},
        {"flow", "A line's rate, and when its bag is empty", "Birds by running time",
         "0 done, 2 unusable input",
         R"({"pieces": [{"seconds": 600, "birds": 512}, {"seconds": 540, "birds": 430}], "left": 1830})",
         tellFlow},
        {"vessel", "A cryogen vessel: loss, next fill, vacuum", "Dipstick table and log",
         "0 in order, 1 below its minimum or its vacuum failing, 2 unusable input",
         R"({"dipstick": [{"mm": 0, "litres": 0}, {"mm": 500, "litres": 30}], "log": [{"at": "2026-03-01T07:00:00+01:00", "mm": 450}, {"at": "2026-03-02T07:00:00+01:00", "mm": 445}], "minimum_litres": 8, "usual_litres_per_day": 0.3})",
         tellVessel},
        {"room-air", "A room's oxygen if a vessel boils off in it", "Room and vessel",
         "0 no caution, 1 below 19.5 % oxygen, 2 unusable input",
         R"({"room_m3": 60, "litres": 5, "litres_per_day": 0.3, "air_changes_per_h": 2})",
         tellRoomAir},
        {"live-cells", "Live cells left in a dose, as a band; indicative", "Titre, times, losses",
         "0 not below the minimum, or nothing to show, 1 below, 2 unusable input",
         R"({"titre_per_dose": {"low": 3000, "high": 4000}, "doses_in": 4000, "doses_out": 4000, "bath_min": 0, "bag_min": 60, "minimum_per_dose": 1000, "bag_loss": {"half_life_h": {"low": 3, "high": 5}, "source": "the paper it is from"}})",
         tellLiveCells},
        {"chart", "A control chart of single values, its run rules, capability", "The values",
         "0 no signal, 1 a signal, 2 unusable input",
         R"({"values": [49.6, 47.6, 49.9, 51.3, 47.8], "rules": ["1 beyond 3", "8 on one side"], "limit": {"at": 60, "side": "upper"}})",
         tellChart}};
}

}  // namespace bathside::cli
