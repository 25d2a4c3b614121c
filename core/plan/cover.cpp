#include "core/plan/cover.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace bathside::plan {
namespace {

/// Of both, what no other of them does for less; nothing past the first that covers `birds`.
Ways merged(const Ways& a, const Ways& b, Count birds)
{
    Ways all;
    all.reserve(a.size() + b.size());
    std::ranges::merge(a, b, std::back_inserter(all));
    Ways kept;
    for (const Way& way : all) {
        if (!kept.empty() && kept.back().birds >= birds)
            break;
        if (kept.empty() || way.birds > kept.back().birds)
            kept.push_back(way);
    }
    return kept;
}

}  // namespace

std::optional<Cost> leastOf(std::span<const Way> ways, Count birds)
{
    const auto least = std::ranges::lower_bound(ways, birds, {}, &Way::birds);
    return least == ways.end() ? std::nullopt : std::optional(least->cost);
}

/// 1, 2, 4 … bags at a time, and the rest: every number up to `count` is a sum of these.
Ways withBags(Ways ways, const Way& bag, Count count, Count birds)
{
    if (bag.birds <= 0)
        return ways;
    count = std::min(count, (birds + bag.birds - 1) / bag.birds);
    for (Count some = 1; count > 0; count -= some, some *= 2) {
        some = std::min(some, count);
        const Way together{{some * bag.cost.doses, some * bag.cost.bags, some * bag.cost.volume},
                           some * bag.birds};
        Ways more;
        std::ranges::transform(ways, std::back_inserter(more),
                               [&](const Way& way) { return way + together; });
        ways = merged(ways, more, birds);
    }
    return ways;
}

Cover::Cover(std::vector<Way> bags) : m_bags(std::move(bags)), m_ways{{}}
{
    std::erase_if(m_bags, [](const Way& bag) { return bag.birds <= 0; });
    for (const Way& bag : m_bags)
        m_open.push(bag);
}

std::span<const Way> Cover::ways(Count birds)
{
    while (!m_bags.empty() && m_ways.back().birds < birds)
        findNext();
    const auto last = std::ranges::lower_bound(m_ways, birds, {}, &Way::birds);
    return {m_ways.begin(), last == m_ways.end() ? last : std::next(last)};
}

void Cover::findNext()
{
    while (m_open.top().birds <= m_ways.back().birds)
        m_open.pop();
    const Way way = m_open.top();
    m_ways.push_back(way);
    for (const Way& bag : m_bags)
        m_open.push(way + bag);
}

}  // namespace bathside::plan
