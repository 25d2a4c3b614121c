#include "core/bench/decide.h"

#include <gtest/gtest.h>

#include "tests/support/shift.h"

namespace bathside::test {
namespace {

// How far the shift is when the slip happens.
enum class Scene { Started, Open, Bag, Drawn, Out, Bath, OneLost, Bagged, Mixed, Hung, Held, Down };

BenchShift& play(BenchShift& shift, Scene scene)
{
    if (scene >= Scene::Open)
        shift.open();
    if (scene >= Scene::Bag)
        shift.say(StartBag{{"B1"}, {400'000}, {"D1"}, MilliCelsius{22'000}});
    if (scene >= Scene::Drawn) {
        shift.say(InspectBag{BagId{"B1"}, true});
        shift.say(DrawDiluent{BagId{"B1"}, {}});
    }
    if (scene >= Scene::Out)
        shift.at(60).say(out({1, 2}));
    if (scene >= Scene::Bath)
        shift.at(65).say(moved(Step::Bath));
    if (scene >= Scene::OneLost)
        shift.at(70).say(LoseAmpoule{2, LossReason::Broken});
    if (scene >= Scene::Bagged)
        shift.at(150).say(moved(Step::Bagged, {1}));
    if (scene >= Scene::Mixed)
        shift.at(160).say(MixBag{});
    if (scene >= Scene::Hung)
        shift.at(170).say(HangBag{{}, {"A"}});
    if (scene >= Scene::Held)
        shift.at(180).say(HoldBag{BagId{"B1"}, HoldReason::Leak, {}});
    if (scene >= Scene::Down)
        shift.at(190).say(TakeBagDown{BagId{"B1"}, DownReason::Discarded, {100'000}});
    return shift;
}

struct Slip {
    std::string name;
    Scene scene;
    Intent intent;
    RefusalCode code;
};

class DecideRefuses : public testing::TestWithParam<Slip> {};

TEST_P(DecideRefuses, aSlip)
{
    BenchShift shift;
    play(shift, GetParam().scene);
    const Bench before = shift.bench();

    EXPECT_EQ(shift.refused(GetParam().intent), GetParam().code);

    // nothing became a fact but the refusal itself
    EXPECT_EQ(shift.bench().pulls.size(), before.pulls.size());
    EXPECT_EQ(shift.bench().bags.size(), before.bags.size());
    EXPECT_EQ(shift.all<TapRefused>().back().tap, nameOf(GetParam().intent));
}

const StartBag kBag{{"B1"}, {400'000}, {"D1"}, {}};

INSTANTIATE_TEST_SUITE_P(
    Bench, DecideRefuses,
    testing::Values(
        Slip{"ShiftTwice", Scene::Open, OpenShift{"Europe/Amsterdam", {"CD"}},
             RefusalCode::ShiftAlreadyOpen},
        Slip{"ShiftWithoutInitials", Scene::Started, OpenShift{"Europe/Amsterdam", {}},
             RefusalCode::NoPerson},
        Slip{"BagBeforeShift", Scene::Started, kBag, RefusalCode::ShiftNotOpen},
        Slip{"OutBeforeShift", Scene::Started, out({1}), RefusalCode::ShiftNotOpen},
        Slip{"DutyOfNobody", Scene::Open, TakeDuty{}, RefusalCode::NoPerson},
        Slip{"CheckNotOnTheCard", Scene::Open, RecordCheck{{"nonsense"}, true, {}},
             RefusalCode::UnknownCheck},
        Slip{"OverrideWithoutReason", Scene::Open, OverrideCheck{{"alarm-heard"}, {}},
             RefusalCode::ReasonMissing},
        Slip{"SameBagTwice", Scene::Bag, kBag, RefusalCode::BagExists},
        Slip{"BagOfNoVolume", Scene::Open, StartBag{{"B2"}, {0}, {"D1"}, {}},
             RefusalCode::OutOfRange},
        Slip{"DrawnBeforeInspected", Scene::Bag, DrawDiluent{}, RefusalCode::BagNotInspected},
        Slip{"DrawnTwice", Scene::Drawn, DrawDiluent{BagId{"B1"}, {}}, RefusalCode::AlreadyDrawn},
        Slip{"MoreThanTheSyringe", Scene::Bag, DrawDiluent{BagId{"B1"}, MicroLitres{50'000}},
             RefusalCode::BagNotInspected},
        Slip{"InspectedTwice", Scene::Drawn, InspectBag{BagId{"B1"}, true},
             RefusalCode::AlreadyInspected},
        Slip{"MixedWhileEmpty", Scene::Drawn, MixBag{BagId{"B1"}}, RefusalCode::BagIsEmpty},
        Slip{"UnknownBag", Scene::Drawn, SwirlBag{BagId{"B9"}}, RefusalCode::NoSuchBag},
        Slip{"HungBeforeMixed", Scene::Bagged, HangBag{BagId{"B1"}, {"A"}},
             RefusalCode::BagNotMixed},
        Slip{"HungOnNoLine", Scene::Mixed, HangBag{BagId{"B1"}, {}}, RefusalCode::WhichLine},
        Slip{"HungWhereItHangs", Scene::Hung, HangBag{BagId{"B1"}, {"A"}},
             RefusalCode::AlreadyThere},
        Slip{"MixedTwice", Scene::Mixed, MixBag{BagId{"B1"}}, RefusalCode::BagAlreadyMixed},
        Slip{"HeldTwice", Scene::Held, HoldBag{BagId{"B1"}, HoldReason::Colour, {}},
             RefusalCode::BagIsHeld},
        Slip{"ReleasedWithoutHold", Scene::Hung, ReleaseBag{BagId{"B1"}, {"LS"}, "ok"},
             RefusalCode::BagNotHeld},
        Slip{"ReleasedByNobody", Scene::Held, ReleaseBag{BagId{"B1"}, {}, "ok"},
             RefusalCode::NoPerson},
        Slip{"HeldBagHung", Scene::Held, HangBag{BagId{"B1"}, {"B"}}, RefusalCode::BagIsHeld},
        Slip{"DownTwice", Scene::Down, TakeBagDown{BagId{"B1"}, DownReason::Empty, {}},
             RefusalCode::BagIsDown},
        Slip{"MoreLeftThanItHeld", Scene::Hung,
             TakeBagDown{BagId{"B1"}, DownReason::Empty, {900'000}}, RefusalCode::OutOfRange},
        Slip{"NoAmpouleAtAll", Scene::Drawn, TakeOut{}, RefusalCode::NoAmpoule},
        Slip{"StepWithoutPull", Scene::Drawn, moved(Step::Bath), RefusalCode::NoOpenPull},
        Slip{"NumberTwice", Scene::Out, out({2}), RefusalCode::AmpouleExists},
        Slip{"UnknownAmpoule", Scene::Out, moved(Step::Bath, {7}), RefusalCode::NoSuchAmpoule},
        Slip{"StepAgain", Scene::Bath, moved(Step::Bath, {1}), RefusalCode::StepAlreadyDone},
        Slip{"AllInBathAgain", Scene::Bath, moved(Step::Bath), RefusalCode::NoAmpoule},
        Slip{"StepOfALostOne", Scene::OneLost, moved(Step::Opened, {2}),
             RefusalCode::AmpouleIsLost},
        Slip{"LostTwice", Scene::OneLost, LoseAmpoule{2, LossReason::Dropped},
             RefusalCode::AmpouleIsLost},
        Slip{"IntoAnUnknownBag", Scene::Bath, MoveOn{Step::Bagged, {1}, BagId{"B7"}},
             RefusalCode::NoSuchBag},
        Slip{"LostAfterThePull", Scene::Bagged, LoseAmpoule{1, LossReason::Broken},
             RefusalCode::NoOpenPull},
        Slip{"CloseWithAnAmpoule", Scene::Bath, CloseShift{}, RefusalCode::AmpouleStillOpen},
        Slip{"CloseWithABag", Scene::Hung, CloseShift{}, RefusalCode::BagStillOpen},
        Slip{"BirdsOfNoLine", Scene::Drawn, CountBirds{{}, 5}, RefusalCode::WhichLine},
        Slip{"GoingAlready", Scene::Hung, GoLine{LineId{"A"}}, RefusalCode::LineGoing},
        Slip{"HeardNothing", Scene::Open, HearAlarm{"thaw ampoule:9/9"}, RefusalCode::NoSuchAlarm},
        Slip{"CorrectWithoutReason", Scene::Bath, Correct{{1}, "at", "x", {}},
             RefusalCode::ReasonMissing},
        Slip{"CorrectAnotherShift", Scene::Bath, Correct{{1}, "at", "x", "typo"},
             RefusalCode::NotInThisShift},
        Slip{"AnswerNobodyAsked", Scene::Bath, Answer{"why late", "other"},
             RefusalCode::NoSuchQuestion},
        Slip{"EmptyNote", Scene::Open, MakeNote{}, RefusalCode::ReasonMissing},
        Slip{"CardThatIsNone", Scene::Open, AdoptCard{"{}"}, RefusalCode::BadDocument}),
    [](const auto& test) { return test.param.name; });

TEST(DecideTest, aBlockingCheckStopsABagUntilItIsOverridden)
{
    BenchShift shift;
    shift.say(OpenShift{"Europe/Amsterdam", {"AB"}});

    EXPECT_EQ(shift.refused(kBag), RefusalCode::CheckStillOpen);

    for (const Check& check : shift.bench().card->content().checks) {
        if (check.blocking)
            shift.say(OverrideCheck{check.id, "siren tested by ear"});
    }
    shift.say(kBag);
    EXPECT_EQ(shift.bench().bags.size(), 1U);
}

TEST(DecideTest, aFailedInspectionHoldsTheBag)
{
    BenchShift shift;
    shift.open();
    shift.say(kBag);

    shift.say(InspectBag{{}, false});

    ASSERT_TRUE(shift.bench().bags[0].held());
    EXPECT_EQ(shift.bench().bags[0].held()->why, HoldReason::Inspection);
    EXPECT_EQ(shift.refused(DrawDiluent{BagId{"B1"}, {}}), RefusalCode::BagIsHeld);
}

class BagOnHold : public testing::Test {
protected:
    BagOnHold()
    {
        shift.open();
        shift.say(kBag);
        shift.say(HoldBag{BagId{"B1"}, HoldReason::Leak, {}});
    }

    BenchShift shift;
};

TEST_F(BagOnHold, everyHoldStaysWithItsRelease)
{
    shift.say(ReleaseBag{BagId{"B1"}, {"LS"}, "dry again"});
    shift.say(HoldBag{BagId{"B1"}, HoldReason::Colour, "rosy"});
    const Bag& bag = shift.bench().bags[0];
    ASSERT_EQ(bag.holds.size(), 2U);
    EXPECT_EQ(bag.holds[0].why, HoldReason::Leak);
    ASSERT_TRUE(bag.holds[0].released);
    EXPECT_EQ(bag.holds[0].released->by, PersonId{"LS"});
    EXPECT_EQ(bag.holds[0].released->words, "dry again");
    EXPECT_GT(bag.holds[0].released->moment.seq, bag.holds[0].moment.seq);
    ASSERT_TRUE(bag.held());
    EXPECT_EQ(bag.held()->words, "rosy");
}

TEST_F(BagOnHold, oneThatIsDownIsStillDecidedOn)
{
    shift.say(TakeBagDown{BagId{"B1"}, DownReason::Empty, {}});
    EXPECT_TRUE(shift.bench().bags[0].held());
    shift.say(ReleaseBag{{}, {"LS"}, "discard"});
    EXPECT_FALSE(shift.bench().bags[0].held());
    EXPECT_EQ(shift.refused(ReleaseBag{BagId{"B1"}, {"LS"}, "use"}), RefusalCode::BagNotHeld);
}

TEST(DecideTest, twoBagsOnOneLineCannotBe)
{
    BenchShift shift;
    shift.open().madeUp("B1", 0);
    shift.say(HangBag{BagId{"B1"}, {"A"}});
    shift.madeUp("B2", 300);

    EXPECT_EQ(shift.refused(HangBag{BagId{"B2"}, {"A"}}), RefusalCode::LineHasBag);

    shift.say(HangBag{BagId{"B1"}, {"B"}});  // moved
    shift.say(HangBag{BagId{"B2"}, {"A"}});
    EXPECT_EQ(shift.bench().bagOn({"A"})->id.text, "B2");
    EXPECT_EQ(shift.bench().bagOn({"B"})->id.text, "B1");
}

TEST(DecideTest, birdsAreARunningTotalThatNeverGoesBack)
{
    BenchShift shift;
    shift.open();
    shift.say(CountBirds{LineId{"A"}, 900});

    EXPECT_EQ(shift.refused(CountBirds{{}, 899}), RefusalCode::CountGoesBack);

    shift.say(CountBirds{{}, 900});
    EXPECT_EQ(shift.bench().lines.at({"A"}).birds, 900);
}

TEST(DecideTest, aShiftClosesWithItsCounts)
{
    BenchShift shift;
    play(shift, Scene::Down);

    shift.say(CloseShift{});

    const auto closed = shift.all<ShiftClosed>().at(0);
    EXPECT_EQ(closed.out, 2);
    EXPECT_EQ(closed.bagged, 1);
    EXPECT_EQ(closed.lost, 1);
    EXPECT_EQ(closed.bags, 1);
    EXPECT_EQ(shift.refused(kBag), RefusalCode::ShiftNotOpen);
}

// A second tap on the same place within the card's lock (350 ms) is the same tap: harmless, not
// logged.
TEST(DecideTest, aRepeatWithinTheLockIsHarmless)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(out({1, 2}));
    shift.at(65);
    EXPECT_FALSE(shift.attempt(moved(Step::Bath), "step")->again);
    const std::size_t before = shift.recorder.events.size();

    shift.at(65.349);
    const auto again = shift.attempt(moved(Step::Opened), "step");

    ASSERT_TRUE(again);
    EXPECT_TRUE(again->again);
    EXPECT_EQ(shift.recorder.events.size(), before);
    EXPECT_EQ(shift.bench().pulls[0].ampoules[0].reached(), Step::Bath);

    shift.at(65.350);
    EXPECT_FALSE(shift.attempt(moved(Step::Opened), "step")->again);
    EXPECT_EQ(shift.bench().pulls[0].ampoules[0].reached(), Step::Opened);
}

TEST(DecideTest, aRefusedTapIsLockedToo)
{
    BenchShift shift;
    shift.open();
    EXPECT_FALSE(shift.attempt(moved(Step::Bath), "step"));

    const auto again = shift.attempt(moved(Step::Bath), "step");

    ASSERT_TRUE(again);
    EXPECT_TRUE(again->again);
    EXPECT_EQ(shift.all<TapRefused>().size(), 1U);
}

TEST(DecideTest, theSameTapIdIsTheSameTapWheneverItComes)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60);
    const TapInput tap{
        .place = {"step"}, .at = shift.clock.now(), .byReceipt = false, .id = {"x-1"}};
    EXPECT_FALSE(shift.station.handle(out({1}), tap)->again);

    shift.at(80);
    const TapInput repeated{
        .place = {"step"}, .at = shift.clock.now(), .byReceipt = false, .id = {"x-1"}};
    EXPECT_TRUE(shift.station.handle(out({2}), repeated)->again);
    EXPECT_EQ(shift.bench().pulls[0].ampoules.size(), 1U);
}

}  // namespace
}  // namespace bathside::test
