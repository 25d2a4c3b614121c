// When a bag's label is offered at the bench, and what a tap on it does.

#include <gtest/gtest.h>

#include "tests/ui/bench/stand.h"
#include "ui/controls/banner.h"
#include "ui/controls/tap_button.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

const QString kSide = QStringLiteral("side");

class PrintLabel : public testing::Test {
protected:
    void upTo(Step last)
    {
        stand.say(OpenShift{"Europe/Madrid", {"MK"}});
        for (const Check& check : stand.bench().card->content().checks)
            stand.say(RecordCheck{check.id, true, {}});
        stand.say(TakeReading{{"hand"}, MilliCelsius{28'100}});
        stand.say(StartBag{{"B1"}, MicroLitres{400'000}, {"D-0417"}, MilliCelsius{22'500}});
        stand.say(InspectBag{});
        stand.say(DrawDiluent{{}, MicroLitres{5'000}});
        stand.say(TakeOut{{{0, {"serotype 3"}, {"K07"}}, {0, {"serotype 1"}, {"R22"}}}});
        stand.pass(4s);
        for (const Step step :
             {Step::Bath, Step::Opened, Step::Diluent, Step::Rinsed, Step::Bagged}) {
            if (step > last)
                return;
            stand.say(MoveOn{step, {}, {}});
            stand.pass(step == Step::Bath ? 65s : 1s);
        }
    }
    [[nodiscard]] bool isOffered() const
    {
        const auto* side = qobject_cast<ui::TapButton*>(stand.target(kSide));
        return side && side->word() == QStringLiteral("PRINT LABEL");
    }
    [[nodiscard]] std::size_t printed() { return stand.papers().labels.size(); }
    [[nodiscard]] QString banner() const
    {
        const auto* shown = qobject_cast<ui::Banner*>(stand.target(QStringLiteral("refusal")));
        return shown ? shown->text() : QString();
    }
    Stand stand{kTenInch, QStringLiteral("en")};
};

TEST_F(PrintLabel, isOfferedOnceTheBagIsMixedAndNotBefore)
{
    upTo(Step::Bagged);
    stand.pass(11s);
    EXPECT_FALSE(isOffered());
    stand.say(MixBag{});
    EXPECT_TRUE(isOffered());
    stand.say(HangBag{{}, {"A"}});
    EXPECT_FALSE(isOffered());
}

TEST_F(PrintLabel, isNotOfferedInTheCriticalWindow)
{
    upTo(Step::Bagged);
    stand.say(MixBag{});
    ASSERT_TRUE(stand.model().isInCriticalWindow());
    EXPECT_FALSE(stand.target(kSide));
    stand.pass(11s);
    ASSERT_FALSE(stand.model().isInCriticalWindow());
    EXPECT_TRUE(isOffered());
}

TEST_F(PrintLabel, movesNothing)
{
    upTo(Step::Bagged);
    const QRect before = stand.target(QStringLiteral("step"))->geometry();
    stand.pass(11s);
    EXPECT_EQ(stand.target(QStringLiteral("step"))->geometry(), before);
    stand.say(MixBag{});
    EXPECT_EQ(stand.target(QStringLiteral("step"))->geometry(), before);
}

TEST_F(PrintLabel, isThatOfTheMixedBagWithItsDoses)
{
    upTo(Step::Bagged);
    stand.pass(11s);
    stand.say(MixBag{});
    stand.tap(kSide);
    ASSERT_EQ(printed(), 1U);
    const ui::BagLabel& label = stand.papers().labels.front();
    EXPECT_EQ(label.bag, BagId{"B1"});
    EXPECT_EQ(label.preparer, PersonId{"MK"});
    EXPECT_EQ(label.doses, stand.bench().card->content().plan.dosesPerAmpoule);
    EXPECT_TRUE(banner().contains(QStringLiteral("/documents/printed.pdf")));
}

// In the stores that lot has another number of doses than the card says.
TEST_F(PrintLabel, hasTheDosesOfTheLotInTheStores)
{
    const auto received = [](const char* component, const char* lot, std::int64_t doses) {
        return StoreReceived{.of = ampoulesOf({component}, {lot}),
                             .place = "vessel 1",
                             .count = 10,
                             .doses = doses,
                             .expires = std::chrono::sys_days(std::chrono::year(2027) / 1 / 31)};
    };
    stand.say(Receive{{received("serotype 3", "K07", 4000), received("serotype 1", "R22", 3000)}});
    upTo(Step::Bagged);
    stand.pass(11s);
    stand.say(MixBag{});
    stand.tap(kSide);
    ASSERT_EQ(printed(), 1U);
    EXPECT_EQ(stand.papers().labels.front().components[0].doses, 4000);
    EXPECT_EQ(stand.papers().labels.front().doses, 3000);
}

TEST_F(PrintLabel, isInTheBagsPaneFromMixedOn)
{
    upTo(Step::Bagged);
    stand.pass(11s);
    stand.tap(QStringLiteral("bag.1"));
    EXPECT_FALSE(stand.target(QStringLiteral("ask.label")));
    stand.tap(QStringLiteral("more"));
    stand.say(MixBag{});
    stand.say(HangBag{{}, {"A"}});
    stand.pass(20min);
    stand.taps({"bag.1", "ask.label"});
    EXPECT_EQ(printed(), 1U);
    EXPECT_FALSE(stand.target(QStringLiteral("ask-pane")));
}

TEST_F(PrintLabel, newsWaitUntilTheWindowIsOver)
{
    upTo(Step::Opened);
    ASSERT_TRUE(stand.model().isInCriticalWindow());
    emit stand.papers().ended({ui::PrintOutcome::Of::Label, QStringLiteral("labels"),
                               QStringLiteral("/documents/printed.pdf"),
                               ui::PrintFault::PrinterRefused});
    EXPECT_TRUE(banner().isEmpty());
    for (const Step step : {Step::Diluent, Step::Rinsed, Step::Bagged})
        stand.say(MoveOn{step, {}, {}});
    EXPECT_TRUE(banner().isEmpty());
    stand.pass(11s);
    EXPECT_TRUE(banner().contains(QStringLiteral("/documents/printed.pdf")));
    stand.pass(13s);
    EXPECT_TRUE(banner().isEmpty());
}

}  // namespace
}  // namespace bathside::test
