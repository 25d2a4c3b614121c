// The people page, by real taps: the first shift lead, others, PINs, a leaving.

#include <gtest/gtest.h>

#include "tests/ui/review/review_stand.h"
#include "ui/controls/banner.h"
#include "ui/theme/theme.h"

namespace bathside::test {
namespace {

class PeoplePageTest : public testing::Test {
protected:
    PeoplePageTest() : pages(kTenInch, QStringLiteral("en")) {}

    Stand& stand() { return pages.stand(); }
    void open() { pages.show(ui::Frame::kPeople); }
    const Member* member(const char* id) { return pages.bench().people.find({id}); }
    QString notice() { return pages.notice("people.notice"); }

    ReviewStand pages;
};

TEST_F(PeoplePageTest, isTwoTapsFromSetUp)
{
    pages.show(ui::Frame::kSetUp);
    stand().taps({"setup.screen", "ask.page:people"});
    EXPECT_TRUE(stand().target(QStringLiteral("people.add")));
}

TEST_F(PeoplePageTest, theBenchIsOneTapAwayAlsoWhileNobodyIsListed)
{
    open();
    EXPECT_TRUE(notice().contains(QStringLiteral("Begin with the shift lead")))
        << notice().toStdString();
    stand().tap(QStringLiteral("people.bench"));
    EXPECT_FALSE(stand().target(QStringLiteral("people.add")));
    EXPECT_TRUE(stand().target(QStringLiteral("step")));
}

TEST_F(PeoplePageTest, nothingShinesThroughAQuestionForLetters)
{
    open();
    const auto* under = stand().frame().findChild<ui::Banner*>(QStringLiteral("people.notice"));
    const QPoint end =
        under->mapTo(&stand().frame(), QPoint(under->width() * 9 / 10, under->height() / 2));
    const auto colour = [&] { return stand().frame().grab().toImage().pixelColor(end); };
    EXPECT_NE(colour(), ui::theme().palette().ground());
    stand().tap(QStringLiteral("people.add"));
    EXPECT_EQ(colour(), ui::theme().palette().ground());
}

TEST_F(PeoplePageTest, theFirstIsAShiftLeadAndSetsAPinAtOnce)
{
    open();
    stand().tap(QStringLiteral("people.add"));
    pages.spell("LS");
    pages.spell("LENA SANZ");
    EXPECT_FALSE(stand().target(QStringLiteral("ask.vaccinator")));
    stand().tap(QStringLiteral("ask.shift lead"));
    ASSERT_TRUE(member("LS"));
    EXPECT_EQ(member("LS")->role, Role::ShiftLead);
    EXPECT_FALSE(member("LS")->hasPin);

    pages.pin("1234");
    EXPECT_TRUE(notice().contains(QStringLiteral("follow each other"))) << notice().toStdString();
    pages.pin("0815");
    pages.pin("0816");
    EXPECT_TRUE(notice().contains(QStringLiteral("not the same"))) << notice().toStdString();
    EXPECT_FALSE(member("LS")->hasPin);
    pages.pin("0815");
    pages.pin("0815");
    EXPECT_TRUE(member("LS")->hasPin);
    EXPECT_TRUE(pages.pins().isRight({"LS"}, "0815"));
    EXPECT_FALSE(pages.pins().isRight({"LS"}, "815"));
}

TEST_F(PeoplePageTest, whoeverComesNextIsListedByTheLeadsPin)
{
    listStaff(pages);
    open();
    stand().tap(QStringLiteral("people.add"));
    pages.spell("NN");
    pages.spell("NURIA NADAL");
    stand().tap(QStringLiteral("ask.auditor"));
    EXPECT_FALSE(member("NN"));
    pages.pin("4071");
    ASSERT_TRUE(member("NN"));
    EXPECT_EQ(member("NN")->role, Role::Auditor);
    EXPECT_EQ(member("NN")->name, "NURIA NADAL");
    EXPECT_EQ(stand().kept().all.back().person, (Person{{"LS"}, Proof::Proven}));
}

TEST_F(PeoplePageTest, nobodyIsListedTwice)
{
    listStaff(pages);
    open();
    stand().tap(QStringLiteral("people.add"));
    pages.spell("MK");
    EXPECT_TRUE(notice().contains(QStringLiteral("on the list already"))) << notice().toStdString();
}

TEST_F(PeoplePageTest, aNewPinTakesTheOldOne)
{
    listStaff(pages);
    open();
    stand().taps({"people.person.MK", "ask.pin", "ask.known"});
    pages.pin("9314");
    pages.pin("5180");
    pages.pin("5180");
    EXPECT_TRUE(pages.pins().isRight({"MK"}, "5180"));
    EXPECT_FALSE(pages.pins().isRight({"MK"}, "9314"));
    EXPECT_TRUE(std::holds_alternative<PinSet>(stand().kept().all.back().fact));
    EXPECT_EQ(stand().kept().all.back().person, (Person{{"MK"}, Proof::Proven}));
}

TEST_F(PeoplePageTest, aForgottenPinTakesTheLeadsSignature)
{
    listStaff(pages);
    open();
    stand().taps({"people.person.MK", "ask.pin", "ask.forgotten"});
    pages.pin("4071");
    pages.pin("5180");
    pages.pin("5180");
    EXPECT_TRUE(pages.pins().isRight({"MK"}, "5180"));
    const auto* signature = std::get_if<RecordSigned>(&stand().kept().all.back().fact);
    ASSERT_TRUE(signature);
    EXPECT_EQ(signature->words, "new PIN of MK");
    EXPECT_EQ(stand().kept().all.back().person->id, PersonId{"LS"});
}

TEST_F(PeoplePageTest, aVaccinatorCannotGiveTheLeadANewPin)
{
    listStaff(pages);
    open();
    stand().taps({"people.person.LS", "ask.pin", "ask.known"});
    pages.pin("9314");
    EXPECT_TRUE(notice().contains(QStringLiteral("not the PIN of LS"))) << notice().toStdString();
    EXPECT_TRUE(pages.pins().isRight({"LS"}, "4071"));
}

TEST_F(PeoplePageTest, whatIsSaidOfAWrongPinFitsBesideThePad)
{
    listStaff(pages);
    open();
    stand().taps({"people.person.MK", "ask.pin", "ask.known"});
    for (int wrong = 0; wrong < 4; ++wrong)
        pages.pin("1357");
    EXPECT_TRUE(notice().contains(QStringLiteral("Try again in"))) << notice().toStdString();
    expectTargetsAsTheyMustBe(stand().frame());
}

TEST_F(PeoplePageTest, whereThePinsAreLostALeadBeginsAgainAndNobodyElse)
{
    listStaff(pages);
    stand().say(OpenShift{"Europe/Madrid", {"MK"}});
    pages.pins().all.clear();
    open();
    stand().taps({"people.person.MK", "ask.pin"});
    EXPECT_TRUE(notice().contains(QStringLiteral("No shift lead with a PIN")))
        << notice().toStdString();
    stand().taps({"people.person.LS", "ask.pin"});
    pages.pin("5180");
    pages.pin("5180");
    EXPECT_TRUE(pages.pins().isRight({"LS"}, "5180"));
    EXPECT_TRUE(std::holds_alternative<PinSet>(stand().kept().all.back().fact));
    EXPECT_EQ(stand().kept().all.back().person, (Person{{"MK"}, Proof::Claimed}));
}

TEST_F(PeoplePageTest, aFullDiskLosesNoPin)
{
    listStaff(pages);
    pages.pins().diskIsFull = true;
    open();
    stand().taps({"people.person.MK", "ask.pin", "ask.known"});
    pages.pin("9314");
    pages.pin("5180");
    pages.pin("5180");
    EXPECT_TRUE(notice().contains(QStringLiteral("could not be written")))
        << notice().toStdString();
    EXPECT_TRUE(pages.pins().isRight({"MK"}, "9314"));
}

TEST_F(PeoplePageTest, whoLeavesWorksHereNoMoreAndTheLastLeadStays)
{
    listStaff(pages);
    open();
    stand().taps({"people.person.MK", "ask.left"});
    pages.pin("4071");
    EXPECT_TRUE(member("MK")->departed);
    stand().taps({"people.person.LS", "ask.left"});
    pages.pin("4071");
    EXPECT_FALSE(member("LS")->departed);
}

}  // namespace
}  // namespace bathside::test
