// Where no break and no lot bites, a line is a covering problem: the same optimum as a general
// integer-programming solver finds (GLPK 5.0, https://www.gnu.org/software/glpk/).

#include "tests/support/covering.h"

#include <random>

#include <gtest/gtest.h>

#include "core/plan/line_plan.h"
#include "tests/core/plan/example_day.h"

namespace bathside::plan {
namespace {

DayInput randomCovering(std::mt19937& random)
{
    DayInput input = test::exampleDay(static_cast<Count>(random() % 60'000));
    input.residual = {static_cast<Count>(random() % 10'000)};
    input.changeover = std::chrono::minutes(random() % 3);
    input.lines[0].ratePerHour = 2000 + static_cast<Count>(random() % 4000);
    input.bags.clear();
    for (Count volume : {160, 200, 250, 400, 500})
        if (random() % 4 > 0)
            input.bags.push_back(
                {{volume * 1000 + static_cast<Count>(random() % 5) * 200},
                 random() % 2 == 0 ? std::nullopt : std::optional<Count>(random() % 12)});
    input.recipe = {{"one", {{"A", 1000, std::nullopt, input.day}}},
                    {"two", {{"B", 2000, std::nullopt, input.day}}}};
    return input;
}

TEST(CoveringTest, hasTheOptimumOfAGeneralSolver)
{
    std::mt19937 random(1);
    int feasible = 0;
    for (int round = 0; round < 150; ++round) {
        const DayInput input = randomCovering(random);
        const auto expected = test::solvedAsCovering(input, input.lines[0]);
        const Stores stores(input);
        Level level = stores.full();
        Effort effort(1'000'000);
        const auto plan = planLine(input, input.lines[0], stores, level, effort);
        ASSERT_EQ(plan.has_value(), expected.has_value()) << round;
        if (!plan)
            continue;
        ++feasible;
        ASSERT_EQ(plan->worth.cost, *expected) << round;
    }
    EXPECT_GT(feasible, 100);
}

}  // namespace
}  // namespace bathside::plan
