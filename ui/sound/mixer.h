#pragma once

// Turns bursts into one stream of samples; silence where nothing is due, so a stream can stay open
// for ever.
//
// At most one alarm sounds at a time, any number of cues over it. An alarm that was begun is heard
// for at least its first pulse, however soon it is ended: a burst that starts and stops between two
// requests of a busy machine would else never be heard. Any thread may call anything; nothing
// waits for longer than one block takes to be mixed.

#include <cstddef>
#include <cstdint>
#include <memory>
#include <mutex>
#include <optional>
#include <span>
#include <vector>

#include "ui/sound/burst.h"

namespace bathside::ui {

enum class Voice : std::uint8_t { Alarm, Cue };

class Mixer {
public:
    /// From the next block on. A new alarm takes the place of the one that sounds.
    void play(Voice voice, std::shared_ptr<const Burst> burst);
    /// Ends the alarm, after its first pulse. Cues end by themselves.
    void silence();

    /// Fills `out` with the next samples.
    void render(std::span<float> out);

private:
    struct Playing {
        Voice voice{};
        std::shared_ptr<const Burst> burst;
        std::size_t position = 0;
        std::optional<std::size_t> fadeFrom;  // fades out from this position on
    };

    enum class Cut : std::uint8_t { AtOnce, AfterFirstPulse };
    enum class Left : std::uint8_t { Nothing, Some };

    void cutAlarms(Cut cut);
    static Left mixIn(Playing& playing, std::span<float> out);

    std::mutex m_mutex;
    std::vector<Playing> m_playing;
};

}  // namespace bathside::ui
