// Noise is not news, and news is told in time. Readings come once a second unless said otherwise.

#include "core/station/reading_change.h"

#include <functional>
#include <random>

#include <gtest/gtest.h>

#include "tests/support/shift.h"

namespace bathside {
namespace {

using test::BenchShift;
using test::moved;
using test::out;
using Value = std::variant<MilliCelsius, ReadingFault>;

constexpr MilliCelsius kIn{28'000}, kOut{29'500};

class ReadingChangeTest : public testing::Test {
protected:
    ReadingChangeTest()
    {
        shift.open().say(DescribeProbe{
            {"p1"},
            R"({"resolution_uc": 10000, "drift_uc": 0, "due": "2027-01-01", "points": [
                {"indicated_uc": 28000000, "reference_uc": 28000000, "expanded_uc": 50000}]})"});
        shift.readyBag("B1");
    }

    void feed(double at, const Value& value)
    {
        shift.at(at).station.feed({{"p1"}, shift.clock.now(), value});
    }
    void every(int from, int to, const std::function<Value(int)>& value)
    {
        for (int second = from; second < to; ++second)
            feed(second, value(second));
    }
    /// How often one written reading has another verdict or fault than the one before.
    [[nodiscard]] int changes() const
    {
        const auto all = shift.all<ReadingTaken>();
        int changes = 0;
        for (std::size_t i = 1; i < all.size(); ++i) {
            if (all[i].verdict != all[i - 1].verdict || all[i].fault != all[i - 1].fault)
                ++changes;
        }
        return changes;
    }
    [[nodiscard]] std::size_t raised() const { return shift.all<AlarmRaised>().size(); }
    [[nodiscard]] ReadingTaken last() const { return shift.all<ReadingTaken>().back(); }

    BenchShift shift;
};

// At each distance from both limits of the verdict, where up to every second reading differs from
// the one before it.
TEST_F(ReadingChangeTest, tenMinutesOfNoiseAboutALimitAreAFewEvents)
{
    constexpr int kMostChanges = 6, kTrace = 60;
    constexpr std::size_t kMostAlarms = 4;
    std::mt19937 random(1);
    int start = 60;
    for (int level = 28'800; level <= 29'200; level += 25) {
        const auto writtenBefore = shift.all<ReadingTaken>().size();
        const auto raisedBefore = raised();
        const int changesBefore = changes();
        every(start, start + 600,
              [&](int) { return MilliCelsius{level - 100 + static_cast<int>(random() % 201)}; });
        start += 600;
        EXPECT_LE(changes() - changesBefore, kMostChanges) << level;
        EXPECT_LE(raised() - raisedBefore, kMostAlarms) << level;
        EXPECT_LE(shift.all<ReadingTaken>().size() - writtenBefore, kTrace + kMostChanges) << level;
    }
}

TEST_F(ReadingChangeTest, aRealStepIsWrittenAfterFiveSeconds)
{
    every(60, 100, [](int) { return kIn; });
    const auto before = shift.all<ReadingTaken>().size();
    every(100, 105, [](int) { return kOut; });
    EXPECT_EQ(shift.all<ReadingTaken>().size(), before);
    feed(105, kOut);
    EXPECT_EQ(last().verdict, Verdict::Outside);
    EXPECT_EQ(changes(), 1);
}

TEST_F(ReadingChangeTest, aChangeForTheBetterHasToLastLonger)
{
    every(60, 80, [](int) { return kOut; });
    every(80, 95, [](int) { return kIn; });
    EXPECT_EQ(last().verdict, Verdict::Outside);
    shift.at(95);
    EXPECT_NE(last().verdict, Verdict::Outside);
}

TEST_F(ReadingChangeTest, aSlowThermometersChangeTakesThreeReadings)
{
    feed(60, kIn);
    feed(90, kOut);
    feed(120, kOut);
    EXPECT_EQ(changes(), 0);
    feed(150, kOut);
    EXPECT_EQ(last().verdict, Verdict::Outside);
}

// Whatever it is from one reading to the next, it is not what is written.
TEST_F(ReadingChangeTest, oneThatFlickersBeyondWhatIsWrittenIsWritten)
{
    every(60, 70, [](int) { return kIn; });
    every(70, 76,
          [](int second) -> Value { return second % 2 == 0 ? MilliCelsius{28'990} : kOut; });
    EXPECT_NE(last().verdict, Verdict::Inside);
}

TEST_F(ReadingChangeTest, faultsBetweenGoodReadingsAreNoFault)
{
    every(60, 660, [](int second) -> Value {
        if (second % 2 == 0)
            return kIn;
        return ReadingFault::CheckFailed;
    });
    EXPECT_EQ(changes(), 0);
    EXPECT_EQ(bathVerdict(shift.bench(), shift.clock.now()), Verdict::Inside);
    every(660, 666, [](int) { return ReadingFault::CheckFailed; });
    EXPECT_EQ(last().fault, ReadingFault::CheckFailed);
    feed(666, kIn);
    EXPECT_EQ(last().verdict, Verdict::Inside);  // at once
}

TEST_F(ReadingChangeTest, oneThatIsGoneIsWrittenThoughItSaysNothingMore)
{
    feed(60, kIn);
    feed(61, ReadingFault::Lost);
    EXPECT_FALSE(last().fault);
    shift.at(66);
    EXPECT_EQ(last().fault, ReadingFault::Lost);
}

// Within 5 s, by a thermometer that speaks every 30 s.
TEST_F(ReadingChangeTest, waterThatLeavesItsLimitsAroundAnAmpouleIsToldInTime)
{
    feed(60, kIn);
    shift.at(62).say(out({1}));
    shift.at(64).say(moved(Step::Bath));
    feed(65, kOut);
    EXPECT_EQ(last().verdict, Verdict::Inside);
    const auto before = raised();
    shift.at(70);
    EXPECT_EQ(last().verdict, Verdict::Outside);
    EXPECT_GT(raised(), before);
}

TEST_F(ReadingChangeTest, aFaultAroundAnAmpouleIsToldInTime)
{
    feed(60, kIn);
    shift.at(62).say(out({1}));
    shift.at(64).say(moved(Step::Bath));
    feed(65, ReadingFault::CheckFailed);
    shift.at(70);
    EXPECT_EQ(last().fault, ReadingFault::CheckFailed);
}

TEST_F(ReadingChangeTest, aHandsReadingIsWrittenAtOnce)
{
    feed(60, kIn);
    shift.say(TakeReading{{"hand"}, kOut});
    EXPECT_EQ(last().verdict, Verdict::Outside);
}

}  // namespace
}  // namespace bathside
