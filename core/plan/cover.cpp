#include "core/plan/cover.h"

#include <algorithm>
#include <utility>

namespace bathside::plan {

Cover::Cover(std::vector<Bag> bags) : m_bags(std::move(bags)), m_ways{{}}
{
    std::erase_if(m_bags, [](const Bag& bag) { return bag.birds <= 0; });
    for (const Bag& bag : m_bags)
        m_open.push({bag.cost, bag.birds});
}

std::optional<Cost> Cover::least(Count birds)
{
    if (m_bags.empty() && birds > 0)
        return std::nullopt;
    while (m_ways.back().birds < birds)
        findNext();
    return std::ranges::lower_bound(m_ways, birds, {}, &Way::birds)->cost;
}

void Cover::findNext()
{
    while (m_open.top().birds <= m_ways.back().birds)
        m_open.pop();
    const Way way = m_open.top();
    m_ways.push_back(way);
    for (const Bag& bag : m_bags)
        m_open.push({way.cost + bag.cost, way.birds + bag.birds});
}

}  // namespace bathside::plan
