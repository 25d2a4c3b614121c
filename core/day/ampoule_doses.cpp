#include "core/day/ampoule_doses.h"

namespace bathside {

std::int64_t ampouleDoses(const StockLot& lot, const PlanRules& rules)
{
    return lot.doses.value_or(rules.dosesPerAmpoule);
}

std::int64_t ampouleDoses(const Stores& stores, const PlanRules& rules,
                          const ComponentId& component, const LotId& lot)
{
    const StockLot* known = stores.lot(ampoulesOf(component, lot));
    return known ? ampouleDoses(*known, rules) : rules.dosesPerAmpoule;
}

}  // namespace bathside
