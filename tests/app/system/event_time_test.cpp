#include "app/system/event_time.h"

#include <gtest/gtest.h>

#include "tests/app/system/fake_kernel.h"

namespace bathside::app {
namespace {

using namespace std::chrono_literals;

constexpr Micros kAsleep = 3h;  // before the test: boot and monotonic are apart

class EventTimeTest : public testing::Test {
protected:
    void monotonicIs(Micros time)
    {
        m_kernel.at = {.boot = time + kAsleep, .monotonic = time, .wall = 1'767'223'800s + time};
    }

    [[nodiscard]] InputInstant instantOf(std::uint64_t eventMs) const
    {
        return EventTime(m_clock).instantOf(eventMs);
    }

    void expectReceipt(std::uint64_t eventMs) const
    {
        const InputInstant instant = instantOf(eventMs);
        EXPECT_TRUE(instant.byReceipt) << eventMs;
        EXPECT_EQ(instant.at, m_clock.now()) << eventMs;
    }

private:
    test::FakeKernel m_kernel;
    BootClock m_clock{m_kernel.reader(), BootId{7}};
};

TEST_F(EventTimeTest, isTheInstantOfTheTapOnBothClocks)
{
    monotonicIs(500'123'456us);
    const InputInstant tap = instantOf(500'000);
    EXPECT_FALSE(tap.byReceipt);
    EXPECT_EQ(tap.at.boot, 500s + kAsleep);
    EXPECT_EQ(tap.at.wall, WallTime(1'767'223'800s + 500s));
    EXPECT_EQ(tap.at.bootId, BootId{7});
}

// So the time between two taps is that between their stamps, however late each was received.
TEST_F(EventTimeTest, doesNotDependOnWhenItIsReceived)
{
    monotonicIs(500'000'100us);
    const Stamp atOnce = instantOf(500'000).at;
    monotonicIs(501'900'007us);
    EXPECT_EQ(instantOf(500'000).at, atOnce);
}

TEST_F(EventTimeTest, takesAnEventFromNowToTwoSecondsBack)
{
    monotonicIs(500s);
    EXPECT_FALSE(instantOf(500'000).byReceipt);
    EXPECT_FALSE(instantOf(498'000).byReceipt);
}

TEST_F(EventTimeTest, countsFromReceiptOutsideThat)
{
    monotonicIs(500s);
    expectReceipt(500'001);            // the future
    expectReceipt(497'999);            // more than two seconds
    expectReceipt(0);                  // no stamp
    expectReceipt(1'234);              // milliseconds since the program started
    expectReceipt(1'767'224'300'000);  // UTC
}

// A 32-bit count of ms begins anew after 2^32 ms, 49 days 17 hours.
TEST_F(EventTimeTest, livesWithTheWrapOf32Bits)
{
    constexpr std::uint64_t kWrap = 1ULL << 32U;
    monotonicIs(Millis(kWrap + 300));
    const InputInstant before = instantOf(kWrap - 200);
    EXPECT_FALSE(before.byReceipt);
    EXPECT_EQ(before.at.boot, Millis(kWrap - 200) + kAsleep);
    const InputInstant after = instantOf(100);
    EXPECT_FALSE(after.byReceipt);
    EXPECT_EQ(after.at.boot, Millis(kWrap + 100) + kAsleep);
    expectReceipt(kWrap - 2'000);
    expectReceipt(301);
}

}  // namespace
}  // namespace bathside::app
