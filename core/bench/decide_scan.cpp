// Rows of `decide`: what a scanned code says on its own. (Decision D19.)

#include <algorithm>

#include "core/bench/decide_rows.h"
#include "core/bench/lots.h"
#include "core/scan/said.h"

namespace bathside::rows {
namespace {

/// As that intent would be taken, with the code before it; refused as that would be.
template <typename Meant>
Decision together(const Context& now, const CodeScanned& said, const Meant& meant)
{
    Decision decision = on(now, meant);
    if (decision)
        decision->insert(decision->begin(), Fact(said));
    return decision;
}

/// Whether the stores keep no lots of something that a label may be on.
bool mayBeOfNoStock(const Context& now)
{
    return std::ranges::any_of(now.card().recipe, [&](const Component& part) {
        return !keeps(now.bench.stores, ampoulesOf(part.id, {}));
    });
}

/// Why ampoules of that lot are not to be taken out next.
std::optional<Refusal> wrongAmpoules(const Context& now, const Stock& of)
{
    if (auto no = unfit(now.bench.stores, of))
        return no;
    const ComponentId component{of.item};
    const auto& recipe = now.card().recipe;
    if (std::ranges::find(recipe, component, &Component::id) == recipe.end())
        return Refusal{RefusalCode::WrongLot, {}, {}};
    if (mayGoNext(now.bench, component, of.lot))
        return std::nullopt;
    return Refusal{RefusalCode::WrongLot, {}, expectedLot(now.bench, component).text};
}

/// Until a bag is started any fit diluent is right; from then on its own is.
std::optional<Refusal> wrongDiluent(const Context& now, const Stock& of)
{
    const Bag* bag = now.bench.bagBeingMadeUp();
    if (bag && bag->diluentLot != of.lot)
        return Refusal{RefusalCode::WrongLot, {}, bag->diluentLot.text};
    return bag ? std::nullopt : unfit(now.bench.stores, of);
}

std::optional<Refusal> wrong(const Context& now, const Stock& of)
{
    switch (of.kind) {
        case StockKind::Ampoule:
            return wrongAmpoules(now, of);
        case StockKind::Diluent:
            return wrongDiluent(now, of);
        case StockKind::Consumable:
            return std::nullopt;
    }
    std::unreachable();
}

/// The label says another day than the stores have.
bool expiresOtherwise(const Context& now, const Stock& of, const ScannedCode& code)
{
    const auto said = expirySaid(code);
    const auto& known = now.bench.stores.lot(of)->expires;
    return said && known && std::chrono::sys_days(*said) != *known;
}

/// As `ChooseLot`, unless it is chosen already, with its place.
Decision taken(const Context& now, const CodeScanned& said, const Stock& of)
{
    const ComponentId component{of.item};
    const auto& chosen = now.bench.stores.chosen;
    const auto known = chosen.find(component);
    const bool isChosen = known != chosen.end() && known->second.lot == of.lot;
    if (of.kind != StockKind::Ampoule || isChosen)
        return facts(said);
    return together(now, said, ChooseLot{component, of.lot, {}});
}

Decision ofLot(const Context& now, const CodeScanned& said, const ScannedCode& code,
               const LotId& lot)
{
    const auto known = stockOf(code, now.bench.stores);
    const Bag* bag = now.bench.bagBeingMadeUp();
    const bool isDiluentInHand = bag && bag->diluentLot == lot;
    if (known.empty() && (isDiluentInHand || mayBeOfNoStock(now)))
        return facts(said);
    Refusal why{RefusalCode::LotUnknown, {}, lot.text};
    for (const Stock& of : known) {
        if (expiresOtherwise(now, of, code))
            return refuse(RefusalCode::LotDiffers, {}, lot.text);
        auto no = wrong(now, of);
        if (!no)
            return taken(now, said, of);
        why = std::move(*no);
    }
    return failure(std::move(why));
}

}  // namespace

// Within the critical window a code is written down and nothing else: what it was on is asked
// afterwards.
Decision on(const Context& now, const Scan& meant)
{
    if (meant.text.empty())
        return refuse(RefusalCode::BadValue, {}, "text");
    const CodeScanned said{meant.text};
    if (inCriticalWindow(now.bench, now.tap.at))
        return facts(said);
    const auto day = std::chrono::floor<std::chrono::days>(now.tap.at.wall);
    const auto code = scannedCodeFrom(meant.text, std::chrono::year_month_day(day).year());
    if (!code)
        return refuse(RefusalCode::BadValue, {}, "code");
    if (const auto person = personSaid(*code))
        return together(now, said, TakeDuty{*person});
    const auto lot = lotOn(*code, now.bench.stores);
    if (!lot || !now.bench.shiftIsOpen())
        return facts(said);
    return ofLot(now, said, *code, *lot);
}

}  // namespace bathside::rows
