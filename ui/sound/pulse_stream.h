#pragma once

// One playback stream on one device, open for as long as this lives and fed from the mixer on the
// link's thread. Made and destroyed with the link's lock held, and not from a callback of its own.

#include <atomic>
#include <chrono>
#include <cstdint>
#include <functional>
#include <string>

#include "ui/sound/mixer.h"
#include "ui/sound/pulse_link.h"

struct pa_stream;

namespace bathside::ui {

/// Kept from stream to stream.
struct PulseCounts {
    std::atomic<std::uint64_t> asked = 0;       // for samples
    std::atomic<std::uint64_t> underflows = 0;  // how often one ran dry
};

class PulseStream {
public:
    struct Listener {
        std::function<void()> ready;
        std::function<void(OutFault)> failed;  // once
        std::function<void()> moved;           // the server put it on another device
    };

    struct Feed {
        Mixer& mixer;
        PulseCounts& counts;
        std::chrono::milliseconds buffer;
    };

    PulseStream(const PulseLink& link, const std::string& sink, const Feed& feed,
                Listener listener);
    PulseStream(const PulseStream&) = delete;
    PulseStream& operator=(const PulseStream&) = delete;
    ~PulseStream();

    [[nodiscard]] std::string sink() const;
    [[nodiscard]] std::uint32_t index() const;

private:
    struct Callbacks;

    void onState();
    void feed(std::size_t bytes);
    void fail(OutFault fault);

    const Feed m_feed;
    Listener m_listener;
    std::string m_sink;
    pa_stream* m_stream = nullptr;
    bool m_isFailed = false;
};

}  // namespace bathside::ui
