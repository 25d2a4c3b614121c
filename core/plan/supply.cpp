#include "core/plan/supply.h"

namespace bathside::plan {
namespace {

std::vector<std::optional<Count>> leastDoses(const Stores& stores, const Level& level)
{
    std::vector<std::optional<Count>> all;
    for (std::size_t size = 0; size < stores.sizes().size(); ++size)
        all.push_back(stores.leastDoses(level, size));
    return all;
}

}  // namespace

std::vector<Cover::Bag> coverBags(const LineRules& rules, const Stores& stores, const Level& level)
{
    std::vector<Cover::Bag> bags;
    for (std::size_t size = 0; size < stores.sizes().size(); ++size) {
        const MicroLitres volume = stores.sizes()[size].volume;
        if (const auto doses = stores.leastDoses(level, size))
            bags.push_back({rules.mostBirds(volume, Tubes::Full), {*doses, 1, volume.count}});
    }
    return bags;
}

Plentiful::Plentiful(const LineRules& rules, const Stores& stores, const Level& level)
    : m_doses(leastDoses(stores, level)), m_cover(coverBags(rules, stores, level))
{
}

std::optional<Supply::Offer> Plentiful::offer(SupplyState state, std::size_t size)
{
    return m_doses[size] ? std::optional(Offer{*m_doses[size], state}) : std::nullopt;
}

std::optional<Cost> Plentiful::least(SupplyState, Count birds) { return m_cover.least(birds); }

}  // namespace bathside::plan
