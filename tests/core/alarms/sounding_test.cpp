#include "core/alarms/sounding.h"

#include <gtest/gtest.h>

#include "core/alarms/alarms.h"
#include "tests/support/benches.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

std::shared_ptr<const SoundSource> sourceOf(const BenchMaker& maker)
{
    return soundSource(std::make_shared<const Bench>(maker.bench));
}

TEST(SoundSource, isSilentWithNothingDueAndSaysWhenToLookAgain)
{
    BenchMaker maker;
    EXPECT_EQ(sourceOf(maker)->at(at(0s)),
              (Sounding{.level = {}, .alarm = {}, .nextChange = at(8min).boot}));
}

TEST(SoundSource, soundsTheWorstAlarm)
{
    BenchMaker maker;
    maker.out({1, 1}, 0s).out({1, 2}, 2s);
    const auto source = sourceOf(maker);
    EXPECT_EQ(source->at(at(10s)), (Sounding{.level = Level::Limit,
                                             .alarm = "exposure ampoule:1/1",
                                             .nextChange = at(12s).boot}));
    EXPECT_EQ(source->at(at(7s)).level, Level::HeadsUp);
    EXPECT_EQ(source->at(at(15s)).level, Level::Overrun);
}

TEST(SoundSource, soundsTheNextWorstWhileTheWorstIsHushed)
{
    BenchMaker maker;
    maker.out({1, 1}, 0s).out({1, 2}, 4s);
    maker.raised("exposure ampoule:1/1", Level::Limit, at(10s), at(11s));
    const auto source = sourceOf(maker);
    EXPECT_EQ(source->at(at(11s)).level, Level::HeadsUp);
    EXPECT_EQ(source->at(at(11s)).alarm, "exposure ampoule:1/2");
    maker.raised("exposure ampoule:1/2", Level::HeadsUp, at(11s), at(12s));
    EXPECT_EQ(sourceOf(maker)->at(at(12s)),
              (Sounding{.level = {}, .alarm = {}, .nextChange = at(14s).boot}));
}

TEST(SoundSource, keepsTheBenchItWasMadeOf)
{
    auto maker = std::make_unique<BenchMaker>();
    maker->out({1, 1}, 0s);
    const auto source = sourceOf(*maker);
    maker.reset();
    EXPECT_EQ(source->at(at(10s)).level, Level::Limit);
}

}  // namespace
}  // namespace bathside::test
