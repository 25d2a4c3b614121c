// A certificate typed in, by real taps. What a corrected value and its U come to is worked out by
// hand after JCGM 100 (quadrature, rectangle's half-width / √3, k = 2).

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/ui/thermometers/thermo_stand.h"
#include "ui/bench/ask_pane.h"
#include "ui/controls/label.h"
#include "ui/controls/number_pad.h"
#include "ui/controls/tap_button.h"
#include "ui/thermometers/probe_words.h"

namespace bathside::test {
namespace {

using namespace std::chrono;

class CalibrationTest : public testing::Test {
protected:
    CalibrationTest()
    {
        stand().say(DescribeProbe{
            {"GLASS"},
            R"({"drift_uc":0,"id":"GLASS","name":"GLASS","points":[],"resolution_uc":100000})"});
        thermo.show();
    }

    [[nodiscard]] Stand& stand() { return thermo.stand(); }
    [[nodiscard]] const Probe& probe() { return *stand().bench().probes.at({"GLASS"}); }
    [[nodiscard]] std::size_t described()
    {
        return static_cast<std::size_t>(std::ranges::count_if(
            stand().kept().all,
            [](const Event& event) { return std::holds_alternative<ProbeDescribed>(event.fact); }));
    }
    void begin() { stand().tap(QStringLiteral("thermometers.calibrate")); }
    void number(const char* choice, const char* digits)
    {
        stand().tap(QString::fromLatin1(choice));
        thermo.type(QString::fromLatin1(digits));
    }
    void point(const char* indicated, const char* reference, const char* expanded)
    {
        stand().tap(QStringLiteral("ask.add"));
        for (const char* each : {indicated, reference, expanded})
            thermo.type(QString::fromLatin1(each));
    }
    void certificateAndDays()
    {
        stand().tap(QStringLiteral("ask.certificate"));
        thermo.spell(QStringLiteral("KAB"));
        number("ask.date", "20260105");
        number("ask.due", "20270105");
    }
    [[nodiscard]] QString padNote()
    {
        const auto* pad = stand().frame().current()->findChild<ui::NumberPad*>();
        QString all;
        for (const auto* each : pad->findChildren<ui::Label*>())
            all += each->text() + u'|';
        return all;
    }

    ThermoStand thermo{kTenInch, QStringLiteral("en")};
};

TEST_F(CalibrationTest, aWholeCertificateIsSaidAtOnceWhenItIsSaved)
{
    begin();
    certificateAndDays();
    point("28", "28.1", "0.1");
    point("10.0", "10", "0.08");
    EXPECT_EQ(described(), 1U);
    stand().tap(QStringLiteral("ask.save"));
    EXPECT_EQ(described(), 2U);
    EXPECT_EQ(documentOf(probe()),
              R"({"calibrated":"2026-01-05","certificate":"KAB","drift_uc":0,"due":"2027-01-05",)"
              R"("id":"GLASS","name":"GLASS","points":[)"
              R"({"expanded_uc":80000,"indicated_uc":10000000,"reference_uc":10000000},)"
              R"({"expanded_uc":100000,"indicated_uc":28000000,"reference_uc":28100000}],)"
              R"("resolution_uc":100000})");
}

// Two certificates half typed are two, each said to be unfinished on its own thermometer.
TEST_F(CalibrationTest, whatIsTypedOfOneOutlastsAnother)
{
    stand().say(
        DescribeProbe{{"SECOND"}, R"({"resolution_uc": 100000, "drift_uc": 0, "points": []})"});
    const auto notSaved = [&](const char* id) {
        stand().tap(QStringLiteral("thermometers.probe.") + QLatin1String(id));
        const auto* button =
            qobject_cast<ui::TapButton*>(stand().target(QStringLiteral("thermometers.calibrate")));
        return button && button->line() == QStringLiteral("not saved");
    };
    stand().tap(QStringLiteral("thermometers.probe.GLASS"));
    begin();
    point("28", "28.1", "0.1");
    stand().frame().current()->findChild<ui::AskPane*>()->close();
    EXPECT_FALSE(notSaved("SECOND"));
    begin();
    certificateAndDays();
    stand().frame().current()->findChild<ui::AskPane*>()->close();
    EXPECT_TRUE(notSaved("SECOND"));
    EXPECT_TRUE(notSaved("GLASS"));
    begin();
    certificateAndDays();
    stand().tap(QStringLiteral("ask.save"));
    EXPECT_EQ(stand().bench().probes.at({"GLASS"})->points.size(), 1U);
    EXPECT_FALSE(notSaved("GLASS"));
    EXPECT_TRUE(notSaved("SECOND"));
}

// What was said of the thermometer while its certificate was half typed is not undone by it.
TEST_F(CalibrationTest, savingItKeepsWhatWasSaidSince)
{
    begin();
    certificateAndDays();
    point("28", "28.1", "0.1");
    Probe moved = probe();
    moved.inBath = true;
    stand().say(DescribeProbe{{"GLASS"}, documentOf(moved)});
    stand().tap(QStringLiteral("ask.save"));
    EXPECT_TRUE(probe().inBath);
    EXPECT_EQ(probe().points.size(), 1U);
}

// Shown 28.05: beyond the only point, so + 0.1; u² = 0.05² + (0.1 / (2√3))², U = 2u = 0.1155.
TEST_F(CalibrationTest, theNextReadingIsCorrectedByIt)
{
    begin();
    certificateAndDays();
    point("28", "28.1", "0.1");
    stand().tap(QStringLiteral("ask.save"));
    stand().say(TakeReading{{"GLASS"}, MilliCelsius{28'050}});
    const ReadingTaken& fact = stand().bench().lastTaken->fact;
    EXPECT_EQ(fact.corrected, MilliCelsius{28'150});
    EXPECT_EQ(fact.expanded, MilliCelsius{115});
    EXPECT_EQ(fact.verdict, Verdict::Inside);
}

// u² as above: (29 − 28.95) / 0.0577 = 0.866, and the normal probability below that is 0.807.
TEST_F(CalibrationTest, whatKeepsAReadingFromBeingDecidedIsSaid)
{
    begin();
    certificateAndDays();
    point("28", "28.1", "0.1");
    stand().tap(QStringLiteral("ask.save"));
    const auto doubts = [&](int raw) {
        stand().pass(std::chrono::minutes(2));
        stand().say(TakeReading{{"GLASS"}, MilliCelsius{raw}});
        return ui::doubtsOf(stand().bench(), probe(), stand().bench().lastTaken, *probe().due);
    };
    EXPECT_EQ(doubts(28'000), QStringList());
    EXPECT_EQ(doubts(28'050), QStringList{QStringLiteral("beyond the calibrated range")});
    EXPECT_EQ(doubts(28'850), (QStringList{QStringLiteral("beyond the calibrated range"),
                                           QStringLiteral("to 81 % within tolerance")}));
}

// Shown 14: halfway between the points −0.05 → 0.15 and 28.05 → 28, so (0.15 + 28) / 2.
TEST_F(CalibrationTest, pointsBelowZeroAreTypedWithTheMinusKeyBeforeOrAfterTheDigits)
{
    begin();
    certificateAndDays();
    stand().taps({"ask.add", "pad.minus"});
    for (const char* each : {"0.05", "0.15", "0.1"})
        thermo.type(QString::fromLatin1(each));
    point("28.05", "28", "0.1");
    stand().taps({"ask.add", "pad.2", "pad.0", "pad.minus", "pad.set", "pad.1", "pad.9",
                  "pad.minus", "pad.set", "pad.1", "pad.set", "ask.save"});
    ASSERT_EQ(probe().points.size(), 3U);
    EXPECT_DOUBLE_EQ(probe().points[0].indicated, -20);
    EXPECT_DOUBLE_EQ(probe().points[0].reference, -19);
    EXPECT_DOUBLE_EQ(probe().points[1].indicated, -0.05);
    stand().say(TakeReading{{"GLASS"}, MilliCelsius{14'000}});
    EXPECT_EQ(stand().bench().lastTaken->fact.corrected, MilliCelsius{14'075});
}

TEST_F(CalibrationTest, aSignTwiceIsNoneAndASignAloneIsNoNumber)
{
    begin();
    stand().taps({"ask.add", "pad.minus", "pad.set"});
    EXPECT_TRUE(padNote().contains(QStringLiteral("Type a number first.")))
        << padNote().toStdString();
    stand().taps({"pad.5", "pad.minus", "pad.set", "pad.5", "pad.set", "pad.1", "pad.set"});
    EXPECT_EQ(described(), 1U);
    EXPECT_TRUE(stand().target(QStringLiteral("ask.point:0")));
    const auto* point = qobject_cast<ui::TapButton*>(stand().target(QStringLiteral("ask.point:0")));
    EXPECT_FALSE(point->line().contains(u'−')) << point->line().toStdString();
}

// IEC 60751 runs from −200 °C; other thermometers of a bath as low as a card can go.
TEST_F(CalibrationTest, howLowAPointMayLieFollowsFromTheThermometer)
{
    begin();
    stand().tap(QStringLiteral("ask.add"));
    EXPECT_TRUE(padNote().contains(QStringLiteral("From −50.000 to 100.000 °C.")))
        << padNote().toStdString();
    stand().taps({"pad.minus", "pad.5", "pad.1", "pad.set"});
    EXPECT_TRUE(padNote().contains(QStringLiteral("That is outside what can be.")));
    stand().tap(QStringLiteral("pad.cancel"));
    Probe platinum;
    platinum.id = {"PT"};
    platinum.name = "PT";
    platinum.resolution = 0.01;
    platinum.source = SerialLine{.port = "/dev/ttyUSB0", .pattern = "#", .shows = LineUnit::Pt100};
    stand().say(DescribeProbe{{"PT"}, documentOf(platinum)});
    stand().taps({"thermometers.probe.PT", "thermometers.calibrate", "ask.add"});
    EXPECT_TRUE(padNote().contains(QStringLiteral("From −200.000 to 100.000 °C.")))
        << padNote().toStdString();
}

TEST_F(CalibrationTest, nothingIsSavedBeforeAllOfItIsThere)
{
    begin();
    auto* save = qobject_cast<ui::TapButton*>(stand().target(QStringLiteral("ask.save")));
    ASSERT_TRUE(save);
    EXPECT_EQ(save->reason(), QStringLiteral("The certificate's number is missing."));
    stand().tap(QStringLiteral("ask.save"));
    EXPECT_EQ(described(), 1U);
    certificateAndDays();
    save = qobject_cast<ui::TapButton*>(stand().target(QStringLiteral("ask.save")));
    EXPECT_EQ(save->reason(), QStringLiteral("At least one point is needed."));
    stand().tap(QStringLiteral("ask.save"));
    EXPECT_EQ(described(), 1U);
    EXPECT_GT(stand().heard().refusals, 0);
}

TEST_F(CalibrationTest, aDayThatIsNoneIsRefusedInWordsAndThePadStays)
{
    begin();
    number("ask.date", "20260231");
    EXPECT_TRUE(padNote().contains(QStringLiteral("There is no such day.")))
        << padNote().toStdString();
    EXPECT_TRUE(stand().target(QStringLiteral("pad.set")));
}

TEST_F(CalibrationTest, itIsNotDueBeforeItWasCalibrated)
{
    begin();
    certificateAndDays();
    point("28", "28.1", "0.1");
    number("ask.due", "20250101");
    const auto* save = qobject_cast<ui::TapButton*>(stand().target(QStringLiteral("ask.save")));
    EXPECT_EQ(save->reason(), QStringLiteral("It cannot be due before it was calibrated."));
}

TEST_F(CalibrationTest, aPointStandsOnceAndCanBeRemoved)
{
    begin();
    point("28", "28.1", "0.1");
    stand().tap(QStringLiteral("ask.add"));
    thermo.type(QStringLiteral("28.000"));
    EXPECT_TRUE(padNote().contains(QStringLiteral("There is a point with that value already.")));
    stand().tap(QStringLiteral("pad.cancel"));
    begin();
    stand().taps({"ask.point:0", "ask.remove"});
    EXPECT_FALSE(stand().target(QStringLiteral("ask.point:0")));
}

TEST_F(CalibrationTest, whatWasTypedIsKeptOverALookElsewhereAndForgottenWhenAsked)
{
    begin();
    certificateAndDays();
    stand().tap(QStringLiteral("ask.date"));
    stand().tap(QStringLiteral("pad.cancel"));
    EXPECT_TRUE(probe().certificate.empty());
    begin();
    const auto* kept =
        qobject_cast<ui::TapButton*>(stand().target(QStringLiteral("ask.certificate")));
    EXPECT_EQ(kept->line(), QStringLiteral("KAB"));
    stand().tap(QStringLiteral("ask.drop"));
    begin();
    const auto* afresh =
        qobject_cast<ui::TapButton*>(stand().target(QStringLiteral("ask.certificate")));
    EXPECT_EQ(afresh->line(), QStringLiteral("–"));
    EXPECT_EQ(described(), 1U);
}

}  // namespace
}  // namespace bathside::test
