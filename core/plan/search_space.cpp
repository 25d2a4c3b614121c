#include "core/plan/search_space.h"

#include <algorithm>

namespace bathside::plan {

std::size_t HashLineState::operator()(const LineState& state) const
{
    constexpr std::size_t kMix = 0x9E3779B97F4A7C15U;  // 2^64 / golden ratio, Knuth 6.4
    auto hash = static_cast<std::size_t>(state.free.count()) * kMix;
    hash = (hash ^ (hash >> 32U) ^ static_cast<std::size_t>(state.toDo)) * kMix;
    hash = (hash ^ (hash >> 32U) ^ (std::size_t{state.supply} << 16U) ^ state.gone) * kMix;
    return hash ^ (hash >> 32U);
}

SearchSpace::SearchSpace(const LineRules& rules, const Stores& stores, Supply& supply)
    : m_rules(rules), m_stores(stores), m_supply(supply)
{
}

bool SearchSpace::hasReady(const LineState& state) const
{
    return state.gone < m_rules.ready().size();
}

LineState SearchSpace::start() const
{
    LineState state{m_rules.birdsToDo(), m_rules.start(), 0, 0};
    if (!hasReady(state) && state.toDo > 0)
        state.free = m_rules.firstNew(state.free);
    return state;
}

LineState SearchSpace::after(const LineState& from, const Turn& turn) const
{
    LineState to = from;
    to.toDo -= turn.birds;
    to.free = turn.lastBird;
    if (to.toDo > 0)
        to.free = m_rules.clock().working(to.free + m_rules.changeover());
    return to;
}

std::vector<Step> SearchSpace::steps(const LineState& from)
{
    std::vector<Step> steps;
    LineState now = from;
    for (; hasReady(now) && steps.empty(); ++now.gone)
        addReady(now, steps);
    if (!steps.empty())
        return steps;
    for (std::size_t size = 0; size < m_stores.sizes().size(); ++size)
        addNew(now, size, steps);
    return steps;
}

/// A ready bag that would serve no bird is not hung: the next one's turn.
void SearchSpace::addReady(const LineState& from, std::vector<Step>& steps) const
{
    const ReadyBag& bag = m_rules.ready()[from.gone];
    for (const Turn& turn : m_rules.readyBag(bag, from.free, from.toDo)) {
        LineState to = after(from, turn);
        ++to.gone;
        steps.push_back({to, {}, {HungBag::From::Ready, from.gone, turn}});
    }
}

void SearchSpace::addNew(const LineState& from, std::size_t size, std::vector<Step>& steps)
{
    const auto offer = m_supply.offer(from.supply, size);
    if (!offer)
        return;
    const MicroLitres volume = m_stores.sizes()[size].volume;
    for (const Turn& turn : m_rules.newBag(volume, from.free, from.toDo)) {
        LineState to = after(from, turn);
        to.supply = offer->next;
        steps.push_back({to, {offer->doses, 1, volume.count}, {HungBag::From::Stores, size, turn}});
    }
}

/// At most one changeover hides in each break: the next bag goes on when the break ends.
std::optional<Worth> SearchSpace::bound(const LineState& state, const Cost& soFar)
{
    if (state.toDo == 0)
        return Worth{soFar, state.free};
    const LineClock& clock = m_rules.clock();
    const auto least =
        m_supply.least(state.supply, m_rules.birdsBeyondReady(state.gone, state.toDo));
    if (!least)
        return std::nullopt;
    const Count standing = least->bags - 1 - clock.breaksAfter(state.free);
    const Millis work =
        clock.workFor(state.toDo) + std::max<Count>(standing, 0) * m_rules.changeover();
    return Worth{soFar + *least, clock.endOf(state.free, work)};
}

LineState SearchSpace::key(const LineState& state) const
{
    LineState key = state;
    if (!hasReady(state) && m_rules.clock().breakAfter(state.free) == nullptr)
        key.free = DayTime::max();
    return key;
}

}  // namespace bathside::plan
