#pragma once

// The last path: the machine's own beeper, which whoever joins the parts hands in as a `Tone`.
//
// Needs no sound server. It knows pitch and rhythm and neither timbre nor volume. Waiting between
// pulses is on a thread of its own. Fails as NoDevice where the machine has no beeper or does not
// let us.

#include <chrono>
#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <string>
#include <thread>

#include "ui/sound/audio_out.h"

namespace bathside::ui {

class BellOut final : public AudioOut {
public:
    /// Starts a tone, or with 0 Hz ends it. Soon; false where it cannot. Called from any one thread
    /// at a time.
    using Tone = std::function<bool(double pitchHz)>;

    explicit BellOut(Tone tone) : m_tone(std::move(tone)) {}
    ~BellOut() override;

    void open(const std::string& device) override;
    void close() override;
    /// A cue waits for no alarm: it is dropped while one sounds.
    void play(Voice voice, std::shared_ptr<const Burst> burst) override;
    void silence() override;
    [[nodiscard]] OutStatus status() const override;
    void listen(std::function<void()> changed) override;

private:
    struct Order {
        std::shared_ptr<const Burst> burst;  // none: silence
        Voice voice = Voice::Cue;
        std::uint64_t number = 0;
    };

    void give(Voice voice, std::shared_ptr<const Burst> burst);
    void run();
    void sound(const Order& order);
    [[nodiscard]] bool lasts(const Order& order, std::chrono::steady_clock::time_point until);
    void tone(double pitchHz);
    void fail(OutFault fault);

    const Tone m_tone;
    std::function<void()> m_changed;
    std::thread m_thread;

    mutable std::mutex m_mutex;  // all below
    std::condition_variable m_ordered;
    Order m_order;
    bool m_isSounding = false;
    bool m_mustStop = false;
    OutStatus m_status;
};

}  // namespace bathside::ui
