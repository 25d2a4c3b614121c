// The critical steps, ampoule by ampoule (spec: the critical steps).

#include <gmock/gmock.h>

#include "tests/support/shift.h"

namespace bathside::test {
namespace {

using testing::ElementsAre;

class PullTest : public testing::Test {
protected:
    PullTest() { shift.open().readyBag("B1").at(60); }

    const Ampoule& ampoule(int no, int pull = 1) { return *shift.bench().ampoule({pull, no}); }

    BenchShift shift;
};

TEST_F(PullTest, oneTapTakesAllAlong)
{
    shift.say(out({1, 2, 3}));
    shift.at(66).say(moved(Step::Bath));

    for (const int no : {1, 2, 3})
        EXPECT_EQ(ampoule(no).reached(), Step::Bath);
}

TEST_F(PullTest, aLaterStepImpliesThoseMissedAsNotTimed)
{
    shift.say(out({1}));
    shift.at(66).say(moved(Step::Bath));
    const Taken taken = shift.at(150).say(moved(Step::Bagged));

    EXPECT_THAT(shift.kindsFrom(taken.first),
                ElementsAre("ampoule.opened", "ampoule.diluent", "ampoule.bagged"));
    EXPECT_FALSE(ampoule(1).when(Step::Opened)->timed);
    EXPECT_FALSE(ampoule(1).when(Step::Diluent)->timed);
    EXPECT_TRUE(ampoule(1).when(Step::Bagged)->timed);
    EXPECT_FALSE(ampoule(1).when(Step::Rinsed));
}

TEST_F(PullTest, aStaggeredAmpouleIsNotCarriedAlongTooEarly)
{
    shift.say(out({1}));
    shift.at(65).say(moved(Step::Bath));
    shift.at(70).say(out({2}));
    shift.at(75).say(moved(Step::Bath, {2}));
    shift.at(140).say(moved(Step::Opened, {1}));

    shift.at(145).say(moved(Step::Diluent));

    EXPECT_EQ(ampoule(1).reached(), Step::Diluent);
    EXPECT_EQ(ampoule(2).reached(), Step::Bath);
}

TEST_F(PullTest, anotherOutJoinsTheOpenPull)
{
    shift.say(out({1}));
    shift.at(63).say(TakeOut{{{0, {}, {}}}});
    EXPECT_EQ(shift.bench().pulls.size(), 1U);
    EXPECT_EQ(shift.bench().pulls[0].ampoules.size(), 2U);
    EXPECT_EQ(ampoule(2).ref.no, 2);
}

TEST_F(PullTest, aPullClosesWithItsLastAmpoule)
{
    shift.say(out({1, 2}));
    shift.at(65).say(moved(Step::Bath));
    shift.at(70).say(LoseAmpoule{2, LossReason::Broken});
    EXPECT_TRUE(shift.bench().openPull());
    shift.at(150).say(moved(Step::Bagged));

    EXPECT_FALSE(shift.bench().openPull());
    EXPECT_TRUE(inCriticalWindow(shift.bench(), shift.clock.now()));
    shift.at(159.999);
    EXPECT_TRUE(inCriticalWindow(shift.bench(), shift.clock.now()));
    shift.at(160);
    EXPECT_FALSE(inCriticalWindow(shift.bench(), shift.clock.now()));

    shift.say(out({1}));
    EXPECT_EQ(shift.bench().pulls.size(), 2U);
}

TEST_F(PullTest, rinsingMayComeBeforeOrAfterTheBag)
{
    shift.say(out({1, 2}));
    shift.at(65).say(moved(Step::Bath));
    shift.at(140).say(moved(Step::Diluent));
    shift.at(150).say(moved(Step::Rinsed, {1}));
    shift.at(160).say(moved(Step::Bagged));
    shift.at(170).say(moved(Step::Rinsed));

    EXPECT_TRUE(ampoule(1).when(Step::Rinsed));
    EXPECT_TRUE(ampoule(2).when(Step::Rinsed));
    EXPECT_EQ(shift.refused(moved(Step::Rinsed)), RefusalCode::NoAmpoule);
}

TEST_F(PullTest, onePullFeedsTwoBags)
{
    shift.readyBag("B2");
    shift.say(out({1, 2}));
    shift.at(65).say(moved(Step::Bath));
    shift.at(140).say(moved(Step::Diluent));
    shift.at(160).say(MoveOn{Step::Bagged, {1}, BagId{"B1"}});
    shift.say(MoveOn{Step::Bagged, {2}, BagId{"B2"}});

    EXPECT_EQ(ampoule(1).bag->text, "B1");
    EXPECT_EQ(ampoule(2).bag->text, "B2");
    EXPECT_TRUE(shift.bench().bag({"B1"})->firstDiluent);
    EXPECT_TRUE(shift.bench().bag({"B2"})->firstDiluent);
}

TEST_F(PullTest, theRecipesMissingComponentIsOffered)
{
    shift.say(TakeOut{{{1, {}, {"K1"}}, {2, {}, {"R1"}}}});
    const auto out1 = shift.all<AmpouleOut>();
    EXPECT_EQ(out1.at(0).component.text, "serotype 3");
    // both of one tap are offered what lacked before it
    shift.say(TakeOut{{{3, {}, {}}}});
    EXPECT_EQ(shift.all<AmpouleOut>().at(2).component.text, "serotype 1");
}

TEST_F(PullTest, aBagsAgeRunsFromItsFirstAmpouleInDiluent)
{
    shift.say(out({1, 2}));
    shift.at(65).say(moved(Step::Bath));
    shift.at(140).say(moved(Step::Diluent, {2}));
    shift.at(148).say(moved(Step::Diluent, {1}));
    shift.at(160).say(moved(Step::Bagged, {1}));
    shift.at(165).say(moved(Step::Bagged, {2}));

    const auto& first = shift.bench().bag({"B1"})->firstDiluent;
    ASSERT_TRUE(first);
    EXPECT_EQ(first->at.boot, ampoule(2).when(Step::Diluent)->at.boot);
}

TEST_F(PullTest, twoLotsOfOneComponentHoldTheBag)
{
    shift.say(TakeOut{{{1, {"serotype 3"}, {"K1"}}, {2, {"serotype 3"}, {"K2"}}}});
    shift.at(65).say(moved(Step::Bath));
    shift.at(145).say(moved(Step::Bagged));

    ASSERT_TRUE(shift.bench().bag({"B1"})->held());
    EXPECT_EQ(shift.bench().bag({"B1"})->held()->why, HoldReason::WrongLot);

    // a shift lead's release stands: it is not held again by the next tap
    shift.at(200).say(ReleaseBag{BagId{"B1"}, {"LS"}, "labels were misread"});
    shift.say(MixBag{BagId{"B1"}});
    EXPECT_FALSE(shift.bench().bag({"B1"})->held());
}

TEST_F(PullTest, aBurstInTheBathForgetsTheWater)
{
    shift.say(TakeReading{{"hand"}, MilliCelsius{28'000}});
    shift.say(out({1, 2}));
    shift.at(65).say(moved(Step::Bath));
    EXPECT_FALSE(shift.bench().readings.empty());

    shift.at(70).say(LoseAmpoule{1, LossReason::Broken});

    EXPECT_TRUE(ampoule(1).lost->inBath);
    EXPECT_TRUE(shift.bench().readings.empty());
    EXPECT_EQ(ampoule(2).reached(), Step::Bath);
}

// Spec: temperatures, verdict: no valid reading at *in bath* marks the pull.
TEST_F(PullTest, aFaultEndsWhatItsThermometerSaidBefore)
{
    for (const ReadingFault fault : {ReadingFault::Lost, ReadingFault::Jump}) {
        shift.say(TakeReading{{"bath"}, MilliCelsius{28'000}});
        shift.say(TakeReading{{"bath"}, fault});
        EXPECT_FALSE(bathVerdict(shift.bench(), shift.clock.now())) << nameOf(fault);
    }
    shift.say(out({1}));
    shift.at(65).say(moved(Step::Bath));
    ASSERT_TRUE(shift.bench().pulls[0].bath);
    EXPECT_EQ(shift.bench().pulls[0].bath->verdict, std::nullopt);
    EXPECT_EQ(ampoule(1).water, std::nullopt);
    EXPECT_TRUE(shift.bench().alarms.contains("bath at pull pull:1"));
}

TEST_F(PullTest, aReadingByHandCountsThoughTheProbeIsLost)
{
    shift.say(TakeReading{{"bath"}, ReadingFault::Lost});
    shift.say(TakeReading{{"hand"}, MilliCelsius{28'000}});
    EXPECT_TRUE(bathVerdict(shift.bench(), shift.clock.now()));
    shift.say(TakeReading{{"bath"}, ReadingFault::Empty});  // says nothing of the other one
    EXPECT_TRUE(bathVerdict(shift.bench(), shift.clock.now()));
}

TEST_F(PullTest, anExposedCaneIsKept)
{
    shift.say(ExposeCane{"vessel 1, canister 3, cane 2", std::chrono::seconds(25)});
    EXPECT_EQ(shift.bench().exposed.at(0).place, "vessel 1, canister 3, cane 2");
    EXPECT_EQ(shift.refused(ExposeCane{"", std::chrono::seconds(25)}), RefusalCode::BadValue);
}

TEST(RestartTest, clocksGoOnByWallTimeWhereItCanBeTrusted)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(out({1}));
    shift.at(65).say(moved(Step::Bath));

    shift.clock.restart(shift.clock.now().wall + std::chrono::seconds(30));
    shift.say(StartStation{
        .version = "test", .head = {}, .rehearsal = false, .synchronised = true, .offset = {}});

    const Elapsed run =
        elapsed(shift.bench().pulls[0].ampoules[0].when(Step::Bath)->at, shift.clock.now());
    EXPECT_EQ(run.time, std::chrono::seconds(30));
    EXPECT_FALSE(run.certain);
    EXPECT_FALSE(shift.bench().bag({"B1"})->held());
}

TEST(RestartTest, anUntrustedClockHoldsTheBagAndPassesTheLimit)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(out({1}));
    shift.at(65).say(moved(Step::Bath));

    shift.clock.restart(shift.clock.now().wall + std::chrono::seconds(5));
    shift.say(StartStation{
        .version = "test", .head = {}, .rehearsal = false, .synchronised = false, .offset = {}});
    shift.say(moved(Step::Diluent));

    ASSERT_TRUE(shift.bench().bag({"B1"})->held());
    EXPECT_EQ(shift.bench().bag({"B1"})->held()->why, HoldReason::AgeUnknown);
    const auto deviations = shift.all<DeviationFound>();
    ASSERT_EQ(deviations.size(), 1U);
    EXPECT_EQ(deviations[0].limit, LimitName::Thaw);
    EXPECT_EQ(deviations[0].over, 0);
}

}  // namespace
}  // namespace bathside::test
