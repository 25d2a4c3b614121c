// A vessel by its description and its dips. Rates by hand, from straight lines.

#include "core/checks/vessel_log.h"

#include <random>

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

// --- of late -------------------------------------------------------------------------------------

/// 0.06 L a mm, so that 5 mm, the dipstick's error, are 0.3 L.
VesselLog filledWeekly(std::initializer_list<std::int64_t> afterDay24)
{
    VesselDescription narrow = described();
    narrow.dipstick = {{0, 0}, {500, 300}};
    VesselLog log{.vessel = vessel(narrow), .dips = {}};
    const auto dip = [&](std::int64_t day, std::int64_t level) {
        log.dips.push_back(
            {kMonday + day * 24h, level, day % 7 == 0 && day > 0, static_cast<Seq>(day) + 1});
    };
    for (std::int64_t day = 0; day <= 24; ++day)
        dip(day, 483 - 5 * (day % 7));  // 28.98 L, 0.3 L a day
    for (std::int64_t day = 25; const std::int64_t level : afterDay24)
        dip(day++, level);
    return log;
}

// By hand, from day 24 on, 468 mm: 66 mm are 3.96 L, 67 mm are 4.02 L.
TEST(VesselLogTest, threeGoodWeeksDoNotOutvoteAVacuumThatFailsNow)
{
    EXPECT_EQ(filledWeekly({}).answer()->vacuum, Vacuum::Sound);

    const auto once = filledWeekly({402}).answer().value();  // 24.12 L
    EXPECT_EQ(once.vacuum, Vacuum::Suspect);
    EXPECT_NEAR(once.evaporation->rate, 0.3, 1e-9);
    EXPECT_NEAR(once.ofLate->rate, 3.96, 1e-9);
    EXPECT_NEAR(once.refill->days, 16.12 / 0.3, 1e-6);  // until it is confirmed
    EXPECT_NEAR(once.refill->earliest, 16.12 / 3.96, 1e-6);

    const auto twice = filledWeekly({402, 335}).answer().value();  // 20.1 L
    EXPECT_EQ(twice.vacuum, Vacuum::Failing);
    EXPECT_NEAR(twice.evaporation->rate, 0.3, 1e-9);
    EXPECT_NEAR(twice.ofLate->rate, 3.99, 1e-9);
    EXPECT_NEAR(twice.refill->days, 12.1 / 3.99, 1e-6);
    EXPECT_NEAR(twice.refill->earliest, 12.1 / 4.02, 1e-6);
    EXPECT_NEAR(twice.refill->latest.value(), 12.1 / 3.96, 1e-6);
    // a fill on day 28 mends no vacuum
    EXPECT_EQ(filledWeekly({402, 335, 268, 483}).answer()->vacuum, Vacuum::Failing);
}

// Too high from 0.45 L a day: 12.5 mm of a day are 7.5 mm and the error, which is 5.
TEST(VesselLogTest, aLossWithinTheDipsticksErrorIsLeftToTheWeeks)
{
    EXPECT_FALSE(filledWeekly({456, 444}).answer()->ofLate);  // 12 mm a day
    EXPECT_EQ(filledWeekly({455, 442}).answer()->vacuum, Vacuum::Failing);
    EXPECT_FALSE(filledWeekly({455, 450}).answer()->ofLate);  // it was one reading
}

// Whoever reads more often than daily, as asked, is told no later for it.
TEST(VesselLogTest, readingsOfOneDayAddUpUntilTheyTell)
{
    VesselLog log = filledWeekly({});
    for (int hour = 4; hour <= 24; hour += 4)
        log.dips.push_back({kMonday + 24 * 24h + hour * 1h, 468 - hour, false, 100 + hour});
    EXPECT_EQ(log.answer()->vacuum, Vacuum::Failing);  // 24 mm of a day, in steps of 4 mm
}

TEST(VesselLogTest, oneReadingThatIsMistakenFailsNoVacuumAndMovesNoFill)
{
    for (const std::int64_t off : {-300, -60, -12, -7, 7, 12})
        for (std::size_t which = 1; which <= 24; ++which) {
            VesselLog log = filledWeekly({463, 458, 453});
            log.dips[which].millimetres += off;
            const auto answer = log.answer().value();
            EXPECT_EQ(answer.vacuum, Vacuum::Sound) << which << ": " << off;
            EXPECT_NEAR(answer.refill->days, (453 * 0.06 - 8) / 0.3, 1) << which << ": " << off;
            log.dips.resize(which + 1);  // as it stood when it was read
            EXPECT_NE(log.answer()->vacuum, Vacuum::Failing) << which << ": " << off;
        }
}

// --- the last days -------------------------------------------------------------------------------

/// Dips of a year, one a day, by a hand that scatters by `spread` mm about the true level: 10 mm
/// are a litre, 3 mm a day are usual, too high from 4.5 on. From day `from` it loses `then` times
/// that. Filled at 100 mm.
class DippedYear {
public:
    DippedYear(std::uint32_t seed, double spread, int from, double then)
        : m_random(seed), m_scatter(0, spread), m_from(from), m_then(then)
    {
    }
    void dip()
    {
        const bool filled = m_level < 100;
        m_level = filled ? 480 : m_level - 3 * (m_day >= m_from ? m_then : 1);
        log.dips.push_back({kMonday + m_day * 24h, std::llround(m_level + m_scatter(m_random)),
                            filled, m_day + 1});
        ++m_day;
    }
    VesselLog log{.vessel = vessel(), .dips = {}};

private:
    std::mt19937 m_random;
    std::normal_distribution<double> m_scatter;
    double m_level = 480;
    int m_day = 0, m_from;
    double m_then;
};

// Up to 2 mm: two readings then differ by 5 mm at 1.8 times their spread.
TEST(VesselLogTest, aYearOfDipsByAHandThatScattersFailsNoVacuum)
{
    int years = 0, failing = 0;
    for (const double spread : {0.5, 1.0, 1.5, 2.0})
        for (std::uint32_t seed = 1; seed <= 8; ++seed, ++years) {
            DippedYear year(seed, spread, 1'000, 1);
            for (int day = 0; day < 365; ++day) {
                year.dip();
                failing += year.log.answer()->vacuum == Vacuum::Failing ? 1 : 0;
            }
        }
    EXPECT_EQ(failing, 0) << "days, of " << years << " years";
}

TEST(VesselLogTest, aLossThatHasDoubledIsToldWithinNineDays)
{
    for (std::uint32_t seed = 1; seed <= 40; ++seed) {
        DippedYear year(seed, 0.5, 40, 2);
        while (year.log.dips.size() < 40 || year.log.answer()->vacuum != Vacuum::Failing) {
            ASSERT_LT(year.log.dips.size(), 60U) << seed;
            year.dip();
        }
        EXPECT_LE(year.log.dips.size(), 40U + 9U) << seed;
    }
}

// Against a count of its own: in whole mm, backwards, an interval a day. 10 mm are a litre; 4.5 mm
// a day are too high, with the error from 9.5 mm on.
TEST(VesselLogTest, looksAtTheLastTwoIntervalsThatNoFillIsIn)
{
    std::mt19937 random(7);
    const auto below = [&](std::uint32_t end) { return static_cast<std::int64_t>(random() % end); };
    int confirmed = 0;
    for (int round = 0; round < 2'000; ++round) {
        std::vector<LevelReading> log{{0, 45, false}};
        std::vector<std::int64_t> drops;
        for (Seq day = 1; day < 12; ++day) {
            const bool filled = below(5) == 0;
            const std::int64_t drop = 7 + below(6);
            const double litres = log.back().litres - static_cast<double>(drop) / 10;
            log.push_back({static_cast<double>(day), filled ? 45 : litres, filled});
            if (!filled)
                drops.push_back(drop);
        }
        const auto isHigh = [&](std::size_t back) {
            return drops.size() > back && drops[drops.size() - 1 - back] >= 10;
        };
        const auto late = lossOfLate(log, vessel().alarm, vessel().dipstick.error());
        ASSERT_EQ(late.has_value(), isHigh(0)) << round;
        if (!late)
            continue;
        ASSERT_EQ(late->interval.has_value(), isHigh(1)) << round;
        const auto last = static_cast<double>(drops.back());
        const double rate =
            isHigh(1) ? (last + static_cast<double>(drops[drops.size() - 2])) / 2 : last;
        ASSERT_NEAR(late->rate, rate / 10, 1e-9) << round;
        confirmed += isHigh(1) ? 1 : 0;
    }
    EXPECT_GT(confirmed, 100);
}

// --- fills ---------------------------------------------------------------------------------------

TEST(VesselLogTest, aFillIsNoGainEvenWhereTheTableDoesNotReachIt)
{
    VesselLog log = dipped({200, 197, 510, 480, 477});
    log.dips[2].filled = true;  // overfull: beyond the table
    const auto answer = log.answer().value();
    EXPECT_NEAR(answer.evaporation->rate, 0.3, 1e-9);
    EXPECT_EQ(answer.evaporation->pairs, 2U);  // one before the fill, one after it
}

// By hand: 6 mm a day are 0.6 L, before and after a fill that nobody told of.
TEST(VesselLogTest, aRiseIsAFillWhetherItWasSaidOrNot)
{
    const auto answer = dipped({200, 194, 188, 290, 284, 278, 272}).answer().value();
    EXPECT_NEAR(answer.evaporation->rate, 0.6, 1e-9);
    EXPECT_EQ(answer.evaporation->pairs, 9U);  // three before it, six after it
    EXPECT_EQ(answer.vacuum, Vacuum::Failing);
    EXPECT_FALSE(dipped({200, 290}).answer()->evaporation);  // no two readings between two fills
}

// 5 mm are the dipstick's error.
TEST(VesselLogTest, aGainIsNoSoundVacuum)
{
    const auto answer = dipped({300, 305}).answer().value();
    EXPECT_NEAR(answer.evaporation->rate, -0.5, 1e-9);
    EXPECT_FALSE(answer.vacuum);
    EXPECT_FALSE(answer.refill);
    EXPECT_FALSE(dipped({300, 300}).answer()->vacuum);
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
