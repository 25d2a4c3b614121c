#include "tests/core/plan/enumerated.h"

#include <algorithm>
#include <limits>
#include <tuple>

namespace bathside::plan::test {
namespace {

using Int = std::int64_t;
constexpr Int kEndless = std::numeric_limits<Int>::max();

bool inBreak(const Line& line, Int at)
{
    return std::ranges::any_of(line.breaks, [&](const Break& pause) {
        return pause.from.count() <= at && at < pause.to.count();
    });
}

/// The end of every break that covers `at`, and of those that cover that end, and so on.
Int outOfBreaks(const Line& line, Int at)
{
    while (inBreak(line, at))
        for (const Break& pause : line.breaks)
            if (pause.from.count() <= at && at < pause.to.count())
                at = pause.to.count();
    return at;
}

/// Where the next break begins, at or after `at`.
Int nextBreak(const Line& line, Int at)
{
    Int next = kEndless;
    for (const Break& pause : line.breaks)
        if (pause.from < pause.to && pause.from.count() >= at)
            next = std::min(next, pause.from.count());
    return next;
}

/// Works through the stretches between breaks.
Int worked(const Line& line, Int from, Int work)
{
    Int at = from;
    while (work > 0) {
        at = outOfBreaks(line, at);
        const Int stretch = nextBreak(line, at);
        if (stretch == kEndless || stretch - at >= work)
            return at + work;
        work -= stretch - at;
        at = stretch;
    }
    return at;
}

struct Try {
    const DayInput& input;
    const Line& line;
    Used used;
    std::vector<TriedBag> bags;
    Int doses = 0;
    std::optional<TriedPlan> best;
    Used usedByBest;
    std::vector<MadeBag> ready;
    std::size_t gone = 0;  // ready bags

    Int left(std::size_t component, std::size_t lot) const
    {
        const auto count = input.recipe[component].lots[lot].count;
        return count ? *count - used.lots[component][lot] : kEndless;
    }

    Int needed(const BagStock& bag, const Lot& lot) const
    {
        const Int charged = (bag.volume.count + input.dose.count - 1) / input.dose.count;
        return (charged + lot.doses - 1) / lot.doses;
    }

    /// None: no lot has enough.
    std::optional<std::size_t> lotFor(const BagStock& bag, std::size_t component) const
    {
        std::optional<std::size_t> first;
        const auto& lots = input.recipe[component].lots;
        for (std::size_t i = 0; i < lots.size(); ++i) {
            if (lots[i].expires < input.day || left(component, i) < needed(bag, lots[i]))
                continue;
            if (!first || std::tie(lots[i].expires, lots[i].name) <
                              std::tie(lots[*first].expires, lots[*first].name))
                first = i;
        }
        return first;
    }

    Int mostIn(MicroLitres left) const
    {
        const bool isFirst = bags.empty() && line.birdsDone == 0 && !line.openBag;
        const Int prime = isFirst ? input.prime.count : 0;
        return std::max<Int>(0, left.count - input.residual.count - prime) / input.dose.count;
    }

    Int lastOf(Int first, Int birds) const
    {
        return worked(line, first, (birds * 3'600'000 + line.ratePerHour - 1) / line.ratePerHour);
    }

    /// With the last bird earlier than `end`: counted up in steps that halve.
    Int birdsFrom(Int first, Int most, Int end) const
    {
        Int birds = 0;
        for (Int step = Int{1} << 40; step > 0; step /= 2)
            if (birds + step <= most && lastOf(first, birds + step) < end)
                birds += step;
        return birds;
    }

    Int newBagEnd(Int first) const
    {
        return first - input.hangTime.count() - input.diluteTime.count() + input.useLimit.count() -
               input.benchSlack.count();
    }

    void finished(Int last)
    {
        Int volume = 0;
        for (const TriedBag& bag : bags)
            volume += bag.lots.empty() ? 0 : bag.volume;
        const TriedPlan plan{doses, volume, last, bags};
        if (best && !isBetter(plan, *best))
            return;
        best = plan;
        usedByBest = used;
    }

    static bool isBetter(const TriedPlan& a, const TriedPlan& b)
    {
        const auto worth = [](const TriedPlan& plan) {
            const auto isNew = [](const TriedBag& bag) { return !bag.lots.empty(); };
            return std::tuple(plan.doses, std::ranges::count_if(plan.bags, isNew), plan.volume,
                              plan.finish);
        };
        if (worth(a) != worth(b))
            return worth(a) < worth(b);
        for (std::size_t i = 0; i < a.bags.size(); ++i) {
            const auto place = [&](const TriedPlan& plan) {
                return std::tuple(-plan.bags[i].volume, plan.bags[i].first);
            };
            if (place(a) != place(b))
                return place(a) < place(b);
        }
        return false;
    }

    void hang(std::size_t size, Int first, Int toDo, const std::vector<std::size_t>& lots)
    {
        const BagStock& bag = input.bags[size];
        const Int birds = birdsFrom(first, std::min(toDo, mostIn(bag.volume)), newBagEnd(first));
        if (birds == 0)
            return;
        const Try before = *this;
        ++used.bags[size];
        for (std::size_t component = 0; component < lots.size(); ++component) {
            const Lot& lot = input.recipe[component].lots[lots[component]];
            used.lots[component][lots[component]] += needed(bag, lot);
            doses += needed(bag, lot) * lot.doses;
        }
        const Int last = lastOf(first, birds);
        bags.push_back({bag.volume.count, first, last, birds, lots});
        next(toDo - birds, last);
        used = before.used;
        bags = before.bags;
        doses = before.doses;
    }

    /// False: it would serve no bird.
    bool hangReady(std::size_t which, Int first, Int toDo)
    {
        const MadeBag& bag = ready[which];
        const Int birds = birdsFrom(first, std::min(toDo, mostIn(bag.left)),
                                    bag.firstInDiluent.count() + input.useLimit.count());
        if (birds == 0)
            return false;
        const Int last = lastOf(first, birds);
        bags.push_back({bag.volume.count, first, last, birds, {}});
        gone = which + 1;
        next(toDo - birds, last);
        gone = which;
        bags.pop_back();
        return true;
    }

    /// At once, and at the end of the next break if little working time is given up.
    std::vector<Int> choices(Int free, bool mayWait) const
    {
        std::vector<Int> all{outOfBreaks(line, free)};
        const Int pause = nextBreak(line, all.front());
        if (mayWait && pause != kEndless && pause - all.front() <= input.longestIdle.count())
            all.push_back(outOfBreaks(line, pause));
        return all;
    }

    void next(Int toDo, Int last)
    {
        if (toDo == 0)
            return finished(last);
        if (best && doses > best->doses)
            return;
        const Int free = bags.empty() ? last : last + input.changeover.count();
        const std::size_t before = gone;
        while (gone < ready.size() && !hangNextReady(toDo, free))
            ++gone;
        if (gone == ready.size())
            tryNew(toDo, free);
        gone = before;
    }

    bool hangNextReady(Int toDo, Int free)
    {
        const bool hangs = gone == 0 && line.openBag;
        const DayTime mixed = ready[gone].firstInDiluent + input.diluteTime + input.hangTime;
        bool isHung = false;
        for (const Int first : choices(hangs ? free : std::max(free, mixed.count()), !hangs))
            isHung = hangReady(gone, first, toDo) || isHung;
        return isHung;
    }

    void tryNew(Int toDo, Int free)
    {
        if (input.now)
            free = std::max(free, (*input.now + input.prepareTime + input.hangTime).count());
        for (std::size_t size = 0; size < input.bags.size(); ++size) {
            if (input.bags[size].count && used.bags[size] >= *input.bags[size].count)
                continue;
            std::vector<std::size_t> lots;
            for (std::size_t component = 0; component < input.recipe.size(); ++component)
                if (const auto lot = lotFor(input.bags[size], component))
                    lots.push_back(*lot);
            if (lots.size() < input.recipe.size())
                continue;
            for (const Int first : choices(free, true))
                hang(size, first, toDo, lots);
        }
    }
};

}  // namespace

Used nothingUsed(const DayInput& input)
{
    Used used{std::vector<Int>(input.bags.size()), {}};
    for (const Component& component : input.recipe)
        used.lots.emplace_back(component.lots.size());
    return used;
}

std::optional<TriedPlan> enumerated(const DayInput& input, const Line& line, Used& used)
{
    Try trying{input, line, used, {}, 0, std::nullopt, {}, line.mixedBags, 0};
    if (line.openBag)
        trying.ready.insert(trying.ready.begin(), *line.openBag);
    const DayTime start = input.now ? std::max(line.start, *input.now) : line.start;
    trying.next(std::max<Int>(0, line.birds - line.birdsDone), start.count());
    if (trying.best)
        used = trying.usedByBest;
    return trying.best;
}

}  // namespace bathside::plan::test
