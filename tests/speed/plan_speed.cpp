// What planning a large day costs: six lines of some 40 bags, five sizes, two components of four
// lots; bound 50 ms. Where no break and no lot bites, next to a general integer-programming solver
// (GLPK) on the same covering problem, which must find the same optimum. Exit 1 when it does not.

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>

#include "core/plan/plan.h"
#include "tests/support/covering.h"

namespace {

using namespace bathside::plan;
using namespace std::chrono_literals;
using Clock = std::chrono::steady_clock;

enum class Breaks { None, Three };
enum class Bags { Endless, Enough, Short };
enum class Lots { Alike, Mixed, Short };

std::vector<Break> breaksFrom(DayTime start)
{
    return {{start + 140min, start + 160min},
            {start + 310min, start + 355min},
            {start + 530min, start + 550min}};
}

std::vector<Line> linesOf(Breaks breaks)
{
    std::vector<Line> lines;
    for (int i = 0; i < 6; ++i) {
        Line line;
        line.name = std::string(1, static_cast<char>('A' + i));
        line.birds = 75'000 + 431 * i;
        line.ratePerHour = 6000 + 37 * i;
        line.start = 6h + 9min * i;
        if (breaks == Breaks::Three)
            line.breaks = breaksFrom(line.start);
        lines.push_back(line);
    }
    return lines;
}

std::vector<Component> recipeOf(Lots lots, std::chrono::sys_days day)
{
    std::vector<Component> recipe{{"one", {}}, {"two", {}}};
    for (Component& component : recipe)
        for (int i = 0; i < 4; ++i)
            component.lots.push_back({"L" + std::to_string(i),
                                      lots == Lots::Alike ? 1000 : (i % 2 == 0 ? 2000 : 1000),
                                      lots == Lots::Short ? 90 : 400, day + std::chrono::days(i)});
    return recipe;
}

DayInput dayOf(Breaks breaks, Bags bags, Lots lots)
{
    DayInput input;
    input.day = std::chrono::sys_days(2026y / 3 / 5);
    input.dose = {200};
    input.useLimit = 60min;
    input.diluteTime = 1min;
    input.hangTime = 3min;
    input.changeover = 1min;
    input.benchSlack = 5min;
    input.residual = {8000};
    input.prime = {breaks == Breaks::None ? 0 : 20'000};
    input.longestIdle = 10min;
    input.prepareTime = 8min;
    input.preparers = 4;
    input.lines = linesOf(breaks);
    for (const Count volume : {160'000, 200'000, 240'000, 320'000, 400'000})
        input.bags.push_back({{volume},
                              bags == Bags::Endless  ? std::nullopt
                              : bags == Bags::Enough ? std::optional<Count>(400)
                                                     : std::optional<Count>(70)});
    input.recipe = recipeOf(lots, input.day);
    return input;
}

/// A day of ten bags a line instead of forty, with a quarter of the stores.
DayInput quarterOf(DayInput input)
{
    for (Line& line : input.lines)
        line.birds /= 4;
    for (BagStock& bags : input.bags)
        bags.count = bags.count ? std::optional(*bags.count / 4) : std::nullopt;
    for (Component& component : input.recipe)
        for (Lot& lot : component.lots)
            lot.count = lot.count ? std::optional(*lot.count / 4) : std::nullopt;
    return input;
}

struct Timed {
    double least = 1e9;  // ms
    template <typename Work>
    void time(Work work)
    {
        for (int round = 0; round < 5; ++round) {
            const auto start = Clock::now();
            work();
            least = std::min(
                least, std::chrono::duration<double, std::milli>(Clock::now() - start).count());
        }
    }
};

int linesDone(const Plan& plan)
{
    return static_cast<int>(
        std::ranges::count_if(plan.lines, [](const auto& line) { return line.has_value(); }));
}

bool isUndecided(const std::vector<Reason>& reasons)
{
    return std::holds_alternative<Undecided>(reasons.front());
}

int linesUndecided(const Plan& plan)
{
    return static_cast<int>(std::ranges::count_if(
        plan.lines, [](const auto& line) { return !line && isUndecided(line.error()); }));
}

Plan measured(const char* name, const DayInput& input, std::int64_t effort = Effort::kOfADay)
{
    Plan plan;
    Timed timed;
    timed.time([&] { plan = planDay(input, Effort(effort)); });
    std::printf("  %-44s %8.1f ms  %4lld bags, %d lines done, %d too large\n", name, timed.least,
                static_cast<long long>(plan.totals.bags), linesDone(plan), linesUndecided(plan));
    return plan;
}

/// Lots without a limit do not bite; all lines from the same bags.
bool besideGlpk(const DayInput& input, const Plan& plan)
{
    bool isSame = true;
    Timed timed;
    timed.time([&] {
        for (std::size_t line = 0; line < input.lines.size(); ++line) {
            const auto expected = test::solvedAsCovering(input, input.lines[line]);
            isSame =
                isSame && expected && plan.lines[line] && plan.lines[line]->worth.cost == *expected;
        }
    });
    std::printf("  %-44s %8.1f ms  %s\n", "  the same by GLPK", timed.least,
                isSame ? "the same optimum" : "ANOTHER OPTIMUM");
    return isSame;
}

}  // namespace

int main()
{
    std::printf("Planning a day of six lines (bound 50 ms; stores that bite: 2 s)\n");
    const DayInput covering = dayOf(Breaks::None, Bags::Endless, Lots::Alike);
    const Plan covered = measured("no breaks, nothing bites", covering);
    const bool isSame = besideGlpk(covering, covered);
    measured("three breaks, nothing bites", dayOf(Breaks::Three, Bags::Endless, Lots::Alike));
    measured("three breaks, lots of two kinds", dayOf(Breaks::Three, Bags::Enough, Lots::Mixed));
    measured("three breaks, bags run out", dayOf(Breaks::Three, Bags::Short, Lots::Alike));
    const DayInput scarce = dayOf(Breaks::Three, Bags::Short, Lots::Short);
    measured("three breaks, bags and lots run out", scarce);
    measured("  the same with the bench's effort", scarce, Effort::kAtTheBench);
    measured("  a quarter of it, with the bench's effort", quarterOf(scarce), Effort::kAtTheBench);
    measured("  a quarter, bags run out, bench's effort",
             quarterOf(dayOf(Breaks::Three, Bags::Short, Lots::Alike)), Effort::kAtTheBench);
    return isSame ? EXIT_SUCCESS : EXIT_FAILURE;
}
