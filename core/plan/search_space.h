#pragma once

// The states a line passes through as its bags are chosen, and what leads from one to the next.

#include <optional>
#include <vector>

#include "core/plan/line_search.h"

namespace bathside::plan {

struct LineState {
    Count toDo = 0;
    DayTime free{};          // when the next bag may go on; the last bird where nothing is to do
    std::uint32_t gone = 0;  // ready bags
    SupplyState supply = 0;
    friend bool operator==(const LineState&, const LineState&) = default;
};

struct HashLineState {
    std::size_t operator()(const LineState& state) const;
};

struct Step {
    LineState to;
    Cost cost;
    HungBag bag;
};

class SearchSpace {
public:
    SearchSpace(const LineRules& rules, const Stores& stores, Supply& supply);

    [[nodiscard]] LineState start() const;
    /// Larger bags first, then earlier first birds.
    [[nodiscard]] std::vector<Step> steps(const LineState& from);
    /// No plan that begins with `soFar` and goes on from `state` is better than this; none: there
    /// is no such plan.
    [[nodiscard]] std::optional<Worth> bound(const LineState& state, const Cost& soFar);
    /// States of one key go on alike, but for the time: then the earlier one ends earlier.
    [[nodiscard]] LineState key(const LineState& state) const;

private:
    [[nodiscard]] LineState after(const LineState& from, const Turn& turn) const;
    [[nodiscard]] bool hasReady(const LineState& state) const;
    void addReady(const LineState& from, std::vector<Step>& steps) const;
    void addNew(const LineState& from, std::size_t size, std::vector<Step>& steps);

    const LineRules& m_rules;
    const Stores& m_stores;
    Supply& m_supply;
};

}  // namespace bathside::plan
