#include "core/card/read_live_cells.h"

#include "core/card/read_limits.h"

namespace bathside {
namespace {

constexpr WholeRange kHalfLife{60'000, 1'000 * 3'600'000LL, "ms"};
constexpr WholeRange kMinimum{1, 1'000'000, "PFU a dose"};
constexpr WholeRange kTitreOff{0, 99, "%"};

std::optional<CellLoss> lossAt(JsonObject& cells, std::string_view key)
{
    auto object = cells.objectIfAny(key);
    if (!object)
        return std::nullopt;
    CellLoss loss{Millis(object->whole("half_life_low_ms", kHalfLife)),
                  Millis(object->whole("half_life_high_ms", kHalfLife)),
                  object->text("source", kLongestSource)};
    if (loss.shortest > loss.longest)
        object->refuse("half_life_low_ms", "at most half_life_high_ms");
    object->noOthers();
    return loss;
}

}  // namespace

LiveCellRules liveCellsFrom(JsonObject cells)
{
    LiveCellRules rules;
    rules.isShown = cells.flag("shown");
    rules.minimum = cells.wholeIfAny("minimum_pfu", kMinimum);
    rules.minimumSource = cells.textIfAny("minimum_source", kLongestSource).value_or("");
    if (rules.minimum && rules.minimumSource.empty())
        cells.refuse("minimum_source", "where minimum_pfu comes from");
    rules.titreOffPercent = cells.wholeIfAny("titre_off_percent", kTitreOff).value_or(0);
    rules.inBath = lossAt(cells, "in_bath");
    rules.inBag = lossAt(cells, "in_bag");
    cells.noOthers();
    return rules;
}

}  // namespace bathside
