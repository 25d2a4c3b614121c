#include "core/plan/reasons.h"

#include <algorithm>
#include <functional>

#include "core/plan/line_plan.h"

namespace bathside::plan {
namespace {

constexpr Count kMostMissing = 10'000'000;
constexpr int kMostIdle = 1440;  // minutes

/// The day with what is left in stores, as an input in which one thing at a time can be changed.
class WhatIf {
public:
    WhatIf(const DayInput& input, const Line& line, const Stores& stores, const Level& level,
           Effort& effort)
        : m_line(line), m_effort(effort), m_left(input)
    {
        m_left.bags.clear();
        for (std::size_t size = 0; size < stores.sizes().size(); ++size)
            m_left.bags.push_back({stores.sizes()[size].volume, limited(level[size])});
        for (std::size_t component = 0; component < stores.lots().size(); ++component)
            for (const Stores::UsableLot& lot : stores.lots()[component])
                m_left.recipe[component].lots[lot.lot].count = limited(level[lot.at]);
    }

    [[nodiscard]] const DayInput& left() const { return m_left; }

    [[nodiscard]] bool canDo(const DayInput& input) const
    {
        const Stores stores(input);
        const auto end = bestFrom(LineRules(input, m_line), stores, stores.full(), m_effort);
        m_isOut = m_isOut || end.kind == SearchEnd::Kind::OutOfEffort;
        return end.kind == SearchEnd::Kind::Optimal;
    }

    /// An answer so far may be wrong.
    [[nodiscard]] bool isOutOfEffort() const { return m_isOut; }

    /// The smallest number from 1 on that would do, where all larger ones do as well.
    [[nodiscard]] std::optional<Count> fewest(Count most,
                                              const std::function<DayInput(Count)>& changed) const
    {
        Count enough = 1;
        while (!canDo(changed(enough))) {
            if (enough >= most)
                return std::nullopt;
            enough = std::min(2 * enough, most);
        }
        Count tooFew = enough / 2;
        while (enough - tooFew > 1) {
            const Count middle = tooFew + (enough - tooFew) / 2;
            (canDo(changed(middle)) ? enough : tooFew) = middle;
        }
        return enough;
    }

private:
    static std::optional<Count> limited(Count count)
    {
        return count == kUnlimited ? std::nullopt : std::optional(count);
    }

    const Line& m_line;
    Effort& m_effort;
    DayInput m_left;
    mutable bool m_isOut = false;
};

/// So many ampoules more of the lot that is taken last; none: unlimited.
void addAmpoules(DayInput& input, std::size_t component, std::optional<Count> more)
{
    auto& lots = input.recipe[component].lots;
    Lot added = *std::ranges::max_element(lots, {}, &Lot::expires);
    added.count = more;
    added.expires = std::max(added.expires, input.day) + std::chrono::days(1);
    lots.push_back(added);
}

void addEndless(DayInput& input, std::size_t component)
{
    if (input.recipe[component].lots.empty())
        input.recipe[component].lots.push_back({"", 1, std::nullopt, input.day});
    else
        addAmpoules(input, component, std::nullopt);
}

void addEndlessBags(DayInput& input)
{
    for (BagStock& bag : input.bags)
        bag.count.reset();
}

void makeEndless(DayInput& input)
{
    addEndlessBags(input);
    for (std::size_t component = 0; component < input.recipe.size(); ++component)
        addEndless(input, component);
}

AmpoulesMissing ampoulesMissing(const WhatIf& whatIf, const DayInput& base, const Line& line,
                                std::size_t component)
{
    AmpoulesMissing reason{component, line.birds - line.birdsDone, std::nullopt};
    if (base.recipe[component].lots.empty())
        return reason;
    reason.missing = whatIf.fewest(kMostMissing, [&](Count more) {
        DayInput input = base;
        addAmpoules(input, component, more);
        return input;
    });
    return reason;
}

/// Of the sizes of which the fewest would do, the largest.
BagsMissing bagsMissing(const WhatIf& whatIf, const DayInput& base)
{
    BagsMissing reason;
    for (std::size_t size = 0; size < base.bags.size(); ++size) {
        const auto missing = whatIf.fewest(kMostMissing, [&](Count more) {
            DayInput input = base;
            input.bags[size].count = input.bags[size].count.value_or(0) + more;
            return input;
        });
        if (missing && (!reason.volume || *missing < reason.missing))
            reason = {base.bags[size].volume, *missing};
    }
    return reason;
}

/// What is short even where there is plenty of everything else.
std::vector<Reason> shortAlone(const WhatIf& whatIf, const Line& line)
{
    std::vector<Reason> reasons;
    DayInput plenty = whatIf.left();
    makeEndless(plenty);
    for (std::size_t component = 0; component < plenty.recipe.size(); ++component) {
        DayInput input = plenty;
        input.recipe[component] = whatIf.left().recipe[component];
        if (!whatIf.canDo(input))
            reasons.emplace_back(ampoulesMissing(whatIf, input, line, component));
    }
    plenty.bags = whatIf.left().bags;
    if (!whatIf.canDo(plenty))
        reasons.emplace_back(bagsMissing(whatIf, plenty));
    return reasons;
}

/// What would do by itself, everything else being as it is.
std::vector<Reason> enoughAlone(const WhatIf& whatIf, const Line& line)
{
    std::vector<Reason> reasons;
    for (std::size_t component = 0; component < whatIf.left().recipe.size(); ++component) {
        DayInput input = whatIf.left();
        addEndless(input, component);
        if (whatIf.canDo(input))
            reasons.emplace_back(ampoulesMissing(whatIf, whatIf.left(), line, component));
    }
    DayInput input = whatIf.left();
    addEndlessBags(input);
    if (whatIf.canDo(input))
        reasons.emplace_back(bagsMissing(whatIf, whatIf.left()));
    return reasons;
}

std::optional<Reason> bagTooSmall(const DayInput& input, const LineRules& rules)
{
    const auto holdsNone = [&](const BagStock& bag) {
        return rules.birdsIn(bag.volume, rules.tubes(rules.birdsToDo())) == 0;
    };
    const auto isAllResidual = [&](const BagStock& bag) {
        return rules.birdsIn(bag.volume, Tubes::Full) == 0;
    };
    if (input.bags.empty() || !std::ranges::all_of(input.bags, holdsNone))
        return std::nullopt;
    if (std::ranges::all_of(input.bags, isAllResidual))
        return ResidualTakesAll{input.residual + input.dose};
    return PrimingTakesAll{input.residual + input.prime + input.dose};
}

std::optional<Reason> limitTooShort(const LineRules& rules)
{
    const Millis needed = rules.clock().workFor(1) + Millis(1);
    if (rules.life() >= needed)
        return std::nullopt;
    return LimitTooShort{needed - rules.life()};
}

BreakInTheWay breakInTheWay(const WhatIf& whatIf, const DayInput& plenty)
{
    const auto minutes = whatIf.fewest(kMostIdle, [&](Count idle) {
        DayInput input = plenty;
        input.longestIdle = std::chrono::minutes(idle);
        return input;
    });
    if (!minutes)
        return {};
    return {std::chrono::minutes(*minutes)};
}

std::vector<Reason> whatIsShort(const WhatIf& whatIf, const Line& line)
{
    DayInput plenty = whatIf.left();
    makeEndless(plenty);
    if (!whatIf.canDo(plenty))
        return {breakInTheWay(whatIf, plenty)};
    if (auto reasons = shortAlone(whatIf, line); !reasons.empty())
        return reasons;
    if (auto reasons = enoughAlone(whatIf, line); !reasons.empty())
        return reasons;
    return {StoresNotEnough{}};
}

}  // namespace

std::vector<Reason> reasonsFor(const DayInput& input, const Line& line, const Stores& stores,
                               const Level& level, Effort& effort)
{
    const LineRules rules(input, line);
    if (const auto reason = limitTooShort(rules))
        return {*reason};
    if (const auto reason = bagTooSmall(input, rules))
        return {*reason};
    if (input.bags.empty())
        return {BagsMissing{}};
    const WhatIf whatIf(input, line, stores, level, effort);
    const auto reasons = whatIsShort(whatIf, line);
    return whatIf.isOutOfEffort() ? std::vector<Reason>{Unexplained{}} : reasons;
}

}  // namespace bathside::plan
