// Take back, corrections, rejudgements, and what is asked afterwards.

#include <gmock/gmock.h>

#include "core/bench/next.h"
#include "tests/support/shift.h"

namespace bathside::test {
namespace {

using testing::ElementsAre;

class MendingTest : public testing::Test {
protected:
    MendingTest() { shift.open().readyBag("B1").at(60); }

    /// 1 and 2 out at 60 s, in the bath at `bath`, in diluent at `diluent`.
    void pull(double bath, double diluent)
    {
        shift.say(out({1, 2}));
        inBath = shift.at(bath).say(moved(Step::Bath));
        inDiluent = shift.at(diluent).say(moved(Step::Diluent));
    }
    const Ampoule& ampoule(int no) { return *shift.bench().ampoule({1, no}); }

    BenchShift shift;
    Taken inBath, inDiluent;
};

TEST_F(MendingTest, takeBackUndoesTheLastTapWhole)
{
    shift.say(out({1, 2}));
    const Taken tap = shift.at(65).say(moved(Step::Bath));
    const Taken back = shift.at(66).say(TakeBack{});

    EXPECT_THAT(shift.all<FactTakenBack>().at(0).seqs, ElementsAre(tap.first, tap.last));
    EXPECT_THAT(shift.kindsFrom(back.first), ElementsAre("fact.taken-back"));
    EXPECT_EQ(ampoule(1).reached(), Step::Out);
    EXPECT_EQ(ampoule(2).reached(), Step::Out);

    shift.at(67).say(moved(Step::Bath));
    EXPECT_EQ(ampoule(1).when(Step::Bath)->at.boot,
              std::chrono::hours(1) + std::chrono::seconds(67));
}

TEST_F(MendingTest, takeBackTakesTheDeviationWithIt)
{
    shift.say(out({1}));
    shift.at(72).say(moved(Step::Bath));
    EXPECT_EQ(shift.bench().judgements.size(), 1U);

    shift.at(73).say(TakeBack{});

    EXPECT_TRUE(shift.bench().judgements.empty());
    EXPECT_TRUE(shift.all<Rejudged>().empty());
}

TEST_F(MendingTest, takeBackGoesOnToTheTapBefore)
{
    shift.say(out({1}));
    shift.at(65).say(moved(Step::Bath));
    shift.say(TakeBack{});
    shift.say(TakeBack{});
    EXPECT_TRUE(shift.bench().pulls.empty());
}

TEST_F(MendingTest, takeBackNeedsAReasonLaterOutsideTheWindow)
{
    EXPECT_FALSE(shift.attempt(TakeBack{}));  // the bag was drawn 60 s ago
    EXPECT_EQ(shift.refused(TakeBack{}), RefusalCode::ReasonMissing);
    shift.say(TakeBack{"nothing drawn yet"});
    EXPECT_FALSE(shift.bench().bag({"B1"})->drawn);
}

TEST_F(MendingTest, takeBackIsFreeAnywhereInTheWindow)
{
    shift.say(out({1}));
    shift.at(65).say(moved(Step::Bath));
    shift.at(130).say(TakeBack{});
    EXPECT_EQ(ampoule(1).reached(), Step::Out);
}

TEST_F(MendingTest, aCorrectedTimeIsRejudgedAway)
{
    pull(75, 150);
    EXPECT_EQ(shift.bench().judgements.size(), 2U);  // both were 15 s out

    shift.at(200).say(
        Correct{{inBath.first, inBath.first + 1}, "at", shift.text(66), "tapped late"});

    EXPECT_TRUE(shift.bench().judgements.empty());
    const auto rejudged = shift.all<Rejudged>();
    ASSERT_EQ(rejudged.size(), 2U);
    EXPECT_FALSE(rejudged[0].over);
    EXPECT_EQ(rejudged[0].limit, LimitName::Exposure);
}

TEST_F(MendingTest, aCorrectedTimeIsRejudgedIntoADeviation)
{
    pull(66, 150);
    EXPECT_TRUE(shift.bench().judgements.empty());

    shift.at(200).say(Correct{{inDiluent.first + 1}, "at", shift.text(160), "tapped early"});

    // the first fact of the tap is the implied *opened* of 1, the second its *in diluent*
    const auto rejudged = shift.all<Rejudged>();
    ASSERT_EQ(rejudged.size(), 1U);
    EXPECT_EQ(rejudged[0].over, 4000);
    EXPECT_EQ(toText(rejudged[0].subject), "ampoule:1/1");
    EXPECT_TRUE(shift.all<DeviationFound>().empty());
}

TEST_F(MendingTest, correctingATimeMakesAnImpliedStepTimed)
{
    pull(66, 150);
    shift.at(200).say(Correct{{inDiluent.first}, "at", shift.text(147), "forgot to tap"});
    EXPECT_TRUE(ampoule(1).when(Step::Opened)->timed);
}

TEST_F(MendingTest, aCorrectedLotHoldsEveryBagThatHasIt)
{
    const Taken taken = shift.say(TakeOut{{{1, {"serotype 3"}, {"K1"}}}});
    shift.at(65).say(moved(Step::Bath));
    shift.at(145).say(moved(Step::Bagged));
    shift.at(150).say(MixBag{});
    shift.at(160).say(HangBag{{}, {"A"}});

    shift.at(400).say(Correct{{taken.first}, "lot", "K9", "label read again"});

    EXPECT_EQ(ampoule(1).lot.text, "K9");
    ASSERT_TRUE(shift.bench().bag({"B1"})->held());
    EXPECT_EQ(shift.bench().bag({"B1"})->held()->why, HoldReason::WrongLot);
}

TEST_F(MendingTest, aCorrectedBagMovesTheAmpoule)
{
    shift.readyBag("B2");
    pull(66, 145);
    const Taken bagged = shift.at(150).say(moved(Step::Bagged));
    EXPECT_EQ(ampoule(1).bag->text, "B2");  // the one started last is being made up

    shift.at(200).say(Correct{{bagged.first, bagged.last}, "bag", "B1", "other bag"});

    EXPECT_EQ(ampoule(1).bag->text, "B1");
    EXPECT_FALSE(shift.bench().bag({"B2"})->firstDiluent);
    EXPECT_TRUE(shift.bench().bag({"B1"})->firstDiluent);
    EXPECT_EQ(shift.refused(Correct{{bagged.first}, "bag", "B7", "no such bag"}),
              RefusalCode::NoSuchBag);
}

TEST_F(MendingTest, brokenOrNot)
{
    shift.say(out({1, 2}));
    shift.at(65).say(moved(Step::Bath));
    const Taken lost = shift.at(70).say(LoseAmpoule{2, LossReason::Broken});

    shift.at(75).say(Correct{{lost.first}, "broken", "false", "it was the tongs that cracked"});
    EXPECT_FALSE(ampoule(2).lost);
    EXPECT_TRUE(shift.bench().openPull());

    const Taken bagged = shift.at(150).say(moved(Step::Bagged, {1}));
    shift.at(160).say(Correct{{bagged.last}, "broken", "true", "it broke at the neck"});
    EXPECT_TRUE(ampoule(1).lost);
    EXPECT_FALSE(ampoule(1).bag);
}

TEST_F(MendingTest, aCorrectedCountMayGoEitherWay)
{
    const Taken counted = shift.say(CountBirds{LineId{"A"}, 900});
    shift.say(Correct{{counted.first}, "count", "800", "read wrong"});
    EXPECT_EQ(shift.bench().lines.at({"A"}).birds, 800);
    EXPECT_EQ(shift.refused(Correct{{counted.first}, "count", "-3", "x"}), RefusalCode::BadValue);
    EXPECT_EQ(shift.refused(Correct{{counted.first}, "count", "800", "x"}),
              RefusalCode::NothingChanges);
    EXPECT_EQ(shift.refused(Correct{{counted.first}, "lot", "K1", "x"}), RefusalCode::NoSuchField);
    EXPECT_EQ(shift.refused(Correct{{counted.first}, "at", "yesterday", "x"}),
              RefusalCode::BadValue);
}

TEST_F(MendingTest, aTapOfSeveralFactsIsCorrectedWhereItHasTheField)
{
    pull(75, 150);  // each *in bath* came with a deviation of its own
    const std::vector<Seq> all{inBath.first, inBath.first + 1, inBath.first + 2, inBath.first + 3};
    EXPECT_EQ(shift.refused(Correct{all, "at", "?", "x"}), RefusalCode::BadValue);
    EXPECT_EQ(shift.refused(Correct{all, "count", "?", "x"}), RefusalCode::NoSuchField);
    EXPECT_EQ(shift.refused(Correct{all, "ampoule", "?", "x"}), RefusalCode::BadValue);
}

TEST_F(MendingTest, theTrailKeepsWhatWasSaidAndWhatItBecame)
{
    const Taken counted = shift.say(CountBirds{LineId{"A"}, 900});
    shift.say(Correct{{counted.first}, "count", "800", "read wrong"});
    const auto said = shift.all<BirdsCounted>();
    ASSERT_EQ(said.size(), 1U);
    EXPECT_EQ(said[0].total, 900);
    EXPECT_EQ(shift.all<FactCorrected>().at(0).seq, counted.first);
}

TEST_F(MendingTest, whyLateIsAskedAfterThePullAndAnsweredOnce)
{
    shift.say(out({1}));
    shift.at(75).say(moved(Step::Bath));
    EXPECT_TRUE(questions(shift.bench()).empty());
    shift.at(150).say(moved(Step::Bagged));

    const auto asked = questions(shift.bench());
    ASSERT_EQ(asked.size(), 1U);
    EXPECT_EQ(asked[0].id, "why late exposure ampoule:1/1");

    EXPECT_EQ(shift.refused(Answer{asked[0].id, "nonsense"}), RefusalCode::NoSuchChoice);
    shift.say(Answer{asked[0].id, "interrupted"});
    EXPECT_TRUE(questions(shift.bench()).empty());
}

TEST_F(MendingTest, thawedTooShortIsAskedAbout)
{
    pull(65, 104.9);  // 39.9 s in the bath; shortest thaw 40 s, from memory
    shift.at(110).say(moved(Step::Bagged));
    const auto asked = questions(shift.bench());
    ASSERT_EQ(asked.size(), 2U);
    EXPECT_EQ(asked[0].kind, QuestionKind::ThawedShort);
}

TEST_F(MendingTest, whichBrokeSwapsTheTwo)
{
    shift.say(out({1, 2}));
    shift.at(65).say(moved(Step::Bath));
    shift.at(70).say(LoseAmpoule{1, LossReason::Broken});
    shift.at(145).say(moved(Step::Diluent));
    shift.at(155).say(moved(Step::Bagged));

    shift.at(170).say(Answer{"which broke", "2"});

    EXPECT_TRUE(ampoule(2).lost);
    EXPECT_FALSE(ampoule(1).lost);
    EXPECT_EQ(ampoule(1).bag->text, "B1");
    for (const Question& question : questions(shift.bench()))
        EXPECT_NE(question.kind, QuestionKind::WhichBroke);
}

TEST_F(MendingTest, waterChangedAfterABurstIsAFact)
{
    shift.say(out({1}));
    shift.at(65).say(moved(Step::Bath));
    shift.at(70).say(LoseAmpoule{1, LossReason::Broken});

    shift.at(90).say(Answer{"water changed", "yes"});
    EXPECT_EQ(shift.all<BathChanged>().size(), 1U);
    shift.say(Answer{"anyone hurt", "no"});
    EXPECT_TRUE(questions(shift.bench()).empty());
}

}  // namespace
}  // namespace bathside::test
