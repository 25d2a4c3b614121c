// The set-up page, by real taps: checks, overrides, the alarm heard, and what is always in sight.
//
// The checks, what blocks and the cautions: the spec's job, 2.3, 3 and 5 (usual cautions; common
// practice). Sizes as in tests/ui/bench/walk_test.cpp.

#include <QApplication>
#include <QKeyEvent>
#include <algorithm>

#include <gtest/gtest.h>

#include "tests/ui/setup/page_stand.h"
#include "ui/controls/tap_button.h"
#include "ui/setup/cautions.h"
#include "ui/setup/check_tile.h"
#include "ui/theme/theme.h"

namespace bathside::test {
namespace {

const CheckId kGloves{"gloves"}, kDiluent{"diluent-inspected"};

class SetUp : public testing::Test {
protected:
    void begin(const char* language = "en")
    {
        m_pages = std::make_unique<PageStand>(kTenInch, QString::fromLatin1(language));
        m_pages->stand().say(OpenShift{"Europe/Madrid", {"MK"}});
        m_pages->show(ui::Frame::kSetUp);
    }
    [[nodiscard]] Stand& stand() { return m_pages->stand(); }
    [[nodiscard]] const Bench& bench() { return m_pages->stand().bench(); }
    /// Turns pages until that check is in sight, and taps it.
    void tapCheck(const CheckId& check)
    {
        const QString place = QStringLiteral("setup.check.") + QString::fromStdString(check.text);
        for (int page = 0; page < 5 && !stand().target(place); ++page)
            stand().tap(QStringLiteral("setup.more"));
        stand().tap(place);
    }
    [[nodiscard]] std::size_t kept() { return stand().kept().all.size(); }

    std::unique_ptr<PageStand> m_pages;
};

TEST_F(SetUp, aTapSaysThatACheckIsOk)
{
    begin();
    for (const Check& check : bench().card->content().checks) {
        if (check.id != kAlarmHeard)
            tapCheck(check.id);
    }
    for (const Check& check : bench().card->content().checks)
        EXPECT_EQ(ui::standingOf(bench(), check.id),
                  check.id == kAlarmHeard ? ui::CheckStanding::Open : ui::CheckStanding::Ok)
            << check.id.text;
}

TEST_F(SetUp, notOkIsSaidByTwoTapsOfWhichTheFirstSaysNothing)
{
    begin();
    const auto before = kept();
    stand().tap(QStringLiteral("setup.other"));
    tapCheck(kGloves);
    EXPECT_EQ(kept(), before);
    stand().tap(QStringLiteral("ask.not-ok"));
    EXPECT_EQ(ui::standingOf(bench(), kGloves), ui::CheckStanding::NotOk);
    EXPECT_FALSE(stand().target(QStringLiteral("ask-pane")));
}

TEST_F(SetUp, aBlockingCheckIsOverriddenWithAReasonOfOurs)
{
    begin();
    stand().tap(QStringLiteral("setup.other"));
    tapCheck(kDiluent);
    stand().taps({"ask.override", "ask.checked in another way"});
    EXPECT_EQ(ui::standingOf(bench(), kDiluent), ui::CheckStanding::Overridden);
    EXPECT_EQ(bench().checks.at(kDiluent).overridden, "checked in another way");
}

TEST_F(SetUp, orInWordsOfOnesOwn)
{
    begin();
    stand().tap(QStringLiteral("setup.other"));
    tapCheck(kDiluent);
    stand().taps(
        {"ask.override", "ask.other", "letters.L", "letters.A", "letters.B", "letters.set"});
    EXPECT_EQ(bench().checks.at(kDiluent).overridden, "LAB");
}

// The spec's job, section 3: what the card marks as blocking takes a recorded override.
TEST_F(SetUp, aBagStartsOnlyOnceWhatBlocksIsDoneOrOverridden)
{
    begin();
    const Intent start = StartBag{{"B1"}, MicroLitres{400'000}, {"D1"}, MilliCelsius{22'000}};
    ASSERT_TRUE(stand().model().refusal(start));
    EXPECT_EQ(stand().model().refusal(start)->code, RefusalCode::CheckStillOpen);
    stand().taps({"setup.sound", "ask.heard", "setup.other"});
    tapCheck(kDiluent);
    stand().taps({"ask.override", "ask.is being put right"});
    EXPECT_FALSE(stand().model().refusal(start));
}

TEST_F(SetUp, theAlarmIsPlayedAndThenProvenByWhoHeardIt)
{
    begin();
    stand().tap(QStringLiteral("setup.sound"));
    EXPECT_EQ(m_pages->loud().played, 1);
    EXPECT_FALSE(bench().soundProven);
    stand().tap(QStringLiteral("ask.again"));
    EXPECT_EQ(m_pages->loud().played, 2);
    stand().tap(QStringLiteral("ask.heard"));
    EXPECT_TRUE(bench().soundProven);
    EXPECT_EQ(ui::standingOf(bench(), kAlarmHeard), ui::CheckStanding::Ok);
    EXPECT_EQ(bench().checks.at(kAlarmHeard).value, "Built-in speaker");
    EXPECT_EQ(m_pages->loud().heardTimes, 1);
    const auto proven = std::ranges::find_if(stand().kept().all, [](const Event& event) {
        return std::holds_alternative<SoundProven>(event.fact);
    });
    ASSERT_NE(proven, stand().kept().all.end());
    EXPECT_EQ(std::get<SoundProven>(proven->fact).device, "Built-in speaker");
}

TEST_F(SetUp, nothingIsProvenWithoutALoudspeaker)
{
    begin();
    m_pages->loud().name.clear();
    stand().taps({"setup.sound", "ask.heard"});
    EXPECT_FALSE(bench().soundProven);
    EXPECT_EQ(m_pages->loud().heardTimes, 0);
}

TEST_F(SetUp, anotherLoudspeakerIsKeptAndTriedAtOnce)
{
    begin();
    stand().taps({"setup.sound", "ask.device", "ask.device:b"});
    EXPECT_EQ(m_pages->loud().used, QStringLiteral("b"));
    EXPECT_EQ(m_pages->preferences().now().soundDevice, QStringLiteral("b"));
    EXPECT_EQ(m_pages->loud().played, 2);
}

TEST_F(SetUp, languageAndSchemeArePreferences)
{
    begin();
    stand().taps({"setup.screen", "ask.language:es", "setup.screen", "ask.dark"});
    EXPECT_EQ(m_pages->preferences().now().language, QStringLiteral("es"));
    EXPECT_TRUE(m_pages->preferences().now().dark);
}

TEST_F(SetUp, theStationIsGivenItsName)
{
    begin();
    const auto line = [this] {
        return dynamic_cast<ui::TapButton*>(stand().target(QStringLiteral("ask.name")))->line();
    };
    stand().tap(QStringLiteral("setup.screen"));
    EXPECT_EQ(line(), QStringLiteral("not named yet"));
    stand().taps({"ask.name", "letters.B", "letters.space", "letters.C", "letters.set"});
    EXPECT_EQ(m_pages->preferences().now().station, QStringLiteral("B C"));
    EXPECT_EQ(line(), QStringLiteral("B C"));
}

TEST_F(SetUp, withoutAShiftACheckIsRefusedInWords)
{
    PageStand pages(kTenInch, QStringLiteral("en"));
    pages.show(ui::Frame::kSetUp);
    pages.stand().tap(QStringLiteral("setup.check.work-area"));
    EXPECT_TRUE(pages.stand().target(QStringLiteral("setup.refusal")));
    EXPECT_EQ(pages.stand().heard().refusals, 1);
    pages.stand().taps({"setup.duty", "letters.M", "letters.K", "letters.set"});
    EXPECT_TRUE(pages.stand().bench().shiftIsOpen());
    EXPECT_EQ(pages.stand().bench().onDuty->id.text, "MK");
}

TEST_F(SetUp, aReadingIsTakenHere)
{
    begin();
    stand().taps({"setup.reading", "pad.2", "pad.8", "pad.set"});
    ASSERT_TRUE(bench().lastTaken);
    EXPECT_EQ(bench().lastTaken->fact.raw, MilliCelsius{28'000});
}

TEST_F(SetUp, theWindowLeadsBackToTheBench)
{
    begin();
    for (const Check& check : bench().card->content().checks)
        stand().say(RecordCheck{check.id, true, {}});
    stand().say(StartBag{{"B1"}, MicroLitres{400'000}, {"D1"}, MilliCelsius{22'000}});
    stand().say(InspectBag{});
    stand().say(DrawDiluent{{}, MicroLitres{5'000}});
    stand().tap(QStringLiteral("setup.reading"));
    stand().say(TakeOut{{{0, {"serotype 3"}, {"K1"}}}});
    EXPECT_EQ(stand().frame().current(),
              stand().frame().page(QString::fromLatin1(ui::Frame::kBench)));
    EXPECT_FALSE(stand().frame().showPage(QString::fromLatin1(ui::Frame::kSetUp)));
}

TEST_F(SetUp, spaceTapsAndEnterDoesNot)
{
    begin();
    const QString place = QStringLiteral("setup.check.work-area");
    QWidget* tile = stand().target(place);
    ASSERT_TRUE(tile);
    EXPECT_TRUE(tile->focusPolicy() & Qt::TabFocus);
    for (const auto key : {Qt::Key_Return, Qt::Key_Enter}) {
        QKeyEvent press(QEvent::KeyPress, key, Qt::NoModifier);
        QApplication::sendEvent(tile, &press);
    }
    EXPECT_EQ(ui::standingOf(bench(), {"work-area"}), ui::CheckStanding::Open);
    QKeyEvent space(QEvent::KeyPress, Qt::Key_Space, Qt::NoModifier);
    QApplication::sendEvent(tile, &space);
    EXPECT_EQ(ui::standingOf(bench(), {"work-area"}), ui::CheckStanding::Ok);
}

// --- how it looks -------------------------------------------------------------------------------

struct Sight {
    const char* name;
    std::vector<const char*> taps;
    bool cautions = true;  // in sight: whenever anything but letters is asked
};

struct Look {
    Sight sight;
    Panel panel;
    const char* language;
};

std::vector<Look> looks()
{
    const std::vector<Sight> sights{
        {"first page", {}},
        {"next page", {"setup.more"}},
        {"armed", {"setup.other"}},
        {"outcome", {"setup.other", "setup.check.disinfected"}},
        {"why", {"setup.other", "setup.check.disinfected", "ask.override"}},
        {"words", {"setup.other", "setup.check.disinfected", "ask.override", "ask.other"}, false},
        {"sound", {"setup.sound"}},
        {"loudspeaker", {"setup.sound", "ask.device"}},
        {"reading", {"setup.reading"}},
        {"duty", {"setup.duty"}, false},
        {"screen", {"setup.screen"}},
        {"station_name", {"setup.screen", "ask.name"}, false},
        {"size", {"setup.screen", "ask.size"}},
        {"labels", {"setup.screen", "ask.labels"}},
        {"label_printer", {"setup.screen", "ask.labels", "ask.label-printer"}},
        {"label_paper", {"setup.screen", "ask.labels", "ask.label-paper"}},
        {"test_label", {"setup.screen", "ask.labels", "ask.test-label"}},
    };
    std::vector<Look> all;
    for (const Sight& sight : sights) {
        for (const char* language : {"en", "es"}) {
            all.push_back({sight, kTenInch, language});
            if (std::string(sight.name) != "next page")  // there all checks are on one
                all.push_back({sight, kFifteenInch, language});
        }
    }
    return all;
}

std::string nameOfLook(const testing::TestParamInfo<Look>& test)
{
    std::string name = std::string(test.param.sight.name) + "_" + test.param.language + "_" +
                       test.param.panel.name;
    std::ranges::replace(name, ' ', '_');
    return name;
}

class SetUpLook : public testing::TestWithParam<Look> {};

TEST_P(SetUpLook, everyTargetIsLargeApartAndWhole)
{
    PageStand pages(GetParam().panel, QString::fromLatin1(GetParam().language));
    pages.stand().say(OpenShift{"Europe/Madrid", {"MK"}});
    pages.stand().say(RecordCheck{{"work-area"}, true, {}});
    pages.stand().say(RecordCheck{{"bath-ready"}, false, {}});
    pages.stand().say(OverrideCheck{kDiluent, "checked in another way"});
    pages.show(ui::Frame::kSetUp);
    pages.stand().taps(GetParam().sight.taps);
    expectTargetsAsTheyMustBe(pages.stand().frame());
    const auto* cautions = pages.stand().frame().findChild<ui::Cautions*>();
    ASSERT_TRUE(cautions && cautions->isVisible());
    if (!GetParam().sight.cautions)
        return;
    const QRect strip(cautions->mapTo(&pages.stand().frame(), QPoint(0, 0)), cautions->size());
    for (const auto* each : pages.stand().frame().findChildren<ui::TapButton*>()) {
        if (each->isVisible()) {
            EXPECT_FALSE(strip.intersects(
                QRect(each->mapTo(&pages.stand().frame(), QPoint(0, 0)), each->size())))
                << each->place().toStdString();
        }
    }
}

INSTANTIATE_TEST_SUITE_P(SetUp, SetUpLook, testing::ValuesIn(looks()), nameOfLook);

}  // namespace
}  // namespace bathside::test
