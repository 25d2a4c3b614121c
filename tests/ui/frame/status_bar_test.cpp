// The top line says why there is no reading of the bath, and all of it can be read.

#include <QApplication>
#include <algorithm>

#include <gtest/gtest.h>

#include "tests/ui/bench/stand.h"
#include "ui/controls/alarm_strip.h"
#include "ui/controls/status_chip.h"
#include "ui/text/words.h"

namespace bathside::test {
namespace {

struct Look {
    Panel panel;
    const char* language;
};

class StatusBarTest : public testing::TestWithParam<Look> {};

// Spec: temperatures, reading: the screen says why.
TEST_P(StatusBarTest, aFaultOfTheThermometerFits)
{
    Stand stand(GetParam().panel, QString::fromLatin1(GetParam().language));
    const auto* bath = stand.frame().findChild<ui::StatusChip*>(QStringLiteral("status.bath"));
    ASSERT_TRUE(bath);
    for (std::size_t i = 0; i < Names<ReadingFault>::all.size(); ++i) {
        const auto fault = static_cast<ReadingFault>(i);
        stand.say(TakeReading{{"bath"}, fault});
        QApplication::processEvents();
        EXPECT_TRUE(bath->accessibleName().endsWith(ui::shortWordOf(fault))) << nameOf(fault);
        EXPECT_TRUE(bath->fits()) << nameOf(fault) << ": " << bath->clipped().toStdString();
    }
}

ui::StatusChip& bathIn(Stand& stand)
{
    return *stand.frame().findChild<ui::StatusChip*>(QStringLiteral("status.bath"));
}

// Before a shift a steady thermometer is written once; what is shown is what it says now.
TEST(StatusBarReading, isFreshBeforeAShift)
{
    Stand stand(kTenInch, QStringLiteral("en"));
    stand.feed({{"bath"}, stand.model().now(), MilliCelsius{28'000}});
    stand.pass(std::chrono::hours(2));
    EXPECT_TRUE(bathIn(stand).accessibleName().contains(QStringLiteral("too old")));
    const auto written = stand.kept().all.size();
    stand.feed({{"bath"}, stand.model().now(), MilliCelsius{28'200}});
    stand.pass(std::chrono::seconds(1));
    EXPECT_EQ(stand.kept().all.size(), written);
    const QString said = bathIn(stand).accessibleName();
    EXPECT_TRUE(said.contains(QStringLiteral("28.2"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("not sure · 1 s ago"))) << said.toStdString();
    EXPECT_FALSE(said.contains(u'±')) << said.toStdString();  // not calibrated
}

// Spec: temperatures, reading: the screen says why.
TEST(StatusBarReading, aFaultIsSaidInItsOwnWords)
{
    Stand stand(kTenInch, QStringLiteral("en"));
    stand.say(OpenShift{"Europe/Madrid", {"MK"}});
    stand.say(TakeReading{{"bath"}, ReadingFault::OpenLine});
    const auto& alarms =
        stand.frame().findChild<ui::AlarmStrip*>(QStringLiteral("status.alarms"))->alarms();
    EXPECT_TRUE(std::ranges::any_of(alarms, [](const ui::AlarmLine& alarm) {
        return alarm.text ==
               QStringLiteral("The thermometer gives no reading (not connected): measure by hand");
    }));
}

INSTANTIATE_TEST_SUITE_P(Screens, StatusBarTest,
                         testing::Values(Look{kTenInch, "en"}, Look{kTenInch, "es"},
                                         Look{kFifteenInch, "en"}, Look{kFifteenInch, "es"}),
                         [](const auto& test) {
                             return std::string("Inch") + test.param.panel.name +
                                    test.param.language;
                         });

}  // namespace
}  // namespace bathside::test
