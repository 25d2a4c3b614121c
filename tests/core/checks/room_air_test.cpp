#include "core/checks/room_air.h"

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
