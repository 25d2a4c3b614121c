// What must be true of every plan, whatever the day: days too large to be enumerated.

#include <algorithm>
#include <map>

#include <gtest/gtest.h>

#include "core/plan/plan.h"
#include "core/plan/plan_json.h"
#include "tests/core/plan/random_day.h"
#include "tests/support/effort.h"

namespace bathside::plan {
namespace {

constexpr unsigned kDays = bathside::test::share(1500U);
constexpr std::int64_t kEffort = 30'000;

/// Five times the birds and what is in stores.
DayInput largeDay(unsigned seed)
{
    DayInput input = test::randomDay(seed);
    for (Line& line : input.lines)
        line.birds *= 5;
    for (BagStock& bag : input.bags)
        bag.count = bag.count ? std::optional(*bag.count * 5) : std::nullopt;
    for (Component& component : input.recipe)
        for (Lot& lot : component.lots)
            lot.count = lot.count ? std::optional(*lot.count * 5) : std::nullopt;
    return input;
}

template <typename Check>
void forEachBag(const DayInput& input, const Plan& plan, Check check)
{
    for (std::size_t line = 0; line < plan.lines.size(); ++line)
        for (std::size_t bag = 0; plan.lines[line] && bag < plan.lines[line]->bags.size(); ++bag)
            check(input.lines[line], plan.lines[line]->bags[bag]);
}

TEST(PropertiesTest, everyLastBirdIsEarlierThanItsLimit)
{
    int bags = 0;
    for (unsigned seed = 0; seed < kDays; ++seed) {
        const DayInput input = largeDay(seed);
        forEachBag(input, planDay(input, Effort(kEffort)), [&](const Line&, const PlannedBag& bag) {
            ASSERT_LT(bag.turn.lastBird, bag.turn.firstBird - input.hangTime - input.diluteTime +
                                             input.useLimit - input.benchSlack)
                << seed;
            ASSERT_GT(bag.margin, Millis(0)) << seed;
            ASSERT_EQ(bag.margin + bag.ageAtLast, input.useLimit) << seed;
            ++bags;
        });
    }
    EXPECT_GT(bags, bathside::test::share(10'000));
}

TEST(PropertiesTest, everyBirdIsCoveredAndNoBagServesMoreThanItHolds)
{
    for (unsigned seed = 0; seed < kDays; ++seed) {
        const DayInput input = largeDay(seed);
        const Plan plan = planDay(input, Effort(kEffort));
        for (std::size_t line = 0; line < plan.lines.size(); ++line) {
            if (!plan.lines[line])
                continue;
            Count birds = 0;
            for (const PlannedBag& bag : plan.lines[line]->bags)
                birds += bag.turn.birds;
            ASSERT_EQ(birds, input.lines[line].birds) << seed;
        }
        forEachBag(input, plan, [&](const Line&, const PlannedBag& bag) {
            ASSERT_GT(bag.turn.birds, 0) << seed;
            ASSERT_LE(bag.turn.birds * input.dose.count + input.residual.count, bag.volume.count)
                << seed;
        });
    }
}

TEST(PropertiesTest, storesAreNeverOverdrawnAndLotsAreWhole)
{
    for (unsigned seed = 0; seed < kDays; ++seed) {
        const DayInput input = largeDay(seed);
        std::map<std::pair<std::size_t, std::size_t>, Count> ampoules;
        std::map<MicroLitres, Count> bags;
        forEachBag(input, planDay(input, Effort(kEffort)), [&](const Line&, const PlannedBag& bag) {
            ++bags[bag.volume];
            ASSERT_EQ(bag.draws.size(), input.recipe.size()) << seed;
            for (std::size_t component = 0; component < bag.draws.size(); ++component) {
                const Draw& draw = bag.draws[component];
                const Lot& lot = input.recipe[component].lots[draw.lot];
                ASSERT_EQ(draw.component, component) << seed;
                ASSERT_GE(lot.expires, input.day) << seed;
                ASSERT_GE(draw.ampoules * lot.doses * input.dose.count, bag.volume.count) << seed;
                ampoules[{component, draw.lot}] += draw.ampoules;
            }
        });
        for (const auto& [lot, used] : ampoules)
            ASSERT_LE(used, input.recipe[lot.first].lots[lot.second].count.value_or(used)) << seed;
        for (const auto& [volume, used] : bags) {
            Count there = 0;
            for (const BagStock& stock : input.bags)
                there += stock.volume == volume ? stock.count.value_or(used) : 0;
            ASSERT_LE(used, there) << seed;
        }
    }
}

TEST(PropertiesTest, theBenchMakesEachBagOnceInItsWindow)
{
    int schedules = 0;
    for (unsigned seed = 0; seed < kDays; ++seed) {
        const DayInput input = largeDay(seed);
        const Plan plan = planDay(input, Effort(kEffort));
        if (plan.bench.cannotMeet) {
            ASSERT_GT(plan.bench.preparersNeeded, input.preparers) << seed;
            continue;
        }
        ASSERT_LE(plan.bench.preparersNeeded, input.preparers) << seed;
        ASSERT_EQ(plan.bench.schedule.size(), static_cast<std::size_t>(plan.totals.bags)) << seed;
        for (const ScheduledBag& slot : plan.bench.schedule) {
            const PlannedBag& bag = plan.lines[slot.place.line]->bags[slot.place.bag];
            ASSERT_EQ(bag.pullStart, slot.start) << seed;
            ASSERT_LE(slot.mixed, bag.turn.firstBird - input.hangTime) << seed;
            ASSERT_GT(slot.mixed, bag.turn.lastBird - input.useLimit + input.diluteTime) << seed;
        }
        ++schedules;
    }
    EXPECT_GT(schedules, bathside::test::share(500));
}

// "Without opening a dose more": carried out, it does what it promises, and a minute less does not.
TEST(PropertiesTest, theSlackThatIsNamedDoesAndNoSmallerOneDoes)
{
    int named = 0;
    for (unsigned seed = 0; seed < kDays; ++seed) {
        DayInput input = test::randomDay(seed);
        input.preparers = 1;
        input.prepareTime = std::chrono::minutes(20);
        const Plan plan = planDay(input, Effort(kEffort));
        if (!plan.bench.slackNeeded)
            continue;
        ++named;
        for (std::chrono::minutes slack{0}; slack <= *plan.bench.slackNeeded; ++slack) {
            input.benchSlack = slack;
            const Plan other = planDay(input, Effort(kEffort));
            bool keepsLines = other.totals.dosesOpened <= plan.totals.dosesOpened;
            for (std::size_t line = 0; line < plan.lines.size(); ++line)
                keepsLines = keepsLines && (other.lines[line] || !plan.lines[line]);
            ASSERT_EQ(keepsLines && !other.bench.cannotMeet, slack == *plan.bench.slackNeeded)
                << seed;
        }
    }
    EXPECT_GE(named, bathside::test::share(21));
}

TEST(PropertiesTest, theSameDayGivesTheSamePlan)
{
    const PlanWords silent{[](const std::vector<Reason>&) { return ""; },
                           [](const Warning&) { return ""; }};
    for (unsigned seed = 0; seed < 200; ++seed) {
        const DayInput input = largeDay(seed);
        ASSERT_EQ(toJson(input, planDay(input, Effort(kEffort)), silent),
                  toJson(input, planDay(input, Effort(kEffort)), silent))
            << seed;
    }
}

// More effort finds the same plan, or one where there was none; less never finds another one.
TEST(PropertiesTest, lessEffortGivesTheOptimumOrNoneWithABoundBelowIt)
{
    int undecided = 0;
    for (unsigned seed = 0; seed < 400; ++seed) {
        DayInput input = test::randomDay(seed);
        input.lines.resize(1);
        const Plan whole = planDay(input, Effort(1'000'000));
        const Plan hasty = planDay(input, Effort(30));
        if (hasty.lines[0]) {
            ASSERT_EQ(hasty.lines[0]->worth, whole.lines[0]->worth) << seed;
            continue;
        }
        const auto* reason = std::get_if<Undecided>(&hasty.lines[0].error().front());
        if (reason == nullptr || !whole.lines[0])
            continue;
        ++undecided;
        ASSERT_LE(reason->atLeast, whole.lines[0]->worth.cost) << seed;
    }
    EXPECT_GT(undecided, 10);
}

}  // namespace
}  // namespace bathside::plan
