// Shots from a balance on a serial line, into the same ten fields that are typed else.

#include <gtest/gtest.h>

#include "core/checks/injector_case.h"
#include "tests/ui/checks/checks_stand.h"
#include "tests/ui/setup/page_stand.h"
#include "ui/controls/label.h"
#include "ui/controls/number_pad.h"
#include "ui/controls/tap_button.h"

namespace bathside::test {
namespace {

using ui::WeightSource;

class BalanceOnChecks : public testing::Test {
protected:
    BalanceOnChecks() : pages(kTenInch, QStringLiteral("en"))
    {
        openWithALine(pages.stand());
        pages.show();
    }
    void plugIn(Stillness stillness = Stillness::StillMark)
    {
        ui::Preference next = pages.preferences().now();
        next.balance = {.port = "/dev/ttyUSB0", .format = {.stillness = stillness, .mark = "ok"}};
        pages.preferences().set(next);
    }
    [[nodiscard]] const ui::BalanceChoice& chosen() { return pages.preferences().now().balance; }
    [[nodiscard]] std::size_t recorded()
    {
        std::size_t all = 0;
        for (const Event& event : pages.stand().kept().all)
            all += std::holds_alternative<DoseChecked>(event.fact) ? 1U : 0U;
        return all;
    }
    [[nodiscard]] QString padWords()
    {
        QString all;
        const auto* pad = pages.stand().frame().current()->findChild<ui::NumberPad*>();
        for (const auto* each : pad->findChildren<ui::Label*>())
            all += each->text() + u'|';
        return all;
    }
    [[nodiscard]] ui::TapButton* target(const char* place)
    {
        return qobject_cast<ui::TapButton*>(pages.stand().target(QString::fromLatin1(place)));
    }

    ChecksStand pages;
};

// Two taps for ten weights: tared in between, as each settles. By hand: as typed in
// checks_test.cpp.
TEST_F(BalanceOnChecks, tenShotsFillTenFieldsAndOneTapRecordsThem)
{
    plugIn();
    pages.tap("checks.weigh");
    pages.weigh({{2}});
    for (const std::int64_t shot :
         {1'991, 1'996, 1'989, 1'994, 1'992, 2'001, 1'990, 1'987, 1'995, 1'993})
        pages.weigh({{900, false}, {shot}, {shot}, {700, false}, {0}});
    EXPECT_FALSE(pages.stand().target(QStringLiteral("pad.set")));
    EXPECT_TRUE(pages.title().contains(QStringLiteral("The dose is right.")))
        << pages.title().toStdString();
    EXPECT_TRUE(pages.fields().contains(QStringLiteral("198.9 · 199.6")) ||
                pages.fields().contains(QStringLiteral("198.9")))
        << pages.fields().toStdString();
    EXPECT_EQ(recorded(), 0U);
    pages.tap("checks.record");
    EXPECT_EQ(recorded(), 1U);
}

TEST_F(BalanceOnChecks, weightsMayBeTypedBetweenThoseOfTheBalance)
{
    plugIn();
    pages.tap("checks.weigh");
    EXPECT_TRUE(padWords().contains(QStringLiteral("The balance fills it in")));
    pages.weigh({{0}, {1'991}});
    EXPECT_TRUE(padWords().contains(QStringLiteral("Shot 2 of 10")));
    pages.type("200.2");
    pages.weigh({{0}, {2'010}});
    pages.tap("pad.cancel");
    EXPECT_TRUE(pages.fields().contains(QStringLiteral("199.1 · 200.2 · 201.0 mg")))
        << pages.fields().toStdString();
}

TEST_F(BalanceOnChecks, whatIsNoWeightIsToldWhereTheWeightIsAskedFor)
{
    plugIn();
    pages.tap("checks.weigh");
    const auto told = [&](const WeightSource::Said& said) {
        emit pages.balance().said(said);
        return padWords();
    };
    EXPECT_TRUE(told(WeightFault::Overload).contains(QStringLiteral("overloaded")));
    EXPECT_TRUE(told(WeightFault::Unreadable).contains(QStringLiteral("sent no weight")));
    EXPECT_TRUE(told(WeightFault::OtherUnit).contains(QStringLiteral("g or mg")));
    EXPECT_TRUE(told(WeightSource::Gone{}).contains(QStringLiteral("The balance is gone")));
    const QString moving = told(Weighed{900, false});
    EXPECT_FALSE(moving.contains(QStringLiteral("The balance is gone")));
    EXPECT_TRUE(moving.contains(QStringLiteral("Shot 1 of 10")));
}

TEST_F(BalanceOnChecks, onlyShotsThatAreAskedForCount)
{
    plugIn();
    pages.weigh({{0}, {1'991}});
    pages.tap("checks.weigh");
    pages.tap("pad.cancel");
    pages.weigh({{0}, {1'991}});
    pages.tap("checks.set");
    pages.weigh({{0}, {1'991}});
    pages.tap("ask.dose");
    pages.weigh({{0}, {1'991}});
    pages.tap("pad.cancel");
    pages.tap("checks.weigh");
    pages.tap("pad.cancel");
    pages.tap("checks.count");
    pages.weigh({{0}, {1'991}});
    pages.tap("pad.cancel");
    EXPECT_TRUE(pages.fields().contains(QStringLiteral("none yet")))
        << pages.fields().toStdString();
}

TEST_F(BalanceOnChecks, itIsChosenByPortSpeedUnitAndHowItIsStill)
{
    pages.balance().plugged = {"/dev/serial/by-id/usb-scale", "/dev/ttyUSB1"};
    pages.stand().taps({"checks.set", "ask.balance"});
    EXPECT_FALSE(target("ask.speed")->reason().isEmpty());
    pages.stand().taps({"ask.port", "ask.port:0"});
    EXPECT_EQ(chosen().port, "/dev/serial/by-id/usb-scale");
    pages.balance().line = "ok 199.1";
    pages.stand().taps({"ask.speed", "ask.2400", "ask.unit", "ask.mg", "ask.still", "ask.still"});
    pages.spell("OK");
    EXPECT_EQ(chosen(), (ui::BalanceChoice{.port = "/dev/serial/by-id/usb-scale",
                                           .baud = 2'400,
                                           .format = {.unit = WeightUnit::Milligrams,
                                                      .stillness = Stillness::StillMark,
                                                      .mark = "OK"}}));
    pages.stand().taps({"ask.still", "ask.key"});
    EXPECT_EQ(chosen().format.stillness, Stillness::EachLine);
    EXPECT_EQ(chosen().format.mark, "");
    pages.stand().taps({"ask.port", "ask.none", "ask.done"});
    EXPECT_TRUE(chosen().port.empty());
    pages.tap("checks.weigh");
    pages.weigh({{0}, {1'991}});
    EXPECT_TRUE(padWords().contains(QStringLiteral("Shot 1 of 10")));
}

// --- every target large, apart and whole ---------------------------------------------------------

struct Look {
    const char* name;
    std::vector<const char*> taps;
};

class BalanceLook : public testing::TestWithParam<std::tuple<Look, const char*, Panel>> {};

TEST_P(BalanceLook, everyTargetIsLargeApartAndWhole)
{
    const auto& [look, language, panel] = GetParam();
    ChecksStand pages(panel, QString::fromLatin1(language));
    openWithALine(pages.stand());
    ui::Preference next = pages.preferences().now();
    next.balance = {.port = "/dev/serial/by-id/usb-scale-if00-port0",
                    .format = {.stillness = Stillness::MovingMark, .mark = "moving"}};
    pages.preferences().set(next);
    pages.balance().plugged = {"/dev/serial/by-id/usb-scale-if00-port0", "/dev/ttyUSB1"};
    pages.balance().line = "N   +   0.1991 g";
    pages.show();
    pages.stand().taps(look.taps);
    expectTargetsAsTheyMustBe(pages.stand().frame());
}

INSTANTIATE_TEST_SUITE_P(
    Balance, BalanceLook,
    testing::Combine(testing::Values(Look{"weigh", {"checks.weigh"}},
                                     Look{"settings", {"checks.set"}},
                                     Look{"menu", {"checks.set", "ask.balance"}},
                                     Look{"port", {"checks.set", "ask.balance", "ask.port"}},
                                     Look{"speed", {"checks.set", "ask.balance", "ask.speed"}},
                                     Look{"still", {"checks.set", "ask.balance", "ask.still"}}),
                     testing::Values("en", "es"), testing::Values(kTenInch, kFifteenInch)),
    [](const auto& test) {
        return std::string(std::get<0>(test.param).name) + "_" + std::get<1>(test.param) + "_" +
               std::get<2>(test.param).name;
    });

}  // namespace
}  // namespace bathside::test
