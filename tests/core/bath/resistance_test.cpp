#include "core/bath/resistance.h"

#include <limits>

#include <gtest/gtest.h>

namespace bathside {
namespace {

constexpr double kEndless = std::numeric_limits<double>::infinity();

TEST(PlatinumTest, findsEveryTemperatureOfItsRangeAgain)
{
    for (const double zero : {100.0, 1000.0})
        for (double t = -200; t <= 850; t += 0.5) {
            const Platinum element{zero};
            const auto found = celsiusOf(element, ohmOf(element, t));
            ASSERT_TRUE(found) << t;
            EXPECT_NEAR(*found, t, 1e-9) << t;
        }
}

TEST(PlatinumTest, hasNoTemperatureBeyondItsRange)
{
    EXPECT_EQ(celsiusOf(Platinum{}, 18.51).error(), ReadingFault::Shorted);
    EXPECT_EQ(celsiusOf(Platinum{}, 0).error(), ReadingFault::Shorted);
    EXPECT_EQ(celsiusOf(Platinum{}, 390.49).error(), ReadingFault::OpenLine);
    EXPECT_EQ(celsiusOf(Platinum{}, kEndless).error(), ReadingFault::OpenLine);
    EXPECT_EQ(celsiusOf(Platinum{}, -1).error(), ReadingFault::Unreadable);
    EXPECT_EQ(celsiusOf(Platinum{}, std::numeric_limits<double>::quiet_NaN()).error(),
              ReadingFault::Unreadable);
}

// A Pt1000's ohms read as a Pt100's are an open line rather than a hot bath.
TEST(PlatinumTest, tellsAPt1000FromAPt100)
{
    EXPECT_EQ(celsiusOf(Platinum{100}, 1109).error(), ReadingFault::OpenLine);
    EXPECT_NEAR(celsiusOf(Platinum{1000}, 1109).value(), 28.0053, 1e-4);
}

const std::array<ThermistorPoint, 3> kPoints{{{45, 4372}, {5, 25415}, {25, 10021}}};

TEST(ThermistorTest, passesThroughItsThreePoints)
{
    const auto element = thermistorFrom(kPoints);
    ASSERT_TRUE(element);
    for (const ThermistorPoint& point : kPoints)
        EXPECT_NEAR(celsiusOf(*element, point.ohm).value(), point.celsius, 1e-9);
}

TEST(ThermistorTest, holdsForItsRangeOnly)
{
    const auto element = thermistorFrom(kPoints);
    EXPECT_EQ(celsiusOf(*element, 25'500).error(), ReadingFault::OpenLine);
    EXPECT_EQ(celsiusOf(*element, 4'300).error(), ReadingFault::Shorted);
    EXPECT_EQ(celsiusOf(*element, 0).error(), ReadingFault::Shorted);
    EXPECT_EQ(celsiusOf(*element, -5).error(), ReadingFault::Unreadable);
}

TEST(ThermistorTest, hasTheResistanceOfEveryTemperatureOfItsRange)
{
    const Thermistor element{1.129148e-3, 2.34125e-4, 8.76741e-8};
    for (double t = -40; t <= 125; t += 5) {
        const auto ohm = ohmOf(element, t);
        ASSERT_TRUE(ohm) << t;
        EXPECT_NEAR(celsiusOf(element, *ohm).value(), t, 1e-9) << t;
    }
}

TEST(ThermistorTest, coefficientsThatNoneCanHaveHaveNoResistance)
{
    EXPECT_FALSE(ohmOf(Thermistor{}, 25));                                      // nothing typed
    EXPECT_FALSE(ohmOf(Thermistor{1.129148e-3, -2.34125e-4, 8.76741e-8}, 25));  // a sign
    EXPECT_FALSE(ohmOf(Thermistor{1.129148e-2, 2.34125e-4, 8.76741e-8}, 25));   // a power of ten
}

TEST(ThermistorTest, refusesPointsThatAreNoThermistor)
{
    using enum ThermistorFault;
    EXPECT_EQ(thermistorFrom({{{5, 0}, {25, 10'021}, {45, 4372}}}).error(), NoResistance);
    EXPECT_EQ(thermistorFrom({{{-300, 3e6}, {25, 10'021}, {45, 4372}}}).error(), NoResistance);
    EXPECT_EQ(thermistorFrom({{{5, 4372}, {25, 10'021}, {45, 25'415}}}).error(), NotFalling);
    EXPECT_EQ(thermistorFrom({{{5, 25'415}, {5, 10'021}, {45, 4372}}}).error(), NotFalling);
    EXPECT_EQ(thermistorFrom({{{5, 25'415}, {25, 25'415}, {45, 4372}}}).error(), NotFalling);
}

}  // namespace
}  // namespace bathside
