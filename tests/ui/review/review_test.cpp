// The review page, by real taps to the recorded facts. Sizes as in tests/ui/bench/walk_test.cpp.

#include "ui/text/review.h"

#include <algorithm>

#include <gmock/gmock.h>

#include "core/base/rfc3339.h"
#include "core/record/cases.h"
#include "tests/support/cards.h"
#include "tests/ui/review/review_stand.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/frame/scan_notice.h"
#include "ui/record/field_sheet.h"
#include "ui/review/case_tile.h"
#include "ui/review/course_picture.h"

namespace bathside::test {
namespace {

using testing::ElementsAre;

class ReviewPageTest : public testing::Test {
protected:
    ReviewPageTest() : pages(kTenInch, QStringLiteral("en"))
    {
        liveThroughDeviations(pages);
        pages.show(ui::Frame::kReview);
    }

    Stand& stand() { return pages.stand(); }
    /// The open deviation of that limit and subject.
    Seq seqOf(LimitName limit, const char* subject, bool carried = false)
    {
        for (const ReviewCase& one : reviewCases(pages.bench())) {
            if (one.deviation && one.isCarried == carried && one.deviation->fact.limit == limit &&
                toText(one.deviation->fact.subject) == subject)
                return one.deviation->seq;
        }
        ADD_FAILURE() << "no such case: " << subject;
        return 0;
    }
    void tapCase(Seq seq)
    {
        const QString place = QStringLiteral("review.case.%1").arg(seq);
        for (int page = 0; page < 3 && !stand().target(place); ++page)
            stand().tap(QStringLiteral("review.more"));
        stand().tap(place);
    }
    /// Where what is asked about the late ampoule is put off.
    void toBench()
    {
        stand().tap(QStringLiteral("review.bench"));
        if (stand().target(QStringLiteral("ask.later")))
            stand().tap(QStringLiteral("ask.later"));
    }
    /// Why what was scanned last was refused; empty: it was not.
    QString scanNotice()
    {
        const auto* notice =
            stand().frame().findChild<ui::ScanNotice*>(QStringLiteral("scan-notice"));
        EXPECT_TRUE(notice->fits());
        return notice->isVisible() ? notice->words().why : QString();
    }
    template <typename F>
    std::vector<F> all()
    {
        std::vector<F> found;
        for (const Event& event : stand().kept().all) {
            if (const F* fact = std::get_if<F>(&event.fact))
                found.push_back(*fact);
        }
        return found;
    }
    const Reviewed* reviewOf(Seq seq)
    {
        const auto& found = pages.bench().reviews.deviations.at(seq).reviewed;
        return found ? &*found : nullptr;
    }
    /// As its last events have it.
    Event last(int back = 0)
    {
        return stand().kept().all.at(stand().kept().all.size() - 1 -
                                     static_cast<std::size_t>(back));
    }

    ReviewStand pages;
};

TEST_F(ReviewPageTest, isTwoTapsFromTheIdleBench)
{
    toBench();
    stand().taps({"more", "ask.page:review"});
    EXPECT_TRUE(stand().target(QStringLiteral("review.bench")));
}

TEST_F(ReviewPageTest, everyCaseIsThereTheBagOnHoldFirstAndYesterdaysToo)
{
    std::vector<std::string> words;
    for (const ReviewCase& one : reviewCases(pages.bench()))
        words.push_back(one.deviation ? std::string(nameOf(one.deviation->fact.limit)) : "held");
    EXPECT_THAT(words, ElementsAre("held", "in use", "exposure", "diluent", "exposure"));
    EXPECT_TRUE(stand().target(QStringLiteral("review.held.B3")));
    EXPECT_TRUE(seqOf(LimitName::Exposure, "ampoule:1/1", true));
}

TEST_F(ReviewPageTest, aReviewIsSignedByPinAndStandsOnRecord)
{
    const Seq seq = seqOf(LimitName::InUse, "bag:B1");
    tapCase(seq);
    stand().taps({"review.judge", "ask.plan too tight", "ask.plan changed", "ask.use"});
    EXPECT_FALSE(reviewOf(seq));
    pages.pin("4071");

    const Reviewed* review = reviewOf(seq);
    ASSERT_TRUE(review);
    EXPECT_EQ(review->cause, "plan too tight");
    EXPECT_EQ(review->action, "plan changed; bag: use");
    EXPECT_TRUE(review->isSigned);
    EXPECT_EQ(last().person, (Person{{"LS"}, Proof::Proven}));
    EXPECT_EQ(all<RecordSigned>().back().meaning, Meaning::Reviewed);
    EXPECT_EQ(all<RecordSigned>().back().words, "bag B1");
    EXPECT_TRUE(pages.notice("review.notice").contains(QStringLiteral("signed by LS, Lena Sanz")))
        << pages.notice("review.notice").toStdString();
    EXPECT_TRUE(pages.bench().onDuty->id == PersonId{"MK"});
}

TEST_F(ReviewPageTest, aPersonsCodeSaysWhoSignsAndTheirPinSignsIt)
{
    listSecondLead(pages);
    tapCase(seqOf(LimitName::InUse, "bag:B1"));
    stand().taps({"review.judge", "ask.plan too tight", "ask.plan changed", "ask.use"});
    ASSERT_TRUE(stand().target(QStringLiteral("ask.signer:EF")));
    pages.badge("MK");
    EXPECT_TRUE(scanNotice().contains(QStringLiteral("not for MK")));
    pages.badge("EF");
    EXPECT_TRUE(all<RecordSigned>().empty());
    pages.pin("5180");
    EXPECT_EQ(last().person, (Person{{"EF"}, Proof::Proven}));
    EXPECT_EQ(all<RecordSigned>().size(), 1U);
    EXPECT_EQ(pages.bench().onDuty->id, PersonId{"MK"});
}

TEST_F(ReviewPageTest, whereNobodyIsAskedAPersonsCodeIsRefusedAndTakesNoDuty)
{
    const std::size_t before = stand().kept().all.size();
    for (const char* page : {ui::Frame::kReview, ui::Frame::kPeople, ui::Frame::kRecord}) {
        pages.show(page);
        const int refusals = stand().heard().refusals;
        pages.badge("LS");
        EXPECT_EQ(stand().heard().refusals, refusals + 1) << page;
        EXPECT_TRUE(scanNotice().contains(QStringLiteral("who signs"))) << page;
    }
    EXPECT_EQ(stand().kept().all.size(), before);
    EXPECT_EQ(pages.bench().onDuty->id, PersonId{"MK"});
}

TEST_F(ReviewPageTest, theBenchSaysWhenNobodyIsOnDutyAnyMore)
{
    toBench();
    stand().say(ListPerson{
        {.person = {"MK"}, .name = "Mira Kolar", .role = Role::Auditor, .departed = false},
        PersonId{"LS"}});
    const auto* more = qobject_cast<ui::TapButton*>(stand().target(QStringLiteral("more")));
    EXPECT_EQ(more->line(), QStringLiteral("on duty: –"));
    EXPECT_TRUE(more->fits());
    stand().taps({"more", "ask.duty", "ask.person:LS"});
    EXPECT_EQ(pages.bench().onDuty->id, PersonId{"LS"});
}

TEST_F(ReviewPageTest, theCaseSaysWhatWasTouched)
{
    tapCase(seqOf(LimitName::InUse, "bag:B1"));
    const auto* sheet = stand().frame().findChild<ui::FieldSheet*>(QStringLiteral("review.sheet"));
    ASSERT_TRUE(sheet && sheet->isVisible());
    QStringList fields;
    for (const ui::Field& field : sheet->fields())
        fields.append(field.name + u'=' + field.value);
    EXPECT_TRUE(fields.contains(QStringLiteral("Birds touched=1,900")))
        << fields.join(u'\n').toStdString();
    EXPECT_TRUE(fields.contains(QStringLiteral("Bag=B1, taken down")));
    EXPECT_TRUE(fields.contains(QStringLiteral("On duty=MK, Mira Kolar")));
}

TEST_F(ReviewPageTest, wordsOfOnesOwnAndANoteForTheBag)
{
    const Seq seq = seqOf(LimitName::Exposure, "ampoule:2/1");
    tapCase(seq);
    stand().taps({"review.judge", "ask.other"});
    pages.spell("DOOR OPEN");
    stand().taps({"ask.other"});
    pages.spell("DOOR SHUT");
    stand().tap(QStringLiteral("ask.use with note"));
    pages.spell("LINE A");
    pages.pin("4071");
    const Reviewed* review = reviewOf(seq);
    ASSERT_TRUE(review);
    EXPECT_EQ(review->words, "DOOR OPEN");
    EXPECT_EQ(review->action, "DOOR SHUT; bag: use with note: LINE A");
}

TEST_F(ReviewPageTest, aHeldBagIsReleasedBySignature)
{
    stand().taps({"review.held.B3", "review.judge", "ask.use"});
    EXPECT_TRUE(pages.bench().bag({"B3"})->held());
    pages.pin("4071");
    EXPECT_FALSE(pages.bench().bag({"B3"})->held());
    const auto released = all<BagReleased>();
    ASSERT_EQ(released.size(), 1U);
    EXPECT_EQ(released[0].by, PersonId{"LS"});
    EXPECT_EQ(all<RecordSigned>().back().words, "bag B3: use");
    EXPECT_FALSE(stand().target(QStringLiteral("review.held.B3")));
}

TEST_F(ReviewPageTest, aBagIsDiscardedWithWhatIsLeftInIt)
{
    const Seq seq = seqOf(LimitName::Diluent, "bag:B3");
    tapCase(seq);
    stand().taps({"review.judge", "ask.tool or bath", "ask.none needed", "ask.discard"});
    pages.pin("395");  // mL, on the same pad
    pages.pin("4071");
    const Bag* bag = pages.bench().bag({"B3"});
    ASSERT_TRUE(bag->down);
    EXPECT_EQ(bag->down->why, DownReason::Discarded);
    EXPECT_EQ(bag->down->left, MicroLitres{395'000});
    EXPECT_EQ(reviewOf(seq)->action, "none needed; bag: discard");
    EXPECT_FALSE(bag->held());
    EXPECT_FALSE(stand().target(QStringLiteral("review.held.B3")));
    EXPECT_FALSE(stand().model().wouldTake(TakeBack{"slip"})) << "a tap undid what was signed";
}

// Nor where there was no hold to decide on: what goes back is what was tapped before.
TEST_F(ReviewPageTest, aDiscardThatWasSignedIsNotTakenBack)
{
    const Seq seq = seqOf(LimitName::Exposure, "ampoule:2/1");
    tapCase(seq);
    stand().taps({"review.judge", "ask.hands not ready", "ask.none needed", "ask.discard"});
    pages.pin("395");
    pages.pin("4071");
    ASSERT_TRUE(pages.bench().bag({"B2"})->down);
    stand().say(TakeBack{"slip"});
    EXPECT_TRUE(pages.bench().bag({"B2"})->down);
}

// Poured away by whoever stood there; it never hung, so nothing of it was used.
TEST_F(ReviewPageTest, aHeldBagThatIsDownStillWaitsForTheLead)
{
    stand().say(TakeBagDown{BagId{"B3"}, DownReason::Empty, {}});
    stand().taps({"review.held.B3", "review.judge"});
    EXPECT_FALSE(stand().target(QStringLiteral("ask.use")));
    stand().tap(QStringLiteral("ask.discard"));
    pages.pin("4071");
    EXPECT_EQ(all<BagReleased>().back().why, "discard");
    EXPECT_EQ(all<BagDown>().back().why, DownReason::Empty);
    EXPECT_FALSE(stand().target(QStringLiteral("review.held.B3")));
}

TEST_F(ReviewPageTest, aHoldIsDecidedOnTheDayAfter)
{
    const Seq held = reviewCases(pages.bench()).front().seq();
    stand().say(TakeBagDown{BagId{"B2"}, DownReason::Finished, {}});
    stand().say(TakeBagDown{BagId{"B3"}, DownReason::Empty, {}});
    stand().say(CloseShift{});
    stand().say(OpenShift{"Europe/Madrid", {"MK"}});
    stand().tap(QStringLiteral("review.case.%1").arg(held));
    stand().taps({"review.judge", "ask.discard"});
    pages.pin("4071");
    EXPECT_EQ(all<BagReleased>().back().of, held);
    EXPECT_TRUE(pages.bench().reviews.holds.empty());
}

// The same limit, ampoule and bag on two days: day and entry tell them apart.
TEST_F(ReviewPageTest, twoOfShiftsBeforeDoNotReadAlike)
{
    const auto read = [](Seq seq, const char* at) {
        ReviewCase one;
        one.deviation = DeviationOnRecord{
            .seq = seq,
            .at = {.wall = fromRfc3339(at).value()},
            .fact = {LimitName::Exposure, subjectOf(AmpouleRef{1, 1}), BagId{"B1"}, 2000, {}},
            .onDuty = {},
            .reviewed = {}};
        one.isCarried = true;
        ui::CaseTile tile{QString()};
        tile.setCase(one, {}, "Europe/Madrid");
        return QStringLiteral("%1|%2|%3")
            .arg(tile.word(), tile.line(), ui::fullTitleOf(one, "Europe/Madrid"));
    };
    const QString first = read(37, "2026-03-04T23:30:00Z");
    EXPECT_EQ(first.count(QStringLiteral("2026-03-05")), 2) << first.toStdString();
    EXPECT_EQ(first.count(QStringLiteral("entry 37")), 2) << first.toStdString();
    EXPECT_EQ(first.count(QStringLiteral("bag B1")), 2) << first.toStdString();
    EXPECT_NE(first, read(52, "2026-03-04T23:30:00Z"));
    EXPECT_NE(first, read(37, "2026-03-05T23:30:00Z"));
}

TEST_F(ReviewPageTest, whatIsSignedNamesTheBagAndWhatWasDoneWithIt)
{
    tapCase(seqOf(LimitName::InUse, "bag:B1"));
    stand().taps({"review.judge", "ask.interrupted", "ask.none needed", "ask.use"});
    const auto labels = stand().frame().findChildren<ui::Label*>();
    EXPECT_TRUE(std::ranges::any_of(labels, [](const ui::Label* label) {
        return label->text().contains(QStringLiteral("in use, bag B1: it was used."));
    }));
}

// Its bag, birds and steps are of the shift in which it came up, and not of today's B1.
TEST_F(ReviewPageTest, aCaseOfAShiftBeforeIsToldAsThatShiftKnewIt)
{
    const Seq seq = seqOf(LimitName::Exposure, "ampoule:1/1", true);
    const auto valueOf = [&](const char* name) {
        for (const ui::Field& field :
             stand().frame().findChild<ui::FieldSheet*>(QStringLiteral("review.sheet"))->fields()) {
            if (field.name == QLatin1String(name))
                return field.value;
        }
        return QString();
    };
    const auto picture = [&] {
        return stand().frame().findChild<ui::CoursePicture*>()->accessibleName();
    };
    tapCase(seq);
    EXPECT_THAT(pages.shifts().asked, ElementsAre(seq));
    EXPECT_TRUE(valueOf("From").contains(QStringLiteral("being read")))
        << valueOf("From").toStdString();
    EXPECT_EQ(valueOf("Birds touched"), QString());
    EXPECT_FALSE(picture().contains(QStringLiteral("in bath"))) << picture().toStdString();
    pages.shifts().answer();
    EXPECT_EQ(valueOf("Bag"), QStringLiteral("B1, taken down"));
    EXPECT_EQ(valueOf("Birds touched"), QStringLiteral("none: it never hung on a line"));
    EXPECT_FALSE(valueOf("From").contains(QStringLiteral("record page")));
    EXPECT_TRUE(picture().contains(QStringLiteral("in bath"))) << picture().toStdString();
    stand().tap(QStringLiteral("review.back"));
    tapCase(seq);
    pages.shifts().trouble = StoreTrouble{StoreFault::Damaged, 0};
    pages.shifts().answer();
    EXPECT_TRUE(valueOf("From").contains(QStringLiteral("record page")));
    EXPECT_FALSE(picture().contains(QStringLiteral("in bath")));
}

TEST_F(ReviewPageTest, yesterdaysCaseIsReviewedToday)
{
    const Seq seq = seqOf(LimitName::Exposure, "ampoule:1/1", true);
    tapCase(seq);
    stand().taps({"review.judge", "ask.hands not ready", "ask.shown again", "ask.use"});
    pages.pin("4071");
    EXPECT_TRUE(reviewOf(seq));
}

TEST_F(ReviewPageTest, aWrongPinIsSaidNotedAndAskedAgain)
{
    const Seq seq = seqOf(LimitName::InUse, "bag:B1");
    tapCase(seq);
    stand().taps({"review.judge", "ask.interrupted", "ask.none needed", "ask.use"});
    pages.pin("9314");  // MK's
    EXPECT_EQ(all<PinRefused>().size(), 1U);
    EXPECT_TRUE(pages.notice("review.notice").contains(QStringLiteral("not the PIN of LS")));
    EXPECT_FALSE(reviewOf(seq));
    pages.pin("4071");
    EXPECT_TRUE(reviewOf(seq));
    EXPECT_EQ(pages.bench().people.find({"LS"})->refused, 0);
}

TEST_F(ReviewPageTest, afterFourWrongPinsEvenTheRightOneWaits)
{
    const Seq seq = seqOf(LimitName::InUse, "bag:B1");
    tapCase(seq);
    stand().taps({"review.judge", "ask.interrupted", "ask.none needed", "ask.use"});
    for (int i = 0; i < 4; ++i)
        pages.pin("1212");
    EXPECT_EQ(all<PinRefused>().size(), 4U);
    pages.pin("4071");  // about 2 s later, of 5
    EXPECT_FALSE(reviewOf(seq));
    EXPECT_EQ(all<PinRefused>().size(), 4U);
    EXPECT_TRUE(pages.notice("review.notice").contains(QStringLiteral("Too many wrong PINs")))
        << pages.notice("review.notice").toStdString();
    stand().pass(std::chrono::seconds(6));
    pages.pin("4071");
    EXPECT_TRUE(reviewOf(seq));
}

TEST_F(ReviewPageTest, aNewCardIsShownBesideTheOldAndApproved)
{
    EXPECT_FALSE(stand().target(QStringLiteral("review.card")));
    stand().note(
        AdoptCard{cardWith(R"({"version": 2, "limits": {"thaw": {"at_ms": 85000}}})")->document()});
    stand().tap(QStringLiteral("review.card"));
    const auto* sheet = stand().frame().findChild<ui::FieldSheet*>(QStringLiteral("review.sheet"));
    ASSERT_EQ(sheet->fields().size(), 2);
    EXPECT_EQ(sheet->fields().first().value, QStringLiteral("90000 becomes 85000"));
    stand().tap(QStringLiteral("review.approve"));
    pages.pin("4071");
    EXPECT_EQ(all<CardApproved>().size(), 1U);
    EXPECT_FALSE(stand().target(QStringLiteral("review.card")));
}

TEST_F(ReviewPageTest, theCardsOwnCausesAreOfferedInItsWords)
{
    stand().note(AdoptCard{cardWith(R"({"version": 2, "review": {"source": "the site", "causes": [
        {"cause": "door", "words": {"en": "door stood open", "es": "puerta abierta"}}]}})")
                               ->document()});
    stand().tap(QStringLiteral("review.card"));
    stand().tap(QStringLiteral("review.approve"));
    pages.pin("4071");
    stand().say(StartBag{{"B4"}, MicroLitres{400'000}, {"D-0417"}, MilliCelsius{29'500}});
    const Seq seq = seqOf(LimitName::Diluent, "bag:B4");
    tapCase(seq);
    stand().tap(QStringLiteral("review.judge"));
    EXPECT_FALSE(stand().target(QStringLiteral("ask.interrupted")));
    EXPECT_TRUE(stand().target(QStringLiteral("ask.other")));
    stand().taps({"ask.door", "ask.none needed", "ask.use"});
    pages.pin("4071");
    EXPECT_EQ(reviewOf(seq)->cause, "door");
    EXPECT_EQ(ui::causeText("door", pages.bench().card.get(), "en"),
              QStringLiteral("door stood open"));
}

TEST_F(ReviewPageTest, theBenchLeadsHereToReleaseABag)
{
    toBench();
    stand().taps({"more", "ask.bags", "ask.bag:B3", "ask.released"});
    EXPECT_TRUE(stand().target(QStringLiteral("review.held.B3")));
}

TEST_F(ReviewPageTest, theBenchIsWorkedByTappingAName)
{
    toBench();
    stand().taps({"more", "ask.duty", "ask.person:LS"});
    EXPECT_EQ(pages.bench().onDuty->id, PersonId{"LS"});
    EXPECT_EQ(last().person->proof, Proof::Claimed);
}

// --- how it looks -------------------------------------------------------------------------------

struct Look {
    const char* name;
    std::vector<const char*> taps;
    Panel panel;
    const char* language;
};

std::vector<Look> looks()
{
    const std::vector<std::pair<const char*, std::vector<const char*>>> sights{
        {"list", {}},
        {"held", {"review.held.B3"}},
        {"worst", {"*"}},
        {"cause", {"*", "review.judge"}},
        {"remedy", {"*", "review.judge", "ask.interrupted"}},
        {"words", {"*", "review.judge", "ask.other"}},
        {"bag", {"review.held.B3", "review.judge"}},
        {"pin", {"review.held.B3", "review.judge", "ask.use", "pad.4", "pad.0"}},
        {"people", {"@people"}},
        {"person", {"@people", "people.person.MK"}},
        {"new", {"@people", "people.add"}},
        {"forgotten", {"@people", "people.person.MK", "ask.pin"}},
    };
    std::vector<Look> all;
    for (const auto& [name, taps] : sights) {
        for (const char* language : {"en", "es"}) {
            all.push_back({name, taps, kTenInch, language});
            all.push_back({name, taps, kFifteenInch, language});
        }
    }
    return all;
}

class ReviewLook : public testing::TestWithParam<Look> {};

TEST_P(ReviewLook, everyTargetIsLargeApartAndWhole)
{
    ReviewStand pages(GetParam().panel, QString::fromLatin1(GetParam().language));
    liveThroughDeviations(pages);
    pages.show(ui::Frame::kReview);
    for (const char* tap : GetParam().taps) {
        if (std::string_view(tap) == "@people")
            pages.show(ui::Frame::kPeople);
        else if (std::string_view(tap) == "*")
            pages.stand().tap(
                QStringLiteral("review.case.%1").arg(reviewCases(pages.bench())[1].deviation->seq));
        else
            pages.stand().tap(QString::fromLatin1(tap));
    }
    expectTargetsAsTheyMustBe(pages.stand().frame());
}

INSTANTIATE_TEST_SUITE_P(Review, ReviewLook, testing::ValuesIn(looks()), [](const auto& test) {
    return std::string(test.param.name) + "_" + test.param.language + "_" + test.param.panel.name;
});

}  // namespace
}  // namespace bathside::test
