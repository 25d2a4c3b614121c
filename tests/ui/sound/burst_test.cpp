// The bursts against the published structure for auditory alarm signals: IEC 60601-1-8 (with
// amendment 1), 6.3.3.1 a), tables 3 and 4. The vocabulary is borrowed; this is not a medical
// device.
//
// Provenance, row by row: fundamental and harmonics as quoted in trade pages (the standard itself
// was not seen); pulse counts, spacings, lengths, rise and pauses from memory; the level difference
// between pulses from memory, less certain. The timeline of the ten-pulse burst is constructed from
// those rows.

#include "ui/sound/burst.h"

#include <algorithm>
#include <cmath>
#include <string>

#include <gtest/gtest.h>

#include "tests/ui/sound/listening.h"

namespace bathside::ui {

namespace {

using test::Heard;

std::vector<Heard> heardIn(const Burst& burst)
{
    return test::pulsesIn(burst.samples, kSampleRate);
}

double secondsOf(Micros time) { return std::chrono::duration<double>(time).count(); }

struct Range {
    double low = 0.0;
    double high = 0.0;
};

// What the tables say of each priority that our levels borrow.
struct Published {
    std::string name;
    Level level{};
    std::vector<std::size_t> counts;  // pulses in a burst
    Range length;                     // effective pulse duration, s
    Range spacing;  // end of one to start of the next, s; but for the two special ones of "high"
    Range pause;    // between bursts, s
};

class PublishedStructure : public testing::TestWithParam<Published> {};

TEST_P(PublishedStructure, pulsesInABurst)  // table 3: high 10, medium 3, low 1 or 2 (from memory)
{
    const auto heard = heardIn(burstOf(GetParam().level));
    EXPECT_TRUE(std::ranges::count(GetParam().counts, heard.size()) == 1) << heard.size();
    EXPECT_EQ(heard.size(), burstOf(GetParam().level).pulses.size());
}

TEST_P(PublishedStructure,
       pulseDuration)  // table 4: 75 to 200 ms (high), 125 to 250 ms (else); from memory
{
    for (const Heard& pulse : heardIn(burstOf(GetParam().level))) {
        EXPECT_GE(pulse.end - pulse.start, GetParam().length.low);
        EXPECT_LE(pulse.end - pulse.start, GetParam().length.high);
    }
    for (const Pulse& pulse : burstOf(GetParam().level).pulses) {
        EXPECT_GE(secondsOf(pulse.length), GetParam().length.low);
        EXPECT_LE(secondsOf(pulse.length), GetParam().length.high);
    }
}

TEST_P(PublishedStructure,
       pauseBetweenBursts)  // table 3: high 2.5 to 15, medium 2.5 to 30, low over 15 s; from memory
{
    const Burst burst = burstOf(GetParam().level);
    const double pause = secondsOf(burst.repeatAfter - burst.length());
    EXPECT_GE(pause, GetParam().pause.low);
    EXPECT_LE(pause, GetParam().pause.high);
}

TEST_P(PublishedStructure, fundamentalBetween150And1000Hz)  // table 4, as quoted in trade pages
{
    const Burst burst = burstOf(GetParam().level);
    for (const Heard& pulse : heardIn(burst)) {
        const auto middle = test::middleOf(burst.samples, kSampleRate, pulse);
        const double f0 =
            test::pitchIn(middle, kSampleRate, 100.0, burst.pulses.front().pitchHz + 100.0);
        EXPECT_NEAR(f0, burst.pulses.front().pitchHz, 5.0);
        EXPECT_GE(f0, 150.0);
        EXPECT_LE(f0, 1000.0);
    }
}

TEST_P(PublishedStructure,
       fourHarmonicsWithin15Decibels)  // table 4, as quoted in trade pages: in 300 to 4000 Hz
{
    const Burst burst = burstOf(GetParam().level);
    const double f0 = burst.pulses.front().pitchHz;
    for (const Heard& pulse : heardIn(burst)) {
        const auto middle = test::middleOf(burst.samples, kSampleRate, pulse);
        const double reference = test::levelAt(middle, kSampleRate, f0);
        int harmonics = 0;
        for (double hz = 2.0 * f0; hz <= 4000.0; hz += f0) {
            if (hz >= 300.0 && std::abs(test::levelAt(middle, kSampleRate, hz) - reference) <= 15.0)
                ++harmonics;
        }
        EXPECT_GE(harmonics, 4);
    }
}

TEST_P(PublishedStructure,
       riseIs10To40PercentOfThePulse)  // table 4, from memory: between 10 and 90 % of the height
{
    const Burst burst = burstOf(GetParam().level);
    for (const Pulse& pulse : burst.pulses) {
        const auto from = static_cast<std::size_t>(secondsOf(pulse.start) * kSampleRate);
        const auto length = static_cast<std::size_t>(secondsOf(pulse.length) * kSampleRate);
        const auto one = std::span(burst.samples).subspan(from, length);
        const float highest = std::ranges::max(one);
        const auto reached = [&](float share) {
            const auto at =
                std::ranges::find_if(one, [&](float s) { return s >= share * highest; });
            return static_cast<double>(at - one.begin()) / static_cast<double>(length);
        };
        EXPECT_GE(reached(0.9F), 0.10);
        EXPECT_LE(reached(0.9F) - reached(0.1F), 0.40);
        EXPECT_LT(std::abs(one.front()), 0.01F * highest);
        EXPECT_LT(std::abs(one.back()), 0.01F * highest);
    }
}

TEST_P(PublishedStructure, pulsesOfABurstWithin10Decibels)  // table 3, from memory, less certain
{
    const auto heard = heardIn(burstOf(GetParam().level));
    const auto [quietest, loudest] = std::ranges::minmax(heard, {}, &Heard::loudest);
    EXPECT_LE(20.0 * std::log10(loudest.loudest / quietest.loudest), 10.0);
}

INSTANTIATE_TEST_SUITE_P(
    Burst, PublishedStructure,
    testing::Values(
        Published{
            "OverrunAsHigh", Level::Overrun, {10}, {0.075, 0.200}, {0.050, 0.125}, {2.5, 15.0}},
        Published{"LimitAsMedium", Level::Limit, {3}, {0.125, 0.250}, {0.125, 0.250}, {2.5, 30.0}},
        Published{
            "HeadsUpAsLow", Level::HeadsUp, {1, 2}, {0.125, 0.250}, {0.125, 0.250}, {15.0, 1e9}}),
    [](const auto& row) { return row.param.name; });

// Spacing, medium and low: y, 125 to 250 ms (table 3, from memory), between the half heights and
// between the feet.
TEST(BurstTest, slowLevelsAreEvenlySpaced)
{
    for (const Level level : {Level::HeadsUp, Level::Limit}) {
        const Burst burst = burstOf(level);
        const auto heard = heardIn(burst);
        for (std::size_t i = 1; i < heard.size(); ++i) {
            EXPECT_GE(heard[i].start - heard[i - 1].end, 0.125);
            EXPECT_LE(heard[i].start - heard[i - 1].end, 0.250);
            const Pulse& before = burst.pulses[i - 1];
            EXPECT_GE(secondsOf(burst.pulses[i].start - before.start - before.length), 0.125);
        }
    }
}

// Spacing, high: x, x, 2x + td, x, 0.35 to 1.30 s, x, x, 2x + td, x; x 50 to 125 ms (table 3, from
// memory).
TEST(BurstTest, overrunIsTwiceFivePulses)
{
    const auto heard = heardIn(burstOf(Level::Overrun));
    ASSERT_EQ(heard.size(), 10U);
    for (std::size_t gap = 1; gap < 10; ++gap) {
        const double pause = heard[gap].start - heard[gap - 1].end;
        if (gap == 5) {
            EXPECT_GE(pause, 0.35);
            EXPECT_LE(pause, 1.30);
        } else if (gap == 3 || gap == 8) {
            const double x = heard[1].start - heard[0].end;
            const double td = heard[0].end - heard[0].start;
            EXPECT_NEAR(pause, 2.0 * x + td, 0.03);
        } else {
            EXPECT_GE(pause, 0.050);
            EXPECT_LE(pause, 0.125);
        }
    }
}

// Timeline constructed from those rows, x = 0.100, td = 0.150, gap 0.600: starts, and the end
// at 3.40 s.
TEST(BurstTest, overrunKeepsTheWorkedTimeline)
{
    const double starts[] = {0, 0.25, 0.50, 1.00, 1.25, 2.00, 2.25, 2.50, 3.00, 3.25};
    const Burst burst = burstOf(Level::Overrun);
    ASSERT_EQ(burst.pulses.size(), std::size(starts));
    for (std::size_t i = 0; i < std::size(starts); ++i)
        EXPECT_DOUBLE_EQ(secondsOf(burst.pulses[i].start), starts[i]);
    EXPECT_DOUBLE_EQ(secondsOf(burst.length()), 3.40);
}

// The same: y = 0.200, td = 0.200; starts 0, 0.40, 0.80; ends 1.00 s.
TEST(BurstTest, limitKeepsTheWorkedTimeline)
{
    const Burst burst = burstOf(Level::Limit);
    ASSERT_EQ(burst.pulses.size(), 3U);
    EXPECT_DOUBLE_EQ(secondsOf(burst.pulses[1].start), 0.40);
    EXPECT_DOUBLE_EQ(secondsOf(burst.pulses[2].start), 0.80);
    EXPECT_DOUBLE_EQ(secondsOf(burst.length()), 1.00);
}

// The spec of alarms: each level different in rhythm and in pitch. A musical third (5/4) between
// neighbours is told apart without training: common practice.
TEST(BurstTest, levelsDifferInRhythmAndPitch)
{
    const Burst headsUp = burstOf(Level::HeadsUp);
    const Burst limit = burstOf(Level::Limit);
    const Burst overrun = burstOf(Level::Overrun);
    EXPECT_LT(headsUp.pulses.size(), limit.pulses.size());
    EXPECT_LT(limit.pulses.size(), overrun.pulses.size());
    EXPECT_GE(limit.pulses[0].pitchHz / headsUp.pulses[0].pitchHz, 1.25);
    EXPECT_GE(overrun.pulses[0].pitchHz / limit.pulses[0].pitchHz, 1.25);
}

TEST(BurstTest, everythingFitsTheScaleAndIsTheSameEachTime)
{
    for (const Level level : {Level::HeadsUp, Level::Limit, Level::Overrun}) {
        const Burst burst = burstOf(level);
        EXPECT_LE(std::ranges::max(burst.samples), 0.8F);
        EXPECT_GE(std::ranges::min(burst.samples), -0.8001F);
        EXPECT_EQ(burst.samples, burstOf(level).samples);
        EXPECT_EQ(burst.samples.size(),
                  static_cast<std::size_t>(secondsOf(burst.length()) * kSampleRate));
    }
}

TEST(BurstTest, cuesAreShortAndNeverRepeat)
{
    // Under 30 ms: an answer to a tap, over before the next tap can come (the same-button lock is
    // 350 ms).
    EXPECT_LE(secondsOf(burstOf(Cue::Click).length()), 0.030);
    EXPECT_LE(secondsOf(burstOf(Cue::Refusal).length()), 0.350);
    for (const Cue cue : {Cue::Click, Cue::Refusal, Cue::Test})
        EXPECT_EQ(burstOf(cue).repeatAfter, Micros{});
}

TEST(BurstTest, refusalFallsAndIsNoAlarm)
{
    const Burst refusal = burstOf(Cue::Refusal);
    ASSERT_EQ(refusal.pulses.size(), 2U);
    EXPECT_GT(refusal.pulses[0].pitchHz, refusal.pulses[1].pitchHz);
    const auto heard = heardIn(refusal);
    ASSERT_EQ(heard.size(), 1U);  // no gap that makes a rhythm
}

TEST(BurstTest, testBurstHasEachAlarmsPitch)
{
    const Burst burst = burstOf(Cue::Test);
    const auto heard = heardIn(burst);
    ASSERT_EQ(heard.size(), 3U);
    const Level levels[] = {Level::HeadsUp, Level::Limit, Level::Overrun};
    for (std::size_t i = 0; i < 3; ++i) {
        const auto middle = test::middleOf(burst.samples, kSampleRate, heard[i]);
        const double f0 = burstOf(levels[i]).pulses.front().pitchHz;
        EXPECT_NEAR(test::pitchIn(middle, kSampleRate, f0 - 50.0, f0 + 50.0), f0, 3.0);
    }
}

// The measuring itself, on a sine of known frequency and amplitude.
TEST(ListeningTest, findsASineAndNothingElse)
{
    std::vector<float> sine(9600);
    for (std::size_t i = 0; i < sine.size(); ++i)
        sine[i] = static_cast<float>(
            0.5 * std::sin(2.0 * 3.14159265358979 * 500.0 * static_cast<double>(i) / kSampleRate));
    EXPECT_NEAR(test::levelAt(sine, kSampleRate, 500.0), -6.02, 0.05);
    EXPECT_LT(test::levelAt(sine, kSampleRate, 720.0), -60.0);
    EXPECT_NEAR(test::pitchIn(sine, kSampleRate, 400.0, 600.0), 500.0, 1.0);
    EXPECT_EQ(test::pulsesIn(sine, kSampleRate).size(), 1U);
    EXPECT_TRUE(test::pulsesIn(std::vector<float>(4800), kSampleRate).empty());
}

}  // namespace

}  // namespace bathside::ui
