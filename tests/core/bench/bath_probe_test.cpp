// Of several thermometers one is in the bath: its readings are the bath's, and what a person reads.

#include <gtest/gtest.h>

#include "core/bench/bench.h"
#include "tests/support/shift.h"

namespace bathside {
namespace {

using test::BenchShift;

class BathProbeTest : public testing::Test {
protected:
    BathProbeTest() { shift.open(); }

    void describe(const char* id, bool inBath, const char* source = R"({"kind": "one-wire",
        "device": "28-1"})")
    {
        shift.say(DescribeProbe{
            {id},
            std::string(R"({"resolution_uc": 1000, "drift_uc": 0, "points": [],)") +
                R"("in_bath": )" + (inBath ? "true" : "false") + R"(, "source": )" + source + "}"});
    }
    void read(const char* id, int milliCelsius)
    {
        shift.say(TakeReading{{id}, MilliCelsius{milliCelsius}});
    }
    [[nodiscard]] std::string bath()
    {
        const auto last = shift.bench().lastGoodReading();
        return last ? last->fact.probe.text : "none";
    }

    BenchShift shift;
};

TEST_F(BathProbeTest, whereNoneIsSaidToBeInItTheLastThatSpokeCounts)
{
    describe("left", false);
    describe("room", false);
    read("left", 28'000);
    read("room", 20'000);
    EXPECT_EQ(bath(), "room");
}

TEST_F(BathProbeTest, theOneInItCountsWhateverOthersSay)
{
    describe("left", true);
    describe("room", false);
    read("left", 28'000);
    read("room", 20'000);
    EXPECT_EQ(bath(), "left");
    shift.say(TakeReading{{"room"}, ReadingFault::Lost});
    EXPECT_EQ(shift.bench().readingFault(), std::nullopt);
    EXPECT_EQ(shift.bench().latest.at({"room"}).fact.fault, ReadingFault::Lost);
}

TEST_F(BathProbeTest, whereItFailsAHandHelpsAndNoOther)
{
    describe("left", true);
    describe("room", false);
    describe("glass", false, R"({"kind": "hand"})");
    read("left", 28'000);
    shift.say(TakeReading{{"left"}, ReadingFault::Lost});
    read("room", 20'000);
    EXPECT_EQ(bath(), "none");
    read("glass", 28'100);
    EXPECT_EQ(bath(), "glass");
    read("hand", 28'200);
    EXPECT_EQ(bath(), "hand");
}

TEST_F(BathProbeTest, oneAtATimeIsInIt)
{
    describe("left", true);
    read("left", 28'000);
    describe("right", true);
    EXPECT_FALSE(shift.bench().probes.at({"left"})->inBath);
    EXPECT_EQ(bath(), "none");  // it has not spoken yet
    read("left", 28'000);
    EXPECT_EQ(bath(), "none");
    read("right", 28'100);
    EXPECT_EQ(bath(), "right");
}

// Said of one after it spoke: its last word counts, a fault too.
TEST_F(BathProbeTest, whatItSaidBeforeItWasSaidToBeInItCounts)
{
    describe("left", false);
    describe("room", false);
    read("left", 28'000);
    shift.at(5);
    read("room", 20'000);
    describe("left", true);
    EXPECT_EQ(bath(), "left");
    shift.at(10).say(TakeReading{{"room"}, ReadingFault::Lost});
    shift.at(15).say(TakeReading{{"left"}, MilliCelsius{28'000}});
    describe("room", true);
    EXPECT_EQ(bath(), "none");
    EXPECT_EQ(shift.bench().readingFault(), ReadingFault::Lost);
}

TEST_F(BathProbeTest, oneOutOfUseLeavesTheBathToTheOthers)
{
    describe("left", true);
    describe("right", false);
    describe("left", true, R"({"kind": "out of use"})");
    read("right", 28'100);
    EXPECT_EQ(bath(), "right");
}

}  // namespace
}  // namespace bathside
