// The top line says why there is no reading of the bath, and all of it can be read.

#include <QApplication>

#include <gtest/gtest.h>

#include "tests/ui/bench/stand.h"
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

INSTANTIATE_TEST_SUITE_P(Screens, StatusBarTest,
                         testing::Values(Look{kTenInch, "en"}, Look{kTenInch, "es"},
                                         Look{kFifteenInch, "en"}, Look{kFifteenInch, "es"}),
                         [](const auto& test) {
                             return std::string("Inch") + test.param.panel.name +
                                    test.param.language;
                         });

}  // namespace
}  // namespace bathside::test
