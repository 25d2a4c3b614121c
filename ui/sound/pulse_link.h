#pragma once

// A connection to the sound server with a thread of its own, and what can be asked over it.
//
// Callbacks come on that thread with the lock held, answers too; every other call wants the lock
// (`PulseLink::Lock`). A lost server is told once and the link is then of no more use. libpulse's C
// interface stays behind this and pulse_stream.h.

#include <functional>
#include <optional>
#include <string>

#include "ui/sound/sink_choice.h"

struct pa_context;
struct pa_threaded_mainloop;

namespace bathside::ui {

/// Of our own stream, as a mixer program may have set it.
struct StreamVolume {
    double level = 1.0;
    bool isMuted = false;
};

struct PulseAnswer {
    SinkSurvey survey;
    std::optional<StreamVolume> stream;
};

class PulseLink {
public:
    struct Listener {
        std::function<void()> ready;
        std::function<void()> lost;
        std::function<void()> changed;  // devices, their volumes, or ours
        std::function<void(const PulseAnswer&)> answered;
    };

    class Lock {
    public:
        explicit Lock(const PulseLink& link);
        Lock(const Lock&) = delete;
        Lock& operator=(const Lock&) = delete;
        ~Lock();

    private:
        pa_threaded_mainloop* m_loop;
    };

    explicit PulseLink(Listener listener);
    PulseLink(const PulseLink&) = delete;
    PulseLink& operator=(const PulseLink&) = delete;
    /// Joins the thread; without the lock.
    ~PulseLink();

    /// Connects; `ready` or `lost` follows. Once, without the lock. Empty server: the one libpulse
    /// finds.
    void start(const std::string& server);
    /// Asks for the devices and, if given, our stream; `answered` follows. One at a time: asking
    /// again meanwhile asks once more afterwards.
    void ask(std::optional<std::uint32_t> stream);
    /// No callback and no answer comes after this. With the lock.
    void end();
    void setSink(const SinkFacts& sink, double level);
    void setStream(std::uint32_t stream, const SinkFacts& sink, double level);

    [[nodiscard]] pa_context* context() const { return m_context; }

private:
    struct Callbacks;

    void onState();
    void finish();

    Listener m_listener;
    pa_threaded_mainloop* m_loop = nullptr;
    pa_context* m_context = nullptr;
    PulseAnswer m_answer;
    std::optional<std::uint32_t> m_stream;
    bool m_isAsking = false;
    bool m_mustAskAgain = false;
    bool m_isLost = false;
};

}  // namespace bathside::ui
