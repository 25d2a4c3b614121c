#include "core/checks/room_air.h"

#include <cmath>

#include <gtest/gtest.h>

namespace bathside {
namespace {

TEST(RoomAirTest, worstCaseIsNeverBetterThanMixedNorBelowZero)
{
    for (const double litres : {0.0, 5.0, 40.0, 500.0}) {
        const BoilOff boilOff{36, litres};
        EXPECT_LE(oxygenAtOnce(boilOff), oxygenMixed(boilOff));
        EXPECT_GE(oxygenAtOnce(boilOff), 0);
    }
    EXPECT_EQ(oxygenAtOnce({1, 10}), 0);
}

TEST(RoomAirTest, litresToAnOxygenLeaveJustThat)
{
    BoilOff room{30, 0};
    room.litres = litresTo(18, room);
    EXPECT_NEAR(oxygenAtOnce(room), 18, 1e-12);
}

// By hand: 0.5 L a day are 0.35 m³ of gas in 35 m³, a hundredth of the air a day.
TEST(RoomAirTest, aClosedRoomLosesItsOxygenToTheLast)
{
    const BoilOff room{35, 0};
    EXPECT_EQ(oxygenVentilated(room, 0.5, 0), 0);
    EXPECT_EQ(oxygenVentilated(room, 0, 0), kOxygenOfAir);  // nothing boils off
    EXPECT_LT(oxygenVentilated(room, 0.5, 1e-6), 1e-9);     // the limit of less and less air
    const auto days = daysTo(kWarningOxygen, room, 0.5);
    ASSERT_TRUE(days);
    EXPECT_NEAR(*days, 100 * std::log(20.95 / 19.5), 1e-9);
    EXPECT_NEAR(oxygenMixed({35, 0.5 * *days}), kWarningOxygen, 1e-9);
    EXPECT_FALSE(daysTo(kWarningOxygen, room, 0));
}

TEST(RoomAirTest, cautionsBelowTheirLevels)
{
    using enum AirCaution;
    EXPECT_EQ(cautionAt(20.9), None);
    EXPECT_EQ(cautionAt(19.5), None);
    EXPECT_EQ(cautionAt(19.49), Warning);
    EXPECT_EQ(cautionAt(17.9), Leave);
    EXPECT_EQ(cautionAt(13.9), Impaired);
}

}  // namespace
}  // namespace bathside
