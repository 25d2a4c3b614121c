// Reference: WCAG 2.2, definitions of relative luminance and contrast ratio (w3.org/TR/WCAG22; read
// in the source w3c/wcag, guidelines/terms); the ratios were computed from that formula by a second
// tool.

#include "ui/theme/contrast.h"

#include <gtest/gtest.h>

namespace bathside::ui {
namespace {

struct Row {
    const char* name;
    QRgb a, b;
    double ratio;  // rounded to four decimals
};

class Contrast : public testing::TestWithParam<Row> {};

TEST_P(Contrast, isThatOfWcag)
{
    const Row& row = GetParam();
    EXPECT_NEAR(contrastRatio(QColor::fromRgb(row.a), QColor::fromRgb(row.b)), row.ratio, 0.00005);
    EXPECT_NEAR(contrastRatio(QColor::fromRgb(row.b), QColor::fromRgb(row.a)), row.ratio, 0.00005);
}

INSTANTIATE_TEST_SUITE_P(Wcag22, Contrast,
                         testing::Values(Row{"BlackOnWhite", 0x000000, 0xFFFFFF, 21.0},
                                         Row{"GreyThatPasses", 0x767676, 0xFFFFFF, 4.5422},
                                         Row{"GreyThatFails", 0x777777, 0xFFFFFF, 4.4781},
                                         Row{"LightGreyPasses", 0x949494, 0xFFFFFF, 3.0335},
                                         Row{"LightGreyFails", 0x959595, 0xFFFFFF, 2.9953},
                                         Row{"DarkGreyPasses", 0x595959, 0xFFFFFF, 7.0047},
                                         Row{"DarkGreyFails", 0x5A5A5A, 0xFFFFFF, 6.8969},
                                         Row{"RedOnWhite", 0xFF0000, 0xFFFFFF, 3.9985},
                                         Row{"BlueOnWhite", 0x0000FF, 0xFFFFFF, 8.5925},
                                         Row{"GreenOnWhite", 0x00FF00, 0xFFFFFF, 1.3722},
                                         Row{"YellowOnBlack", 0xFFFF00, 0x000000, 19.5560},
                                         Row{"RedOnBlack", 0xFF0000, 0x000000, 5.2520}),
                         [](const auto& test) { return test.param.name; });

TEST(ContrastTest, neverRoundsUp)
{
    EXPECT_LT(contrastRatio(QColor::fromRgb(0x777777), QColor::fromRgb(0xFFFFFF)), kTextContrast);
    EXPECT_LT(contrastRatio(QColor::fromRgb(0x959595), QColor::fromRgb(0xFFFFFF)), kShapeContrast);
    EXPECT_LT(contrastRatio(QColor::fromRgb(0x5A5A5A), QColor::fromRgb(0xFFFFFF)), kTimedContrast);
}

}  // namespace
}  // namespace bathside::ui
