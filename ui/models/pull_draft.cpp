#include "ui/models/pull_draft.h"

#include <algorithm>
#include <utility>

#include "core/bench/lots.h"

namespace bathside::ui {
namespace {

using Composition = std::vector<std::pair<ComponentId, LotId>>;

Composition compositionOf(const Bench& bench, const BagId& bag)
{
    Composition found;
    for (const Pull& pull : bench.pulls) {
        for (const Ampoule& ampoule : pull.ampoules) {
            if (ampoule.bag == bag)
                found.emplace_back(ampoule.component, ampoule.lot);
        }
    }
    return found;
}

/// As many of each component as the bag before has that has the most recent ampoules, of the lots
/// that are expected now.
Composition lastComposition(const Bench& bench, const BagId& current)
{
    for (auto bag = bench.bags.rbegin(); bag != bench.bags.rend(); ++bag) {
        if (bag->id == current)
            continue;
        auto found = compositionOf(bench, bag->id);
        for (auto& [component, lot] : found)
            lot = expectedLot(bench, component);
        if (!found.empty())
            return found;
    }
    return {};
}

Composition oneOfEach(const Bench& bench)
{
    Composition found;
    if (!bench.card)
        return found;
    for (const Component& component : bench.card->content().recipe)
        found.emplace_back(component.id, expectedLot(bench, component.id));
    return found;
}

/// A lot that a person has chosen goes before the plan's.
Composition plannedComposition(const Bench& bench, const NextBag& planned)
{
    Composition found;
    for (const NextBag::Part& part : planned.parts) {
        const LotId lot = expectedLot(bench, part.component, part.lot);
        found.insert(found.end(), static_cast<std::size_t>(part.ampoules), {part.component, lot});
    }
    return found;
}

/// `wanted` less one of the same component for each that is there already.
Composition lacking(Composition wanted, const Composition& there)
{
    for (const auto& [component, lot] : there) {
        const auto match = std::find_if(wanted.begin(), wanted.end(),
                                        [&](const auto& each) { return each.first == component; });
        if (match != wanted.end())
            wanted.erase(match);
    }
    return wanted;
}

int closedPulls(const Bench& bench)
{
    return static_cast<int>(
        std::count_if(bench.pulls.begin(), bench.pulls.end(),
                      [](const Pull& pull) { return pull.closed.has_value(); }));
}

}  // namespace

void PullDraft::follow(const Bench& bench, const NextBag* planned)
{
    const Bag* bag = bench.bagBeingMadeUp();
    const std::optional<BagId> current = bag ? std::optional(bag->id) : std::nullopt;
    const int closed = closedPulls(bench);
    if (const Pull* pull = bench.openPull())
        followPull(*pull);
    followChoice(bench.stores);
    if (current == m_bag && closed == m_closedPulls)
        return;
    m_bag = current;
    m_closedPulls = closed;
    m_ampoules = bench.openPull() ? std::vector<AmpouleTaken>{} : suggestedPull(bench, planned);
}

void PullDraft::followPull(const Pull& pull)
{
    Seq last = m_seen;
    for (const Ampoule& ampoule : pull.ampoules) {
        const Seq out = ampoule.when(Step::Out) ? ampoule.when(Step::Out)->seq : 0;
        const Seq lost = ampoule.lost ? ampoule.lost->moment.seq : 0;
        if (out > m_seen)
            leave(ampoule);
        if (lost > m_seen)
            replace(pull, ampoule);
        last = std::max({last, out, lost});
    }
    m_seen = last;
}

void PullDraft::followChoice(const Stores& stores)
{
    for (const auto& [component, choice] : stores.chosen) {
        LotId& known = m_chosen[component];
        if (std::exchange(known, choice.lot) != choice.lot)
            setLotOf(component, choice.lot);
    }
}

/// The first of its like: same lot if there is one, else the same component.
void PullDraft::leave(const Ampoule& ampoule)
{
    const auto like = [&](const AmpouleTaken& each) { return each.component == ampoule.component; };
    const auto same = [&](const AmpouleTaken& each) {
        return like(each) && each.lot == ampoule.lot;
    };
    auto found = std::ranges::find_if(m_ampoules, same);
    if (found == m_ampoules.end())
        found = std::ranges::find_if(m_ampoules, like);
    if (found != m_ampoules.end())
        m_ampoules.erase(found);
}

// Only where it does not need a second column: in the critical window nothing moves.
void PullDraft::replace(const Pull& pull, const Ampoule& lost)
{
    if (pull.ampoules.size() + m_ampoules.size() < kOneColumn)
        add({.no = 0, .component = lost.component, .lot = lost.lot});
}

std::optional<std::size_t> PullDraft::firstWithoutLot() const
{
    const auto found = std::find_if(m_ampoules.begin(), m_ampoules.end(),
                                    [](const AmpouleTaken& each) { return each.lot.empty(); });
    if (found == m_ampoules.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - m_ampoules.begin());
}

void PullDraft::add(AmpouleTaken ampoule)
{
    if (m_ampoules.size() < kMost)
        m_ampoules.push_back(std::move(ampoule));
}

void PullDraft::removeAt(std::size_t index)
{
    if (index < m_ampoules.size())
        m_ampoules.erase(m_ampoules.begin() + static_cast<std::ptrdiff_t>(index));
}

void PullDraft::setLot(std::size_t index, const LotId& lot)
{
    if (index >= m_ampoules.size())
        return;
    m_ampoules[index].lot = lot;
    for (AmpouleTaken& other : m_ampoules) {  // the same lot for its like, unless they have one
        if (other.component == m_ampoules[index].component && other.lot.empty())
            other.lot = lot;
    }
}

void PullDraft::setLotOf(const ComponentId& component, const LotId& lot)
{
    for (AmpouleTaken& each : m_ampoules) {
        if (each.component == component)
            each.lot = lot;
    }
}

bool PullDraft::has(const ComponentId& component, const LotId& lot) const
{
    return std::ranges::any_of(m_ampoules, [&](const AmpouleTaken& each) {
        return each.component == component && each.lot == lot;
    });
}

std::vector<AmpouleTaken> suggestedPull(const Bench& bench, const NextBag* planned)
{
    const Bag* bag = bench.bagBeingMadeUp();
    if (!bag || !bench.card)
        return {};
    const Composition there = compositionOf(bench, bag->id);
    Composition wanted = planned && planned->volume == bag->volume
                             ? plannedComposition(bench, *planned)
                             : lastComposition(bench, bag->id);
    if (wanted.empty())
        wanted = oneOfEach(bench);
    wanted = lacking(std::move(wanted), there);

    const auto most = static_cast<std::size_t>(std::max(1, bench.card->content().ampoulesPerPull));
    std::vector<AmpouleTaken> pull;
    for (const auto& [component, lot] : wanted) {
        if (pull.size() < std::min(most, PullDraft::kMost))
            pull.push_back({.no = 0, .component = component, .lot = lot});
    }
    return pull;
}

std::vector<LotId> knownLots(const Bench& bench, const ComponentId& component)
{
    std::vector<LotId> found;
    for (auto pull = bench.pulls.rbegin(); pull != bench.pulls.rend(); ++pull) {
        for (auto ampoule = pull->ampoules.rbegin(); ampoule != pull->ampoules.rend(); ++ampoule) {
            if (ampoule->component == component &&
                std::find(found.begin(), found.end(), ampoule->lot) == found.end())
                found.push_back(ampoule->lot);
        }
    }
    return found;
}

}  // namespace bathside::ui
