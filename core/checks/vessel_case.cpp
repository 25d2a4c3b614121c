#include "core/checks/vessel_case.h"

#include <algorithm>
#include <chrono>
#include <cmath>

#include <nlohmann/json.hpp>

#include "core/base/rfc3339.h"
#include "core/checks/confidence.h"
#include "core/checks/vessel_rows.h"

namespace bathside {
namespace {

using Days = std::chrono::duration<double, std::chrono::days::period>;

constexpr NumberRange kMillimetres{0, 5'000, "mm"};
constexpr std::size_t kMostReadings = 1'000;  // pairs grow with the square

double litresIn(JsonObject& entry, const std::optional<Dipstick>& dipstick)
{
    const double depth = entry.number("mm", kMillimetres);
    const auto litres = dipstick ? dipstick->litresAt(depth) : 0;
    if (!litres)
        entry.refuse("mm", "a depth within the dipstick's table");
    return litres.value_or(0);
}

WallTime instantIn(JsonObject& entry, const VesselCase& vessel)
{
    const auto at = fromRfc3339(entry.text("at", 40));
    if (!at)
        entry.refuse("at", "an RFC 3339 instant with its offset");
    else if (!vessel.log.empty() && *at <= vessel.last)
        entry.refuse("at", "an instant after the one before");
    return at.value_or(vessel.last);
}

void readLog(VesselCase& vessel, JsonObject& root, const std::optional<Dipstick>& dipstick)
{
    WallTime first{};
    for (JsonObject& entry : root.objects("log", 1, kMostReadings)) {
        const WallTime at = instantIn(entry, vessel);
        if (vessel.log.empty())
            first = at;
        vessel.last = at;
        const bool afterFill = entry.has("after_fill") && entry.flag("after_fill");
        vessel.log.push_back({Days(at - first).count(), litresIn(entry, dipstick), afterFill});
        entry.noOthers();
    }
}

}  // namespace

std::optional<Dipstick> dipstickIn(JsonObject& root)
{
    std::vector<Dipstick::Row> rows;
    for (JsonObject& row : root.objects("dipstick", 2, 1'000)) {
        rows.push_back({row.number("mm", kMillimetres), row.number("litres", kVesselLitres)});
        row.noOthers();
    }
    auto dipstick = Dipstick::from(std::move(rows));
    if (dipstick)
        return *dipstick;
    root.refuse("dipstick", "two rows at least, rising in mm and in litres");
    return std::nullopt;
}

Result<VesselCase, DocumentFault> vesselCaseFrom(std::string_view document)
{
    StrictJson json(document);
    JsonObject root = json.root();
    VesselCase vessel;
    const auto dipstick = dipstickIn(root);
    readLog(vessel, root, dipstick);
    vessel.error = dipstick ? dipstick->error() : 0;
    vessel.minimum = root.number("minimum_litres", kVesselLitres);
    vessel.alarm = root.number("usual_litres_per_day", kLitresPerDay) *
                   root.numberIfAny("alarm_factor", kAlarmFactor).value_or(kUsualAlarmFactor);
    vessel.recentDays = root.numberIfAny("recent_days", {1, 3'650, "days"}).value_or(HUGE_VAL);
    vessel.confidence = confidenceIn(root);
    root.noOthers();
    if (json.fault())
        return failure(*json.fault());
    return vessel;
}

namespace {

std::optional<Vacuum> vacuumBy(const std::optional<Evaporation>& loss, double alarm)
{
    return loss ? judged(*loss, alarm) : std::nullopt;
}

std::optional<Refill> refillBy(const VesselAnswer& answer, double minimum)
{
    const auto by = [&](const std::optional<Evaporation>& loss) {
        return loss ? refillIn(*loss, answer.litres, minimum) : std::nullopt;
    };
    auto usual = by(answer.evaporation);
    const auto late = by(answer.ofLate);
    if (!usual || !late)
        return usual ? usual : late;
    if (answer.ofLate->interval && late->days < usual->days)
        return late;
    usual->earliest = std::min(usual->earliest, late->earliest);
    return usual;
}

}  // namespace

VesselAnswer answered(const VesselCase& vessel)
{
    VesselAnswer answer;
    answer.litres = vessel.log.back().litres;
    answer.isBelowMinimum = answer.litres < vessel.minimum;
    answer.last = vessel.last;
    const double since = vessel.log.back().day - vessel.recentDays;
    const auto log = withFillsSeen(vessel.log, vessel.error);
    const auto from = std::ranges::lower_bound(log, since, {}, &LevelReading::day);
    answer.evaporation = evaporationOf({from, log.end()}, vessel.confidence);
    answer.ofLate = lossOfLate({from, log.end()}, vessel.alarm, vessel.error);
    if (!answer.ofLate || !answer.ofLate->interval)
        if (auto loss = lossOfDays({from, log.end()}, vessel.alarm))
            answer.ofLate = loss;
    answer.vacuum =
        std::max(vacuumBy(answer.evaporation, vessel.alarm), vacuumBy(answer.ofLate, vessel.alarm));
    answer.refill = refillBy(answer, vessel.minimum);
    return answer;
}

std::optional<WallTime> dateAfter(WallTime from, double days)
{
    constexpr double kFurthest = 365.0 * 1'000;
    if (days > kFurthest)
        return std::nullopt;
    return from + std::chrono::round<Millis>(Days(days));
}

namespace {

using Json = nlohmann::ordered_json;

Json dateOf(const VesselAnswer& answer, const std::optional<double>& days)
{
    const auto date = days ? dateAfter(answer.last, *days) : std::nullopt;
    return date ? Json(toRfc3339(*date)) : Json();
}

Json refillOf(const VesselAnswer& answer)
{
    if (!answer.refill)
        return {};
    return {{"days", answer.refill->days},
            {"at", dateOf(answer, answer.refill->days)},
            {"earliest", dateOf(answer, answer.refill->earliest)},
            {"latest", dateOf(answer, answer.refill->latest)}};
}

Json rateOf(const std::optional<Evaporation>& evaporation)
{
    if (!evaporation)
        return {};
    const auto& interval = evaporation->interval;
    return {{"litres_per_day", evaporation->rate},
            {"low", interval ? Json(interval->low) : Json()},
            {"high", interval ? Json(interval->high) : Json()},
            {"pairs", evaporation->pairs}};
}

}  // namespace

std::string toJson(const VesselAnswer& answer)
{
    return Json{{"litres", answer.litres},
                {"below_minimum", answer.isBelowMinimum},
                {"rate", rateOf(answer.evaporation)},
                {"of_late", rateOf(answer.ofLate)},
                {"vacuum", answer.vacuum ? Json(nameOf(*answer.vacuum)) : Json()},
                {"refill", refillOf(answer)}}
        .dump();
}

}  // namespace bathside
