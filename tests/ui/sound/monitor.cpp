#include "tests/ui/sound/monitor.h"

#include <algorithm>
#include <cmath>
#include <ranges>
#include <stdexcept>

#include <pulse/pulseaudio.h>

#include "ui/sound/waiter.h"

namespace bathside::test {

namespace {

constexpr pa_sample_spec kSpec{
    .format = PA_SAMPLE_FLOAT32NE, .rate = Monitor::kRate, .channels = 1};
constexpr auto kStartWithin = std::chrono::seconds{20};
constexpr std::uint32_t kServerChooses = static_cast<std::uint32_t>(-1);

bool isLoud(float sample) { return std::abs(sample) > Monitor::kLoud; }

std::size_t samplesIn(std::chrono::milliseconds time)
{
    return static_cast<std::size_t>(time.count()) * Monitor::kRate / 1000;
}

}  // namespace

struct Monitor::Callbacks {
    static void context(pa_context* context, void* monitor)
    {
        auto& self = *static_cast<Monitor*>(monitor);
        if (pa_context_get_state(context) != PA_CONTEXT_READY)
            return;
        self.m_stream = pa_stream_new(context, "Monitor", &kSpec, nullptr);
        pa_stream_set_read_callback(self.m_stream, read, monitor);
        const pa_buffer_attr attributes{
            .maxlength = kServerChooses,
            .tlength = kServerChooses,
            .prebuf = kServerChooses,
            .minreq = kServerChooses,
            .fragsize = static_cast<std::uint32_t>(pa_usec_to_bytes(5000, &kSpec))};
        const auto flags =
            static_cast<pa_stream_flags_t>(PA_STREAM_ADJUST_LATENCY | PA_STREAM_DONT_MOVE);
        pa_stream_connect_record(self.m_stream, self.m_source.c_str(), &attributes, flags);
    }

    static void read(pa_stream*, std::size_t, void* monitor)
    {
        static_cast<Monitor*>(monitor)->take();
    }
};

Monitor::Monitor(const std::string& server, const std::string& device)
    : m_loop(pa_threaded_mainloop_new()), m_source(device + ".monitor")
{
    m_context = pa_context_new(pa_threaded_mainloop_get_api(m_loop), "Bathside test");
    pa_context_set_state_callback(m_context, Callbacks::context, this);
    pa_context_connect(m_context, server.c_str(), PA_CONTEXT_NOAUTOSPAWN, nullptr);
    pa_threaded_mainloop_start(m_loop);
    if (!reach(1, kStartWithin))
        throw std::runtime_error("nothing arrives from " + m_source);
}

Monitor::~Monitor()
{
    pa_threaded_mainloop_lock(m_loop);
    if (m_stream) {
        pa_stream_set_read_callback(m_stream, nullptr, nullptr);
        pa_stream_disconnect(m_stream);
        pa_stream_unref(m_stream);
    }
    pa_context_set_state_callback(m_context, nullptr, nullptr);
    pa_context_disconnect(m_context);
    pa_threaded_mainloop_unlock(m_loop);
    pa_threaded_mainloop_stop(m_loop);
    pa_context_unref(m_context);
    pa_threaded_mainloop_free(m_loop);
}

void Monitor::take()
{
    const BootTime now = ui::bootNow();
    const std::scoped_lock lock(m_mutex);
    const void* data = nullptr;
    std::size_t bytes = 0;
    while (pa_stream_readable_size(m_stream) > 0 && pa_stream_peek(m_stream, &data, &bytes) == 0 &&
           bytes > 0) {
        m_pieces.push_back({m_samples.size(), now});
        const std::size_t count = bytes / sizeof(float);
        if (const auto* samples = static_cast<const float*>(data))
            m_samples.insert(m_samples.end(), samples, samples + count);
        else
            m_samples.resize(m_samples.size() + count);  // a hole
        pa_stream_drop(m_stream);
    }
    m_came.notify_all();
}

BootTime Monitor::arrivalOf(std::size_t index) const
{
    const auto after = std::ranges::upper_bound(m_pieces, index, {}, &Piece::begin);
    return std::prev(after)->arrived;
}

std::size_t Monitor::position() const
{
    const std::scoped_lock lock(m_mutex);
    return m_samples.size();
}

std::vector<float> Monitor::samples(std::size_t from, std::size_t to) const
{
    const std::scoped_lock lock(m_mutex);
    const auto at = [&](std::size_t i) {
        return m_samples.begin() + static_cast<std::ptrdiff_t>(std::min(i, m_samples.size()));
    };
    return {at(from), at(to)};
}

std::optional<Onset> Monitor::sound(std::size_t from, std::chrono::milliseconds atMost) const
{
    std::unique_lock lock(m_mutex);
    std::optional<std::size_t> found;
    std::size_t looked = from;
    m_came.wait_for(lock, atMost, [&] {
        for (; !found && looked < m_samples.size(); ++looked) {
            if (isLoud(m_samples[looked]))
                found = looked;
        }
        return found.has_value();
    });
    if (!found)
        return std::nullopt;
    return Onset{*found, arrivalOf(*found)};
}

std::optional<std::size_t> Monitor::silence(std::chrono::milliseconds quiet,
                                            std::chrono::milliseconds atMost) const
{
    std::unique_lock lock(m_mutex);
    const std::size_t length = samplesIn(quiet);
    const std::size_t from = m_samples.size();
    const bool isQuiet = m_came.wait_for(lock, atMost, [&] {
        return m_samples.size() >= from + length &&
               std::ranges::none_of(std::views::drop(m_samples, static_cast<std::ptrdiff_t>(
                                                                    m_samples.size() - length)),
                                    isLoud);
    });
    return isQuiet ? std::optional(m_samples.size() - length) : std::nullopt;
}

bool Monitor::reach(std::size_t position, std::chrono::milliseconds atMost) const
{
    std::unique_lock lock(m_mutex);
    return m_came.wait_for(lock, atMost, [&] { return m_samples.size() >= position; });
}

}  // namespace bathside::test
