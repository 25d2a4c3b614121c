#include "core/stores/stores.h"

#include <algorithm>

namespace bathside {
namespace {

using std::chrono::sys_days;

bool isOfSort(const Stock& one, const Stock& other)
{
    return one.kind == other.kind && one.item == other.item;
}

/// All of it, or every place that has any left.
bool isInQuarantine(const StockLot& lot)
{
    if (!lot.quarantine.empty())
        return true;
    bool some = false;
    for (const auto& [place, holding] : lot.places) {
        if (holding.count > 0 && holding.quarantine.empty())
            return false;
        some = some || holding.count > 0;
    }
    return some;
}

bool isExpired(const StockLot& lot, std::optional<sys_days> day)
{
    return day && lot.expires && *lot.expires < *day;
}

/// Of the fit lots of those that `isMeant` names and that have any left.
template <typename IsMeant>
LotId firstToExpire(const Stores& stores, const IsMeant& isMeant)
{
    const auto end = [](const StockLot& one) { return one.expires.value_or(sys_days::max()); };
    const StockLot* first = nullptr;
    for (const auto& [of, lot] : stores.lots) {
        const bool usable = isMeant(of) && lot.balance() > 0 &&
                            standing(stores, of, stores.day) == LotStanding::Fit;
        if (usable && (!first || end(lot) < end(*first)))
            first = &lot;
    }
    return first ? first->of.lot : LotId{};
}

}  // namespace

std::int64_t StockLot::balance() const
{
    std::int64_t sum = 0;
    for (const auto& [place, holding] : places)
        sum += holding.count;
    return sum;
}

const StockLot* Stores::lot(const Stock& of) const
{
    const auto found = lots.find(of);
    return found == lots.end() ? nullptr : &found->second;
}

bool keeps(const Stores& stores, const Stock& of)
{
    return std::ranges::any_of(stores.lots,
                               [&](const auto& known) { return isOfSort(known.first, of); });
}

LotStanding standing(const Stores& stores, const Stock& of, std::optional<sys_days> day)
{
    const StockLot* lot = stores.lot(of);
    if (!lot)
        return LotStanding::Unknown;
    if (isInQuarantine(*lot))
        return LotStanding::Quarantined;
    return isExpired(*lot, day) ? LotStanding::Expired : LotStanding::Fit;
}

LotStanding fitness(const Stores& stores, const Stock& of)
{
    const bool free = !keeps(stores, of) || stores.allowed.contains(of);
    return free ? LotStanding::Fit : standing(stores, of, stores.day);
}

LotId lotToUse(const Stores& stores, const ComponentId& component)
{
    if (const auto chosen = stores.chosen.find(component); chosen != stores.chosen.end())
        return chosen->second.lot;
    return firstToExpire(
        stores, [like = ampoulesOf(component, {})](const Stock& of) { return isOfSort(of, like); });
}

LotId diluentToUse(const Stores& stores, MicroLitres volume)
{
    return firstToExpire(stores, [volume](const Stock& of) {
        return of.kind == StockKind::Diluent && of.volume == volume;
    });
}

}  // namespace bathside
