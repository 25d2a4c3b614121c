// The stores' fold: one row for each fact that touches them.

#include <algorithm>

#include "core/stores/carry.h"
#include "core/stores/stores.h"

namespace bathside {
namespace {

// --- what people say of the stores ---------------------------------------------------------------

void on(Stores& stores, const Event&, const StoreReceived& fact)
{
    StockLot& lot = stores.lots[fact.of];
    lot.of = fact.of;
    lot.doses = fact.doses;
    lot.expires = fact.expires;
    if (fact.titre)
        lot.titre = fact.titre;
    lot.places[fact.place].count += fact.count;
    lot.receipts.push_back({fact.place, fact.count, fact.delivery.value_or("")});
    if (lot.receipts.size() > kReceiptsKept)
        lot.receipts.erase(lot.receipts.begin());
    lot.flow.received += fact.count;
}

StockLot* lotIn(Stores& stores, const Stock& of)
{
    const auto found = stores.lots.find(of);
    return found == stores.lots.end() ? nullptr : &found->second;
}

/// A place with none left is forgotten, unless it was counted: then it is known to be empty.
void tidy(StockLot& lot)
{
    std::erase_if(lot.places, [](const auto& place) {
        return place.second.count == 0 && !place.second.counted;
    });
}

void on(Stores& stores, const Event&, const StoreMoved& fact)
{
    StockLot* lot = lotIn(stores, fact.of);
    if (!lot)
        return;
    const std::string quarantine = lot->places[fact.from].quarantine;
    lot->places[fact.from].count -= fact.count;
    Holding& there = lot->places[fact.to];
    there.count += fact.count;
    if (!quarantine.empty())
        there.quarantine = quarantine;  // what stood among suspects makes suspects of all
    tidy(*lot);
}

void on(Stores& stores, const Event&, const StoreCounted& fact)
{
    StockLot* lot = lotIn(stores, fact.of);
    if (!lot)
        return;
    Holding& here = lot->places[fact.place];
    lot->flow.miscounted += fact.count - here.count;
    here.count = fact.count;
    here.counted = true;
}

void on(Stores& stores, const Event&, const StoreDiscarded& fact)
{
    StockLot* lot = lotIn(stores, fact.of);
    if (!lot)
        return;
    lot->places[fact.place].count -= fact.count;
    lot->flow.discarded += fact.count;
    tidy(*lot);
}

void on(Stores& stores, const Event&, const LotQuarantined& fact)
{
    StockLot* lot = lotIn(stores, fact.of);
    if (!lot)
        return;
    const auto here = fact.place ? lot->places.find(*fact.place) : lot->places.end();
    if (!fact.place)
        lot->quarantine = fact.why;
    else if (here != lot->places.end())
        here->second.quarantine = fact.why;
}

void on(Stores& stores, const Event&, const LotReleased& fact)
{
    StockLot* lot = lotIn(stores, fact.of);
    if (!lot)
        return;
    lot->quarantine.clear();
    for (auto& [place, holding] : lot->places)
        holding.quarantine.clear();
}

void on(Stores& stores, const Event&, const LotAllowed& fact)
{
    stores.allowed[fact.of] = {fact.by, fact.why};
}

void on(Stores& stores, const Event&, const LotChosen& fact)
{
    stores.chosen[fact.component] = {fact.lot, fact.place.value_or("")};
}

// --- what the bench's own events take
// --------------------------------------------------------------

/// Where the next one comes from: the place that was chosen, else the first that has any, free ones
/// before those in quarantine.
std::string placeToTakeFrom(const StockLot& lot, const std::string& chosen)
{
    const auto has = [&](const std::string& place) {
        const auto found = lot.places.find(place);
        return found != lot.places.end() && found->second.count > 0;
    };
    if (has(chosen))
        return chosen;
    const auto first = std::ranges::find_if(lot.places, [](const auto& place) {
        return place.second.count > 0 && place.second.quarantine.empty();
    });
    if (first != lot.places.end())
        return first->first;
    const auto suspect =
        std::ranges::find_if(lot.places, [](const auto& place) { return place.second.count > 0; });
    if (suspect != lot.places.end())
        return suspect->first;
    return lot.places.empty() ? chosen : lot.places.begin()->first;
}

void use(Stores& stores, const Stock& of, const std::string& chosen = {})
{
    if (!keeps(stores, of))
        return;
    StockLot* lot = lotIn(stores, of);
    if (!lot) {
        ++stores.strangers[of];
        return;
    }
    --lot->places[placeToTakeFrom(*lot, chosen)].count;
    ++lot->flow.used;
    tidy(*lot);
}

void on(Stores& stores, const Event&, const AmpouleOut& fact)
{
    const auto chosen = stores.chosen.find(fact.component);
    const bool isChosen = chosen != stores.chosen.end() && chosen->second.lot == fact.lot;
    use(stores, ampoulesOf(fact.component, fact.lot), isChosen ? chosen->second.place : "");
}

void on(Stores& stores, const Event&, const BagStarted& fact)
{
    use(stores, diluentOf(fact.volume, fact.diluentLot));
}

/// The lot of that consumable that has any left, else the last one looked at.
void on(Stores& stores, const Event&, const NeedleChanged&)
{
    Stock needles;
    for (const auto& [of, lot] : stores.lots) {
        if (of.kind != StockKind::Consumable || of.item != kNeedle)
            continue;
        needles = of;
        if (lot.balance() > 0)
            break;
    }
    if (!needles.item.empty())
        use(stores, needles);
}

void on(Stores& stores, const Event&, const CaneExposed& fact)
{
    for (auto& [of, lot] : stores.lots) {
        if (of.kind != StockKind::Ampoule)
            continue;
        for (auto& [place, holding] : lot.places) {
            if (holding.count > 0 && liesIn(place, fact.place))
                holding.quarantine = kCaneExposed;
        }
    }
}

// --- the shift -----------------------------------------------------------------------------------

void on(Stores& stores, const Event& event, const ShiftOpened& fact)
{
    stores = {};  // what is still there follows as the balance carried
    stores.day = fact.day.value_or(std::chrono::floor<std::chrono::days>(event.at.wall));
}

void on(Stores& stores, const Event&, const StoreCarried& fact)
{
    stores.lots = lotsFrom(fact.document);
}

void on(Stores&, const Event&, const auto&) {}

}  // namespace

void evolve(Stores& stores, const Event& event)
{
    std::visit([&](const auto& fact) { on(stores, event, fact); }, event.fact);
}

}  // namespace bathside
