#include "core/checks/check_drafts.h"

#include <nlohmann/json.hpp>

#include "core/base/rfc3339.h"
#include "core/card/strict_json.h"

namespace bathside {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t kLongestId = 40, kMostWeights = 1'000, kMostRows = 1'000;
constexpr WholeRange kTenths{1, 1'000'000, "tenths of a mg"};
constexpr WholeRange kDepth{0, 5'000, "mm"};
constexpr WholeRange kContent{0, 100'000, "dL"};
constexpr WholeRange kVolume{1, 1'000'000'000, "µL"};

std::optional<ShotLiquid> liquidIn(JsonObject& root)
{
    if (const auto density = root.wholeIfAny("density_g_l", {800, 1'500, "g/L"}))
        return OtherLiquid{*density};
    if (const auto water = root.wholeIfAny("water_mc", {0, 40'000, "m°C"}))
        return Water{{*water}};
    return std::nullopt;
}

std::optional<MicroLitres> volumeIn(JsonObject& root, std::string_view key)
{
    const auto count = root.wholeIfAny(key, kVolume);
    return count ? std::optional(MicroLitres{*count}) : std::nullopt;
}

bool rises(const std::vector<VesselDescription::Row>& rows)
{
    for (std::size_t i = 1; i < rows.size(); ++i) {
        if (rows[i].millimetres <= rows[i - 1].millimetres ||
            rows[i].decilitres <= rows[i - 1].decilitres)
            return false;
    }
    return true;
}

}  // namespace

std::string documentOf(const WeighedDraft& draft)
{
    if (draft.weights.empty())
        return {};
    Json json{{"weights", draft.weights}, {"since", toRfc3339(draft.since)}};
    if (!draft.line.empty())
        json["line"] = draft.line.text;
    if (draft.liquid) {
        if (const auto* water = std::get_if<Water>(&*draft.liquid))
            json["water_mc"] = water->temperature.count;
        else
            json["density_g_l"] = std::get<OtherLiquid>(*draft.liquid).density;
    }
    if (draft.dose)
        json["dose_ul"] = draft.dose->count;
    return json.dump();
}

std::optional<WeighedDraft> weighedDraftFrom(std::string_view document)
{
    StrictJson json(document);
    JsonObject root = json.root();
    WeighedDraft draft;
    draft.weights = root.wholes("weights", kMostWeights, kTenths);
    draft.line = {root.textIfAny("line", kLongestId).value_or("")};
    draft.liquid = liquidIn(root);
    draft.dose = volumeIn(root, "dose_ul");
    const auto since = fromRfc3339(root.text("since", kLongestId));
    root.noOthers();
    if (json.fault() || !since)
        return std::nullopt;
    draft.since = *since;
    return draft;
}

std::string documentOf(const VesselDraft& draft)
{
    if (!draft.isBegun())
        return {};
    Json rows = Json::array();
    for (const auto& row : draft.rows)
        rows.push_back({{"mm", row.millimetres}, {"dl", row.decilitres}});
    Json json{{"vessel", draft.vessel.text}, {"rows", std::move(rows)}, {"table", draft.isTable}};
    if (draft.millimetres)
        json["mm"] = *draft.millimetres;
    if (draft.minimum)
        json["minimum_dl"] = *draft.minimum;
    if (draft.usual)
        json["usual_ul"] = draft.usual->count;
    return json.dump();
}

std::optional<VesselDraft> vesselDraftFrom(std::string_view document)
{
    StrictJson json(document);
    JsonObject root = json.root();
    VesselDraft draft;
    draft.vessel = {root.text("vessel", kLongestId)};
    for (JsonObject& row : root.objects("rows", 0, kMostRows)) {
        draft.rows.push_back({row.whole("mm", kDepth), row.whole("dl", kContent)});
        row.noOthers();
    }
    draft.isTable = root.flag("table");
    draft.millimetres = root.wholeIfAny("mm", kDepth);
    draft.minimum = root.wholeIfAny("minimum_dl", kContent);
    draft.usual = volumeIn(root, "usual_ul");
    root.noOthers();
    const bool isWhole = rises(draft.rows) && (!draft.isTable || draft.rows.size() >= 2);
    return json.fault() || !isWhole ? std::nullopt : std::optional(std::move(draft));
}

}  // namespace bathside
