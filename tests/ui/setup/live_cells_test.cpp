// Live cells on the screen: in a bag's own pane as a band against the minimum, indicative; nothing
// there when off or something is missing, and why on set-up. Figures:
// tests/core/day/bag_cells_test.

#include <tuple>

#include <gtest/gtest.h>

#include "core/day/bag_cells.h"
#include "tests/support/cards.h"
#include "tests/ui/setup/page_stand.h"
#include "ui/bench/picture_pane.h"
#include "ui/charts/chart.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

const char* const kOn = R"({"live_cells": {"shown": true, "minimum_pfu": 2000,
    "minimum_source": "the label's leaflet, section 6", "titre_off_percent": 10,
    "in_bath": {"half_life_low_ms": 3600000, "half_life_high_ms": 7200000,
                "source": "a paper on the bath"},
    "in_bag": {"half_life_low_ms": 7200000, "half_life_high_ms": 14400000,
               "source": "a paper on the bag"}}})";
const char* const kNoBag = R"({"live_cells": {"shown": true, "minimum_pfu": 2000,
    "minimum_source": "a label", "in_bath": {"half_life_low_ms": 3600000,
    "half_life_high_ms": 7200000, "source": "a paper"}}})";

class LiveCellsOnScreen : public testing::Test {
protected:
    explicit LiveCellsOnScreen(const Panel& panel = kTenInch, const char* language = "en")
        : pages(panel, QString::fromLatin1(language))
    {
    }
    void live(const char* card, std::optional<std::int64_t> titre)
    {
        if (card != nullptr)
            stand().note(AdoptCard{cardWith(card)->document()});
        stand().say(OpenShift{"Europe/Madrid", {"MK"}});
        for (const Check& check : stand().bench().card->content().checks)
            stand().say(RecordCheck{check.id, true, {}});
        stand().say(Receive{{lot("serotype 3", "K07", 4'000), lot("serotype 1", "R22", titre)}});
        stand().say(TakeReading{{"hand"}, MilliCelsius{28'100}});
        stand().say(StartBag{{"B1"}, MicroLitres{400'000}, {"D-0417"}, MilliCelsius{22'500}});
        stand().say(InspectBag{});
        stand().say(DrawDiluent{{}, MicroLitres{5'000}});
        stand().say(TakeOut{{{0, {"serotype 3"}, {"K07"}}, {0, {"serotype 1"}, {"R22"}}}});
        for (const Step step :
             {Step::Bath, Step::Opened, Step::Diluent, Step::Rinsed, Step::Bagged}) {
            stand().pass(step == Step::Opened ? 70s : 3s);
            stand().say(MoveOn{step, {}, {}});
        }
        stand().say(MixBag{});
        stand().pass(11s);
    }
    static StoreReceived lot(const char* component, const char* name,
                             std::optional<std::int64_t> titre)
    {
        return {.of = ampoulesOf({component}, {name}),
                .place = "vessel 1",
                .count = 30,
                .doses = 2'000,
                .expires = std::chrono::sys_days(std::chrono::year(2027) / 1 / 31),
                .titre = titre};
    }
    [[nodiscard]] Stand& stand() { return pages.stand(); }
    [[nodiscard]] ui::TapButton* target(const char* place)
    {
        return qobject_cast<ui::TapButton*>(stand().target(QString::fromLatin1(place)));
    }
    [[nodiscard]] ui::PicturePane* pane()
    {
        return stand().frame().current()->findChild<ui::PicturePane*>();
    }
    [[nodiscard]] QString title()
    {
        QString all;
        for (const auto* each : stand().frame().current()->findChildren<ui::Label*>()) {
            if (each->isVisible())
                all += each->text() + u'|';
        }
        return all;
    }

    PageStand pages;
};

TEST_F(LiveCellsOnScreen, standInTheBagsPaneAsIndicativeAndTheLabelDecides)
{
    live(kOn, 3'000);
    stand().pass(30min);
    stand().tap(QStringLiteral("bag.1"));
    ASSERT_TRUE(target("ask.cells"));
    EXPECT_TRUE(target("ask.cells")->line().startsWith(QStringLiteral("indicative: 2,2")))
        << target("ask.cells")->line().toStdString();
    EXPECT_EQ(target("ask.cells")->role(), ui::Role::HeadsUp);  // undecided by the bag's limit
    stand().tap(QStringLiteral("ask.cells"));
    ASSERT_TRUE(pane());
    const QString words = pane()->words().text();
    for (const char* part : {"serotype 1", "minimum 2,000", "Indicative", "The label decides."})
        EXPECT_TRUE(words.contains(QString::fromLatin1(part))) << words.toStdString();
    const ui::ChartContent& chart = pane()->chart().content();
    ASSERT_EQ(chart.lines.size(), 2);
    EXPECT_NEAR(chart.lines.front().points.back().x(), 60, 1e-9);
    EXPECT_EQ(chart.bands.front().high, 2'000);
    EXPECT_NEAR(chart.marks.front().at.x(), 30, 0.5);
    stand().tap(QStringLiteral("ask.back"));
    EXPECT_TRUE(target("ask.cells"));
}

TEST_F(LiveCellsOnScreen, areNowhereOnTheBenchWhenOff)
{
    live(nullptr, 3'000);
    stand().tap(QStringLiteral("bag.1"));
    ASSERT_TRUE(target("ask.swirled"));
    EXPECT_FALSE(target("ask.cells"));
    pages.show(ui::Frame::kSetUp);
    stand().tap(QStringLiteral("setup.screen"));
    EXPECT_EQ(target("ask.live-cells")->line(), QStringLiteral("off"));
    stand().tap(QStringLiteral("ask.live-cells"));
    EXPECT_TRUE(title().contains(QStringLiteral("Off on this card")));
}

TEST_F(LiveCellsOnScreen, withoutALossSetUpSaysWhichIsMissing)
{
    live(kNoBag, 3'000);
    stand().tap(QStringLiteral("bag.1"));
    EXPECT_FALSE(target("ask.cells"));
    pages.show(ui::Frame::kSetUp);
    stand().taps({"setup.screen", "ask.live-cells"});
    EXPECT_TRUE(title().contains(QStringLiteral("no loss in the bag")));
    EXPECT_TRUE(target("ask.bath")->reason().isEmpty());
    EXPECT_EQ(target("ask.bag")->reason(), QStringLiteral("not on the card"));
}

TEST_F(LiveCellsOnScreen, withoutATitreSetUpNamesTheLot)
{
    live(kOn, {});
    stand().tap(QStringLiteral("bag.1"));
    EXPECT_FALSE(target("ask.cells"));
    pages.show(ui::Frame::kSetUp);
    stand().tap(QStringLiteral("setup.screen"));
    EXPECT_EQ(target("ask.live-cells")->line(), QStringLiteral("something is missing"));
    stand().tap(QStringLiteral("ask.live-cells"));
    EXPECT_FALSE(target("ask.lot:R22")->reason().isEmpty());
    EXPECT_FALSE(target("ask.lot:K07"));
}

TEST_F(LiveCellsOnScreen, theCardsSourcesAreATapAway)
{
    live(kOn, 3'000);
    pages.show(ui::Frame::kSetUp);
    stand().taps({"setup.screen", "ask.live-cells", "ask.bag"});
    ASSERT_TRUE(pane());
    EXPECT_TRUE(pane()->words().text().contains(QStringLiteral("a paper on the bag")));
    EXPECT_FALSE(pane()->chart().isVisible());
    stand().taps({"ask.back", "ask.back"});
    EXPECT_TRUE(target("ask.live-cells"));
}

using Look = std::tuple<const char*, Panel>;

class LiveCellsLook : public LiveCellsOnScreen, public testing::WithParamInterface<Look> {
protected:
    LiveCellsLook() : LiveCellsOnScreen(std::get<1>(GetParam()), std::get<0>(GetParam())) {}
};

TEST_P(LiveCellsLook, everyTargetIsLargeApartAndWhole)
{
    live(kOn, 3'000);
    stand().tap(QStringLiteral("bag.1"));
    expectTargetsAsTheyMustBe(stand().frame());
    stand().tap(QStringLiteral("ask.cells"));
    expectTargetsAsTheyMustBe(stand().frame());
    pages.show(ui::Frame::kSetUp);
    stand().tap(QStringLiteral("setup.screen"));
    expectTargetsAsTheyMustBe(stand().frame());
    stand().tap(QStringLiteral("ask.live-cells"));
    expectTargetsAsTheyMustBe(stand().frame());
}

INSTANTIATE_TEST_SUITE_P(Panels, LiveCellsLook,
                         testing::Combine(testing::Values("en", "es"),
                                          testing::Values(kTenInch, kFifteenInch)),
                         [](const auto& test) {
                             return std::string(std::get<0>(test.param)) + "_" +
                                    std::get<1>(test.param).name;
                         });

}  // namespace
}  // namespace bathside::test
