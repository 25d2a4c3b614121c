#include "core/plan/line_search.h"

#include <cassert>
#include <functional>
#include <queue>
#include <unordered_map>
#include <utility>

#include "core/plan/search_space.h"

namespace bathside::plan {
namespace {

using Kind = SearchEnd::Kind;
using BestKnown = std::unordered_map<LineState, Worth, HashLineState>;

/// Best-first: the first finished plan that comes up is as good as any.
class LeastWorth {
public:
    LeastWorth(SearchSpace& space, Effort& effort) : m_space(space), m_effort(effort) {}

    SearchEnd find()
    {
        reach(m_space.start(), {});
        while (!m_open.empty()) {
            const Open open = m_open.top();
            m_open.pop();
            if (open.state.toDo == 0)
                return {Kind::Optimal, open.bound, {}};
            if (m_best.at(m_space.key(open.state)) < Worth{open.cost, open.state.free})
                continue;
            if (!m_effort.spendOne())
                return {Kind::OutOfEffort, open.bound, {}};
            for (const Step& step : m_space.steps(open.state))
                reach(step.to, open.cost + step.cost);
        }
        return {};
    }

private:
    struct Open {
        Worth bound;
        Cost cost;
        LineState state;

        /// Of equals, the one that has come farthest.
        friend bool operator>(const Open& a, const Open& b)
        {
            return a.bound != b.bound ? a.bound > b.bound : a.state.toDo > b.state.toDo;
        }
    };

    void reach(const LineState& state, const Cost& cost)
    {
        const Worth worth{cost, state.free};
        const auto [known, isNew] = m_best.try_emplace(m_space.key(state), worth);
        if (!isNew && known->second <= worth)
            return;
        known->second = worth;
        if (const auto bound = m_space.bound(state, cost))
            m_open.push({*bound, cost, state});
    }

    SearchSpace& m_space;
    Effort& m_effort;
    BestKnown m_best;
    std::priority_queue<Open, std::vector<Open>, std::greater<>> m_open;
};

/// Depth-first in the order of preference, past what cannot come to `best` any more.
class FirstOfEquals {
public:
    FirstOfEquals(SearchSpace& space, const Worth& best, Effort& effort)
        : m_space(space), m_best(best), m_effort(effort)
    {
    }

    SearchEnd find()
    {
        enter(m_space.start(), {});
        while (!m_path.empty() && m_path.back().state.toDo > 0) {
            if (!m_effort.spendOne())
                return {Kind::OutOfEffort, m_best, {}};
            goOn();
        }
        assert(!m_path.empty());
        return {Kind::Optimal, m_best, bags()};
    }

private:
    struct Place {
        LineState state;
        Cost cost;
        std::vector<Step> steps;
        std::size_t next = 0;
    };

    void enter(const LineState& state, const Cost& cost)
    {
        m_path.push_back(
            {state, cost, state.toDo > 0 ? m_space.steps(state) : std::vector<Step>()});
    }

    void goOn()
    {
        Place& place = m_path.back();
        if (place.next == place.steps.size()) {
            m_failed.insert_or_assign(m_space.key(place.state),
                                      Worth{place.cost, place.state.free});
            m_path.pop_back();
            return;
        }
        const Step& step = place.steps[place.next++];
        const Cost cost = place.cost + step.cost;
        if (canBeBest(step.to, cost))
            enter(step.to, cost);
    }

    bool canBeBest(const LineState& state, const Cost& cost)
    {
        const auto bound = m_space.bound(state, cost);
        if (!bound || *bound > m_best)
            return false;
        const auto failed = m_failed.find(m_space.key(state));
        return failed == m_failed.end() || Worth{cost, state.free} < failed->second;
    }

    [[nodiscard]] std::vector<HungBag> bags() const
    {
        std::vector<HungBag> bags;
        for (std::size_t i = 0; i + 1 < m_path.size(); ++i)
            bags.push_back(m_path[i].steps[m_path[i].next - 1].bag);
        return bags;
    }

    SearchSpace& m_space;
    Worth m_best;
    Effort& m_effort;
    std::vector<Place> m_path;
    BestKnown m_failed;  // the best with which no way led on
};

/// The step with the lowest bound; none: no step leads on.
std::optional<Step> likeliest(SearchSpace& space, const LineState& state, const Cost& soFar)
{
    std::optional<Step> best;
    std::optional<Worth> least;
    for (const Step& step : space.steps(state)) {
        const auto bound = space.bound(step.to, soFar + step.cost);
        if (bound && (!least || *bound < *least)) {
            best = step;
            least = bound;
        }
    }
    return best;
}

}  // namespace

std::optional<Cost> costOfSomePlan(const LineRules& rules, const Stores& stores, Supply& supply)
{
    SearchSpace space(rules, stores, supply);
    Cost cost;
    LineState state = space.start();
    while (state.toDo > 0) {
        const auto step = likeliest(space, state, cost);
        if (!step)
            return std::nullopt;
        cost = cost + step->cost;
        state = step->to;
    }
    return cost;
}

SearchEnd bestOfLine(const LineRules& rules, const Stores& stores, Supply& supply, Effort& effort)
{
    SearchSpace space(rules, stores, supply);
    const SearchEnd end = LeastWorth(space, effort).find();
    if (end.kind != Kind::Optimal)
        return end;
    return FirstOfEquals(space, end.worth, effort).find();
}

}  // namespace bathside::plan
