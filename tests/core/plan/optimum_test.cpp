// The planner against the plain enumeration of every sequence of bags.

#include <cstdlib>

#include <gtest/gtest.h>

#include "core/plan/plan.h"
#include "tests/core/plan/enumerated.h"
#include "tests/core/plan/random_day.h"
#include "tests/support/effort.h"

namespace bathside::plan {
namespace {

unsigned days()
{
    return std::getenv("BATHSIDE_LONG") != nullptr ? 300'000 : bathside::test::share(4000U);
}

test::TriedPlan asTried(const LinePlan& plan)
{
    test::TriedPlan tried{
        plan.worth.cost.doses, plan.worth.cost.volume, plan.worth.lastBird.count(), {}};
    for (const PlannedBag& bag : plan.bags) {
        tried.bags.push_back({bag.volume.count,
                              bag.turn.firstBird.count(),
                              bag.turn.lastBird.count(),
                              bag.turn.birds,
                              {}});
        for (const Draw& draw : bag.draws)
            tried.bags.back().lots.push_back(draw.lot);
    }
    return tried;
}

struct Counts {
    int feasible = 0;
    int impossible = 0;
};

void expectTheSame(const DayInput& input, unsigned seed, Counts& counts)
{
    const Plan plan = planDay(input, Effort(1'000'000));
    test::Used used = test::nothingUsed(input);
    for (std::size_t line = 0; line < input.lines.size(); ++line) {
        const auto tried = test::enumerated(input, input.lines[line], used);
        ASSERT_EQ(plan.lines[line].has_value(), tried.has_value()) << seed;
        ++(tried ? counts.feasible : counts.impossible);
        if (!tried)
            continue;
        const test::TriedPlan found = asTried(*plan.lines[line]);
        ASSERT_EQ(found.doses, tried->doses) << seed;
        ASSERT_EQ(found.volume, tried->volume) << seed;
        ASSERT_EQ(found.finish, tried->finish) << seed;
        ASSERT_EQ(found.bags, tried->bags) << seed;
    }
}

TEST(OptimumTest, isThatOfEveryDayWhoseSequencesWereAllTried)
{
    Counts counts;
    for (unsigned seed = 0; seed < days() && !HasFatalFailure(); ++seed)
        expectTheSame(test::randomDay(seed), seed, counts);
    EXPECT_GT(counts.feasible, bathside::test::share(3000));
    EXPECT_GT(counts.impossible, bathside::test::share(300));
}

TEST(OptimumTest, isThatOfEveryMiddleOfADayToo)
{
    Counts counts;
    for (unsigned seed = 0; seed < days() && !HasFatalFailure(); ++seed)
        expectTheSame(test::randomMiddleOfDay(seed), seed, counts);
    EXPECT_GT(counts.feasible, bathside::test::share(3000));
    EXPECT_GT(counts.impossible, bathside::test::share(300));
}

}  // namespace
}  // namespace bathside::plan
