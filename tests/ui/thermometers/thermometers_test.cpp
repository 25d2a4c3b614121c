// The thermometers page by real taps, with thermometers that are not there. Sizes as in
// tests/ui/bench/walk_test.cpp.

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/ui/thermometers/thermo_stand.h"
#include "ui/charts/chart.h"
#include "ui/controls/banner.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"

namespace bathside::test {
namespace {

class ThermometersPageTest : public testing::Test {
protected:
    [[nodiscard]] Stand& stand() { return thermo.stand(); }
    [[nodiscard]] const Bench& bench() { return stand().bench(); }
    [[nodiscard]] ui::TapButton* target(const char* place)
    {
        return qobject_cast<ui::TapButton*>(stand().target(QString::fromLatin1(place)));
    }
    [[nodiscard]] QString words()
    {
        QString all;
        for (const auto* each : stand().frame().current()->findChildren<ui::Label*>()) {
            if (each->isVisible())
                all += each->text() + u'|';
        }
        return all;
    }
    [[nodiscard]] QString notice()
    {
        return stand()
            .frame()
            .findChild<ui::Banner*>(QStringLiteral("thermometers.notice"))
            ->text();
    }
    [[nodiscard]] const ui::Chart& chart(const char* name)
    {
        return *stand().frame().findChild<ui::Chart*>(QString::fromLatin1(name));
    }
    [[nodiscard]] const Probe& probe(const char* id) { return *bench().probes.at({id}); }

    ThermoStand thermo{kTenInch, QStringLiteral("en")};
};

TEST_F(ThermometersPageTest, setUpLeadsHereAndBack)
{
    EXPECT_TRUE(stand().frame().showPage(QString::fromLatin1(ui::Frame::kSetUp)));
    stand().taps({"setup.screen", "ask.page:thermometers"});
    EXPECT_EQ(stand().frame().current()->objectName(), QStringLiteral("thermometers"));
    stand().tap(QStringLiteral("thermometers.back"));
    EXPECT_EQ(stand().frame().current()->objectName(), QStringLiteral("setup"));
}

TEST_F(ThermometersPageTest, withoutAnyItSaysSoAndOffersToAdd)
{
    thermo.show();
    EXPECT_TRUE(notice().startsWith(QStringLiteral("No thermometer is described.")));
    EXPECT_EQ(target("thermometers.add")->role(), ui::Role::Primary);
    EXPECT_FALSE(target("thermometers.calibrate"));
}

TEST_F(ThermometersPageTest, oneReadByHandIsAddedByNameAndStep)
{
    thermo.show();
    stand().taps({"thermometers.add", "ask.hand"});
    thermo.spell(QStringLiteral("GLASS"));
    thermo.type(QStringLiteral("0.05"));
    ASSERT_TRUE(bench().probes.contains({"GLASS"}));
    EXPECT_EQ(std::get<ProbeDescribed>(stand().kept().all.back().fact).document.text,
              R"({"drift_uc":0,"id":"GLASS","name":"GLASS","points":[],"resolution_uc":50000})");
    EXPECT_TRUE(target("thermometers.probe.GLASS")->isChosen());
}

TEST_F(ThermometersPageTest, aSecondOfThatNameIsAThermometerOfItsOwn)
{
    thermo.show();
    for (int i = 0; i < 2; ++i) {
        stand().taps({"thermometers.add", "ask.hand"});
        thermo.spell(QStringLiteral("GLASS"));
        stand().tap(QStringLiteral("pad.set"));
    }
    EXPECT_EQ(bench().probes.size(), 2U);
    EXPECT_EQ(probe("GLASS-2").name, "GLASS");
    EXPECT_DOUBLE_EQ(probe("GLASS-2").resolution, 0.1);  // as suggested
}

TEST_F(ThermometersPageTest, whatIsPluggedInAndNotOursIsOffered)
{
    liveWithThermometers(thermo);
    thermo.probes().plugged = {OneWire{"28-0000075f2b1c"}, OneWire{"28-00000000aaaa"},
                               SerialLine{.port = "/dev/ttyUSB0", .pattern = {}},
                               SerialLine{.port = "/dev/ttyUSB1", .pattern = {}}};
    thermo.show();
    stand().tap(QStringLiteral("thermometers.add"));
    ASSERT_TRUE(target("ask.found:0"));
    EXPECT_EQ(target("ask.found:0")->line(), QStringLiteral("28-00000000aaaa"));
    EXPECT_EQ(target("ask.found:1")->line(), QStringLiteral("ttyUSB1"));
    EXPECT_FALSE(target("ask.found:2")->isAvailable());  // a thermometer's
    EXPECT_FALSE(target("ask.found:3"));
    stand().tap(QStringLiteral("ask.found:0"));
    thermo.spell(QStringLiteral("TANK"));
    stand().tap(QStringLiteral("pad.set"));
    EXPECT_EQ(std::get<OneWire>(probe("TANK").source).device, "28-00000000aaaa");
}

TEST_F(ThermometersPageTest, aPortThatIsInUseSaysWhoseItIsAndIsNotTaken)
{
    liveWithThermometers(thermo);
    thermo.balancePort = "/dev/ttyUSB2";
    thermo.probes().lasting = {{"/dev/serial/by-id/usb-meter", "/dev/ttyUSB0"}};
    thermo.probes().plugged = {SerialLine{.port = "/dev/serial/by-id/usb-meter", .pattern = {}},
                               SerialLine{.port = "/dev/ttyUSB2", .pattern = {}},
                               SerialLine{.port = "/dev/ttyUSB1", .pattern = {}}};
    thermo.show();
    stand().tap(QStringLiteral("thermometers.add"));
    EXPECT_TRUE(target("ask.found:0")->isAvailable());
    EXPECT_EQ(target("ask.found:0")->line(), QStringLiteral("ttyUSB1"));
    EXPECT_EQ(target("ask.found:1")->reason(), QStringLiteral("METER is on that port."));
    EXPECT_EQ(target("ask.found:2")->reason(), QStringLiteral("The balance is on that port."));
    stand().tap(QStringLiteral("ask.found:1"));
    EXPECT_EQ(notice(), QStringLiteral("METER is on that port."));
    EXPECT_TRUE(target("ask.found:0"));  // still asked
}

TEST_F(ThermometersPageTest, aPortIsTakenByItsPathToo)
{
    thermo.show();
    stand().taps({"thermometers.add", "ask.port"});
    for (const char* key : {"letters.T", "letters.T", "letters.Y", "letters.S", "letters.layer",
                            "letters.4", "letters.set"})
        stand().tap(QString::fromLatin1(key));
    stand().tap(QStringLiteral("ask.2400"));
    thermo.spell(QStringLiteral("METER"));
    stand().tap(QStringLiteral("pad.set"));
    EXPECT_EQ(std::get<SerialLine>(probe("METER").source),
              (SerialLine{.port = "/dev/ttyS4", .baud = 2'400, .pattern = "#"}));
}

TEST_F(ThermometersPageTest, aPathThatIsInUseIsRefusedInWords)
{
    liveWithThermometers(thermo);
    thermo.balancePort = "/dev/ttyS4";
    thermo.show();
    stand().taps({"thermometers.add", "ask.port"});
    for (const char* key : {"letters.T", "letters.T", "letters.Y", "letters.S", "letters.layer",
                            "letters.4", "letters.set"})
        stand().tap(QString::fromLatin1(key));
    EXPECT_TRUE(words().contains(QStringLiteral("The balance is on that port.")))
        << words().toStdString();
    EXPECT_TRUE(target("letters.set"));
}

TEST_F(ThermometersPageTest, speedAndUnitHaveAWayBack)
{
    liveWithThermometers(thermo);
    thermo.show();
    const Probe before = probe("METER");
    stand().taps({"thermometers.probe.METER", "thermometers.change", "ask.speed", "ask.back"});
    stand().taps({"thermometers.change", "ask.unit", "ask.back"});
    EXPECT_EQ(documentOf(probe("METER")), documentOf(before));
    EXPECT_TRUE(target("thermometers.change"));
}

// Of two that are healthy, one is in the bath.
TEST_F(ThermometersPageTest, whichOneIsInTheBathIsSaidOnceAndOfOne)
{
    liveWithThermometers(thermo);
    thermo.show();
    stand().say(TakeReading{{"METER"}, MilliCelsius{35'000}});
    EXPECT_EQ(bench().lastGoodReading()->fact.probe.text, "BATH-LEFT");
    stand().tap(QStringLiteral("thermometers.probe.BATH-LEFT"));
    EXPECT_TRUE(words().contains(QStringLiteral("in the bath"))) << words().toStdString();
    stand().taps({"thermometers.change", "ask.bath"});
    EXPECT_FALSE(probe("BATH-LEFT").inBath);
    EXPECT_TRUE(notice().startsWith(QStringLiteral("More than one thermometer is read.")))
        << notice().toStdString();
    stand().taps({"thermometers.probe.METER", "thermometers.change", "ask.bath"});
    EXPECT_TRUE(probe("METER").inBath);
    EXPECT_EQ(bench().lastGoodReading()->fact.probe.text, "METER");
    EXPECT_FALSE(notice().startsWith(QStringLiteral("More than one thermometer is read.")));
    stand().taps({"thermometers.probe.BATH-LEFT", "thermometers.change", "ask.bath"});
    EXPECT_FALSE(probe("METER").inBath);
}

TEST_F(ThermometersPageTest, aSerialOneIsReadWholeUntilItsPatternIsChosenByWhatItSent)
{
    thermo.probes().plugged = {SerialLine{.port = "/dev/ttyUSB0", .pattern = {}}};
    thermo.show();
    stand().taps({"thermometers.add", "ask.found:0", "ask.19200"});
    thermo.spell(QStringLiteral("METER"));
    stand().tap(QStringLiteral("pad.set"));
    EXPECT_EQ(std::get<SerialLine>(probe("METER").source),
              (SerialLine{.port = "/dev/ttyUSB0", .baud = 19'200, .pattern = "#"}));

    thermo.probes().line = "T1 = 28,13 C";
    stand().taps({"thermometers.change", "ask.pattern"});
    EXPECT_EQ(target("ask.pattern:0")->word(), QStringLiteral("28.13"));
    EXPECT_EQ(target("ask.pattern:1")->word(), QStringLiteral("1"));
    stand().tap(QStringLiteral("ask.pattern:0"));
    const auto& line = std::get<SerialLine>(probe("METER").source);
    EXPECT_EQ(line.pattern, "T* = # C");
    EXPECT_EQ(line.decimal, DecimalSign::Comma);
    EXPECT_EQ(line.baud, 19'200);

    stand().taps({"thermometers.change", "ask.unit", "ask.1"});
    EXPECT_EQ(std::get<SerialLine>(probe("METER").source).shows, LineUnit::Pt100);
    stand().taps({"thermometers.change", "ask.speed", "ask.300"});
    EXPECT_EQ(std::get<SerialLine>(probe("METER").source).baud, 300);
}

// Coefficients in common use, of a sensor of 10 kΩ.
TEST_F(ThermometersPageTest, aThermistorIsTakenOnceItsResistanceIsSaidToBeRight)
{
    liveWithThermometers(thermo);
    thermo.show();
    const auto said = stand().kept().all.size();
    stand().taps({"thermometers.probe.METER", "thermometers.change", "ask.unit", "ask.3"});
    thermo.type(QStringLiteral("1.129148"));
    thermo.type(QStringLiteral("2.34125"));
    thermo.type(QStringLiteral("0.9"));  // a slip
    EXPECT_TRUE(words().contains(QStringLiteral("9,929 Ω at 25 °C"))) << words().toStdString();
    stand().taps({"ask.again", "pad.set", "pad.set"});  // what was typed is suggested
    thermo.type(QStringLiteral("0.876741"));
    EXPECT_TRUE(words().contains(QStringLiteral("10,000 Ω at 25 °C"))) << words().toStdString();
    EXPECT_EQ(stand().kept().all.size(), said);
    stand().tap(QStringLiteral("ask.yes"));
    const auto& line = std::get<SerialLine>(probe("METER").source);
    EXPECT_EQ(line.shows, LineUnit::Ntc);
    EXPECT_EQ(line.ntc, (Thermistor{1.129148e-3, 2.34125e-4, 8.76741e-8}));
    EXPECT_EQ(line.pattern, "T = # C");

    stand().taps({"thermometers.change", "ask.unit", "ask.0"});
    EXPECT_FALSE(std::get<SerialLine>(probe("METER").source).ntc);
}

TEST_F(ThermometersPageTest, coefficientsThatNoSensorHasAreAskedAgain)
{
    liveWithThermometers(thermo);
    thermo.show();
    const auto said = stand().kept().all.size();
    stand().taps({"thermometers.probe.METER", "thermometers.change", "ask.unit", "ask.3"});
    thermo.type(QStringLiteral("999999999"));
    EXPECT_TRUE(words().contains(QStringLiteral("A of its sensor")));  // beyond any range
    for (int i = 0; i < 9; ++i)
        stand().tap(QStringLiteral("pad.delete"));
    thermo.type(QStringLiteral("1.129148"));
    stand().tap(QStringLiteral("pad.minus"));
    thermo.type(QStringLiteral("2.34125"));
    thermo.type(QStringLiteral("0.876741"));
    EXPECT_TRUE(words().contains(QStringLiteral("No such sensor can be"))) << words().toStdString();
    EXPECT_TRUE(words().contains(QStringLiteral("A of its sensor")));
    EXPECT_TRUE(words().contains(QStringLiteral("1.1291480")));
    stand().tap(QStringLiteral("pad.cancel"));
    EXPECT_EQ(std::count_if(stand().kept().all.begin() + static_cast<std::ptrdiff_t>(said),
                            stand().kept().all.end(),
                            [](const Event& event) {
                                return std::holds_alternative<ProbeDescribed>(event.fact);
                            }),
              0);
}

TEST_F(ThermometersPageTest, patternsAreOfferedByExampleBeforeAnythingHasCome)
{
    liveWithThermometers(thermo);
    thermo.show();
    stand().taps({"thermometers.probe.METER", "thermometers.change", "ask.pattern"});
    EXPECT_EQ(target("ask.pattern:3")->line(), QStringLiteral("#"));  // with a comma
    stand().tap(QStringLiteral("ask.pattern:3"));
    EXPECT_EQ(std::get<SerialLine>(probe("METER").source).decimal, DecimalSign::Comma);
}

TEST_F(ThermometersPageTest, aChangeKeepsEverythingElse)
{
    liveWithThermometers(thermo);
    thermo.show();
    const Probe before = probe("BATH-LEFT");
    stand().taps({"thermometers.probe.BATH-LEFT", "thermometers.change", "ask.drift"});
    thermo.type(QStringLiteral("0.1"));
    Probe wanted = before;
    wanted.drift = 0.1;
    EXPECT_EQ(documentOf(probe("BATH-LEFT")), documentOf(wanted));
    stand().taps({"thermometers.change", "ask.out"});
    wanted.source = OutOfUse{};
    EXPECT_EQ(documentOf(probe("BATH-LEFT")), documentOf(wanted));
    EXPECT_EQ(target("thermometers.probe.BATH-LEFT")->role(), ui::Role::Quiet);
}

TEST_F(ThermometersPageTest, oneOutOfUseIsNotOfferedForAReadingByHand)
{
    liveWithThermometers(thermo);
    thermo.show();
    stand().taps({"thermometers.probe.METER", "thermometers.change", "ask.out"});
    EXPECT_TRUE(stand().frame().showPage(QString::fromLatin1(ui::Frame::kSetUp)));
    stand().tap(QStringLiteral("setup.reading"));
    EXPECT_TRUE(target("ask.probe:GLASS"));
    EXPECT_TRUE(target("ask.probe:BATH-LEFT"));
    EXPECT_FALSE(target("ask.probe:METER"));
    for (const char* id : {"BATH-LEFT", "GLASS"}) {
        Probe put = probe(id);
        put.source = OutOfUse{};
        stand().say(DescribeProbe{{id}, documentOf(put)});
    }
    EXPECT_TRUE(stand().frame().showPage(QString::fromLatin1(ui::Frame::kBench)));
    EXPECT_TRUE(stand().frame().showPage(QString::fromLatin1(ui::Frame::kSetUp)));
    stand().tap(QStringLiteral("setup.reading"));
    thermo.type(QStringLiteral("28"));
    EXPECT_EQ(bench().lastTaken->fact.probe.text, "hand");  // none is left
}

TEST_F(ThermometersPageTest, leavingIsNoChange)
{
    liveWithThermometers(thermo);
    thermo.show();
    const auto before = stand().kept().all.size();
    stand().taps({"thermometers.change", "ask.back", "thermometers.add", "ask.back"});
    EXPECT_EQ(stand().kept().all.size(), before);
}

TEST_F(ThermometersPageTest, verdictCalibrationAndFaultAreToldInWords)
{
    liveWithThermometers(thermo);
    thermo.show();
    EXPECT_EQ(target("thermometers.probe.BATH-LEFT")->line(),
              QStringLiteral("inside · due 1 Sep 2026"));
    EXPECT_TRUE(target("thermometers.probe.GLASS")
                    ->line()
                    .endsWith(QStringLiteral("overdue since 10 Jan 2026")));
    EXPECT_EQ(target("thermometers.probe.METER")->role(), ui::Role::HeadsUp);
    stand().tap(QStringLiteral("thermometers.probe.METER"));
    EXPECT_TRUE(words().contains(QStringLiteral("The thermometer is gone.")));
    EXPECT_TRUE(words().contains(QStringLiteral("ttyUSB0, 9600 baud, pattern T = # C, °C")));
    EXPECT_TRUE(notice().contains(QStringLiteral("overdue")));
}

TEST_F(ThermometersPageTest, theTraceFollowsTheOneThatIsLookedAt)
{
    liveWithThermometers(thermo);
    thermo.show();
    stand().tap(QStringLiteral("thermometers.probe.BATH-LEFT"));
    const auto& lines = chart("thermometers.trace").content().lines;
    ASSERT_EQ(lines.size(), 1);
    EXPECT_EQ(lines.front().points.size(), 140);
    thermo.probes().traces[{"BATH-LEFT"}].push_back(
        {{"BATH-LEFT"}, stand().model().now(), MilliCelsius{28'000}});
    emit thermo.probes().changed();
    EXPECT_EQ(chart("thermometers.trace").content().lines.front().points.size(), 141);
}

TEST_F(ThermometersPageTest, theForecastSaysHowManyAndThatTheThermometerDecides)
{
    liveWithThermometers(thermo);
    thermo.show();
    stand().tap(QStringLiteral("thermometers.forecast"));
    const auto last = bench().lastGoodReading();
    const Card::Content& card = bench().card->content();
    const double lowest = lowestInside(toleranceOf(card.bath),
                                       static_cast<double>(last->fact.expanded->count) / 1000);
    const int most = mostAmpoules(
        budgetOf(card.heat, static_cast<double>(last->fact.corrected->count) / 1000), lowest);
    EXPECT_TRUE(words().contains(QStringLiteral("up to %1 ampoule").arg(most)))
        << words().toStdString();
    EXPECT_TRUE(
        words().contains(QStringLiteral("This is a calculation; the thermometer decides.")));
    EXPECT_GE(chart("thermometers.dip").content().lines.size(), 3);
    const auto& slush = chart("thermometers.slush").content();
    EXPECT_EQ(slush.marks.front().at, QPointF(28, 80));  // common practice
    stand().tap(QStringLiteral("thermometers.back"));
    EXPECT_TRUE(target("thermometers.forecast"));
}

TEST_F(ThermometersPageTest, theForecastIsThereAtOnceAndSaysWhatIsStillReckoned)
{
    liveWithThermometers(thermo);
    thermo.holdsWork = true;
    thermo.show();
    stand().tap(QStringLiteral("thermometers.forecast"));
    ASSERT_EQ(thermo.work.size(), 1U);
    EXPECT_TRUE(notice().startsWith(QStringLiteral("Reckoning"))) << notice().toStdString();
    EXPECT_TRUE(words().contains(QStringLiteral("up to")));
    EXPECT_GE(chart("thermometers.dip").content().lines.size(), 3);
    EXPECT_TRUE(chart("thermometers.slush").content().lines.isEmpty());
    EXPECT_TRUE(chart("thermometers.slush").readOut().contains(QStringLiteral("reckoned")));
    stand().taps({"thermometers.back", "thermometers.probe.GLASS"});  // taps get through
    thermo.work.front()();
    stand().tap(QStringLiteral("thermometers.forecast"));
    EXPECT_TRUE(notice().startsWith(QStringLiteral("Reckoning")));  // the shift's pulls anew
    EXPECT_FALSE(chart("thermometers.slush").content().lines.isEmpty());
    thermo.work.back()();
    EXPECT_TRUE(notice().startsWith(QStringLiteral("These figures are the card's")));
}

TEST_F(ThermometersPageTest, anAnswerToWhatWasAskedBeforeIsDropped)
{
    liveWithThermometers(thermo);
    thermo.holdsWork = true;
    thermo.show();
    stand().tap(QStringLiteral("thermometers.forecast"));
    stand().taps({"thermometers.back", "thermometers.forecast"});
    ASSERT_EQ(thermo.work.size(), 2U);
    thermo.work.front()();
    EXPECT_TRUE(notice().startsWith(QStringLiteral("Reckoning")));
    EXPECT_TRUE(chart("thermometers.slush").content().lines.isEmpty());
    thermo.work.back()();
    EXPECT_FALSE(chart("thermometers.slush").content().lines.isEmpty());
}

TEST_F(ThermometersPageTest, chartsAreSavedAsPicturesAndWhatFailsIsTold)
{
    liveWithThermometers(thermo);
    thermo.show();
    stand().tap(QStringLiteral("thermometers.save"));
    EXPECT_EQ(thermo.saved, std::vector<QString>{QStringLiteral("thermometers-trace")});
    EXPECT_TRUE(notice().contains(QStringLiteral("/documents/thermometers-trace.png")));
    stand().tap(QStringLiteral("thermometers.forecast"));
    stand().tap(QStringLiteral("thermometers.save"));
    EXPECT_EQ(thermo.saved.size(), 3U);
    thermo.saveFault = ui::PrintFault::CannotWrite;
    stand().tap(QStringLiteral("thermometers.save"));
    EXPECT_TRUE(notice().startsWith(QStringLiteral("The file could not be written.")));
}

// --- every target large, apart and whole
// ----------------------------------------------------------

struct Sight {
    const char* name;
    std::vector<const char*> taps;
};

struct Look {
    Sight sight;
    Panel panel;
    const char* language;
};

std::vector<Look> looks()
{
    const std::vector<Sight> sights{
        {"list", {}},
        {"gone", {"thermometers.probe.METER"}},
        {"add", {"thermometers.add"}},
        {"name", {"thermometers.add", "ask.hand"}},
        {"speed", {"thermometers.add", "ask.found:0"}},
        {"port", {"thermometers.add", "ask.port"}},
        {"change", {"thermometers.probe.METER", "thermometers.change"}},
        {"pattern", {"thermometers.probe.METER", "thermometers.change", "ask.pattern"}},
        {"unit", {"thermometers.probe.METER", "thermometers.change", "ask.unit"}},
        {"coefficient", {"thermometers.probe.METER", "thermometers.change", "ask.unit", "ask.3"}},
        {"drift", {"thermometers.change", "ask.drift"}},
        {"certificate", {"thermometers.probe.BATH-LEFT", "thermometers.calibrate"}},
        {"empty_certificate", {"thermometers.probe.METER", "thermometers.calibrate"}},
        {"point", {"thermometers.calibrate", "ask.add"}},
        {"forecast", {"thermometers.forecast"}},
    };
    std::vector<Look> all;
    for (const Sight& sight : sights) {
        for (const char* language : {"en", "es"}) {
            for (const Panel& panel : {kTenInch, kFifteenInch})
                all.push_back({sight, panel, language});
        }
    }
    return all;
}

std::string nameOfLook(const testing::TestParamInfo<Look>& test)
{
    return std::string(test.param.sight.name) + "_" + test.param.language + "_" +
           test.param.panel.name;
}

class ThermometersLook : public testing::TestWithParam<Look> {};

TEST_P(ThermometersLook, everyTargetIsLargeApartAndWhole)
{
    ThermoStand thermo(GetParam().panel, QString::fromLatin1(GetParam().language));
    liveWithThermometers(thermo);
    thermo.probes().plugged = {SerialLine{.port = "/dev/ttyUSB1", .pattern = {}}};
    thermo.show();
    thermo.stand().taps(GetParam().sight.taps);
    expectTargetsAsTheyMustBe(thermo.stand().frame());
}

INSTANTIATE_TEST_SUITE_P(Thermometers, ThermometersLook, testing::ValuesIn(looks()), nameOfLook);

}  // namespace
}  // namespace bathside::test
