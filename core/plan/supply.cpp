#include "core/plan/supply.h"

namespace bathside::plan {
namespace {

std::vector<std::optional<Way>> cheapestBags(const LineRules& rules, const Stores& stores,
                                             const Level& level)
{
    std::vector<std::optional<Way>> all;
    for (std::size_t size = 0; size < stores.sizes().size(); ++size)
        all.push_back(cheapestBag(rules, stores, level, size));
    return all;
}

std::vector<Way> thoseThatCanBeMade(const std::vector<std::optional<Way>>& bags)
{
    std::vector<Way> made;
    for (const auto& bag : bags)
        if (bag)
            made.push_back(*bag);
    return made;
}

}  // namespace

std::optional<Way> cheapestBag(const LineRules& rules, const Stores& stores, const Level& level,
                               std::size_t size)
{
    const auto doses = stores.leastDoses(level, size);
    if (!doses)
        return std::nullopt;
    const MicroLitres volume = stores.sizes()[size].volume;
    return Way{{*doses, 1, volume.count}, rules.mostBirds(volume, Tubes::Full)};
}

Plentiful::Plentiful(const LineRules& rules, const Stores& stores, const Level& level)
    : m_bags(cheapestBags(rules, stores, level)), m_cover(thoseThatCanBeMade(m_bags))
{
}

std::optional<Supply::Offer> Plentiful::offer(SupplyState state, std::size_t size)
{
    return m_bags[size] ? std::optional(Offer{m_bags[size]->cost.doses, state}) : std::nullopt;
}

std::optional<Cost> Plentiful::least(SupplyState, Count birds) { return m_cover.least(birds); }

}  // namespace bathside::plan
