// A vessel by its description and its dips. Rates by hand, from straight lines.

#include "core/checks/vessel_log.h"

#include <gtest/gtest.h>

#include "core/checks/vessel_described.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;

constexpr WallTime kMonday{
    std::chrono::sys_days{std::chrono::year(2026) / 3 / 2}.time_since_epoch()};

// 10 mm are a litre.
VesselDescription described()
{
    return {.name = "A",
            .dipstick = {{0, 0}, {500, 500}},
            .minimumDecilitres = 80,
            .usualPerDay = MicroLitres{300'000},
            .room = VesselDescription::Room{60, 20}};
}

Vessel vessel(const VesselDescription& of = described())
{
    return vesselFrom(documentOf(of)).value();
}

/// A reading a day.
VesselLog dipped(std::initializer_list<std::int64_t> millimetres)
{
    VesselLog log{.vessel = vessel(), .dips = {}};
    Seq day = 0;
    for (const std::int64_t level : millimetres) {
        log.dips.push_back({kMonday + day * 24h, level, false, day + 1});
        ++day;
    }
    return log;
}

TEST(VesselFromTest, readsWhatItIsHeldTo)
{
    const Vessel found = vessel();
    EXPECT_EQ(found.name, "A");
    EXPECT_DOUBLE_EQ(found.dipstick.litresAt(250).value(), 25);
    EXPECT_DOUBLE_EQ(found.minimum, 8);
    EXPECT_DOUBLE_EQ(found.usual, 0.3);
    EXPECT_DOUBLE_EQ(found.alarm, 0.45);  // one and a half times the usual
    EXPECT_DOUBLE_EQ(found.room->cubicMetres, 60);
    EXPECT_DOUBLE_EQ(found.room->airChanges, 2);
}

struct Broken {
    std::string name, document, key;
};
class VesselRefuses : public testing::TestWithParam<Broken> {};

TEST_P(VesselRefuses, aDescriptionThatIsNone)
{
    const auto found = vesselFrom(GetParam().document);
    ASSERT_FALSE(found);
    EXPECT_EQ(found.error().key, GetParam().key);
    EXPECT_FALSE(found.error().expected.empty());
}

const std::string kTable = R"("name":"A","dipstick":[{"mm":0,"litres":0},{"mm":500,"litres":30}])";

INSTANTIATE_TEST_SUITE_P(
    Vessel, VesselRefuses,
    testing::Values(
        Broken{"NotJson", "vessel", ""},
        Broken{"NoTable", R"({"name":"A","minimum_litres":8,"usual_litres_per_day":0.3})",
               "dipstick"},
        Broken{
            "FallingTable",
            R"({"name":"A","dipstick":[{"mm":0,"litres":9},{"mm":5,"litres":3}],"minimum_litres":1,"usual_litres_per_day":0.3})",
            "dipstick"},
        Broken{"MinimumItCannotHold",
               "{" + kTable + R"(,"minimum_litres":30,"usual_litres_per_day":0.3})",
               "minimum_litres"},
        Broken{"LosesNothing", "{" + kTable + R"(,"minimum_litres":8,"usual_litres_per_day":0})",
               "usual_litres_per_day"},
        Broken{"RoomWithoutAir",
               "{" + kTable + R"(,"minimum_litres":8,"usual_litres_per_day":0.3,"room":{"m3":60}})",
               "room.air_changes_per_hour"}),
    [](const auto& test) { return test.param.name; });

TEST(VesselLogTest, saysNothingWithoutAReadingOrADescription)
{
    EXPECT_FALSE(dipped({}).answer());
    VesselLog unknown = dipped({300, 297});
    unknown.vessel.reset();
    EXPECT_FALSE(unknown.answer());
}

// By hand: 3 mm a day are 0.3 L; 28.8 L are 20.8 L above the minimum, 69⅓ days.
TEST(VesselLogTest, takesTheLossFromItsReadings)
{
    const auto answer = dipped({300, 297, 294, 291, 288}).answer().value();
    EXPECT_DOUBLE_EQ(answer.litres, 28.8);
    EXPECT_NEAR(answer.evaporation->rate, 0.3, 1e-9);
    EXPECT_EQ(answer.vacuum, Vacuum::Sound);
    EXPECT_NEAR(answer.refill->days, 20.8 / 0.3, 1e-6);
    EXPECT_EQ(answer.last, kMonday + 4 * 24h);
    EXPECT_FALSE(answer.isBelowMinimum);
    EXPECT_TRUE(dipped({82, 79}).answer()->isBelowMinimum);
}

// By hand: 6 mm a day are 0.6 L, more than 0.45; all readings agree, so the interval does.
TEST(VesselLogTest, aRateThatHasRisenIsAFailingVacuum)
{
    EXPECT_EQ(dipped({300, 294, 288, 282, 276, 270}).answer()->vacuum, Vacuum::Failing);
    EXPECT_EQ(dipped({300, 294}).answer()->vacuum, Vacuum::Suspect);  // two readings: no interval
}

TEST(VesselLogTest, aFillIsNoGainEvenWhereTheTableDoesNotReachIt)
{
    VesselLog log = dipped({200, 197, 510, 480, 477});
    log.dips[2].filled = true;  // overfull: beyond the table
    const auto answer = log.answer().value();
    EXPECT_NEAR(answer.evaporation->rate, 0.3, 1e-9);
    EXPECT_EQ(answer.evaporation->pairs, 2U);  // one before the fill, one after it
}

TEST(VesselLogTest, aBetterTableReadsTheOldDipsAnew)
{
    VesselLog log = dipped({300, 297, 294, 291, 288});
    VesselDescription half = described();
    half.dipstick = {{0, 0}, {500, 250}};
    log.vessel = vessel(half);
    EXPECT_NEAR(log.answer()->evaporation->rate, 0.15, 1e-9);
    half.dipstick = {{0, 0}, {200, 100}};  // no dip is within it
    log.vessel = vessel(half);
    EXPECT_FALSE(log.answer());
}

TEST(VesselLogTest, whatIsLongAgoSaysNothingAboutTheVacuumNow)
{
    VesselLog log = dipped({});
    for (int day = 0; day < 400; ++day) {
        const bool filled = day % 40 == 0;
        const int lossPerDay = day < 360 ? 3 : 7;
        log.dips.push_back({kMonday + day * 24h, 480 - lossPerDay * (day % 40), filled, day + 1});
    }
    const auto answer = log.answer().value();
    EXPECT_NEAR(answer.evaporation->rate, 0.7, 1e-9);
    EXPECT_EQ(answer.vacuum, Vacuum::Failing);
    EXPECT_LE(answer.evaporation->pairs, 29U * 28 / 2);  // four weeks of days
}

TEST(VesselLogTest, twoReadingsOfOneInstantCountOnce)
{
    VesselLog log = dipped({300, 297});
    log.dips.push_back(log.dips.back());
    EXPECT_EQ(log.answer()->evaporation->pairs, 1U);
}

}  // namespace
}  // namespace bathside
