#include "core/stores/warnings.h"

#include <algorithm>

namespace bathside {
namespace {

using std::chrono::sys_days;

/// Pieces of the lot that may be used: without those in quarantine, none where it has expired.
std::int64_t usable(const Stores& stores, const StockLot& lot, sys_days day)
{
    if (stores.allowed.contains(lot.of))
        return std::max<std::int64_t>(0, lot.balance());
    if (standing(stores, lot.of, day) != LotStanding::Fit)
        return 0;
    std::int64_t sum = 0;
    for (const auto& [place, holding] : lot.places)
        sum += holding.quarantine.empty() ? holding.count : 0;
    return std::max<std::int64_t>(0, sum);
}

bool serves(const StockLot& lot, const Demand& demand)
{
    return lot.of.kind == demand.kind && lot.of.item == demand.item &&
           (!demand.volume || lot.of.volume == demand.volume);
}

std::int64_t missing(const Stores& stores, const Demand& demand, sys_days day)
{
    std::int64_t there = 0;
    for (const auto& [of, lot] : stores.lots) {
        if (serves(lot, demand))
            there += usable(stores, lot, day) *
                     (demand.kind == StockKind::Ampoule ? lot.doses.value_or(0) : 1);
    }
    return demand.amount - there;
}

std::int64_t inQuarantine(const StockLot& lot)
{
    std::int64_t sum = 0;
    for (const auto& [place, holding] : lot.places)
        sum += lot.quarantine.empty() && holding.quarantine.empty() ? 0 : holding.count;
    return sum;
}

void warnOf(const StockLot& lot, sys_days day, std::int64_t nearDays,
            std::vector<StoreWarning>& found)
{
    if (lot.balance() <= 0)
        return;
    if (const auto apart = inQuarantine(lot); apart > 0)
        found.push_back({StoreWarningKind::Quarantined, lot.of, apart});
    if (!lot.expires)
        return;
    const std::int64_t left = (*lot.expires - day).count();
    if (left < 0)
        found.push_back({StoreWarningKind::Expired, lot.of, lot.balance()});
    else if (left <= nearDays)
        found.push_back({StoreWarningKind::NearExpiry, lot.of, left});
}

}  // namespace

std::vector<StoreWarning> warnings(const Stores& stores, const std::vector<Demand>& demands,
                                   sys_days day, std::int64_t nearDays)
{
    std::vector<StoreWarning> found;
    for (const Demand& demand : demands) {
        if (const auto lacking = missing(stores, demand, day); lacking > 0)
            found.push_back({StoreWarningKind::TooLittle,
                             {demand.kind, demand.item, {}, demand.volume},
                             lacking});
    }
    for (const auto& [of, lot] : stores.lots)
        warnOf(lot, day, nearDays, found);
    std::ranges::stable_sort(found, {}, [](const StoreWarning& warning) {
        const bool isNear = warning.kind == StoreWarningKind::NearExpiry;
        return std::pair(warning.kind, isNear ? warning.amount : 0);
    });
    return found;
}

}  // namespace bathside
