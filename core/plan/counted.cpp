#include "core/plan/counted.h"

#include <algorithm>
#include <utility>

namespace bathside::plan {
namespace {

// Lots larger than this are taken as endless by the bound on birds; never by the plan itself.
constexpr Count kMostMeasured = 20'000;

}  // namespace

Counted::Counted(const LineRules& rules, const Stores& stores, Level level)
    : m_rules(rules), m_stores(stores), m_served(level.size())
{
    for (const Stores::Size& size : stores.sizes())
        m_birds.push_back(rules.mostBirds(size.volume, Tubes::Full));
    for (const auto& lots : stores.lots())
        for (const Stores::UsableLot& lot : lots)
            measureLot(lot, level[lot.at]);
    stateOf(std::move(level));
}

/// The most birds that so many ampoules of one lot can serve: whole bags only.
void Counted::measureLot(const Stores::UsableLot& lot, Count ampoules)
{
    if (ampoules > kMostMeasured)
        return;
    std::vector<Count>& served = m_served[lot.at];
    served.assign(static_cast<std::size_t>(ampoules) + 1, 0);
    for (std::size_t size = 0; size < m_birds.size(); ++size) {
        const auto needed = static_cast<std::size_t>(m_stores.ampoules(size, lot));
        for (std::size_t have = std::max<std::size_t>(needed, 1); have < served.size(); ++have)
            served[have] = std::max(served[have], served[have - needed] + m_birds[size]);
    }
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
    m_states.push_back(
        {&found, std::vector<Known>(m_birds.size()), &coverFor(found), mostBirds(found)});
    return next;
}

Cover& Counted::coverFor(const Level& level)
{
    auto bags = coverBags(m_rules, m_stores, level);
    const auto known = m_covers.find(bags);
    if (known != m_covers.end())
        return known->second;
    return m_covers.try_emplace(bags, bags).first->second;
}

Count Counted::mostFrom(const Level& level, std::size_t component) const
{
    Count birds = 0;
    for (const Stores::UsableLot& lot : m_stores.lots()[component]) {
        const std::vector<Count>& served = m_served[lot.at];
        if (served.empty())
            return kUnlimited;
        birds += served[static_cast<std::size_t>(level[lot.at])];
    }
    return birds;
}

Count Counted::mostBirds(const Level& level) const
{
    Count most = 0;
    for (std::size_t size = 0; size < m_birds.size(); ++size)
        most += level[size] == kUnlimited && m_birds[size] > 0 ? kUnlimited
                : level[size] == kUnlimited                    ? 0
                                                               : level[size] * m_birds[size];
    for (std::size_t component = 0; component < m_stores.lots().size(); ++component)
        most = std::min(most, mostFrom(level, component));
    return most;
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

std::optional<Cost> Counted::least(SupplyState state, Count birds)
{
    if (birds > m_states[state].mostBirds)
        return std::nullopt;
    return m_states[state].cover->least(birds);
}

}  // namespace bathside::plan
