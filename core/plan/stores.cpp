#include "core/plan/stores.h"

#include <algorithm>
#include <cassert>
#include <functional>
#include <map>
#include <tuple>

namespace bathside::plan {
namespace {

Count roundedUp(Count whole, Count part) { return (whole + part - 1) / part; }

Count plus(Count count, std::optional<Count> more)
{
    return more ? std::min(count + *more, kUnlimited) : kUnlimited;
}

}  // namespace

Stores::Stores(const DayInput& input)
{
    addSizes(input);
    for (const Component& component : input.recipe)
        addLots(component, input.day);
}

void Stores::addSizes(const DayInput& input)
{
    std::map<MicroLitres, Count, std::greater<>> counts;
    for (const BagStock& bag : input.bags)
        counts[bag.volume] = plus(counts[bag.volume], bag.count);
    for (const auto& [volume, count] : counts) {
        m_sizes.push_back({volume, roundedUp(volume.count, input.dose.count)});
        m_full.push_back(count);
    }
}

void Stores::addLots(const Component& component, std::chrono::sys_days day)
{
    std::vector<std::size_t> usable;
    for (std::size_t lot = 0; lot < component.lots.size(); ++lot)
        if (component.lots[lot].expires >= day)
            usable.push_back(lot);
    std::ranges::sort(usable, {}, [&](std::size_t lot) {
        return std::tuple(component.lots[lot].expires, component.lots[lot].name, lot);
    });
    m_lots.emplace_back();
    for (const std::size_t lot : usable) {
        m_lots.back().push_back({lot, component.lots[lot].doses, m_full.size()});
        m_full.push_back(component.lots[lot].count.value_or(kUnlimited));
    }
}

Count Stores::ampoules(std::size_t size, const UsableLot& lot) const
{
    return roundedUp(m_sizes[size].charged, lot.doses);
}

const Stores::UsableLot* Stores::lotFor(const Level& level, std::size_t size,
                                        std::size_t component) const
{
    for (const UsableLot& lot : m_lots[component])
        if (level[lot.at] >= ampoules(size, lot))
            return &lot;
    return nullptr;
}

std::optional<Count> Stores::dosesOpened(const Level& level, std::size_t size) const
{
    if (level[size] == 0)
        return std::nullopt;
    Count doses = 0;
    for (std::size_t component = 0; component < m_lots.size(); ++component) {
        const UsableLot* lot = lotFor(level, size, component);
        if (lot == nullptr)
            return std::nullopt;
        doses += ampoules(size, *lot) * lot->doses;
    }
    return doses;
}

std::optional<Count> Stores::leastDoses(const Level& level, std::size_t size) const
{
    if (level[size] == 0)
        return std::nullopt;
    Count doses = 0;
    for (std::size_t component = 0; component < m_lots.size(); ++component) {
        const auto least = leastDoses(level, size, component);
        if (!least)
            return std::nullopt;
        doses += *least;
    }
    return doses;
}

/// Lots behind an unlimited one are never reached.
std::optional<Count> Stores::leastDoses(const Level& level, std::size_t size,
                                        std::size_t component) const
{
    std::optional<Count> least;
    for (const UsableLot& lot : m_lots[component]) {
        const Count needed = ampoules(size, lot);
        if (level[lot.at] < needed)
            continue;
        least = std::min(least.value_or(kUnlimited), needed * lot.doses);
        if (level[lot.at] == kUnlimited)
            break;
    }
    return least;
}

std::vector<Draw> Stores::draws(const Level& level, std::size_t size) const
{
    std::vector<Draw> all;
    for (std::size_t component = 0; component < m_lots.size(); ++component) {
        const UsableLot* lot = lotFor(level, size, component);
        assert(lot != nullptr);
        all.push_back({component, lot->lot, ampoules(size, *lot)});
    }
    return all;
}

void Stores::take(Level& level, std::size_t size) const
{
    assert(level[size] > 0);
    for (std::size_t component = 0; component < m_lots.size(); ++component) {
        const UsableLot* lot = lotFor(level, size, component);
        assert(lot != nullptr);
        if (level[lot->at] < kUnlimited)
            level[lot->at] -= ampoules(size, *lot);
    }
    if (level[size] < kUnlimited)
        --level[size];
}

}  // namespace bathside::plan
