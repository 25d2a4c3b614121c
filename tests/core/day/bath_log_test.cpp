// What a shift's pulls say of its bath: made with a bath and a film coefficient that are known, and
// found again from what was tapped and read.

#include "core/day/bath_log.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "core/bath/card_heat.h"
#include "core/bench/next.h"
#include "tests/support/shift.h"

namespace bathside::test {
namespace {

constexpr double kMass = 6;  // kg, where the card says 10

HeatRules cardsHeat() { return defaultCard()->content().heat; }

MilliCelsius milli(double celsius) { return {std::llround(celsius * 1000)}; }

void calibrate(BenchShift& shift)
{
    shift.say(DescribeProbe{{"bath"}, R"({"drift_uc": 0, "resolution_uc": 1000, "due": "2027-01-01",
        "points": [{"indicated_uc": 28000000, "reference_uc": 28000000, "expanded_uc": 50000}]})"});
}

/// Two ampoules go in at `start` + 5, the bath is at its lowest after 40 s, and they are opened
/// after `opened` s in it.
void pull(BenchShift& shift, const std::string& bag, double start, double opened)
{
    HeatBudget budget = budgetOf(cardsHeat(), 28);
    budget.bath.water = kMass;
    shift.at(start);
    shift.say(TakeReading{{"bath"}, MilliCelsius{28'000}});
    shift.readyBag(bag);
    shift.say(TakeOut{{{0, {"serotype 3"}, {"K1"}}, {0, {"serotype 1"}, {"R1"}}}});
    shift.at(start + 5);
    shift.say(moved(Step::Bath));
    shift.at(start + 45);
    shift.say(TakeReading{{"bath"}, milli(dipOf(budget, 2)->end)});
    shift.at(start + 5 + opened);
    shift.say(moved(Step::Opened));
    shift.say(moved(Step::Diluent));
    shift.say(moved(Step::Rinsed));
    shift.say(moved(Step::Bagged));
    shift.at(start + 115);
    shift.say(MixBag{BagId{bag}});
    shift.say(TakeReading{{"bath"}, MilliCelsius{28'000}});
}

class BathLogTest : public testing::Test {
protected:
    BathLogTest()
    {
        shift.open();
        calibrate(shift);
    }
    BenchShift shift;
};

TEST_F(BathLogTest, aShiftWithoutPullsSaysNothing)
{
    EXPECT_TRUE(dipsOf(shift.station.state()).empty());
    EXPECT_FALSE(massOf(shift.station.state(), cardsHeat()));
    EXPECT_FALSE(filmOf(shift.station.state(), cardsHeat()));
}

TEST_F(BathLogTest, findsTheMassThatMadeItsDipsAndHowFarTheCardWasOff)
{
    pull(shift, "B1", 10, 78);
    pull(shift, "B2", 400, 78);
    const auto mass = massOf(shift.station.state(), cardsHeat());
    ASSERT_TRUE(mass);
    EXPECT_EQ(mass->figure.pulls, 2);
    EXPECT_NEAR(mass->figure.value, kMass, 0.05);
    HeatBudget real = budgetOf(cardsHeat(), 28);
    real.bath.water = kMass;
    const double off = dipOf(budgetOf(cardsHeat(), 28), 2)->end - dipOf(real, 2)->end;
    EXPECT_NEAR(mass->foreseen, off, 0.001);
}

// The time that the model gives with another film coefficient than the card's: found again to 2 %.
TEST_F(BathLogTest, findsTheFilmCoefficientThatMadeItsTimes)
{
    HeatRules heat = cardsHeat();
    heat.film = 2'400;
    const auto seconds = thawed(thawSettingOf(heat, 28)).slush;
    ASSERT_TRUE(seconds);
    pull(shift, "B1", 10, *seconds);
    const auto film = filmOf(shift.station.state(), cardsHeat());
    ASSERT_TRUE(film);
    EXPECT_EQ(film->figure.pulls, 1);
    EXPECT_NEAR(film->figure.value, 2'400, 0.02 * 2'400);
    EXPECT_NEAR(film->foreseen, *thawed(thawSettingOf(cardsHeat(), 28)).slush - *seconds, 0.1);
}

TEST_F(BathLogTest, aDipWithoutAReadingBeforeOrAfterItIsNone)
{
    shift.at(10);
    shift.readyBag("B1");
    shift.say(TakeOut{{{0, {"serotype 3"}, {"K1"}}}});
    shift.at(15);
    shift.say(moved(Step::Bath));
    shift.at(40);
    shift.say(TakeReading{{"bath"}, MilliCelsius{27'800}});
    EXPECT_TRUE(dipsOf(shift.station.state()).empty());
}

TEST_F(BathLogTest, anotherThermometersReadingIsNoDip)
{
    shift.at(10);
    shift.say(TakeReading{{"bath"}, MilliCelsius{28'000}});
    shift.readyBag("B1");
    shift.say(TakeOut{{{0, {"serotype 3"}, {"K1"}}}});
    shift.at(15);
    shift.say(moved(Step::Bath));
    shift.at(40);
    shift.say(TakeReading{{"hand"}, MilliCelsius{27'500}});
    EXPECT_TRUE(dipsOf(shift.station.state()).empty());
    shift.at(60);
    shift.say(TakeReading{{"bath"}, MilliCelsius{27'900}});
    const auto dips = dipsOf(shift.station.state());
    ASSERT_EQ(dips.size(), 1U);
    EXPECT_EQ(dips[0].ampoules, 1);
    EXPECT_DOUBLE_EQ(dips[0].end, 27.9);
}

TEST_F(BathLogTest, aDipIsOfTheThermometerInTheBathWhateverAnotherSays)
{
    const std::string plain = R"({"resolution_uc": 1000, "drift_uc": 0, "points": [], )";
    shift.say(DescribeProbe{
        {"bath"}, plain + R"("in_bath": true, "source": {"kind": "one-wire", "device": "28-1"}})"});
    shift.say(
        DescribeProbe{{"room"}, plain + R"("source": {"kind": "one-wire", "device": "28-2"}})"});
    shift.at(10);
    shift.say(TakeReading{{"bath"}, MilliCelsius{28'000}});
    shift.readyBag("B1");
    shift.say(TakeOut{{{0, {"serotype 3"}, {"K1"}}}});
    shift.at(14).say(TakeReading{{"room"}, MilliCelsius{20'000}});
    shift.at(15).say(moved(Step::Bath));
    shift.at(60).say(TakeReading{{"bath"}, MilliCelsius{27'900}});
    const auto dips = dipsOf(shift.station.state());
    ASSERT_EQ(dips.size(), 1U);
    EXPECT_DOUBLE_EQ(dips[0].start, 28);
}

TEST_F(BathLogTest, timesInWaterOfAnUncalibratedThermometerAreLeftOut)
{
    shift.at(10);
    shift.madeUp("B1", 20);  // read by hand, not described
    EXPECT_TRUE(opensOf(shift.station.state(), cardsHeat(), 6).empty());
}

TEST_F(BathLogTest, theLastPullsCount)
{
    pull(shift, "B1", 10, 76);
    pull(shift, "B2", 400, 80);
    const auto last = opensOf(shift.station.state(), cardsHeat(), 1);
    ASSERT_EQ(last.size(), 1U);
    EXPECT_NEAR(last[0].slush, 80, 0.01);
}

// --- from one shift to the next ------------------------------------------------------------------

class LearnedBathTest : public BathLogTest {
protected:
    /// The time in water of 28 °C that the model gives with that film coefficient.
    static double secondsWith(std::int64_t film)
    {
        HeatRules heat = cardsHeat();
        heat.film = film;
        return thawed(thawSettingOf(heat, 28)).slush.value_or(0);
    }
    /// A shift of pulls that were opened after these times, closed, and the next one opened.
    void shiftOf(const std::vector<double>& opened)
    {
        for (std::size_t i = 0; i < opened.size(); ++i) {
            const std::string bag = "B" + std::to_string(i + 1);
            pull(shift, bag, m_at += 400, opened[i]);
            shift.say(TakeBagDown{BagId{bag}, DownReason::Empty, {}});
        }
        shift.at(m_at += 200).say(CloseShift{});
        shift.at(m_at += 3'600).open();
    }
    /// Of one ampoule, put into water of 28 °C now.
    [[nodiscard]] double cueNow()
    {
        shift.at(m_at += 400).say(TakeReading{{"bath"}, MilliCelsius{28'000}});
        shift.readyBag("C1").say(out({1}));
        shift.say(moved(Step::Bath));
        return cueIn(shift.bench());
    }
    static double cueIn(const Bench& bench)
    {
        return std::chrono::duration<double>(thawCue(bench, *bench.ampoule({1, 1}))).count();
    }
    [[nodiscard]] const BathLearned& learned() const { return *shift.bench().learned; }

private:
    double m_at = 0;
};

// The card calls at 80 s, which is what its film coefficient gives at 28 °C.
TEST_F(LearnedBathTest, theSecondDaysCueComesFromTheFirstDaysSlushTimes)
{
    const double first = secondsWith(2'600);
    ASSERT_LT(first, 78);
    shiftOf({first, first - 0.5, first + 0.5, first});
    ASSERT_TRUE(learned().film);
    EXPECT_EQ(learned().film->stand, FitStand::Used);
    EXPECT_EQ(learned().film->pulls, 4);
    ASSERT_TRUE(learned().film->interval);
    EXPECT_LT(learned().film->interval->low, 2'600);
    EXPECT_GT(learned().film->interval->high, 2'600);
    EXPECT_NEAR(cueNow(), 80 * first / secondsWith(cardsHeat().film), 0.2);
}

TEST_F(LearnedBathTest, aStartReadsItFromTheLastShiftAlone)
{
    shiftOf({74, 74.5, 73.5});
    shiftOf({});
    const double cue = cueNow();
    ASSERT_LT(cue, 76);
    const auto& all = shift.recorder.events;
    const auto last = std::ranges::find_if(all.rbegin(), all.rend(), [](const Event& event) {
        return std::holds_alternative<ShiftOpened>(event.fact);
    });
    const auto opening = last.base() - 1;
    std::vector<Event> carried;
    std::copy_if(all.begin(), opening, std::back_inserter(carried), [](const Event& event) {
        return std::ranges::count(carriedKinds(), std::string(kindOf(event.fact))) > 0;
    });
    const State state = restored(carried, {opening, all.end()});
    EXPECT_DOUBLE_EQ(cueIn(state.bench), cue);
}

TEST_F(LearnedBathTest, tooFewOrScatteredTimesAreNotUsedAndSaySo)
{
    shiftOf({70, 70});
    EXPECT_EQ(learned().film->stand, FitStand::TooFew);
    EXPECT_FALSE(learned().cue);
    shiftOf({40, 118, 41, 119});
    EXPECT_EQ(learned().film->stand, FitStand::Scattered);
    EXPECT_DOUBLE_EQ(cueNow(), 80);
}

// Ampoules are opened after the cue, by whatever the hand takes: a station that believed them whole
// would call later every day.
TEST_F(LearnedBathTest, theCueDoesNotCreepTowardsTheLimit)
{
    for (int day = 0; day < 3; ++day)
        shiftOf({84, 85, 86});
    EXPECT_DOUBLE_EQ(cueNow(), 80);
}

TEST_F(LearnedBathTest, neverLaterThanTheLimitLessTheHandling)
{
    shiftOf({93, 94, 95});
    EXPECT_EQ(learned().film->stand, FitStand::Used);
    EXPECT_DOUBLE_EQ(cueNow(), 90 - 8);
}

TEST_F(LearnedBathTest, theBathsMassIsCarriedTooAndUsedFromThreePullsOn)
{
    shiftOf({78, 78});
    EXPECT_EQ(learned().mass->stand, FitStand::TooFew);
    shiftOf({78, 78});
    EXPECT_EQ(learned().mass->stand, FitStand::Used);
    EXPECT_EQ(learned().mass->pulls, 4);
    EXPECT_NEAR(learned().mass->value, kMass, 0.05);
    const HeatRules used = heatWith(cardsHeat(), learned().mass, {});
    EXPECT_NEAR(static_cast<double>(used.waterGrams), 1'000 * kMass, 50);
    pull(shift, "B9", 100'000, 78);
    EXPECT_EQ(massOf(shift.station.state(), cardsHeat())->figure.pulls, 5);  // and of this shift
}

TEST_F(LearnedBathTest, anotherCardsAmpoulesAreNotJudgedByIt)
{
    const double first = secondsWith(2'600);
    shiftOf({first, first, first});
    const auto thin = cardWith(R"({"version": 2, "heat": {"diameter_um": 10000, "source": "a"}})");
    EXPECT_TRUE(learnedScale(shift.bench(), *shift.bench().card));
    EXPECT_FALSE(learnedScale(shift.bench(), *thin));
    shift.say(AdoptCard{thin->document()});
    EXPECT_DOUBLE_EQ(cueNow(), 80);
}

}  // namespace
}  // namespace bathside::test
