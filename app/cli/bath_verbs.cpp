#include "app/cli/bath_verbs.h"

#include <cmath>

#include "core/bath/heat_case.h"
#include "core/bath/resistance_case.h"
#include "core/bath/thaw_case.h"

namespace bathside::cli {
namespace {

using TellingOr = Result<Told, DocumentFault>;

std::string sentenceOf(ReadingFault fault)
{
    return "No reading: " + std::string(nameOf(fault)) + ".\n";
}

TellingOr tellOhms(std::string_view document)
{
    const auto ohms = resistanceCaseFrom(document);
    if (!ohms)
        return failure(ohms.error());
    const auto celsius = celsiusOf(ohms->element, ohms->ohm);
    return Told{toJson(celsius),
                celsius ? fixed(*celsius, 3) + " °C\n" : sentenceOf(celsius.error()),
                celsius ? Exit::Done : Exit::No};
}

std::string wordsOf(const std::optional<BathDip>& dip)
{
    if (!dip)
        return "The bath itself would freeze.\n";
    const std::string back = dip->recovery
                                 ? "back in " + fixed(*dip->recovery, 0) + " s"
                                 : std::string("the heater has nothing to spare to bring it back");
    return "The bath dips by " + fixed(dip->depth, 2) + " °C at most, to " + fixed(dip->end, 2) +
           " °C; " + back + ".\n";
}

std::string wordsOf(const MassFit& fit)
{
    const std::string interval = fit.interval ? " (" + fixed(fit.interval->low, 2) + " to " +
                                                    fixed(fit.interval->high, 2) + " kg, 95 %)"
                                              : std::string();
    return "Logged dips: effective mass " + fixed(fit.mass, 2) + " kg" + interval +
           "; they are met to " + fixed(fit.rms, 3) + " °C.\n";
}

std::string wordsOf(const HeatAnswer& answer)
{
    return wordsOf(answer.dip) +
           (answer.staysInside ? "It stays inside" : "It does not stay inside") + " (down to " +
           fixed(answer.lowest, 2) + " °C); at most " + std::to_string(answer.most) +
           " ampoules at a time do.\n" + (answer.fit ? wordsOf(*answer.fit) : "");
}

TellingOr tellHeat(std::string_view document)
{
    const auto heat = heatCaseFrom(document);
    if (!heat)
        return failure(heat.error());
    const HeatAnswer answer = answered(*heat);
    return Told{toJson(answer), wordsOf(answer), answer.staysInside ? Exit::Done : Exit::No};
}

std::string wordsOf(const ThawAnswer& answer)
{
    const std::string slush = answer.slush ? "Slush after " + fixed(*answer.slush, 1) + " s"
                                           : std::string("No slush within the longest time");
    const bool plausible =
        answer.plausible.low <= answer.film && answer.film <= answer.plausible.high;
    std::string words = slush + "; look for it at " +
                        fixed(static_cast<double>(answer.cue.count()) / 1000, 1) + " s.\n" +
                        (answer.beforeLimit ? "That leaves time to handle it before the limit.\n"
                                            : "That is too late for the limit.\n") +
                        "Film coefficient " + fixed(answer.film, 0) +
                        " W/(m² K), swirled water has " + fixed(answer.plausible.low, 0) + " to " +
                        fixed(answer.plausible.high, 0) +
                        (plausible ? ".\n" : ": not plausible.\n");
    if (answer.fit)
        words += "Logged slush times are met to " + fixed(answer.fit->rms, 1) + " s.\n";
    return words;
}

TellingOr tellThaw(std::string_view document)
{
    const auto thaw = thawCaseFrom(document);
    if (!thaw)
        return failure(thaw.error());
    const ThawAnswer answer = answered(*thaw);
    return Told{toJson(answer), wordsOf(answer), answer.beforeLimit ? Exit::Done : Exit::No};
}

}  // namespace

std::vector<DocumentVerb> bathVerbs()
{
    return {
        {"ohms", "Temperature of a resistance thermometer", "Ohms and the element",
         "0 a temperature, 1 no reading, 2 unusable input", R"({"element": "pt100", "ohm": 110.9})",
         tellOhms},
        {"heat", "What ampoules do to the bath: dip, recovery, the most at a time",
         "Ampoules and bath", "0 the bath stays inside, 1 it does not, 2 unusable input",
         R"({"ampoules": 3, "ampoule": {"fill_g": 2, "glass_g": 3}, "bath": {"water_kg": 4, "heater_w": 800}, "start_c": 28, "target_c": 28, "tolerance_c": 1})",
         tellHeat},
        {"thaw", "When an ampoule is slush, and when to look for it", "Ampoule and bath",
         "0 in time for the limit, 1 too late, 2 unusable input",
         R"({"bath_c": 28, "ampoule": {"diameter_mm": 10.75, "wall_mm": 0.5, "fill_ml": 2}, "logs": [{"bath_c": 28, "slush_s": 80}], "limit_s": 90, "handling_s": 8})",
         tellThaw}};
}

}  // namespace bathside::cli
