#pragma once

// What each alarm and each cue sounds like, made of sums of sines: no files, no decoder.
//
// The three alarm bursts follow the published structure for auditory alarm signals (IEC
// 60601-1-8, 6.3.3.1 a, tables 3 and 4; borrowed as a vocabulary, this is not a medical device):
// ten, three and two pulses, a fundamental of 150 to 1000 Hz with four and more harmonics, soft
// edges. Times are start to start unless named otherwise. Pure: no clock, no device, same samples
// on every call.

#include <cstdint>
#include <memory>
#include <vector>

#include "core/alarms/level.h"
#include "core/base/time.h"

namespace bathside::ui {

inline constexpr int kSampleRate = 48'000;

/// One sounded piece of a burst. The kernel's bell, which knows no samples, plays these.
struct Pulse {
    Micros start{};
    Micros length{};
    double pitchHz{};
};

struct Burst {
    std::vector<Pulse> pulses;
    std::vector<float> samples;  // mono, kSampleRate, within -1 .. +1
    Micros repeatAfter{};  // from the start of one to the start of the next; zero: sounded once

    [[nodiscard]] Micros length() const
    {
        return pulses.empty() ? Micros{} : pulses.back().start + pulses.back().length;
    }
};

/// Short sounds that answer a person; none of them is an alarm.
enum class Cue : std::uint8_t {
    Click,    // taken
    Refusal,  // not taken
    Test,     // one pulse at each alarm's pitch, to be confirmed at set-up
};

[[nodiscard]] Burst burstOf(Level level);
[[nodiscard]] Burst burstOf(Cue cue);

/// All of them, made once and shared with whoever is playing.
class SoundBook {
public:
    SoundBook();

    [[nodiscard]] std::shared_ptr<const Burst> of(Level level) const;
    [[nodiscard]] std::shared_ptr<const Burst> of(Cue cue) const;

private:
    std::vector<std::shared_ptr<const Burst>> m_levels;
    std::vector<std::shared_ptr<const Burst>> m_cues;
};

}  // namespace bathside::ui
