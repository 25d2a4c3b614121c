#include "core/bench/next.h"

#include <gmock/gmock.h>

#include "tests/support/shift.h"

namespace bathside::test {
namespace {

using testing::ElementsAre;

TEST(NextTest, walksABagFromTheShiftsOpeningToTheLine)
{
    BenchShift shift;
    const auto deed = [&] { return next(shift.bench()).deed; };

    EXPECT_EQ(deed(), NextDeed::OpenShift);
    shift.say(OpenShift{"Europe/Amsterdam", {"AB"}});
    EXPECT_EQ(deed(), NextDeed::SetUp);
    for (const Check& check : shift.bench().card->content().checks)
        shift.say(RecordCheck{check.id, true, {}});
    EXPECT_EQ(deed(), NextDeed::StartBag);
    shift.say(StartBag{{"B1"}, {400'000}, {"D1"}, {}});
    EXPECT_EQ(deed(), NextDeed::Inspect);
    shift.say(InspectBag{});
    EXPECT_EQ(deed(), NextDeed::DrawDiluent);
    shift.say(DrawDiluent{});
    EXPECT_EQ(deed(), NextDeed::TakeOut);
    shift.at(60).say(TakeOut{{{1, {"serotype 3"}, {"K1"}}, {2, {"serotype 1"}, {"R1"}}}});

    for (const Step step : {Step::Bath, Step::Opened, Step::Diluent, Step::Rinsed, Step::Bagged}) {
        const Next now = next(shift.bench());
        EXPECT_EQ(now.deed, NextDeed::MoveOn);
        EXPECT_EQ(now.step, step);
        EXPECT_THAT(now.ampoules, ElementsAre(1, 2));
        shift.say(moved(now.step));
    }
    EXPECT_EQ(deed(), NextDeed::Mix);
    shift.say(MixBag{});
    EXPECT_EQ(deed(), NextDeed::Hang);
    shift.say(HangBag{{}, {"A"}});
    EXPECT_EQ(deed(), NextDeed::Wait);
}

TEST(NextTest, aBagThatLacksAComponentWantsAnotherPull)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(TakeOut{{{1, {"serotype 3"}, {"K1"}}}});
    shift.at(65).say(moved(Step::Bath));
    shift.at(145).say(moved(Step::Bagged));
    EXPECT_EQ(next(shift.bench()).deed, NextDeed::TakeOut);
}

TEST(NextTest, theMostUrgentAmpouleHasTheBigButton)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(out({1, 2}));
    shift.at(65).say(moved(Step::Bath));
    shift.at(140).say(moved(Step::Opened, {1}));

    Next now = next(shift.bench());
    EXPECT_EQ(now.step, Step::Diluent);
    EXPECT_THAT(now.ampoules, ElementsAre(1));

    // 1 is in diluent: no limit runs on it any more, so 2 comes first
    shift.at(146).say(moved(Step::Diluent, {1}));
    now = next(shift.bench());
    EXPECT_EQ(now.step, Step::Opened);
    EXPECT_THAT(now.ampoules, ElementsAre(2));

    // one that is out of the cryogen comes before everything
    shift.at(147).say(out({3}));
    now = next(shift.bench());
    EXPECT_EQ(now.step, Step::Bath);
    EXPECT_THAT(now.ampoules, ElementsAre(3));
}

// Constructed: slush at 80 s, limit 90 s, 8 s of handling each. One is done at 88 s, two at 96 s.
TEST(PaceTest, onlyOneFitsAtOnceOnTheDefaultCard)
{
    BenchShift shift;
    EXPECT_EQ(pace(shift.bench(), 1).together, 1);
    EXPECT_EQ(pace(shift.bench(), 1).stagger, Millis{});
    const Pace two = pace(shift.bench(), 2);
    EXPECT_EQ(two.together, 1);
    EXPECT_EQ(two.stagger,
              std::chrono::seconds(7));  // 96 s is before 90 + 7 s and not before 90 + 6 s
    EXPECT_EQ(pace(shift.bench(), 3).stagger, std::chrono::seconds(8));
}

TEST(PaceTest, quickHandsTakeMoreAtOnce)
{
    BenchShift shift(cardWith(R"({"make_up": {"handling_ms": 3000}})"));
    const Pace three = pace(shift.bench(), 3);
    EXPECT_EQ(three.together, 3);  // 80 + 9 s is before 90 s
    EXPECT_EQ(three.stagger, Millis{});
    EXPECT_EQ(pace(shift.bench(), 4).together, 3);
}

TEST(PaceTest, handlingIsLearnedFromTheShiftsOwnPulls)
{
    BenchShift shift;
    shift.open();
    for (int round = 0; round < 3; ++round) {
        const double start = 600.0 * (round + 1);
        shift.at(start - 1).readyBag("B" + std::to_string(round)).at(start).say(out({1, 2}));
        shift.at(start + 5).say(moved(Step::Bath));
        shift.at(start + 80).say(moved(Step::Diluent, {1}));
        shift.at(start + 84.5).say(moved(Step::Diluent, {2}));
        shift.at(start + 100).say(moved(Step::Bagged));
        shift.say(MixBag{});
        EXPECT_EQ(handling(shift.bench()), round < 2 ? Millis(8000) : Millis(4500));
    }
}

TEST(PaceTest, theCueOfEachLeavesTimeForThoseBeforeIt)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(out({1, 2, 3}));
    shift.at(65).say(moved(Step::Bath));
    const auto cue = [&](int no) {
        return thawCue(shift.bench(), *shift.bench().ampoule({1, no}));
    };
    EXPECT_EQ(cue(1), std::chrono::seconds(80));
    EXPECT_EQ(cue(2),
              std::chrono::seconds(80));  // 90 - 8 = 82 s: the card's own heads-up is earlier
    EXPECT_EQ(cue(3), std::chrono::seconds(74));  // 90 - 2 x 8
    shift.at(140).say(moved(Step::Diluent, {1}));
    EXPECT_EQ(cue(3), std::chrono::seconds(80));
}

/// The cue of the one ampoule, put into water of that temperature by this thermometer.
Millis cueIn(std::int64_t water, const char* document)
{
    BenchShift shift;
    shift.open();
    if (*document)
        shift.say(DescribeProbe{{"p1"}, document});
    shift.say(TakeReading{{"p1"}, MilliCelsius{water}});
    shift.readyBag("B1").at(60).say(out({1}));
    shift.at(65).say(moved(Step::Bath));
    shift.at(70).say(TakeReading{{"p1"}, MilliCelsius{27'000}});  // moves nothing any more
    return thawCue(shift.bench(), *shift.bench().ampoule({1, 1}));
}

constexpr auto kCalibrated = R"({"resolution_uc": 10000, "drift_uc": 0, "due": "2027-01-01",
    "points": [{"indicated_uc": 28000000, "reference_uc": 28000000, "expanded_uc": 50000}]})";

// The card calls at 80 s of 90 s, with 8 s of handling, at 28 °C.
TEST(PaceTest, theCueFollowsTheWaterTheAmpouleWentInto)
{
    using namespace std::chrono_literals;
    EXPECT_EQ(cueIn(28'000, kCalibrated), 80s);
    const Millis warm = cueIn(30'000, kCalibrated);
    EXPECT_LT(warm, 78s);  // some 3 % a degree
    EXPECT_GT(warm, 72s);
    EXPECT_GT(cueIn(27'800, kCalibrated), 80s);
    EXPECT_EQ(cueIn(25'000, kCalibrated), 82s);  // 90 - 8: never later than the limit allows
}

TEST(PaceTest, theCueIsTheCardsWhereTheWaterIsNotKnown)
{
    using namespace std::chrono_literals;
    EXPECT_EQ(cueIn(30'000, ""), 80s);           // no calibration
    EXPECT_EQ(cueIn(42'000, kCalibrated), 80s);  // beyond the card's range
}

TEST(BagTest, whatIsLeftFollowsFromTheBirdsAndTheDose)
{
    BenchShift shift;
    shift.open().say(CountBirds{LineId{"A"}, 500});
    shift.madeUp("B1", 60);
    shift.say(HangBag{{}, {"A"}});
    shift.at(600).say(CountBirds{LineId{"A"}, 1500});
    const Bag& bag = *shift.bench().bag({"B1"});
    EXPECT_EQ(birdsServed(shift.bench(), bag), 1000);
    EXPECT_EQ(volumeLeft(shift.bench(), bag).count,
              400'000 - 1000 * 200);  // 0.2 mL a bird: common practice
}

}  // namespace
}  // namespace bathside::test
