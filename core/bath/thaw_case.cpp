#include "core/bath/thaw_case.h"

#include <chrono>
#include <cmath>

#include <nlohmann/json.hpp>

#include "core/bath/heat_matter.h"
#include "core/bath/thaw_film.h"
#include "core/card/strict_json.h"

namespace bathside {
namespace {

constexpr double kMillimetres = 1e-3;  // m
constexpr double kMillilitres = 1e-6;  // m³
constexpr NumberRange kThawRange{1, 60, "°C"};
constexpr NumberRange kSeconds{0, 3600, "s"};
constexpr std::size_t kMostLogs = 50;  // a fit runs the model some 20 times for each

Millis millis(double seconds) { return Millis(std::llround(seconds * 1000)); }

AmpouleShape shapeFrom(JsonObject object)
{
    const double diameter = object.number("diameter_mm", {3, 40, "mm"});
    const double wall = object.number("wall_mm", {0.1, 3, "mm"});
    const double fill = object.number("fill_ml", {0.1, 50, "mL"});
    if (wall > diameter / 4)
        object.refuse("wall_mm", "at most a quarter of the diameter");
    object.noOthers();
    return {diameter * kMillimetres, wall * kMillimetres, fill * kMillilitres};
}

LoggedThaw logFrom(JsonObject& object, const AmpouleShape& usual)
{
    LoggedThaw log;
    log.bath = object.number("bath_c", kThawRange);
    log.slush = object.number("slush_s", {1, 1200, "s"});
    log.shape = object.has("ampoule") ? shapeFrom(object.object("ampoule")) : usual;
    object.noOthers();
    return log;
}

std::vector<LoggedThaw> logsFrom(JsonObject& root, const AmpouleShape& usual)
{
    std::vector<LoggedThaw> logs;
    if (root.has("logs"))
        for (JsonObject& log : root.objects("logs", 1, kMostLogs))
            logs.push_back(logFrom(log, usual));
    return logs;
}

ThawSetting settingFrom(JsonObject& root)
{
    ThawSetting setting;
    setting.bath = root.number("bath_c", kThawRange);
    setting.shape = shapeFrom(root.object("ampoule"));
    setting.start = root.numberIfAny("start_c", {-196, -20, "°C"}).value_or(kCryogenCelsius);
    setting.slushIce = root.numberIfAny("slush_ice", {0.01, 0.5, ""}).value_or(setting.slushIce);
    Cryoprotected contents;
    contents.freezing =
        root.numberIfAny("freezing_c", {-10, -0.5, "°C"}).value_or(contents.freezing);
    setting.contents = cryoprotected(contents);
    return setting;
}

std::string expectedOf(FilmFault fault)
{
    switch (fault) {
        case FilmFault::NoData:
            return "a list of logged slush times";
        case FilmFault::TooFast:
            return "slush times that water can bring about: these are too short";
        case FilmFault::TooSlow:
            return "slush times that water can bring about: these are too long";
    }
    return {};
}

void fitInto(ThawCase& thaw, JsonObject& root, const std::vector<LoggedThaw>& logs)
{
    const auto fit = fittedFilm(thaw.setting, logs);
    if (!fit) {
        root.refuse("logs", expectedOf(fit.error()));
        return;
    }
    thaw.fit = *fit;
    thaw.setting.film = fit->film;
}

}  // namespace

Result<ThawCase, DocumentFault> thawCaseFrom(std::string_view document)
{
    StrictJson json(document);
    JsonObject root = json.root();
    ThawCase thaw;
    thaw.setting = settingFrom(root);
    const std::vector<LoggedThaw> logs = logsFrom(root, thaw.setting.shape);
    if (logs.empty())
        thaw.setting.film =
            root.number("film_w_m2k", {kFilmRange.low, kFilmRange.high, "W/(m² K)"});
    thaw.limit = millis(root.number("limit_s", kSeconds));
    thaw.handling = millis(root.numberIfAny("handling_s", kSeconds).value_or(0));
    root.noOthers();
    if (!json.fault() && !logs.empty())
        fitInto(thaw, root, logs);
    if (json.fault())
        return failure(*json.fault());
    return thaw;
}

ThawAnswer answered(const ThawCase& thaw)
{
    const Thaw result = thawed(thaw.setting);
    ThawAnswer answer;
    answer.slush = result.slush;
    answer.cue = slushCue(result.slush.value_or(thaw.setting.longest), thaw.limit, thaw.handling);
    const std::chrono::duration<double> ready(result.slush.value_or(thaw.setting.longest));
    answer.beforeLimit = ready + thaw.handling < thaw.limit;
    answer.film = thaw.setting.film;
    answer.plausible = plausibleFilm(thaw.setting.bath, thaw.setting.shape.diameter);
    answer.imbalance = std::abs(result.heatIn - result.heatKept) / result.heatIn;
    answer.fit = thaw.fit;
    return answer;
}

std::string toJson(const ThawAnswer& answer)
{
    using Json = nlohmann::ordered_json;
    const auto [low, high] = answer.plausible;
    Json json{{"slush_s", answer.slush ? Json(*answer.slush) : Json()},
              {"cue_s", static_cast<double>(answer.cue.count()) / 1000},
              {"before_limit", answer.beforeLimit},
              {"film_w_m2k", answer.film},
              {"plausible_film_w_m2k", {low, high}},
              {"film_is_plausible", low <= answer.film && answer.film <= high},
              {"heat_imbalance", answer.imbalance}};
    if (answer.fit)
        json["fit"] = {{"rms_s", answer.fit->rms}, {"predicted_s", answer.fit->predicted}};
    return json.dump();
}

}  // namespace bathside
