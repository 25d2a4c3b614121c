#include "ui/sound/pulse_stream.h"

#include <algorithm>
#include <span>
#include <utility>

#include <pulse/pulseaudio.h>

namespace bathside::ui {

namespace {

constexpr pa_sample_spec kSpec{.format = PA_SAMPLE_FLOAT32NE, .rate = kSampleRate, .channels = 1};
constexpr std::uint32_t kServerChooses = static_cast<std::uint32_t>(-1);

// A stream that ran dry, because the program was stopped or starved, waits for `prebuf` and goes on
// from where it was. With a prebuf of zero the server would go on without us and throw away what we
// write until we have caught up: the burst that is due after a stop would be lost (measured).
pa_buffer_attr bufferOf(std::chrono::milliseconds length)
{
    const auto usec = static_cast<pa_usec_t>(Micros{length}.count());
    const auto quarter = static_cast<std::uint32_t>(pa_usec_to_bytes(usec / 4, &kSpec));
    return {.maxlength = kServerChooses,
            .tlength = static_cast<std::uint32_t>(pa_usec_to_bytes(usec, &kSpec)),
            .prebuf = quarter,
            .minreq = quarter,
            .fragsize = kServerChooses};
}

}  // namespace

struct PulseStream::Callbacks {
    static PulseStream& of(void* stream) { return *static_cast<PulseStream*>(stream); }

    static void state(pa_stream*, void* stream) { of(stream).onState(); }
    static void write(pa_stream*, std::size_t bytes, void* stream) { of(stream).feed(bytes); }
    static void underflow(pa_stream*, void* stream) { ++of(stream).m_feed.counts.underflows; }
    static void moved(pa_stream*, void* stream) { of(stream).m_listener.moved(); }
    static void suspended(pa_stream* pulse, void* stream)
    {
        if (pa_stream_is_suspended(pulse) == 1)
            of(stream).fail(OutFault::Refused);
    }
};

PulseStream::PulseStream(const PulseLink& link, const std::string& sink, const Feed& feed,
                         Listener listener)
    : m_feed(feed), m_listener(std::move(listener)), m_sink(sink)
{
    m_stream = pa_stream_new(link.context(), "Alarms", &kSpec, nullptr);
    pa_stream_set_state_callback(m_stream, Callbacks::state, this);
    pa_stream_set_write_callback(m_stream, Callbacks::write, this);
    pa_stream_set_underflow_callback(m_stream, Callbacks::underflow, this);
    pa_stream_set_moved_callback(m_stream, Callbacks::moved, this);
    pa_stream_set_suspended_callback(m_stream, Callbacks::suspended, this);
    const pa_buffer_attr attributes = bufferOf(feed.buffer);
    const auto flags =
        static_cast<pa_stream_flags_t>(PA_STREAM_ADJUST_LATENCY | PA_STREAM_START_UNMUTED);
    if (pa_stream_connect_playback(m_stream, sink.c_str(), &attributes, flags, nullptr, nullptr) <
        0)
        fail(OutFault::Refused);
}

PulseStream::~PulseStream()
{
    pa_stream_set_state_callback(m_stream, nullptr, nullptr);
    pa_stream_set_write_callback(m_stream, nullptr, nullptr);
    pa_stream_set_underflow_callback(m_stream, nullptr, nullptr);
    pa_stream_set_moved_callback(m_stream, nullptr, nullptr);
    pa_stream_set_suspended_callback(m_stream, nullptr, nullptr);
    pa_stream_disconnect(m_stream);
    pa_stream_unref(m_stream);
}

std::string PulseStream::sink() const
{
    const char* name = pa_stream_get_state(m_stream) == PA_STREAM_READY
                           ? pa_stream_get_device_name(m_stream)
                           : nullptr;
    return name ? name : m_sink;
}

std::uint32_t PulseStream::index() const { return pa_stream_get_index(m_stream); }

void PulseStream::onState()
{
    const pa_stream_state_t state = pa_stream_get_state(m_stream);
    if (state == PA_STREAM_READY)
        m_listener.ready();
    if (!PA_STREAM_IS_GOOD(state))
        fail(OutFault::Refused);
}

void PulseStream::feed(std::size_t bytes)
{
    while (bytes > 0) {
        void* data = nullptr;
        std::size_t size = bytes;
        if (pa_stream_begin_write(m_stream, &data, &size) < 0 || !data)
            return fail(OutFault::WriteLost);
        size = std::min(size, bytes);
        const std::size_t frames = size / sizeof(float);
        if (frames == 0) {
            pa_stream_cancel_write(m_stream);
            break;
        }
        m_feed.mixer.render({static_cast<float*>(data), frames});
        if (pa_stream_write(m_stream, data, frames * sizeof(float), nullptr, 0, PA_SEEK_RELATIVE) <
            0)
            return fail(OutFault::WriteLost);
        bytes -= frames * sizeof(float);
    }
    ++m_feed.counts.asked;
}

void PulseStream::fail(OutFault fault)
{
    if (!std::exchange(m_isFailed, true))
        m_listener.failed(fault);
}

}  // namespace bathside::ui
