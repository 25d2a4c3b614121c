#include "core/plan/counted.h"

#include <algorithm>
#include <utility>

namespace bathside::plan {
namespace {

constexpr std::int64_t kWaysAState = 8;  // take as long as one state of the search, measured

}  // namespace

Counted::Counted(const LineRules& rules, const Stores& stores, Level level, Effort& effort)
    : m_rules(rules),
      m_stores(stores),
      m_effort(effort),
      m_lots(rules, stores, level, rules.birdsToDo())
{
    stateOf(std::move(level));
}

std::size_t Counted::HashLevel::operator()(const Level& level) const
{
    std::size_t hash = level.size();
    for (const Count count : level)
        hash = (hash ^ static_cast<std::size_t>(count)) * 0x9E3779B97F4A7C15U;
    return hash ^ (hash >> 32U);
}

SupplyState Counted::stateOf(Level level)
{
    const auto next = static_cast<SupplyState>(m_states.size());
    const auto [known, isNew] = m_numbers.try_emplace(std::move(level), next);
    if (!isNew)
        return known->second;
    const Level& found = known->first;
    m_states.push_back({&found, std::vector<Known>(m_stores.sizes().size()), nullptr});
    return next;
}

Counted::CountedBags Counted::bagsFrom(const Level& level) const
{
    CountedBags bags;
    for (std::size_t size = 0; size < m_stores.sizes().size(); ++size)
        if (const auto bag = cheapestBag(m_rules, m_stores, level, size))
            bags.emplace_back(*bag, level[size]);
    return bags;
}

/// Endless bags by themselves, then those that are counted.
Ways Counted::waysOf(const CountedBags& bags, Count birds)
{
    std::vector<Way> endless;
    for (const auto& [bag, count] : bags)
        if (count == kUnlimited)
            endless.push_back(bag);
    const auto begun = m_endless.try_emplace(endless, endless).first->second.ways(birds);
    Ways ways(begun.begin(), begun.end());
    for (const auto& [bag, count] : bags)
        if (count != kUnlimited)
            ways = withBags(std::move(ways), bag, count, birds);
    m_effort.spend(static_cast<std::int64_t>(ways.size()) / kWaysAState);
    return ways;
}

std::optional<Supply::Offer> Counted::offer(SupplyState state, std::size_t size)
{
    if (!m_states[state].offers[size].isKnown)
        m_states[state].offers[size] = {true, found(*m_states[state].level, size)};
    return m_states[state].offers[size].offer;
}

std::optional<Supply::Offer> Counted::found(const Level& level, std::size_t size)
{
    const auto doses = m_stores.dosesOpened(level, size);
    if (!doses)
        return std::nullopt;
    Level next = level;
    m_stores.take(next, size);
    return Offer{*doses, stateOf(std::move(next))};
}

std::optional<Cost> Counted::leastOfBags(State& state, Count birds)
{
    if (state.reach == nullptr)
        state.reach = &m_reaches[bagsFrom(*state.level)];
    Reach& reach = *state.reach;
    if (birds > reach.birds)
        reach = {waysOf(bagsFrom(*state.level), birds), birds};
    return leastOf(reach.ways, birds);
}

std::optional<Cost> Counted::least(SupplyState state, Count birds)
{
    const auto doses = m_lots.leastDoses(*m_states[state].level, birds);
    if (!doses)
        return std::nullopt;
    const auto least = leastOfBags(m_states[state], birds);
    if (!least || least->doses >= *doses)
        return least;
    return Cost{*doses, 0, 0};
}

}  // namespace bathside::plan
