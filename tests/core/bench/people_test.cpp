// Who may say what: lists, PINs, signatures, reviews, cards; and what no tap takes back.

#include <gmock/gmock.h>

#include "core/bench/card_in_force.h"
#include "tests/core/stores/support.h"
#include "tests/support/staff.h"

namespace bathside::test {
namespace {

using testing::ElementsAre;

class StaffTest : public testing::Test {
protected:
    StaffTest() { staff(shift); }

    Seq lateAmpoule()
    {
        shift.open().readyBag("B1").at(60).say(out({1}));
        shift.at(72).say(moved(Step::Bath));
        shift.at(150).say(moved(Step::Bagged));
        return shift.bench().reviews.open().front();
    }
    Taken note()
    {
        shift.open();
        return shift.say(MakeNote{"cane 5 was hard to find"});
    }

    /// Of what was said last.
    std::optional<Person> sayer() const { return shift.recorder.events.back().person; }

    const Person kLead{{"LS"}, Proof::Proven};
    BenchShift shift;
};

TEST_F(StaffTest, aBaselineIsChosenAndWithdrawnByALead)
{
    shift.open();
    shift.say(SetPin{{"AB"}, PersonId{"LS"}});
    const auto chosen = [](const char* by, Seq from, Seq to) {
        return ChooseBaseline{{by}, {"out to bath", from, to}};
    };
    EXPECT_EQ(shift.refused(chosen("LS", 0, 0)), RefusalCode::NothingChanges);
    EXPECT_EQ(shift.refused(chosen("AB", 1, 5)), RefusalCode::NotAllowed);
    EXPECT_EQ(shift.refused(chosen("LS", 5, 4)), RefusalCode::OutOfRange);
    EXPECT_EQ(shift.refused(chosen("LS", 0, 4)), RefusalCode::OutOfRange);
    shift.say(chosen("LS", 1, 5));
    EXPECT_EQ(shift.bench().baselines.at("out to bath").to, 5);
    EXPECT_EQ(shift.refused(chosen("AB", 0, 0)), RefusalCode::NotAllowed);
    shift.say(chosen("LS", 0, 0));
    EXPECT_TRUE(shift.bench().baselines.empty());
}

TEST(FirstPersonTest, isAShiftLeadAndNeedsNobody)
{
    BenchShift shift;
    EXPECT_EQ(shift.refused(listed("AB", "Ana", Role::Vaccinator, std::nullopt)),
              RefusalCode::NotAllowed);
    EXPECT_EQ(shift.refused(listed("", "Lena", Role::ShiftLead, std::nullopt)),
              RefusalCode::NoPerson);
    EXPECT_EQ(shift.refused(listed("LS", "", Role::ShiftLead, std::nullopt)),
              RefusalCode::NoPerson);
    EXPECT_EQ(shift.refused(listed("LS", std::string(81, 'x').c_str(), Role::ShiftLead, {})),
              RefusalCode::OutOfRange);
    shift.say(listed("LS", "Lena Sanz", Role::ShiftLead, std::nullopt));
    EXPECT_EQ(shift.refused(listed("AB", "Ana", Role::Vaccinator)), RefusalCode::NoPin);
    EXPECT_EQ(shift.refused(listed("AB", "Ana", Role::Vaccinator, std::nullopt)),
              RefusalCode::NoPerson);
    shift.say(SetPin{{"LS"}});
    shift.say(listed("AB", "Ana", Role::Vaccinator));
}

TEST_F(StaffTest, listingNeedsAShiftLeadWithAPin)
{
    shift.say(SetPin{{"AB"}, PersonId{"LS"}});
    EXPECT_EQ(shift.refused(listed("NN", "Nuria", Role::Vaccinator, PersonId{"AB"})),
              RefusalCode::NotAllowed);
    EXPECT_EQ(shift.refused(listed("NN", "Nuria", Role::Vaccinator, PersonId{"MK"})),
              RefusalCode::NoPin);
    EXPECT_EQ(shift.refused(listed("NN", "Nuria", Role::Vaccinator, PersonId{"ZZ"})),
              RefusalCode::NoSuchPerson);
    EXPECT_EQ(shift.refused(listed("AB", "Ana Brun", Role::Vaccinator)),
              RefusalCode::NothingChanges);
}

TEST_F(StaffTest, theLastShiftLeadWhoCanSignStays)
{
    EXPECT_EQ(shift.refused(departed("LS", "Lena Sanz", Role::ShiftLead)), RefusalCode::NotAllowed);
    EXPECT_EQ(shift.refused(listed("LS", "Lena Sanz", Role::Vaccinator)), RefusalCode::NotAllowed);
    shift.say(listed("EF", "Eva Font", Role::ShiftLead));
    EXPECT_EQ(shift.refused(departed("LS", "Lena Sanz", Role::ShiftLead)),
              RefusalCode::NotAllowed);  // EF has no PIN yet: nobody could sign
    shift.say(SetPin{{"EF"}});
    shift.say(departed("LS", "Lena Sanz", Role::ShiftLead));
    EXPECT_EQ(shift.refused(SetPin{{"LS"}}), RefusalCode::NoSuchPerson);
    EXPECT_EQ(shift.refused(listed("NN", "Nuria", Role::Vaccinator)), RefusalCode::NoSuchPerson);
}

TEST_F(StaffTest, theBenchIsForThoseOnTheListWhoWorkThere)
{
    EXPECT_EQ(shift.refused(OpenShift{"Europe/Amsterdam", {"ZZ"}}), RefusalCode::NoSuchPerson);
    EXPECT_EQ(shift.refused(OpenShift{"Europe/Amsterdam", {"QA"}}), RefusalCode::NotAllowed);
    shift.open();  // AB, without any PIN
    EXPECT_EQ(shift.refused(TakeDuty{{"QA"}}), RefusalCode::NotAllowed);
    shift.say(TakeDuty{{"MK"}});
    EXPECT_EQ(shift.recorder.events.back().person->proof, Proof::Claimed);
}

// A tap of whoever is at the bench does not undo what a lead has signed; a bag may be held anew.
TEST_F(StaffTest, whatALeadDecidedIsNeitherTakenBackNorCorrected)
{
    shift.open().readyBag("B1").say(HoldBag{BagId{"B1"}, HoldReason::Leak, {}});
    shift.say(ReleaseBag{BagId{"B1"}, {"LS"}, "dry"});
    const Seq released = shift.bench().lastSeq;
    EXPECT_EQ(shift.refused(TakeBack{"slip"}), RefusalCode::NothingToTakeBack)
        << "nor the hold that it decided on";
    shift.say(HoldBag{BagId{"B1"}, HoldReason::Colour, {}});
    shift.say(TakeBack{"slip"});
    EXPECT_FALSE(shift.bench().bag({"B1"})->held());
    EXPECT_EQ(shift.refused(TakeBack{"slip"}), RefusalCode::NothingToTakeBack);
    EXPECT_EQ(shift.refused(Correct{{released}, "bag", "B2", "slip"}), RefusalCode::NoSuchField);
}

TEST_F(StaffTest, onlyAShiftLeadDisposesOfAHeldBagOrAllowsALot)
{
    shift.open().readyBag("B1").say(HoldBag{BagId{"B1"}, HoldReason::Leak, {}});
    shift.say(SetPin{{"AB"}, PersonId{"LS"}});
    shift.say(listed("EF", "Eva Font", Role::ShiftLead));  // without a PIN
    EXPECT_EQ(shift.refused(ReleaseBag{BagId{"B1"}, {"AB"}, "checked"}), RefusalCode::NotAllowed);
    EXPECT_EQ(shift.refused(ReleaseBag{BagId{"B1"}, {"ZZ"}, "checked"}), RefusalCode::NoSuchPerson);
    EXPECT_EQ(shift.refused(ReleaseBag{BagId{"B1"}, {"EF"}, "checked"}), RefusalCode::NoPin);
    shift.say(ReleaseBag{BagId{"B1"}, {"LS"}, "checked"});
    EXPECT_EQ(sayer(), kLead);

    const Stock lot = ampoulesOf(kThree, {"K40"});
    shift.say(Receive{{test::ampoules("K40", 4)}});
    shift.say(QuarantineLot{lot, {}, "certificate missing"});
    EXPECT_EQ(shift.refused(AllowLot{lot, {"EF"}, "telephoned"}), RefusalCode::NoPin);
    shift.say(AllowLot{lot, {"LS"}, "telephoned"});
    EXPECT_EQ(sayer(), kLead);
    EXPECT_EQ(shift.refused(ReleaseLot{lot, {"EF"}, "seen"}), RefusalCode::NoPin);
    shift.say(ReleaseLot{lot, {"LS"}, "seen"});
    EXPECT_EQ(sayer(), kLead);
}

// Nobody's list stands in the way of a frozen ampoule: it goes on, by nobody, until duty is taken.
TEST_F(StaffTest, whoMayWorkHereNoLongerIsNotOnDutyAndTheBenchGoesOn)
{
    shift.open().readyBag("B1").at(60).say(out({1}));
    shift.say(departed("MK", "Mira Kolar", Role::Vaccinator));
    EXPECT_EQ(shift.bench().onDuty->id, PersonId{"AB"});
    shift.say(listed("AB", "Ana Brun", Role::Auditor));
    EXPECT_FALSE(shift.bench().onDuty);
    shift.at(66).say(moved(Step::Bath));
    EXPECT_FALSE(sayer());
    shift.at(140).say(moved(Step::Bagged));

    EXPECT_EQ(shift.refused(TakeDuty{{"AB"}}), RefusalCode::NotAllowed);
    shift.say(TakeDuty{{"LS"}});
    shift.say(SetPin{{"QA"}, PersonId{"QA"}});
    shift.say(listed("QA", "Quim Abad", Role::ShiftLead));
    shift.say(ListPerson{departed("LS", "Lena Sanz", Role::ShiftLead).as, PersonId{"QA"}});
    EXPECT_FALSE(shift.bench().onDuty);
    EXPECT_FALSE(restored({}, shift.recorder.events).bench.onDuty);
}

// By the old one or a shift lead's; only a lead begins without, and is not called proven for it.
TEST_F(StaffTest, aNewPinIsProvenByWhoeverProvesIt)
{
    shift.open();
    EXPECT_EQ(shift.refused(SetPin{{"AB"}, {}}), RefusalCode::NotAllowed);
    EXPECT_EQ(shift.refused(SetPin{{"AB"}, PersonId{"AB"}}), RefusalCode::NoPin);
    EXPECT_EQ(shift.refused(SetPin{{"AB"}, PersonId{"QA"}}), RefusalCode::NotAllowed);
    shift.say(SetPin{{"AB"}, PersonId{"LS"}});
    EXPECT_EQ(sayer(), kLead);
    shift.say(SetPin{{"AB"}, PersonId{"AB"}});
    EXPECT_EQ(sayer(), (Person{{"AB"}, Proof::Proven}));
    shift.say(SetPin{{"LS"}, {}});
    EXPECT_EQ(sayer()->proof, Proof::Claimed);
}

TEST_F(StaffTest, aVaccinatorReviewsNothing)
{
    const Seq seq = lateAmpoule();
    EXPECT_EQ(shift.refused(reviewOf(seq, "AB")), RefusalCode::NoPin);
    shift.say(SetPin{{"AB"}, PersonId{"LS"}});
    EXPECT_EQ(shift.refused(reviewOf(seq, "AB")), RefusalCode::NotAllowed);
    EXPECT_EQ(shift.refused(reviewOf(seq, "QA")), RefusalCode::NotAllowed);
    EXPECT_EQ(shift.refused(reviewOf(seq, "ZZ")), RefusalCode::NoSuchPerson);
    EXPECT_EQ(shift.bench().reviews.open().size(), 1U);
}

TEST_F(StaffTest, aReviewNeedsACauseAndADeviation)
{
    const Seq seq = lateAmpoule();
    ReviewDeviation empty = reviewOf(seq);
    empty.as.cause.clear();
    EXPECT_EQ(shift.refused(empty), RefusalCode::ReasonMissing);
    EXPECT_EQ(shift.refused(reviewOf(seq + 1)), RefusalCode::NoSuchDeviation);
    EXPECT_EQ(shift.refused(reviewOf(0)), RefusalCode::NoSuchDeviation);
}

TEST_F(StaffTest, aReviewAndItsSignatureAreOneProvenTap)
{
    const Seq seq = lateAmpoule();
    const Taken taken = shift.say(reviewOf(seq));
    EXPECT_THAT(shift.kindsFrom(taken.first), ElementsAre("deviation.reviewed", "record.signed"));
    const auto signature = shift.all<RecordSigned>().back();
    EXPECT_EQ(signature.meaning, Meaning::Reviewed);
    EXPECT_THAT(signature.of, ElementsAre(seq));
    for (const Event& event : shift.recorder.events) {
        if (event.seq >= taken.first) {
            EXPECT_EQ(event.person, (Person{{"LS"}, Proof::Proven}));
        }
    }
    EXPECT_EQ(shift.bench().onDuty->id, PersonId{"AB"});  // the bench is still theirs
    EXPECT_EQ(shift.refused(reviewOf(seq)), RefusalCode::NothingChanges);
    ReviewDeviation other = reviewOf(seq);
    other.as.cause = "interrupted";
    shift.say(other);
}

TEST_F(StaffTest, whatIsSignedHasToBeOnRecord)
{
    const Seq last = shift.bench().lastSeq;
    EXPECT_EQ(shift.refused(Sign{{"LS"}, Meaning::Reviewed, {last + 5}, {}}),
              RefusalCode::OutOfRange);
    EXPECT_EQ(shift.refused(Sign{{"LS"}, Meaning::Done, {0}, {}}), RefusalCode::OutOfRange);
    EXPECT_EQ(shift.refused(Sign{{"AB"}, Meaning::Done, {}, {}}), RefusalCode::NoPin);
    EXPECT_EQ(shift.refused(Sign{{"QA"}, Meaning::Reviewed, {}, {}}), RefusalCode::NotAllowed);
    EXPECT_EQ(shift.refused(Sign{{"QA"}, Meaning::Approved, {}, {}}), RefusalCode::NotAllowed);
    shift.say(Sign{{"QA"}, Meaning::Witnessed, {1}, "saw the seal"});
    shift.say(Sign{{"LS"}, Meaning::Reviewed, {1, last}, {}});
}

TEST_F(StaffTest, aNoteIsCommentedByTheLeadAndNeverEdited)
{
    const Seq seq = note().first;
    EXPECT_EQ(shift.refused(CommentNote{{"LS"}, {seq - 1, "?"}}), RefusalCode::NoSuchNote);
    EXPECT_EQ(shift.refused(CommentNote{{"LS"}, {seq, ""}}), RefusalCode::ReasonMissing);
    EXPECT_EQ(shift.refused(CommentNote{{"QA"}, {seq, "why?"}}), RefusalCode::NotAllowed);
    shift.say(CommentNote{{"LS"}, {seq, "canes are labelled now"}});
    EXPECT_THAT(
        shift.bench().reviews.comments.at(seq),
        ElementsAre(testing::AllOf(testing::Field(&NoteComment::text, "canes are labelled now"),
                                   testing::Field(&NoteComment::by, PersonId{"LS"}))));
    EXPECT_EQ(shift.refused(Correct{{seq}, "text", "never said", "tidied"}),
              RefusalCode::NoSuchField);
}

TEST_F(StaffTest, aNoteOfAnEarlierShiftIsCommentedToo)
{
    const Seq seq = note().first;
    const Seq struck = shift.readyBag("B1").bench().lastSeq;
    shift.say(TakeBack{"a slip"});
    EXPECT_EQ(shift.refused(CommentNote{{"LS"}, {struck, "?"}}), RefusalCode::NoSuchNote);
    shift.say(TakeBagDown{{}, DownReason::Discarded, {}});
    shift.say(CloseShift{});
    shift.at(86'400).open();
    EXPECT_EQ(shift.refused(CommentNote{{"LS"}, {0, "?"}}), RefusalCode::NoSuchNote);
    EXPECT_EQ(shift.refused(CommentNote{{"LS"}, {shift.bench().lastSeq, "?"}}),
              RefusalCode::NoSuchNote);
    EXPECT_EQ(shift.refused(CommentNote{{"LS"}, {shift.bench().lastSeq + 1, "?"}}),
              RefusalCode::NoSuchNote);
    shift.say(CommentNote{{"LS"}, {seq, "canes are labelled now"}});
    EXPECT_EQ(shift.all<NoteCommented>().back().of, seq);
}

// A signature is not undone by whoever taps next, nor is a wrong PIN forgotten.
TEST_F(StaffTest, takeBackGoesPastEverythingThatWasProven)
{
    const Seq seq = lateAmpoule();
    const Taken mixed = shift.say(MixBag{});
    shift.say(reviewOf(seq));
    shift.say(RefusePin{{"LS"}});
    shift.say(listed("NN", "Nuria Nadal", Role::Vaccinator));
    shift.say(TakeBack{"not mixed"});
    EXPECT_THAT(shift.all<FactTakenBack>().back().seqs, ElementsAre(mixed.first));
    EXPECT_TRUE(shift.bench().reviews.deviations.at(seq).reviewed);
    EXPECT_EQ(shift.bench().people.find({"LS"})->refused, 1);
    EXPECT_TRUE(shift.bench().people.find({"NN"}));
}

TEST_F(StaffTest, noCorrectionTouchesWhatWasProven)
{
    const Seq seq = lateAmpoule();
    const Taken review = shift.say(reviewOf(seq));
    for (const Seq of : {review.first, review.last})
        EXPECT_EQ(shift.refused(Correct{{of}, "at", shift.text(60), "earlier"}),
                  RefusalCode::NoSuchField);
}

// --- cards ---------------------------------------------------------------------------------------

std::shared_ptr<const Card> nextCard() { return cardWith(R"({"version": 2})"); }

TEST_F(StaffTest, aCardHoldsFromTheNextBagAfterItsApproval)
{
    shift.open();
    const CardHash first = shift.bench().card->hash(), second = nextCard()->hash();
    shift.say(AdoptCard{nextCard()->document()});
    EXPECT_EQ(unapproved(shift.bench())->hash(), second);
    shift.readyBag("B1");
    EXPECT_EQ(shift.bench().bag({"B1"})->card->hash(), first);

    shift.say(SetPin{{"AB"}, PersonId{"LS"}});
    EXPECT_EQ(shift.refused(ApproveCard{{"AB"}, second}), RefusalCode::NotAllowed);
    EXPECT_EQ(shift.refused(ApproveCard{{"LS"}, {"0000"}}), RefusalCode::NoCard);
    const Taken approval = shift.say(ApproveCard{{"LS"}, second});
    EXPECT_THAT(shift.kindsFrom(approval.first), ElementsAre("card.approved", "record.signed"));
    EXPECT_FALSE(unapproved(shift.bench()));
    EXPECT_EQ(shift.bench().card->hash(), first);
    shift.readyBag("B2");
    EXPECT_EQ(shift.bench().bag({"B2"})->card->hash(), second);
    EXPECT_EQ(shift.bench().bag({"B1"})->card->hash(), first);
    EXPECT_EQ(shift.refused(ApproveCard{{"LS"}, second}), RefusalCode::NothingChanges);
}

TEST_F(StaffTest, anUnapprovedCardWaitsOverShifts)
{
    const CardHash first = shift.bench().card->hash(), second = nextCard()->hash();
    shift.say(AdoptCard{nextCard()->document()});
    EXPECT_EQ(shift.bench().card->hash(), first);
    shift.open().say(CloseShift{});
    shift.at(86'400).open();
    EXPECT_EQ(shift.bench().card->hash(), first);
    EXPECT_EQ(unapproved(shift.bench())->hash(), second);
    shift.say(CloseShift{});
    shift.say(ApproveCard{{"LS"}, second});
    EXPECT_EQ(shift.bench().card->hash(), second);
    EXPECT_EQ(restored({}, shift.recorder.events).bench.card->hash(), second);
}

TEST_F(StaffTest, aCardApprovedWithoutAnotherBagHoldsInTheNextShift)
{
    const CardHash second = nextCard()->hash();
    shift.open();
    shift.say(AdoptCard{nextCard()->document()});
    shift.say(ApproveCard{{"LS"}, second});
    shift.say(CloseShift{});
    EXPECT_EQ(cardOfNextBag(shift.bench())->hash(), second);
    shift.at(86'400).open();
    EXPECT_EQ(shift.bench().card->hash(), second);
    EXPECT_EQ(shift.all<ShiftOpened>().back().card, second);
}

TEST(CardTest, whereNobodyIsListedACardNeedsNoSignature)
{
    BenchShift shift;
    shift.open();
    shift.say(AdoptCard{nextCard()->document()});
    EXPECT_EQ(shift.refused(ApproveCard{{"LS"}, nextCard()->hash()}), RefusalCode::NoSuchPerson);
    shift.readyBag("B1");
    EXPECT_EQ(shift.bench().card->hash(), nextCard()->hash());
}

}  // namespace
}  // namespace bathside::test
