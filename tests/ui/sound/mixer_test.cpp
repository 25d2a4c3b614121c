#include "ui/sound/mixer.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

namespace bathside::ui {

namespace {

constexpr std::size_t kMs = kSampleRate / 1000;

// A constant, so that gains and sums can be read off.
std::shared_ptr<const Burst> flat(float value, std::initializer_list<Pulse> pulses)
{
    auto burst = std::make_shared<Burst>();
    burst->pulses = pulses;
    burst->samples.assign(static_cast<std::size_t>(burst->length().count()) * kMs / 1000, value);
    return burst;
}

std::shared_ptr<const Burst> oneSecond(float value)
{
    using namespace std::chrono_literals;
    return flat(value, {{0ms, 100ms, 500.0}, {200ms, 800ms, 500.0}});
}

std::vector<float> rendered(Mixer& mixer, std::size_t ms)
{
    std::vector<float> out(ms * kMs, 9.0F);
    mixer.render(out);
    return out;
}

bool isSilent(const std::vector<float>& samples)
{
    return std::ranges::all_of(samples, [](float s) { return s == 0.0F; });
}

TEST(MixerTest, isSilentWhenNothingIsDue)
{
    Mixer mixer;
    EXPECT_TRUE(isSilent(rendered(mixer, 10)));
}

TEST(MixerTest, playsABurstAcrossBlocksAndEndsWithIt)
{
    Mixer mixer;
    mixer.play(Voice::Alarm, oneSecond(0.5F));
    for (int i = 0; i < 100; ++i)
        EXPECT_EQ(rendered(mixer, 10).back(), 0.5F);
    EXPECT_TRUE(isSilent(rendered(mixer, 10)));
}

TEST(MixerTest, laysACueOverAnAlarm)
{
    Mixer mixer;
    mixer.play(Voice::Alarm, oneSecond(0.5F));
    mixer.play(Voice::Cue, oneSecond(0.25F));
    EXPECT_EQ(rendered(mixer, 10).front(), 0.75F);
}

TEST(MixerTest, neverLeavesTheScale)
{
    Mixer mixer;
    for (int i = 0; i < 100; ++i)
        mixer.play(Voice::Cue, oneSecond(0.4F));
    EXPECT_EQ(std::ranges::max(rendered(mixer, 10)), 1.0F);
}

TEST(MixerTest, aNewAlarmTakesTheOldOnesPlaceWithoutACrack)
{
    Mixer mixer;
    mixer.play(Voice::Alarm, oneSecond(0.5F));
    (void)rendered(mixer, 10);
    mixer.play(Voice::Alarm, oneSecond(0.25F));
    const auto after = rendered(mixer, 10);
    EXPECT_NEAR(after.front(), 0.75F, 0.01F);
    EXPECT_EQ(after.back(), 0.25F);
}

TEST(MixerTest, silenceFadesWithinFiveMilliseconds)
{
    Mixer mixer;
    mixer.play(Voice::Alarm, oneSecond(0.5F));
    (void)rendered(mixer, 300);
    mixer.silence();
    const auto after = rendered(mixer, 10);
    EXPECT_GT(after.front(), 0.49F);
    EXPECT_EQ(after[5 * kMs], 0.0F);
    EXPECT_TRUE(isSilent(rendered(mixer, 10)));
}

// An alarm that came and went between two blocks is still heard.
TEST(MixerTest, anAlarmIsHeardForItsFirstPulse)
{
    Mixer mixer;
    mixer.play(Voice::Alarm, oneSecond(0.5F));
    mixer.silence();
    const auto out = rendered(mixer, 200);
    EXPECT_EQ(out[99 * kMs], 0.5F);
    EXPECT_EQ(out[106 * kMs], 0.0F);
}

TEST(MixerTest, silenceLeavesCuesAlone)
{
    Mixer mixer;
    mixer.play(Voice::Cue, oneSecond(0.25F));
    mixer.silence();
    EXPECT_EQ(rendered(mixer, 900).back(), 0.25F);
}

}  // namespace

}  // namespace bathside::ui
