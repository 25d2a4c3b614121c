#pragma once

// The first path to the loudspeaker: a stream of our own to the sound server (PulseAudio, or
// PipeWire in its place), on its own thread, always open and playing silence.
//
// It finds its device itself (sink_choice.h): when the device in use goes away, is muted or stops,
// it moves to another, and back to the proven one when that returns. Chosen by measurement, as is
// the buffer's length: DEVELOPERS.md, the decision on sound.

#include <chrono>
#include <map>
#include <memory>
#include <mutex>
#include <string>

#include "ui/sound/audio_out.h"
#include "ui/sound/pulse_link.h"
#include "ui/sound/pulse_stream.h"

namespace bathside::ui {

class PulseOut final : public AudioOut {
public:
    static constexpr std::chrono::milliseconds kBuffer{40};

    /// Empty server: the one libpulse finds.
    explicit PulseOut(std::string server = {}, std::chrono::milliseconds buffer = kBuffer);
    ~PulseOut() override;

    void open(const std::string& device) override;
    void close() override;
    void play(Voice voice, std::shared_ptr<const Burst> burst) override;
    void silence() override;
    void holdVolume(std::optional<double> atLeast) override;
    [[nodiscard]] std::vector<VolumeRaise> takeRaises() override;
    [[nodiscard]] OutStatus status() const override;
    void listen(std::function<void()> changed) override;

private:
    using Steady = std::chrono::steady_clock;

    // On the link's thread, or with its lock.
    void survey();
    void answered(const PulseAnswer& answer);
    void use(const std::string& sink);
    void seeVolume(const SinkFacts& sink, const std::optional<StreamVolume>& stream);
    void raise(const SinkFacts& sink, const Volume& found);
    void streamFailed(const std::string& sink);
    [[nodiscard]] SinkWish wish();
    void become(OutState state, std::optional<OutFault> fault);

    const std::string m_server;
    const std::chrono::milliseconds m_buffer;
    std::function<void()> m_changed;
    Mixer m_mixer;
    PulseCounts m_counts;

    // On the link's thread, or with its lock.
    std::string m_preferred;
    std::optional<double> m_hold;
    std::map<std::string, Steady::time_point> m_refused;  // devices that failed, until when
    std::optional<Steady::time_point> m_raised;           // when a raise was last told
    bool m_isStreamBad = false;

    mutable std::mutex m_mutex;  // the two below, read by `status` and `takeRaises`
    OutStatus m_status;
    std::vector<VolumeRaise> m_raises;

    std::unique_ptr<PulseLink> m_link;
    std::unique_ptr<PulseStream> m_stream;  // changed with the lock only
};

}  // namespace bathside::ui
