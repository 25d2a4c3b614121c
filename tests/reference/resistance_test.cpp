// Resistance thermometers against published tables and worked examples; each names where it comes
// from.

#include "core/bath/resistance.h"

#include <cmath>

#include <gtest/gtest.h>

namespace bathside {
namespace {

struct OhmsAt {
    double celsius;
    double ohm;  // as printed, to 0.01 Ω
};

// Published: IEC 60751 (2008, 2022), resistance table of Pt100, to its printed 0.01 Ω; the
// coefficients were read in a page that quotes the 2022 edition, the rows computed from them.
TEST(Iec60751Test, printedTableBothSidesOfZero)
{
    for (const OhmsAt& row :
         {OhmsAt{-200, 18.52}, OhmsAt{-50, 80.31}, OhmsAt{0, 100.00}, OhmsAt{4, 101.56},
          OhmsAt{10, 103.90}, OhmsAt{20, 107.79}, OhmsAt{25, 109.73}, OhmsAt{26, 110.12},
          OhmsAt{28, 110.90}, OhmsAt{35, 113.61}, OhmsAt{37, 114.38}, OhmsAt{40, 115.54},
          OhmsAt{50, 119.40}, OhmsAt{100, 138.51}, OhmsAt{150, 157.33}}) {
        EXPECT_EQ(std::round(100 * ohmOf(Platinum{}, row.celsius)) / 100, row.ohm) << row.celsius;
        EXPECT_NEAR(ohmOf(Platinum{1000}, row.celsius), 10 * row.ohm, 0.0501) << row.celsius;
    }
}

// Published: IEC 60751:2022, table of resistance over temperature, beyond the bath on both sides;
// from memory, as printed.
TEST(Iec60751Test, printedTableFarFromZero)
{
    for (const OhmsAt& row : {OhmsAt{-100, 60.26}, OhmsAt{-20, 92.16}, OhmsAt{-10, 96.09},
                              OhmsAt{200, 175.86}, OhmsAt{850, 390.48}})
        EXPECT_EQ(std::round(100 * ohmOf(Platinum{}, row.celsius)) / 100, row.ohm) << row.celsius;
}

// Computed with scipy 1.10.1 from the same coefficients, six decimals; at the boiling point of
// nitrogen among others.
TEST(Iec60751Test, sixDecimals)
{
    EXPECT_NEAR(ohmOf(Platinum{}, -200), 18.520080, 5e-7);
    EXPECT_NEAR(ohmOf(Platinum{}, -195.795), 20.334837, 5e-7);
    EXPECT_NEAR(ohmOf(Platinum{}, -50), 80.306282, 5e-7);
    EXPECT_NEAR(ohmOf(Platinum{}, 28), 110.897964, 5e-7);
}

// Computed with scipy 1.10.1: the inverse on both sides of 0 °C.
TEST(Iec60751Test, inverse)
{
    for (const OhmsAt& row :
         {OhmsAt{9.9935, 103.90}, OhmsAt{19.9910, 107.79}, OhmsAt{26.9992, 110.51},
          OhmsAt{28.0053, 110.90}, OhmsAt{36.9957, 114.38}, OhmsAt{100.0119, 138.51},
          OhmsAt{-49.9906, 80.31}, OhmsAt{-195.9919, 20.25}})
        EXPECT_NEAR(celsiusOf(Platinum{}, row.ohm).value(), row.celsius, 6e-5) << row.ohm;
}

// From memory: a common set of coefficients of a 10 kΩ NTC; the rows computed with scipy 1.10.1.
TEST(SteinhartHartTest, commonCoefficients)
{
    const Thermistor element{1.129148e-3, 2.34125e-4, 8.76741e-8};
    for (const OhmsAt& row :
         {OhmsAt{0.0002, 32'650}, OhmsAt{10.0030, 19'900}, OhmsAt{14.9992, 15'714},
          OhmsAt{20.0003, 12'493}, OhmsAt{24.9997, 10'000}, OhmsAt{26.9136, 9'199},
          OhmsAt{29.9998, 8'056}, OhmsAt{35.0007, 6'530}, OhmsAt{40.0091, 5'323},
          OhmsAt{49.9930, 3'602}})
        EXPECT_NEAR(celsiusOf(element, row.ohm).value(), row.celsius, 6e-5) << row.ohm;
}

// Constructed worked example of the three-point solution; computed with scipy 1.10.1.
TEST(SteinhartHartTest, threePointSolution)
{
    const auto element = thermistorFrom({{{5, 25'415}, {25, 10'021}, {45, 4'372}}}).value();
    EXPECT_NEAR(element.a, 1.1497697805872e-3, 1e-15);
    EXPECT_NEAR(element.b, 2.3068036128829e-4, 1e-16);
    EXPECT_NEAR(element.c, 1.0119336291452e-7, 1e-19);
    for (const OhmsAt& row :
         {OhmsAt{9.9275, 20'000}, OhmsAt{16.0412, 15'000}, OhmsAt{20.9395, 12'000},
          OhmsAt{25.0478, 10'000}, OhmsAt{27.4670, 9'000}, OhmsAt{30.2117, 8'000},
          OhmsAt{37.1005, 6'000}})
        EXPECT_NEAR(celsiusOf(element, row.ohm).value(), row.celsius, 6e-5) << row.ohm;
}

// Published worked example of the three-point solution, 25 kΩ at 5 °C, 10 kΩ at 25 °C, 4 kΩ at
// 45 °C; coefficients from memory, as printed, and solved anew by hand.
TEST(SteinhartHartTest, publishedThreePoints)
{
    const auto element = thermistorFrom({{{5, 25'000}, {25, 10'000}, {45, 4'000}}}).value();
    EXPECT_NEAR(element.a, 2.108508173e-3, 5e-13);
    EXPECT_NEAR(element.b, 7.979204727e-5, 5e-15);
    EXPECT_NEAR(element.c, 6.535076315e-7, 5e-17);
}

}  // namespace
}  // namespace bathside
