// The checks' page, by real taps: from what is typed to what is on record. Sizes as in
// tests/ui/bench/walk_test.cpp. Figures by hand where a line says so.

#include <gtest/gtest.h>

#include "core/bench/dose.h"
#include "core/checks/injector_case.h"
#include "core/checks/vessel_described.h"
#include "tests/support/cards.h"
#include "tests/ui/checks/checks_stand.h"
#include "ui/charts/chart.h"
#include "ui/controls/banner.h"
#include "ui/controls/tap_button.h"

namespace bathside::test {
namespace {

class ChecksPageTest : public testing::Test {
protected:
    ChecksPageTest() : pages(kTenInch, QStringLiteral("en")) {}

    void open()
    {
        openWithALine(pages.stand());
        pages.show();
    }
    const Line& line() { return pages.stand().bench().lines.at({"A"}); }
    template <typename F>
    std::vector<F> all()
    {
        std::vector<F> found;
        for (const Event& event : pages.stand().kept().all) {
            if (const F* fact = std::get_if<F>(&event.fact))
                found.push_back(*fact);
        }
        return found;
    }
    QString notice()
    {
        return pages.stand()
            .frame()
            .findChild<ui::Banner*>(QStringLiteral("checks.notice"))
            ->text();
    }
    void expectTitle(const char* words)
    {
        EXPECT_TRUE(pages.title().contains(QString::fromUtf8(words)))
            << pages.title().toStdString();
    }
    void expectField(const char* words)
    {
        EXPECT_TRUE(pages.fields().contains(QString::fromUtf8(words)))
            << pages.fields().toStdString();
    }
    QString reasonOf(const char* place)
    {
        return qobject_cast<ui::TapButton*>(pages.stand().target(QString::fromLatin1(place)))
            ->reason();
    }

    ChecksStand pages;
};

TEST_F(ChecksPageTest, isTwoTapsFromTheIdleBench)
{
    openWithALine(pages.stand());
    pages.stand().taps({"more", "ask.page:checks"});
    EXPECT_TRUE(pages.stand().target(QStringLiteral("checks.bench")));
    pages.tap("checks.bench");
    EXPECT_FALSE(pages.stand().target(QStringLiteral("checks.bench")));
}

// --- the injector --------------------------------------------------------------------------------

// By hand: mean 199.28 mg, at 1.0033 mL/g 0.1999 mL: 0.0 % off.
TEST_F(ChecksPageTest, weighsTenShotsAndRecordsThemWithOneTap)
{
    open();
    pages.tap("checks.weigh");
    pages.typeAll(kTenWeights);
    expectTitle("The dose is right.");
    expectField("0.1999 mL");
    expectField("199.1 · 199.6");
    EXPECT_TRUE(all<DoseChecked>().empty());  // nothing is said before it is said
    pages.tap("checks.record");
    ASSERT_EQ(all<DoseChecked>().size(), 1U);
    const DoseChecked said = all<DoseChecked>().front();
    EXPECT_EQ(said.line.text, "A");
    EXPECT_TRUE(said.ok);
    EXPECT_EQ(injectorCaseFrom(said.measured->text)->errors.shots, 10U);
    EXPECT_TRUE(all<DeviationFound>().empty());
}

TEST_F(ChecksPageTest, whatWasWeighedOutlivesACallToTheBench)
{
    open();
    pages.tap("checks.weigh");
    pages.typeAll({"199.1", "200.2", "201"});
    pages.tap("pad.cancel");
    pages.tap("checks.bench");
    pages.show();
    expectField("199.1 · 200.2 · 201.0 mg");
    pages.tap("checks.set");
    pages.tap("ask.last");
    expectField("199.1 · 200.2 mg");
    pages.tap("checks.set");
    pages.tap("ask.anew");
    expectField("none yet");
}

// By hand: 2.3 mL of 10 shots are 0.23 mL each, 15 % too much; 3,200 birds without any check.
TEST_F(ChecksPageTest, aFailedCheckSaysWhichBirdsAreTouchedAndThatADeviationIsOnRecord)
{
    open();
    pages.tap("checks.cylinder");
    pages.typeAll({"10", "2.3", "0.1"});
    expectTitle("The dose is wrong.");
    expectField("+15.0 %");
    expectField("3,200 bird");
    pages.tap("checks.record");
    ASSERT_EQ(all<DeviationFound>().size(), 1U);
    EXPECT_EQ(all<DeviationFound>()[0].over, 3'200);
    expectTitle("failed");
    EXPECT_TRUE(pages.sheet().fields().front().value.startsWith(QStringLiteral("3,200 bird")));
    expectField("A deviation names them");

    pages.tap("checks.cylinder");
    pages.typeAll({"10", "2", "0.1"});
    pages.tap("checks.record");
    EXPECT_FALSE(doseIsInDoubt(line()));
    expectField("3,200 bird");  // still to be reviewed
    expectField("was good");
}

TEST_F(ChecksPageTest, birdsAreCountedBeforeADeviationNamesThem)
{
    open();
    pages.tap("checks.count");
    pages.type("3450");
    EXPECT_EQ(line().birds, 3'450);
    pages.tap("checks.cylinder");
    pages.typeAll({"10", "2.3", "0.1"});
    expectField("3,450 bird");
}

// By hand: 202 mg at 1.010 g/mL are 0.2 mL.
TEST_F(ChecksPageTest, weighsAnotherLiquidAndAnotherDose)
{
    open();
    pages.stand().taps({"checks.set", "ask.other"});
    pages.type("1.01");
    pages.stand().taps({"checks.set", "ask.dose"});
    pages.type("0.1");
    pages.tap("checks.weigh");
    pages.typeAll({"101", "101.1", "100.9"});
    pages.tap("pad.cancel");
    expectTitle("The dose is right.");
    expectField("1.010 g/mL");
    expectField("set: 0.100 mL");
    pages.stand().taps({"checks.set", "ask.water"});
    pages.type("18.5");
    expectField("water at 18.5");
}

TEST_F(ChecksPageTest, aLineIsChosenFirstWhereThereAreSeveral)
{
    open();
    pages.stand().say(CountBirds{LineId{"B"}, 10});
    pages.tap("checks.cylinder");
    pages.typeAll({"10", "2", "0.1"});
    EXPECT_FALSE(reasonOf("checks.record").isEmpty());
    pages.tap("checks.record");  // tells its press, and is refused in words
    EXPECT_TRUE(all<DoseChecked>().empty());
    EXPECT_FALSE(notice().isEmpty());
    pages.stand().taps({"checks.line", "ask.line:B", "checks.record"});
    ASSERT_EQ(all<DoseChecked>().size(), 1U);
    EXPECT_EQ(all<DoseChecked>()[0].line.text, "B");
}

TEST_F(ChecksPageTest, aWeightThatIsNoneIsRefusedInWords)
{
    open();
    pages.tap("checks.weigh");
    pages.type("0");
    EXPECT_TRUE(pages.stand().target(QStringLiteral("pad.set")));  // it asks on
    pages.tap("pad.cancel");
    expectField("none yet");
}

TEST_F(ChecksPageTest, withoutAShiftNothingIsRecordedAndTheReasonIsSaid)
{
    pages.show();
    pages.tap("checks.cylinder");
    pages.typeAll({"10", "2", "0.1"});
    pages.tap("checks.record");
    EXPECT_TRUE(all<DoseChecked>().empty());
    EXPECT_TRUE(notice().contains(QStringLiteral("shift"), Qt::CaseInsensitive))
        << notice().toStdString();
    expectField("0.200");  // and what was measured is still there
}

// --- the birds -----------------------------------------------------------------------------------

// Clopper & Pearson, 95 %: 97 of 100 is 91.5 to 99.4 % (R, binom.test(97, 100)); Wilks: 59 birds
// without a miss show 95 % with 95 % confidence.
TEST_F(ChecksPageTest, looksAtBirdsAndRecordsWhatTheyShow)
{
    open();
    pages.tap("checks.birds");
    expectField("59 bird");
    pages.tap("checks.looked");
    pages.typeAll({"100", "97"});
    expectTitle("Not decided");
    expectField("91.5 to 99.4 %");
    pages.tap("checks.record");
    ASSERT_EQ(all<BirdsChecked>().size(), 1U);
    EXPECT_EQ(all<BirdsChecked>()[0].looked, 100);
    EXPECT_EQ(all<BirdsChecked>()[0].good, 97);
    expectField("on record");
    pages.tap("checks.target");
    pages.type("90");
    expectTitle("Shown: at least 90.0 %");
}

TEST_F(ChecksPageTest, moreGoodBirdsThanWereLookedAtAreRefused)
{
    open();
    pages.stand().taps({"checks.birds", "checks.looked"});
    pages.typeAll({"10", "11"});
    EXPECT_TRUE(pages.stand().target(QStringLiteral("pad.set")));
    pages.tap("pad.cancel");
    EXPECT_FALSE(reasonOf("checks.record").isEmpty());
    pages.tap("checks.record");
    EXPECT_TRUE(all<BirdsChecked>().empty());
}

// --- by the card's limits ------------------------------------------------------------------------

class CheckLimitsPageTest : public ChecksPageTest {
protected:
    CheckLimitsPageTest()
    {
        pages.stand().note(AdoptCard{cardWith(R"({"version": 2, "check_limits": {
            "dose": {"systematic_per_mille": 30, "random_per_mille": 20, "source": "site rule 4",
                     "diluent_density_g_l": 1012,
                     "words": {"en": "Stop the line.", "es": "Pare la línea."}},
            "birds": {"target_per_mille": 900, "source": "site rule 5",
                      "words": {"en": "Ask a lead.", "es": "Pregunte."}}}})")
                                         ->document()});
        open();
    }
};

// By hand: 2.08 mL in 10 shots are 4.0 % more than 0.2 mL.
TEST_F(CheckLimitsPageTest, theDoseIsHeldToThemAndTheyAreShown)
{
    EXPECT_TRUE(notice().contains(QStringLiteral("those of the card"))) << notice().toStdString();
    expectField("1.012 g/mL");  // weighed: the card's diluent
    pages.tap("checks.cylinder");
    pages.typeAll({"10", "2.08", "0.1"});
    expectTitle("The dose is wrong");
    expectField("limit: ± 3.0 %");
    expectField("Limit of the card: site rule 4");
    expectField("Stop the line.");
    pages.tap("checks.record");
    ASSERT_EQ(all<DoseChecked>().size(), 1U);
    EXPECT_FALSE(all<DoseChecked>()[0].ok);
    EXPECT_EQ(injectorCaseFrom(all<DoseChecked>()[0].measured->text)->limits, (DoseLimits{3, 2}));
}

TEST_F(CheckLimitsPageTest, theBirdsAreHeldToTheirTargetWhichNobodyChanges)
{
    pages.tap("checks.birds");
    expectField("needed to show 90.0 %");
    expectField("Limit of the card: site rule 5");
    EXPECT_TRUE(reasonOf("checks.target").contains(QStringLiteral("limit of the card")));
    pages.tap("checks.target");
    EXPECT_FALSE(pages.stand().target(QStringLiteral("pad.set")));
    pages.tap("checks.looked");
    pages.typeAll({"100", "80"});
    expectTitle("Missed");
    expectField("Ask a lead.");
    pages.tap("checks.record");
    ASSERT_EQ(all<BirdsChecked>().size(), 1U);
    EXPECT_EQ(all<BirdsChecked>()[0].targetPerMille, 900);
    EXPECT_EQ(all<BirdsChecked>()[0].confidencePerMille, 950);
}

// --- the vessel ----------------------------------------------------------------------------------

TEST_F(ChecksPageTest, describesAVesselFigureByFigure)
{
    open();
    pages.stand().taps({"checks.vessel", "checks.which", "ask.new"});
    pages.spell("K");
    EXPECT_FALSE(reasonOf("checks.dip").isEmpty());
    pages.tap("checks.describe");
    pages.typeAll({"0", "0", "240"});
    pages.tap("pad.cancel");       // called away
    pages.tap("checks.describe");  // and goes on there
    pages.type("16.8");
    pages.tap("ask.row");
    pages.typeAll({"480", "34.8"});
    pages.tap("ask.table");
    pages.typeAll({"8", "0.25"});
    pages.tap("ask.room");
    pages.typeAll({"48", "2"});
    ASSERT_EQ(all<VesselDescribed>().size(), 1U);
    const Vessel& vessel = *pages.stand().bench().vessels.at({"K"}).vessel;
    EXPECT_DOUBLE_EQ(vessel.dipstick.litresAt(240).value(), 16.8);
    EXPECT_DOUBLE_EQ(vessel.minimum, 8);
    EXPECT_DOUBLE_EQ(vessel.usual, 0.25);
    EXPECT_DOUBLE_EQ(vessel.room->airChanges, 2);
    expectTitle("Dip the vessel");
}

// By hand: 360 mm lie half way between 16.8 and 34.8 L.
TEST_F(ChecksPageTest, dipsAVessel)
{
    keepAVessel(pages.stand(), 3);
    pages.show();
    pages.stand().taps({"checks.vessel", "checks.dip"});
    pages.type("360");
    pages.tap("ask.filled");
    EXPECT_EQ(all<VesselDipped>().back().millimetres, 360);
    EXPECT_TRUE(all<VesselDipped>().back().filled);
    expectField("25.8 L of 34.8 L");
}

TEST_F(ChecksPageTest, aLevelBeyondTheTableIsRefusedInWords)
{
    keepAVessel(pages.stand(), 3);
    pages.show();
    const auto before = all<VesselDipped>().size();
    pages.stand().taps({"checks.vessel", "checks.dip"});
    pages.type("481");
    pages.tap("ask.not-filled");
    EXPECT_EQ(all<VesselDipped>().size(), before);
    EXPECT_FALSE(notice().isEmpty());
}

TEST_F(ChecksPageTest, saysWhatTheVesselLosesAndThatItsVacuumIsSound)
{
    keepAVessel(pages.stand(), 3);
    pages.show();
    pages.tap("checks.vessel");
    expectTitle("The vacuum is sound");
    expectField("fill by");
    expectField("a meter at the bench stays necessary");
    auto* chart = pages.stand().frame().findChild<ui::Chart*>(QStringLiteral("checks.levels"));
    ASSERT_TRUE(chart);
    EXPECT_TRUE(chart->isVisible());
    qsizetype dips = 0;
    for (const ui::ChartLine& line : chart->content().lines)
        dips += line.points.size();
    EXPECT_EQ(dips, 7);
    ASSERT_EQ(chart->content().rules.size(), 1);
    chart->lookAt(chart->content().across.high);
    EXPECT_TRUE(chart->readOut().endsWith(QStringLiteral(" L"))) << chart->readOut().toStdString();
    pages.tap("checks.save");
    EXPECT_EQ(pages.saved, std::vector<QString>{QStringLiteral("checks-levels")});
    EXPECT_TRUE(notice().contains(QStringLiteral("/pictures/checks-levels")));
}

TEST_F(ChecksPageTest, aRiseThatNobodyCalledAFillBreaksTheLine)
{
    keepAVessel(pages.stand(), 3);
    pages.stand().pass(std::chrono::hours(24));
    pages.stand().say(DipVessel{VesselId{"1"}, 470, false});
    pages.show();
    pages.tap("checks.vessel");
    auto* chart = pages.stand().frame().findChild<ui::Chart*>(QStringLiteral("checks.levels"));
    ASSERT_EQ(chart->content().lines.size(), 3);  // one fill was said, one is seen
    for (const ui::ChartLine& line : chart->content().lines)
        for (qsizetype i = 1; i < line.points.size(); ++i)
            EXPECT_LE(line.points[i].y(), line.points[i - 1].y());
}

TEST_F(ChecksPageTest, aClosedRoomSaysWhenItsOxygenIsTooLittle)
{
    const VesselId vessel{"1"};
    openWithALine(pages.stand());
    pages.stand().say(DescribeVessel{vessel, documentOf({.name = "1",
                                                         .dipstick = {{0, 0}, {240, 168}},
                                                         .minimumDecilitres = 80,
                                                         .usualPerDay = {500'000},
                                                         .room = VesselDescription::Room{35, 0}})});
    pages.show();
    pages.tap("checks.vessel");
    expectField("a closed room: below 19.5 % after 7.2 days");  // by hand: 100 ln(20.95/19.5)
}

TEST_F(ChecksPageTest, everyVesselCanBeShown)
{
    openWithALine(pages.stand());
    for (char name = 'A'; name <= 'H'; ++name)
        pages.stand().say(DescribeVessel{VesselId{std::string(1, name)},
                                         documentOf({.name = std::string(1, name),
                                                     .dipstick = {{0, 0}, {240, 168}},
                                                     .minimumDecilitres = 80,
                                                     .usualPerDay = {250'000},
                                                     .room = {}})});
    const auto shown = [this] {
        return qobject_cast<ui::TapButton*>(pages.stand().target(QStringLiteral("checks.which")))
            ->word();
    };
    pages.show();
    pages.stand().taps({"checks.vessel", "checks.which", "ask.more", "ask.vessel:H"});
    EXPECT_TRUE(shown().endsWith(u'H')) << shown().toStdString();
    pages.stand().taps({"checks.which", "ask.more", "ask.more", "ask.vessel:A"});  // and around
    EXPECT_TRUE(shown().endsWith(u'A')) << shown().toStdString();
}

TEST(LettersInSpanishTest, thePadHasTheLetterWithATilde)
{
    ChecksStand pages(kTenInch, QStringLiteral("es"));
    pages.show();
    pages.stand().taps({"checks.vessel", "checks.which", "ask.new", "letters.N", "letters.enye",
                        "letters.O", "letters.set"});
    EXPECT_TRUE(qobject_cast<ui::TapButton*>(pages.stand().target(QStringLiteral("checks.which")))
                    ->word()
                    .endsWith(QStringLiteral("NÑO")));
}

// --- what an ended program left ------------------------------------------------------------------

std::vector<DoseChecked> dosesIn(ChecksStand& pages)
{
    std::vector<DoseChecked> found;
    for (const Event& event : pages.stand().kept().all) {
        if (const auto* dose = std::get_if<DoseChecked>(&event.fact))
            found.push_back(*dose);
    }
    return found;
}

TEST_F(ChecksPageTest, weightsOfAProgramThatEndedAreThereAgainAndNamed)
{
    open();
    pages.tap("checks.weigh");
    pages.typeAll({kTenWeights.begin(), kTenWeights.begin() + 4});
    EXPECT_FALSE(pages.fields().contains(QStringLiteral("unfinished")));
    ChecksStand again(kTenInch, QStringLiteral("en"), pages.drafts.all);  // as if it had crashed
    openWithALine(again.stand());
    again.show();
    EXPECT_TRUE(again.fields().contains(QStringLiteral("unfinished: 4 weight")))
        << again.fields().toStdString();
    EXPECT_TRUE(dosesIn(again).empty());
    again.tap("checks.weigh");
    again.typeAll({kTenWeights.begin() + 4, kTenWeights.end()});
    EXPECT_TRUE(again.fields().contains(QStringLiteral("0.1999 mL")));  // all ten
    again.tap("checks.record");
    EXPECT_EQ(dosesIn(again).size(), 1U);
    EXPECT_FALSE(again.fields().contains(QStringLiteral("unfinished")));
    ChecksStand third(kTenInch, QStringLiteral("en"), again.drafts.all);
    third.show();
    EXPECT_TRUE(third.fields().contains(QStringLiteral("none yet")))
        << third.fields().toStdString();
}

TEST_F(ChecksPageTest, aTableOfAProgramThatEndedGoesOnWhereItStopped)
{
    open();
    pages.stand().taps({"checks.vessel", "checks.which", "ask.new"});
    pages.spell("K");
    pages.tap("checks.describe");
    pages.typeAll({"0", "0", "240"});
    ChecksStand again(kTenInch, QStringLiteral("en"), pages.drafts.all);
    openWithALine(again.stand());
    again.show();
    again.tap("checks.vessel");
    const auto* describe =
        qobject_cast<ui::TapButton*>(again.stand().target(QStringLiteral("checks.describe")));
    EXPECT_TRUE(describe->line().contains(QStringLiteral("unfinished")));
    EXPECT_FALSE(again.stand().bench().vessels.contains({"K"}));
    again.tap("checks.describe");
    again.type("16.8");
    again.tap("ask.table");
    again.typeAll({"8", "0.25"});
    again.tap("ask.no-room");
    ASSERT_TRUE(again.stand().bench().vessels.contains({"K"}));
    const Vessel& vessel = *again.stand().bench().vessels.at({"K"}).vessel;
    EXPECT_DOUBLE_EQ(vessel.dipstick.litresAt(120).value(), 8.4);
    EXPECT_TRUE(again.drafts.kept(QStringLiteral("vessel")).empty());
}

TEST_F(ChecksPageTest, aFailingVacuumIsAnAlarmAndAWord)
{
    keepAVessel(pages.stand(), 12);
    pages.show();
    pages.tap("checks.vessel");
    expectTitle("The vacuum is failing");
    const auto& alarms = pages.stand().bench().alarms;
    ASSERT_TRUE(alarms.contains("vessel station:1"));
    EXPECT_EQ(alarms.at("vessel station:1").level, Level::Limit);
}

}  // namespace
}  // namespace bathside::test
