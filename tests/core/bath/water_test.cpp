#include "core/bath/water.h"

#include <cmath>
#include <vector>

#include <gtest/gtest.h>

#include "tests/support/cards.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;

const BathRules& rules() { return test::defaultCard()->content().bath; }

Stamp at(Micros since)
{
    return shifted(Stamp{.wall = WallTime(1'772'000'000s), .boot = 5'000s, .bootId = {1}}, since);
}

const ProbeId kProbe{"P1"};

TakenReading taken(Micros since, std::int64_t milli, Verdict verdict = Verdict::Inside,
                   const ProbeId& probe = kProbe)
{
    TakenReading reading;
    reading.at = at(since);
    reading.fact.probe = probe;
    reading.fact.raw = MilliCelsius{milli};
    reading.fact.corrected = MilliCelsius{milli};
    reading.fact.verdict = verdict;
    return reading;
}

TakenReading faulty(Micros since)
{
    TakenReading reading = taken(since, 28'000, Verdict::Outside);
    reading.fact.fault = ReadingFault::CheckFailed;
    return reading;
}

/// Every `step` from `from` to `to`, starting at `milli` and moving by `perMinute`.
std::vector<TakenReading> stream(Micros from, Micros to, Micros step, std::int64_t milli = 28'000,
                                 double perMinute = 0)
{
    std::vector<TakenReading> all;
    for (Micros time = from; time <= to; time += step) {
        const double minutes = std::chrono::duration<double>(time - from).count() / 60;
        all.push_back(taken(time, milli + std::llround(minutes * perMinute)));
    }
    return all;
}

std::vector<TakenReading> operator+(std::vector<TakenReading> all,
                                    const std::vector<TakenReading>& more)
{
    all.insert(all.end(), more.begin(), more.end());
    return all;
}

// --- implausible ---

TEST(ImplausibleTest, staysWithinTheCardsBounds)
{
    EXPECT_FALSE(implausible(rules(), {1'000}, {}, at(0s)));
    EXPECT_FALSE(implausible(rules(), {60'000}, {}, at(0s)));
    EXPECT_EQ(implausible(rules(), {999}, {}, at(0s)), ReadingFault::Implausible);
    EXPECT_EQ(implausible(rules(), {60'001}, {}, at(0s)), ReadingFault::Implausible);
}

TEST(ImplausibleTest, knowsHowFastWaterMoves)
{
    const auto last = taken(0s, 28'000);
    EXPECT_FALSE(implausible(rules(), {30'000}, last, at(2s)));
    EXPECT_EQ(implausible(rules(), {30'001}, last, at(2s)), ReadingFault::Jump);
    EXPECT_EQ(implausible(rules(), {25'999}, last, at(2s)), ReadingFault::Jump);
    EXPECT_FALSE(implausible(rules(), {27'000}, last, at(10ms)));  // within a second: that second
    EXPECT_EQ(implausible(rules(), {26'999}, last, at(10ms)), ReadingFault::Jump);
    EXPECT_FALSE(implausible(rules(), {50'000}, last, at(1min)));
}

TEST(ImplausibleTest, jumpsFromNothingThatWasNoReading)
{
    EXPECT_FALSE(implausible(rules(), {40'000}, faulty(0s), at(1s)));
    EXPECT_FALSE(implausible(rules(), {40'000}, TakenReading{}, at(1s)));
}

// --- stability ---

TEST(StabilityTest, isTheStandardDeviationOfTheLastMinute)
{
    EXPECT_EQ(stability({}, kProbe, at(0s)), 0);
    const std::vector<TakenReading> one{taken(0s, 28'000)};
    EXPECT_EQ(stability(one, kProbe, at(1s)), 0);
    // By hand: 28.0, 28.1, 28.3 have the mean 28.1333 and s² = (0.01778 + 0.00111 + 0.02778) / 2 =
    // 0.023333.
    const std::vector<TakenReading> some{taken(0s, 20'000), taken(61s, 28'000), faulty(70s),
                                         taken(90s, 28'100), taken(100s, 28'300)};
    EXPECT_NEAR(stability(some, kProbe, at(121s)), std::sqrt(0.07 / 3), 1e-9);
}

TEST(StabilityTest, doesNotMixProbes)
{
    const std::vector<TakenReading> two{taken(0s, 20'000, Verdict::Outside, {"P2"}),
                                        taken(10s, 28'000), taken(20s, 28'000)};
    EXPECT_EQ(stability(two, kProbe, at(20s)), 0);
    // nor where the other one spoke last: the second of a pair that stands far apart
    const std::vector<TakenReading> other{taken(0s, 28'000), taken(10s, 28'000),
                                          taken(15s, 20'000, Verdict::Outside, {"P2"}),
                                          taken(20s, 24'000, Verdict::Outside, {"P2"})};
    EXPECT_EQ(stability(other, kProbe, at(20s)), 0);
    EXPECT_GT(stability(other, {"P2"}, at(20s)), 1);
}

TEST(StabilityTest, forgetsWhatIsOlderThanAMinute)
{
    const std::vector<TakenReading> old{taken(0s, 28'000), taken(10s, 28'500)};
    EXPECT_GT(stability(old, kProbe, at(60s)), 0);
    EXPECT_EQ(stability(old, kProbe, at(65s)), 0);
    EXPECT_EQ(stability(old, kProbe, at(10min)), 0);
}

// --- ready ---

TEST(ReadyTest, needsTheWholeSettlingTimeInside)
{
    EXPECT_FALSE(ready(rules(), {}, at(0s)));
    EXPECT_FALSE(ready(rules(), stream(0s, 4min + 50s, 10s), at(4min + 50s)));
    EXPECT_TRUE(ready(rules(), stream(0s, 5min, 10s), at(5min)));
}

TEST(ReadyTest, beginsAnewAfterEachReadingThatIsNotInside)
{
    for (const Verdict verdict : {Verdict::Undecided, Verdict::Outside}) {
        const auto before =
            stream(0s, 10min, 10s) + std::vector{taken(10min + 10s, 28'000, verdict)};
        EXPECT_FALSE(ready(rules(), before, at(10min + 10s)));
        EXPECT_FALSE(
            ready(rules(), before + stream(10min + 20s, 15min + 10s, 10s), at(15min + 10s)));
        EXPECT_TRUE(
            ready(rules(), before + stream(10min + 20s, 15min + 20s, 10s), at(15min + 20s)));
    }
}

TEST(ReadyTest, needsSteadyWater)
{
    EXPECT_TRUE(ready(rules(), stream(0s, 8min, 10s, 27'500, 100), at(8min)));
    EXPECT_FALSE(ready(rules(), stream(0s, 8min, 10s, 27'200, 210), at(8min)));
    EXPECT_FALSE(ready(rules(), stream(0s, 8min, 10s, 28'800, -210), at(8min)));
}

TEST(ReadyTest, needsItSteadyForTheSettlingTime)
{
    // It rises by 0.5 °C in a minute, then stands: the slope over 2 minutes is below 0.2 °C again
    // before 3:00.
    const auto rising = stream(0s, 1min, 10s, 27'500, 500);
    const auto all = rising + stream(1min + 10s, 20min, 10s, 28'000);
    const auto until = [&](Micros end) {
        return std::span(all).first(static_cast<std::size_t>(end / 10s) + 1);
    };
    EXPECT_FALSE(ready(rules(), until(6min), at(6min)));
    EXPECT_FALSE(ready(rules(), until(7min), at(7min)));
    EXPECT_TRUE(ready(rules(), until(8min), at(8min)));
}

TEST(ReadyTest, doesNotTakeTheLastDigitForMovement)
{
    std::vector<TakenReading> flicker;
    for (int i = 0; i <= 120; ++i)
        flicker.push_back(taken(i * 5s, i % 2 == 0 ? 28'000 : 28'062));
    EXPECT_TRUE(ready(rules(), flicker, at(10min)));
}

TEST(ReadyTest, skipsFaultyReadings)
{
    auto all =
        stream(0s, 3min, 10s) + std::vector{faulty(3min + 5s)} + stream(3min + 10s, 5min, 10s);
    EXPECT_TRUE(ready(rules(), all, at(5min)));
}

TEST(ReadyTest, byHandTakesTwoEntriesFarEnoughApart)
{
    EXPECT_FALSE(ready(rules(), std::vector{taken(0s, 28'000)}, at(6min)));
    EXPECT_FALSE(ready(rules(), std::vector{taken(0s, 28'000), taken(299s, 28'100)}, at(6min)));
    EXPECT_TRUE(ready(rules(), std::vector{taken(0s, 28'000), taken(300s, 28'400)}, at(6min)));
    const auto bad = taken(150s, 28'000, Verdict::Undecided);
    EXPECT_FALSE(
        ready(rules(), std::vector{taken(0s, 28'000), bad, taken(300s, 28'400)}, at(6min)));
    EXPECT_TRUE(ready(rules(), std::vector{taken(0s, 28'000), faulty(150s), taken(300s, 28'400)},
                      at(6min)));
}

TEST(ReadyTest, byHandLooksNotAtWhatCameLater)
{
    const std::vector later{taken(0s, 28'000), taken(300s, 28'000),
                            taken(400s, 30'000, Verdict::Outside)};
    EXPECT_TRUE(ready(rules(), later, at(350s)));
    EXPECT_FALSE(ready(rules(), later, at(400s)));
}

TEST(ReadyTest, hasNoSettlingWhereTheCardAsksForNone)
{
    BathRules quick = rules();
    quick.settling = Millis(0);
    EXPECT_TRUE(ready(quick, std::vector{taken(0s, 28'000)}, at(1s)));
    EXPECT_FALSE(ready(quick, std::vector{taken(0s, 28'000, Verdict::Outside)}, at(1s)));
}

// --- standing ---

TEST(StandingTest, isTheLastGoodReadingUntilItIsTooOld)
{
    const std::vector all{taken(0s, 28'000), taken(10s, 28'100), faulty(20s)};
    const auto found = standing(all, at(609'999ms), 10min);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->fact.raw, MilliCelsius{28'100});
    EXPECT_FALSE(standing(all, at(610s), 10min));
    EXPECT_FALSE(standing({}, at(0s), 10min));
}

}  // namespace
}  // namespace bathside
