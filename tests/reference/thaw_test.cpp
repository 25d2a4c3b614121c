// The thaw model against closed forms, an independent solver, a published correlation and what is
// common practice; each names where it comes from.

#include <cmath>

#include <boost/math/special_functions/bessel.hpp>
#include <gtest/gtest.h>

#include "core/bath/heat_matter.h"
#include "core/bath/thaw_film.h"
#include "core/bath/thaw_fit.h"
#include "core/bath/thaw_model.h"

namespace bathside {
namespace {

// Outer diameter and wall of 2 mL and 5 mL ampoules after ISO 9187-1, from memory.
const AmpouleShape kSmall{0.01075, 0.0005, 2e-6};
const AmpouleShape kLarge{0.01475, 0.00055, 5e-6};

constexpr double kRadius = 0.005;  // m
constexpr double kConductivity = 0.6;
constexpr double kDensity = 1000;
constexpr double kHeat = 4000;  // J/(kg K)

/// A bare cylinder that melts nothing, from 0 °C into 100 °C.
ThawSetting plainCylinder(double biot, int rings)
{
    ThawSetting setting;
    setting.shape = {2 * kRadius, 0, 0};
    setting.contents = {
        kDensity, {{-10, -10 * kHeat, kConductivity, 0}, {110, 110 * kHeat, kConductivity, 0}}};
    setting.start = 0;
    setting.bath = 100;
    setting.film = biot * kConductivity / kRadius;
    setting.rings = rings;
    return setting;
}

double secondsOf(double fourier)
{
    return fourier * kRadius * kRadius * kDensity * kHeat / kConductivity;
}

/// The n-th root of ζ J1(ζ) = Bi J0(ζ), between the zeros of J1 and J0.
double root(double biot, int n)
{
    using boost::math::cyl_bessel_j;
    using boost::math::cyl_bessel_j_zero;
    double low = n == 1 ? 0.0 : cyl_bessel_j_zero(1.0, n - 1);
    double high = cyl_bessel_j_zero(0.0, n);
    for (int i = 0; i < 80; ++i) {
        const double middle = (low + high) / 2;
        const double value = middle * cyl_bessel_j(1, middle) - biot * cyl_bessel_j(0, middle);
        ((n % 2 == 1 ? value : -value) < 0 ? low : high) = middle;
    }
    return (low + high) / 2;
}

struct Unaccomplished {
    double centre = 0;
    double mean = 0;
};

// Published: the series for a cylinder with convection (Carslaw & Jaeger, Conduction of Heat in
// Solids, 7.7; the Heisler charts are drawn from it). From memory; the coefficients agree with the
// one-term table of Incropera & DeWitt (Bi 1: ζ1 1.2558, C1 1.2071), also from memory.
Unaccomplished series(double biot, double fourier)
{
    using boost::math::cyl_bessel_j;
    Unaccomplished sum;
    for (int n = 1; n <= 20; ++n) {
        const double z = root(biot, n);
        const double j0 = cyl_bessel_j(0, z);
        const double j1 = cyl_bessel_j(1, z);
        const double term = 2 / z * j1 / (j0 * j0 + j1 * j1) * std::exp(-z * z * fourier);
        sum.centre += term;
        sum.mean += term * 2 * j1 / z;
    }
    return sum;
}

TEST(HeislerTest, oneTermTable)
{
    EXPECT_NEAR(root(1, 1), 1.2558, 5e-5);
    EXPECT_NEAR(root(0.1, 1), 0.4417, 5e-5);
    EXPECT_NEAR(root(10, 1), 2.1795, 5e-5);
    EXPECT_NEAR(series(1, 0.5).centre, 1.2071 * std::exp(-1.2558 * 1.2558 * 0.5), 2e-4);
}

TEST(HeislerTest, cylinderWithConvection)
{
    for (const double biot : {0.1, 1.0, 10.0})
        for (const double fourier : {0.1, 0.3, 1.0}) {
            const Thaw thaw = warmedFor(plainCylinder(biot, 40), secondsOf(fourier));
            const Unaccomplished expected = series(biot, fourier);
            const ThawPoint& end = thaw.course.back();
            EXPECT_NEAR(1 - end.centre / 100, expected.centre, 0.003) << biot << " " << fourier;
            EXPECT_NEAR(1 - end.mean / 100, expected.mean, 0.003) << biot << " " << fourier;
        }
}

// Published: Plank's equation for an infinite cylinder, t = L ρ / ΔT · (d / 4h + d² / 16k) (ASHRAE
// Handbook, Refrigeration; from memory): all latent heat at one temperature, none to warm what has
// melted. The contents here have 1 % of their latent heat in the 30 K of the melt.
TEST(PlankTest, thawingTimeOfACylinder)
{
    constexpr double kLatent = 300'000;
    for (const double film : {100.0, 500.0, 5000.0}) {
        ThawSetting setting;
        setting.shape = {2 * kRadius, 0, 0};
        setting.contents = {kDensity,
                            {{-1, -100, kConductivity, 1},
                             {-0.01, 0, kConductivity, 1},
                             {0.01, kLatent, kConductivity, 0},
                             {40, kLatent + 4'000, kConductivity, 0}}};
        setting.start = -0.01;
        setting.bath = 30;
        setting.film = film;
        setting.slushIce = 0.0005;
        setting.rings = 40;
        const double d = 2 * kRadius;
        const double plank =
            kLatent * kDensity / 30 * (d / (4 * film) + d * d / (16 * kConductivity));
        EXPECT_NEAR(thawed(setting).slush.value(), plank, 0.015 * plank) << film;
    }
}

double slushOf(const AmpouleShape& shape, double bath, double film, int rings = 20)
{
    ThawSetting setting{shape, cryoprotected(), kCryogenCelsius, bath, film};
    setting.rings = rings;
    return thawed(setting).slush.value();
}

struct Solved {
    const AmpouleShape& shape;
    double bath;
    double film;
    double slush;  // s
};

// Computed with scipy 1.10.1: the same medium solved another way, in temperature with an apparent
// heat capacity and derivatives in closed form, 150 rings with nodes at their mean area, implicit
// (BDF), relative tolerance 1e-6.
TEST(IndependentSolverTest, slushTimes)
{
    for (const Solved& row : {Solved{kSmall, 28, 2000, 79.896}, Solved{kSmall, 37, 2000, 68.766},
                              Solved{kSmall, 25, 2000, 84.831}, Solved{kLarge, 28, 2000, 147.681},
                              Solved{kSmall, 28, 800, 94.776}}) {
        EXPECT_NEAR(slushOf(row.shape, row.bath, row.film), row.slush, 0.006 * row.slush);
        EXPECT_NEAR(slushOf(row.shape, row.bath, row.film, 60), row.slush, 0.002 * row.slush);
    }
}

double fittedTo80SecondsAt28()
{
    const ThawSetting setting{kSmall, cryoprotected(), kCryogenCelsius, 0, 0};
    return fittedFilm(setting, {{28, 80, kSmall}}).value().film;
}

// Common practice: a small ampoule is slush after about 80 s at 28 °C. The one number is fitted to
// that; it must be one that water swirled at 0.02 to 0.5 m/s has (Churchill & Bernstein).
TEST(ThawPracticeTest, fittedFilmIsOneThatSwirledWaterHas)
{
    const double film = fittedTo80SecondsAt28();
    EXPECT_NEAR(slushOf(kSmall, 28, film), 80, 0.1);
    const Interval plausible = plausibleFilm(28, kSmall.diameter);
    EXPECT_GT(film, plausible.low);
    EXPECT_LT(film, plausible.high);
}

// Not fitted, another temperature. Common practice: 60 to 90 s at 25 to 27 °C.
TEST(ThawPracticeTest, predictsTheUsualTimesInCoolerBaths)
{
    const double film = fittedTo80SecondsAt28();
    for (const double bath : {25.0, 26.0, 27.0}) {
        const double slush = slushOf(kSmall, bath, film);
        EXPECT_GT(slush, 80) << bath;
        EXPECT_LT(slush, 90) << bath;
    }
}

// Not fitted, another size: no slush time of a 5 mL ampoule is published; Plank's equation says how
// much longer it takes, by inner diameters and with the medium's liquid conductivity.
TEST(ThawPracticeTest, predictsHowMuchLongerALargeAmpouleTakes)
{
    const double film = fittedTo80SecondsAt28();
    const auto plank = [&](double d) { return d / (4 * film) + d * d / (16 * 0.55); };
    const double ratio = slushOf(kLarge, 28, film) / slushOf(kSmall, 28, film);
    EXPECT_NEAR(ratio, plank(0.01365) / plank(0.00975), 0.05 * ratio);
}

// Published: Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, example 7.4 (from memory):
// air at 10 m/s across 12.7 mm; Churchill & Bernstein give Nu 40.6, h 96.0 W/(m² K).
TEST(CrossFlowTest, textbookExample)
{
    const Fluid air{20.92e-6, 0.030, 0.70};
    EXPECT_NEAR(crossFlowFilm(air, 10, 0.0127), 96.0, 0.05);
    EXPECT_NEAR(crossFlowFilm(air, 10, 0.0127) * 0.0127 / 0.030, 40.6, 0.05);
}

}  // namespace
}  // namespace bathside
