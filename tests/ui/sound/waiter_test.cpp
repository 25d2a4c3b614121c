#include "ui/sound/waiter.h"

#include <thread>

#include <gtest/gtest.h>

namespace bathside::ui {

namespace {

using std::chrono::hours;
using std::chrono::milliseconds;

TEST(WaiterTest, neverReturnsBeforeTheInstant)
{
    Waiter waiter;
    for (int i = 0; i < 50; ++i) {
        const BootTime until = bootNow() + Micros{1'500 + 37 * i};
        EXPECT_FALSE(waiter.wait(until).isPoked);
        EXPECT_GE(bootNow(), until);
    }
}

TEST(WaiterTest, returnsAtOnceWhenTheInstantIsPast)
{
    Waiter waiter;
    EXPECT_FALSE(waiter.wait(bootNow() - hours{1}).isPoked);
    EXPECT_FALSE(waiter.wait(BootTime{}).isPoked);
    EXPECT_FALSE(waiter.wait(BootTime{-5}).isPoked);
}

TEST(WaiterTest, aPokeBeforeTheWaitIsNotLost)
{
    Waiter waiter;
    waiter.poke();
    waiter.poke();
    EXPECT_TRUE(waiter.wait(bootNow() + hours{1}).isPoked);
    EXPECT_FALSE(waiter.wait(bootNow() + milliseconds{1}).isPoked);  // both were taken
}

TEST(WaiterTest, aPokeEndsAWait)
{
    Waiter waiter;
    std::jthread other([&] { waiter.poke(); });
    EXPECT_TRUE(waiter.wait(bootNow() + hours{1}).isPoked);
}

}  // namespace

}  // namespace bathside::ui
