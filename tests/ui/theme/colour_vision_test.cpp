// Properties that the published simulations have whatever their numbers: greys stay greys, and the
// pairs that a dichromat famously confuses move together. CIE L*a*b* rows: CIE 15 (white, black and
// the sRGB primaries under D65; from memory, confidence high).

#include "ui/theme/colour_vision.h"

#include <array>
#include <string>

#include <gtest/gtest.h>

namespace bathside::ui {
namespace {

const QColor kWhite = QColor::fromRgb(0xFFFFFF), kBlack = QColor::fromRgb(0x000000);

class Dichromat : public testing::TestWithParam<Vision> {};

TEST_P(Dichromat, seesGreysAsTheyAre)
{
    for (int grey = 0; grey < 256; grey += 15) {
        const QColor seen = seenWith(GetParam(), QColor(grey, grey, grey));
        EXPECT_NEAR(seen.red(), grey, 1);
        EXPECT_NEAR(seen.green(), grey, 1);
        EXPECT_NEAR(seen.blue(), grey, 1);
    }
}

std::string nameOf(const testing::TestParamInfo<Vision>& test)
{
    constexpr std::array kNames{"Full", "Protanopia", "Deuteranopia", "Tritanopia"};
    return kNames.at(static_cast<std::size_t>(test.param));
}

INSTANTIATE_TEST_SUITE_P(Kinds, Dichromat,
                         testing::Values(Vision::Full, Vision::Protanopia, Vision::Deuteranopia,
                                         Vision::Tritanopia),
                         nameOf);

double distance(Vision vision, QRgb a, QRgb b)
{
    return colourDistance(seenWith(vision, QColor::fromRgb(a)),
                          seenWith(vision, QColor::fromRgb(b)));
}

TEST(ColourVisionTest, confusesWhatDichromatsConfuse)
{
    // Red and green of the same lightness.
    EXPECT_GT(distance(Vision::Full, 0xC00000, 0x508000), 80);
    EXPECT_LT(distance(Vision::Deuteranopia, 0xC00000, 0x508000), 30);
    // Blue-green and violet-blue.
    EXPECT_LT(distance(Vision::Tritanopia, 0x00A0A0, 0x2098D0),
              0.5 * distance(Vision::Full, 0x00A0A0, 0x2098D0));
    // Red is dark to a protanope.
    EXPECT_LT(seenWith(Vision::Protanopia, QColor::fromRgb(0xFF0000)).lightness(), 80);
}

TEST(ColourVisionTest, distanceIsThatOfCie1976)
{
    EXPECT_NEAR(colourDistance(kWhite, kBlack), 100, 0.01);
    EXPECT_NEAR(colourDistance(kWhite, kWhite), 0, 1e-9);
    // sRGB red is L* 53.24, a* 80.09, b* 67.20; from white: hypot(46.76, 80.09, 67.20).
    EXPECT_NEAR(colourDistance(QColor::fromRgb(0xFF0000), kWhite), 114.54, 0.1);
}

}  // namespace
}  // namespace bathside::ui
