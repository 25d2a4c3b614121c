#include "core/bench/lots.h"

#include <algorithm>

#include "core/scan/said.h"

namespace bathside {
namespace {

using std::chrono::sys_days;

std::int64_t countIn(const Bench& bench, const BagId& bag, const ComponentId& component)
{
    std::int64_t count = 0;
    for (const Pull& pull : bench.pulls)
        count += std::ranges::count_if(pull.ampoules, [&](const Ampoule& ampoule) {
            return ampoule.bag == bag && ampoule.component == component;
        });
    return count;
}

/// The lot of the last ampoule of that component for which `isMeant`; empty: none.
template <typename IsMeant>
LotId lastOf(const Bench& bench, const ComponentId& component, const IsMeant& isMeant)
{
    for (auto pull = bench.pulls.rbegin(); pull != bench.pulls.rend(); ++pull) {
        for (auto ampoule = pull->ampoules.rbegin(); ampoule != pull->ampoules.rend(); ++ampoule) {
            if (ampoule->component == component && isMeant(*ampoule))
                return ampoule->lot;
        }
    }
    return {};
}

/// In the bag being made up, or on the way into it.
LotId lotInHand(const Bench& bench, const ComponentId& component)
{
    const Bag* bag = bench.bagBeingMadeUp();
    return lastOf(bench, component, [bag](const Ampoule& ampoule) {
        return ampoule.isOpen() || (bag && ampoule.bag == bag->id);
    });
}

LotId lastLot(const Bench& bench, const ComponentId& component)
{
    return lastOf(bench, component, [](const Ampoule&) { return true; });
}

LotId chosenLot(const Stores& stores, const ComponentId& component)
{
    const auto chosen = stores.chosen.find(component);
    return chosen == stores.chosen.end() ? LotId{} : chosen->second.lot;
}

/// Fit, and that many are left as far as the stores know.
bool has(const Stores& stores, const Stock& of, std::int64_t pieces)
{
    if (of.lot.empty() || fitness(stores, of) != LotStanding::Fit)
        return false;
    const StockLot* known = stores.lot(of);
    return !known || known->balance() >= pieces;
}

LotId firstToExpire(const Stores& stores, const ComponentId& component, std::int64_t pieces)
{
    const auto end = [](const StockLot& one) { return one.expires.value_or(sys_days::max()); };
    const StockLot* first = nullptr;
    for (const auto& [of, lot] : stores.lots) {
        const bool isOfIt = of.kind == StockKind::Ampoule && of.item == component.text;
        if (isOfIt && has(stores, of, pieces) && (!first || end(lot) < end(*first)))
            first = &lot;
    }
    return first ? first->of.lot : LotId{};
}

/// The first in order that has so many left; empty: none has.
LotId firstWith(const Bench& bench, const ComponentId& component, const LotId& planned,
                std::int64_t pieces)
{
    const Stores& stores = bench.stores;
    if (const LotId chosen = chosenLot(stores, component);
        has(stores, ampoulesOf(component, chosen), pieces))
        return chosen;
    if (LotId inHand = lotInHand(bench, component); !inHand.empty())
        return inHand;
    if (has(stores, ampoulesOf(component, planned), 1))  // the plan knows how many it takes
        return planned;
    if (LotId last = lastLot(bench, component); has(stores, ampoulesOf(component, last), pieces))
        return last;
    return firstToExpire(stores, component, pieces);
}

/// Of those that the label's expiry fits; all where it fits none.
std::vector<Stock> thatExpire(std::vector<Stock> found, sys_days day, const Stores& stores)
{
    std::vector<Stock> fitting;
    std::ranges::copy_if(found, std::back_inserter(fitting),
                         [&](const Stock& of) { return stores.lot(of)->expires == day; });
    return fitting.empty() ? found : fitting;
}

}  // namespace

std::int64_t ampoulesToTake(const Bench& bench, const ComponentId& component)
{
    const Bag* current = bench.bagBeingMadeUp();
    const std::int64_t there = current ? countIn(bench, current->id, component) : 0;
    for (auto bag = bench.bags.rbegin(); bag != bench.bags.rend(); ++bag) {
        const bool isBefore = !current || bag->id != current->id;
        const std::int64_t count = isBefore ? countIn(bench, bag->id, component) : 0;
        if (count > 0)
            return std::max<std::int64_t>(1, count - there);
    }
    return 1;
}

LotId expectedLot(const Bench& bench, const ComponentId& component, const LotId& planned)
{
    for (const std::int64_t pieces : {ampoulesToTake(bench, component), std::int64_t{1}}) {
        if (LotId lot = firstWith(bench, component, planned, pieces); !lot.empty())
            return lot;
    }
    const LotId chosen = chosenLot(bench.stores, component);
    return chosen.empty() ? lastLot(bench, component) : chosen;
}

bool mayGoNext(const Bench& bench, const ComponentId& component, const LotId& lot)
{
    return lot == expectedLot(bench, component) || lot == firstWith(bench, component, {}, 1);
}

std::optional<LotId> lotOn(const ScannedCode& code, const Stores& stores)
{
    if (auto said = lotSaid(code))
        return said;
    const bool isKnown = std::ranges::any_of(stores.lots, [&](const auto& known) {
        return compared(code, known.first.lot) == LotMatch::Same;
    });
    return isKnown ? std::optional(LotId{std::get<PlainText>(code.content).text}) : std::nullopt;
}

std::vector<Stock> stockOf(const ScannedCode& code, const Stores& stores)
{
    const auto lot = lotOn(code, stores);
    std::vector<Stock> found;
    for (const auto& [of, known] : stores.lots) {
        if (lot && of.lot == *lot)
            found.push_back(of);
    }
    const auto expiry = expirySaid(code);
    return expiry ? thatExpire(std::move(found), *expiry, stores) : found;
}

}  // namespace bathside
