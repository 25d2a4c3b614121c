// Deviations until they are reviewed: found, judged again, reviewed, carried from shift to shift.

#include "core/review/reviews.h"

#include <gmock/gmock.h>

#include "tests/support/staff.h"

namespace bathside::test {
namespace {

using testing::ElementsAre;

class ReviewsTest : public testing::Test {
protected:
    ReviewsTest()
    {
        staff(shift);
        shift.open();
    }

    /// An ampoule of that bag, `late` seconds over its 10 s out of the cryogen; the bag comes down.
    Seq lateAmpoule(const char* bag, double start, double late)
    {
        shift.at(start).readyBag(bag);
        shift.say(out({1}));
        step = shift.at(start + 10 + late).say(moved(Step::Bath));
        shift.at(start + 80).say(moved(Step::Bagged));
        shift.at(start + 90).say(MixBag{});
        shift.at(start + 100).say(TakeBagDown{{}, DownReason::Empty, {}});
        return reviews().deviations.rbegin()->first;
    }
    const Reviews& reviews() { return shift.bench().reviews; }

    BenchShift shift;
    Taken step;  // into the bath
};

TEST_F(ReviewsTest, aDeviationIsOpenUntilAShiftLeadSignsItsReview)
{
    const Seq seq = lateAmpoule("B1", 60, 2);
    EXPECT_THAT(reviews().open(), ElementsAre(seq));
    EXPECT_EQ(reviews().deviations.at(seq).fact.over, 2000);
    EXPECT_EQ(reviews().deviations.at(seq).onDuty, PersonId{"AB"});

    const Taken taken = shift.say(reviewOf(seq));
    EXPECT_TRUE(reviews().open().empty());
    const auto& reviewed = reviews().deviations.at(seq).reviewed;
    ASSERT_TRUE(reviewed);
    EXPECT_EQ(reviewed->by, PersonId{"LS"});
    EXPECT_EQ(reviewed->cause, "hands not ready");
    EXPECT_TRUE(reviewed->isSigned);
    EXPECT_THAT(shift.kindsFrom(taken.first), ElementsAre("deviation.reviewed", "record.signed"));
}

TEST_F(ReviewsTest, anotherSignatureOrMeaningSignsNobodysReview)
{
    const Seq seq = lateAmpoule("B1", 60, 2);
    Reviews one = reviews();
    Event review{.seq = seq + 1,
                 .at = shift.clock.now(),
                 .person = Person{{"LS"}, Proof::Proven},
                 .tap = {},
                 .place = {},
                 .card = {},
                 .fact = DeviationReviewed{seq, "other", "x", "y"}};
    evolve(one, review);
    const auto isSigned = [&](const char* by, Meaning meaning) {
        Reviews after = one;
        Event signature = review;
        signature.person = Person{{by}, Proof::Proven};
        signature.fact = RecordSigned{meaning, {seq}, {}};
        evolve(after, signature);
        return after.deviations.at(seq).reviewed->isSigned;
    };
    EXPECT_FALSE(isSigned("QA", Meaning::Reviewed));
    EXPECT_FALSE(isSigned("LS", Meaning::Done));
    EXPECT_TRUE(isSigned("LS", Meaning::Reviewed));
}

TEST_F(ReviewsTest, oneThatIsJudgedAwayNeedsNoReview)
{
    const Seq seq = lateAmpoule("B1", 60, 2);
    shift.say(Correct{{step.first}, "at", shift.text(69), "tapped late"});
    EXPECT_TRUE(reviews().open().empty());
    EXPECT_TRUE(reviews().deviations.at(seq).isKept);
    EXPECT_EQ(shift.refused(reviewOf(seq)), RefusalCode::NoSuchDeviation);

    shift.say(Correct{{step.first}, "at", shift.text(73), "no, it was later still"});
    EXPECT_THAT(reviews().open(), ElementsAre(seq));
    EXPECT_EQ(reviews().deviations.at(seq).fact.over, 3000);
}

TEST_F(ReviewsTest, aReviewOfAnotherAmountIsDoneAgain)
{
    const Seq seq = lateAmpoule("B1", 60, 2);
    shift.say(reviewOf(seq));
    shift.say(Correct{{step.first}, "at", shift.text(95), "clock read wrongly"});
    EXPECT_THAT(reviews().open(), ElementsAre(seq));
    EXPECT_EQ(reviews().deviations.at(seq).fact.over, 25'000);
    shift.say(reviewOf(seq));
    EXPECT_TRUE(reviews().open().empty());
}

TEST_F(ReviewsTest, reviewsAndPeopleOutliveACorrectionOfSomethingElse)
{
    const Seq seq = lateAmpoule("B1", 60, 2);
    shift.say(reviewOf(seq));
    shift.say(listed("NN", "Nuria Nadal", Role::Vaccinator));
    const auto started = std::ranges::find_if(shift.recorder.events, [](const Event& event) {
        return std::holds_alternative<BagStarted>(event.fact);
    });
    shift.say(Correct{{started->seq}, "volume_ml", "800", "misread"});
    EXPECT_TRUE(reviews().open().empty());
    EXPECT_TRUE(reviews().deviations.at(seq).reviewed->isSigned);
    EXPECT_TRUE(shift.bench().people.find({"NN"}));
    EXPECT_TRUE(shift.bench().people.find({"LS"})->hasPin);
}

TEST_F(ReviewsTest, whatIsOpenIsCarriedAndCanBeReviewedLater)
{
    const Seq first = lateAmpoule("B1", 60, 2), second = lateAmpoule("B2", 300, 5);
    shift.say(reviewOf(first));
    shift.say(CloseShift{});
    const Taken opening = shift.at(86'400).say(OpenShift{"Europe/Amsterdam", {"MK"}});
    EXPECT_THAT(shift.kindsFrom(opening.first),
                ElementsAre("shift.opened", "review.carried", "duty.taken"));
    EXPECT_THAT(reviews().open(), ElementsAre(second));
    EXPECT_EQ(reviews().deviations.at(second).fact.over, 5000);
    EXPECT_EQ(reviews().deviations.at(second).onDuty, PersonId{"AB"});

    shift.say(reviewOf(second));
    EXPECT_TRUE(reviews().open().empty());
    shift.say(CloseShift{});
    const Taken third = shift.at(2 * 86'400).say(OpenShift{"Europe/Amsterdam", {"MK"}});
    EXPECT_THAT(shift.kindsFrom(third.first), ElementsAre("shift.opened", "duty.taken"));
    EXPECT_TRUE(reviews().deviations.empty());
}

// Today's B1 is another bag than the one that was left on hold.
TEST_F(ReviewsTest, aHoldThatNobodyDecidedOnIsCarriedAndDecidedOnLater)
{
    shift.at(60).readyBag("B1").say(HoldBag{BagId{"B1"}, HoldReason::Leak, "at the port"});
    shift.say(TakeBagDown{BagId{"B1"}, DownReason::Empty, {}});
    ASSERT_EQ(reviews().holds.size(), 1U);
    const Seq held = reviews().holds.begin()->first;
    shift.say(CloseShift{});
    shift.at(86'400).open();
    ASSERT_TRUE(reviews().holds.contains(held));
    EXPECT_EQ(reviews().holds.at(held).fact.words, "at the port");

    shift.readyBag("B1").say(HoldBag{BagId{"B1"}, HoldReason::Colour, {}});
    shift.say(ReleaseBag{BagId{"B1"}, {"LS"}, "use"});
    EXPECT_TRUE(reviews().holds.contains(held));
    shift.say(HoldBag{BagId{"B1"}, HoldReason::Other, {}});
    shift.say(ReleaseBag{{}, {"LS"}, "discard", held});
    EXPECT_FALSE(reviews().holds.contains(held));
    EXPECT_TRUE(shift.bench().bag({"B1"})->held());
    EXPECT_EQ(shift.refused(ReleaseBag{{}, {"LS"}, "discard", held}), RefusalCode::BagNotHeld);
}

TEST_F(ReviewsTest, whatWasReviewedAfterTheCloseIsNotCarried)
{
    const Seq seq = lateAmpoule("B1", 60, 2);
    shift.say(CloseShift{});
    shift.say(reviewOf(seq));
    const Taken opening = shift.at(86'400).say(OpenShift{"Europe/Amsterdam", {"MK"}});
    EXPECT_THAT(shift.kindsFrom(opening.first), ElementsAre("shift.opened", "duty.taken"));
}

// Ampoules and bags of every shift have the same names.
TEST_F(ReviewsTest, aJudgementOfTodayLeavesYesterdaysAlone)
{
    const Seq before = lateAmpoule("B1", 60, 2);
    shift.say(CloseShift{});
    shift.at(86'400).open();
    shift.readyBag("B1");
    shift.say(out({1}));
    step = shift.at(86'405).say(moved(Step::Bath));
    shift.at(86'480).say(moved(Step::Bagged));
    shift.say(Correct{{step.first}, "at", shift.text(86'417), "tapped early"});

    EXPECT_EQ(reviews().deviations.at(before).fact.over, 2000);
    ASSERT_EQ(reviews().open().size(), 2U);
    EXPECT_EQ(reviews().deviations.at(reviews().open().back()).fact.over, 7000);
}

TEST_F(ReviewsTest, theStateIsTheSameFromTheTrailAlone)
{
    lateAmpoule("B1", 60, 2);
    lateAmpoule("B2", 300, 5);
    shift.say(CloseShift{});
    shift.at(86'400).open();
    const Seq third = lateAmpoule("B1", 86'460, 1);
    shift.say(reviewOf(third));
    std::vector<Event> carried, since;
    for (const Event& event : shift.recorder.events) {
        if (event.seq >= shift.bench().shift->opened.seq)
            since.push_back(event);
        else if (std::ranges::count(carriedKinds(), kindOf(event.fact)) > 0)
            carried.push_back(event);
    }
    const Bench again = restored(carried, since).bench;
    EXPECT_EQ(again.reviews.open(), reviews().open());
    EXPECT_EQ(again.reviews.open().size(), 2U);
    EXPECT_TRUE(again.reviews.deviations.at(third).reviewed->isSigned);
    EXPECT_EQ(again.people.members.size(), 4U);
    EXPECT_TRUE(again.people.find({"LS"})->hasPin);
}

// Whoever tampers with the file must not be able to stop the program with it.
TEST(CarriedTest, aDocumentThatIsNoneOfOursFoldsToNothing)
{
    for (const char* text :
         {"", "[]", R"({"open":7})", R"({"open":{"a":1}})", R"({"open":[7,null,"x"]})",
          R"({"open":[{"seq":"1","at_ms":2,"deviation":{}}]})",
          R"({"open":[{"seq":1,"at_ms":2,"deviation":{"limit":"nonsense"}}]})",
          R"({"open":[{"seq":1,"at_ms":{},"deviation":[]}]})"}) {
        Reviews reviews;
        evolve(reviews, Event{.seq = 1,
                              .at = {},
                              .person = {},
                              .tap = {},
                              .place = {},
                              .card = {},
                              .fact = ReviewCarried{{text}}});
        EXPECT_TRUE(reviews.deviations.empty()) << text;
    }
}

}  // namespace
}  // namespace bathside::test
