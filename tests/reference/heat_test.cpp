// Heat of ice, water, glass and baths against published properties; each names where it comes from.

#include <utility>

#include <gtest/gtest.h>

#include "core/bath/heat_budget.h"
#include "core/bath/heat_matter.h"

namespace bathside {
namespace {

// Computed with python3-gsw 3.6.16 (TEOS-10, which holds IAPWS-06), kJ/kg.
TEST(Teos10Test, enthalpies)
{
    const auto from = [](double ice, double water) {
        return (waterEnthalpy(water) - iceEnthalpy(ice)) / 1000;
    };
    EXPECT_NEAR(from(-195.795, 0), 607.56, 0.1);
    EXPECT_NEAR(from(-195.795, 27), 720.78, 0.1);
    EXPECT_NEAR(from(-195.795, 37), 762.58, 0.1);
    EXPECT_NEAR(from(-80, 27), 591.11, 0.1);
    EXPECT_NEAR(from(0, 27), 446.64, 0.1);
}

TEST(Teos10Test, meanHeatCapacityOfIce)
{
    EXPECT_NEAR((iceEnthalpy(0) - iceEnthalpy(-195.795)) / 195.795, 1400.1, 0.5);
}

// Published: handbook latent heat of fusion, 333.55 kJ/kg (from memory); TEOS-10 has 333.43.
TEST(HandbookTest, latentHeat) { EXPECT_NEAR(waterEnthalpy(0) - iceEnthalpy(0), 333'550, 200); }

struct Density {
    double celsius;
    double tanaka;
    double teos10;
};

// Published: Tanaka et al., Metrologia 38 (2001) 301, coefficients from memory, rows computed; and
// TEOS-10, computed with python3-gsw 3.6.16.
TEST(TanakaTest, densityOfAirFreeWater)
{
    for (const Density& row : {Density{0, 999.8428, 999.8431}, Density{4, 999.9749, 999.9749},
                               Density{10, 999.7027, 999.7025}, Density{20, 998.2067, 998.2071},
                               Density{25, 997.0470, 997.0476}, Density{28, 996.2353, 996.2360},
                               Density{37, 993.3290, 993.3298}, Density{40, 992.2152, 992.2164}}) {
        EXPECT_NEAR(waterDensity(row.celsius), row.tanaka, 5.1e-5) << row.celsius;
        EXPECT_NEAR(waterDensity(row.celsius), row.teos10, 1.3e-3) << row.celsius;
    }
}

// Published: CRC Handbook of Chemistry and Physics, table of the standard density of water, g/cm³
// (editions of the 1990s, IPTS-68 at its most 0.0014 kg/m³ off here); from memory.
TEST(HandbookTest, densityOfWater)
{
    for (const auto& [celsius, density] : {std::pair{4.0, 999.9750},
                                           {15.0, 999.1026},
                                           {22.0, 997.7735},
                                           {25.0, 997.0479},
                                           {30.0, 995.6502}})
        EXPECT_NEAR(waterDensity(celsius), density, 1.5e-3) << celsius;
}

struct Drop {
    int ampoules;
    double fill;   // g
    double glass;  // g
    double litres;
    double end;
    double depth;
};

// Constructed rows of a closed bath, pure ice, glass 0.60 kJ/(kg K); computed with TEOS-10.
TEST(BathDropTest, constructedRows)
{
    for (const Drop& row : {Drop{1, 2, 3, 2, 26.779, 0.221}, Drop{4, 2, 3, 2, 26.120, 0.880},
                            Drop{5, 2, 3, 4, 26.449, 0.551}, Drop{5, 2, 0, 4, 26.569, 0.431},
                            Drop{5, 5, 5, 4, 25.727, 1.273}}) {
        const HeatBudget budget{{row.fill / 1000, row.glass / 1000},
                                {row.litres / 1000 * waterDensity(27), 0, 0},
                                27,
                                kCryogenCelsius,
                                600};
        const auto dip = dipOf(budget, row.ampoules);
        ASSERT_TRUE(dip);
        EXPECT_NEAR(dip->end, row.end, 0.0015) << row.ampoules;
        EXPECT_NEAR(dip->depth, row.depth, 0.0015) << row.ampoules;
    }
}

}  // namespace
}  // namespace bathside
