// Live cells of one bag, from a shift's record. Figures reckoned apart, with Python:
// titre × (1 ∓ 0.1) × 2^(−82 s / half-life in the bath) × 2^(−time in the bag / half-life in it).

#include "core/day/bag_cells.h"

#include <gtest/gtest.h>

#include "tests/support/shift.h"

namespace bathside::test {
namespace {

constexpr double kStart = 100, kDiluent = kStart + 87;  // s

// Of serotype 1, half an hour and an hour after its diluent.
constexpr Interval kNow{2'234.86, 3'002.32}, kAtLimit{1'879.28, 2'753.14};

constexpr const char* kOn = R"({"live_cells": {"shown": true, "minimum_pfu": 2000,
    "minimum_source": "a label", "titre_off_percent": 10,
    "in_bath": {"half_life_low_ms": 3600000, "half_life_high_ms": 7200000, "source": "a paper"},
    "in_bag": {"half_life_low_ms": 7200000, "half_life_high_ms": 14400000,
               "source": "another paper"}}})";

StoreReceived lot(const std::string& component, const std::string& name,
                  std::optional<std::int64_t> titre)
{
    return {.of = ampoulesOf({component}, {name}),
            .place = "vessel 1",
            .count = 30,
            .doses = 2'000,
            .expires = std::chrono::sys_days(std::chrono::year(2027) / 1 / 31),
            .titre = titre};
}

class BagCellsTest : public testing::Test {
protected:
    explicit BagCellsTest(const char* patch = kOn) : shift(cardWith(patch)) { shift.open(); }

    /// 2,000 doses of each component in 400 mL, which is 2,000 doses of the default card.
    void makeUp(std::optional<std::int64_t> first = 4'000,
                std::optional<std::int64_t> second = 3'000)
    {
        shift.say(Receive{{lot("serotype 3", "K1", first), lot("serotype 1", "R1", second)}});
        shift.madeUp("B1", kStart);
    }
    [[nodiscard]] Result<BagCells, CellsGap> cells() const
    {
        return cellsOf(shift.bench(), *shift.bench().bag({"B1"}), shift.clock.now());
    }
    [[nodiscard]] CellsGap gap() const
    {
        const auto found = cells();
        EXPECT_FALSE(found);
        return found ? CellsGap{} : found.error();
    }
    BenchShift shift;
};

TEST_F(BagCellsTest, tellsTheComponentThatHasLeastNowAndAtTheBagsLimit)
{
    makeUp();
    shift.at(kDiluent + 1'800);
    const auto found = cells();
    ASSERT_TRUE(found);
    EXPECT_EQ(found->component.text, "serotype 1");
    EXPECT_NEAR(found->now.low, kNow.low, 0.01);
    EXPECT_NEAR(found->now.high, kNow.high, 0.01);
    EXPECT_NEAR(found->atLimit.low, kAtLimit.low, 0.01);
    EXPECT_NEAR(found->atLimit.high, kAtLimit.high, 0.01);
    EXPECT_EQ(found->minimum, 2'000);
    EXPECT_EQ(judged(found->atLimit, found->minimum), CellsVerdict::Undecided);
}

TEST_F(BagCellsTest, goesOnFallingOnceTheLimitIsPast)
{
    makeUp();
    shift.at(kDiluent + 3'700);
    ASSERT_TRUE(cells());
    EXPECT_LT(cells()->now.low, kAtLimit.low);
    EXPECT_EQ(cells()->atLimit.low, cells()->now.low);
}

TEST_F(BagCellsTest, lotsOfMoreDosesMakeTheDoseStronger)
{
    auto strong = lot("serotype 1", "R1", 3'000);
    strong.doses = 4'000;
    shift.say(Receive{{lot("serotype 3", "K1", 9'000), strong}});
    shift.madeUp("B1", kStart);
    shift.at(kDiluent + 1'800);
    ASSERT_TRUE(cells());
    EXPECT_NEAR(cells()->now.low, 2 * kNow.low, 0.02);
}

TEST_F(BagCellsTest, aBathThatNobodyTappedCountsFromOutOfTheCryogen)
{
    makeUp();
    shift.at(kDiluent + 1'800);
    Bench bench = shift.bench();
    for (Ampoule& ampoule : bench.pulls.front().ampoules)
        ampoule.steps[static_cast<std::size_t>(Step::Bath)]->timed = false;
    const auto found = cellsOf(bench, *bench.bag({"B1"}), shift.clock.now());
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->now.low, 2'232.71, 0.01);
}

TEST_F(BagCellsTest, theCourseRunsFromMixedToTheLimit)
{
    makeUp();
    shift.at(kDiluent + 1'800);
    const auto course = cellsCourse(shift.bench(), *shift.bench().bag({"B1"}), shift.clock.now());
    ASSERT_GT(course.size(), 2U);
    EXPECT_NEAR(course.front().minutes, 28.0 / 60, 1e-6);
    EXPECT_NEAR(course.back().minutes, 60, 1e-6);
    EXPECT_NEAR(course.back().perDose.low, kAtLimit.low, 0.01);
    for (std::size_t i = 1; i < course.size(); ++i)
        EXPECT_LT(course[i].perDose.high, course[i - 1].perDose.high);
}

TEST_F(BagCellsTest, withoutATitreThereIsNoBand)
{
    makeUp(4'000, {});
    EXPECT_EQ(gap(), CellsGap::NoTitre);
    EXPECT_TRUE(cellsCourse(shift.bench(), *shift.bench().bag({"B1"}), shift.clock.now()).empty());
}

TEST_F(BagCellsTest, aLotThatTheStoresDoNotHaveHasNoTitre)
{
    shift.madeUp("B1", kStart);
    EXPECT_EQ(gap(), CellsGap::NoTitre);
}

TEST_F(BagCellsTest, beforeItIsMixedThereIsNoBand)
{
    shift.readyBag("B1");
    EXPECT_EQ(gap(), CellsGap::NotMixed);
}

TEST_F(BagCellsTest, timesAcrossARestartAreNoTimes)
{
    makeUp();
    shift.clock.restart(shift.clock.now().wall + std::chrono::minutes(5));
    EXPECT_EQ(gap(), CellsGap::NoTimes);
}

TEST(BagCellsGapTest, namesWhatTheCardLacks)
{
    const CellLoss loss{Millis(60'000), Millis(60'000), "a paper"};
    LiveCellRules rules;
    EXPECT_EQ(gapOn(rules), CellsGap::Off);
    rules.isShown = true;
    EXPECT_EQ(gapOn(rules), CellsGap::NoMinimum);
    rules.minimum = 2'000;
    EXPECT_EQ(gapOn(rules), CellsGap::NoBathLoss);
    rules.inBath = loss;
    EXPECT_EQ(gapOn(rules), CellsGap::NoBagLoss);
    rules.inBag = loss;
    EXPECT_EQ(gapOn(rules), std::nullopt);
}

TEST(BagCellsGapTest, isOffByDefault)
{
    BenchShift shift;
    shift.open();
    shift.say(Receive{{lot("serotype 3", "K1", 4'000), lot("serotype 1", "R1", 3'000)}});
    shift.madeUp("B1", kStart);
    const auto found = cellsOf(shift.bench(), *shift.bench().bag({"B1"}), shift.clock.now());
    ASSERT_FALSE(found);
    EXPECT_EQ(found.error(), CellsGap::Off);
}

}  // namespace
}  // namespace bathside::test
