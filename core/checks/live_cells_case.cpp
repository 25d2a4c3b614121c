#include "core/checks/live_cells_case.h"

#include <nlohmann/json.hpp>

#include "core/card/strict_json.h"

namespace bathside {
namespace {

constexpr NumberRange kDoses{1, 1e9, "doses"};
constexpr NumberRange kTitre{1, 1e9, ""};
constexpr NumberRange kMinutes{0, 1'440, "min"};
constexpr double kHours = 1.0 / 60;  // in a minute

Interval bandIn(JsonObject object, const NumberRange& range)
{
    const Interval band{object.number("low", range), object.number("high", range)};
    if (band.low > band.high)
        object.refuse("high", "no less than low");
    object.noOthers();
    return band;
}

std::optional<LossRate> lossIn(JsonObject& root, std::string_view key)
{
    auto loss = root.objectIfAny(key);
    if (!loss)
        return std::nullopt;
    const LossRate rate{bandIn(loss->object("half_life_h"), {0.01, 1'000, "h"}),
                        loss->text("source", 400)};
    loss->noOthers();
    return rate;
}

}  // namespace

Result<LiveCellsCase, DocumentFault> liveCellsCaseFrom(std::string_view document)
{
    StrictJson json(document);
    JsonObject root = json.root();
    LiveCellsCase budget;
    LiveCells& cells = budget.cells;
    cells.titre = bandIn(root.object("titre_per_dose"), kTitre);
    cells.dosesIn = root.number("doses_in", kDoses);
    cells.dosesOut = root.number("doses_out", kDoses);
    cells.bathHours = root.number("bath_min", kMinutes) * kHours;
    cells.bagHours = root.number("bag_min", kMinutes) * kHours;
    cells.bathLoss = lossIn(root, "bath_loss");
    cells.bagLoss = lossIn(root, "bag_loss");
    budget.minimum = root.number("minimum_per_dose", kTitre);
    root.noOthers();
    if (json.fault())
        return failure(*json.fault());
    return budget;
}

std::string toJson(const LiveCellsCase& budget)
{
    using Json = nlohmann::ordered_json;
    const auto share = shareLeft(budget.cells);
    const auto band = perDose(budget.cells);
    if (!share || !band)
        return Json{{"shown", false}}.dump();
    const auto source = [](const std::optional<LossRate>& loss) {
        return loss ? Json(loss->source) : Json();
    };
    return Json{{"shown", true},
                {"indicative", true},
                {"share_low", share->low},
                {"share_high", share->high},
                {"per_dose_low", band->low},
                {"per_dose_high", band->high},
                {"verdict", nameOf(judged(*band, budget.minimum))},
                {"bath_source", source(budget.cells.bathLoss)},
                {"bag_source", source(budget.cells.bagLoss)}}
        .dump();
}

}  // namespace bathside
