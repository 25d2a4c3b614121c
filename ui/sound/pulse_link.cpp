#include "ui/sound/pulse_link.h"

#include <cassert>
#include <cmath>
#include <utility>

#include <pulse/pulseaudio.h>

namespace bathside::ui {

namespace {

double levelOf(const pa_cvolume& volume)
{
    return static_cast<double>(pa_cvolume_avg(&volume)) / static_cast<double>(PA_VOLUME_NORM);
}

pa_cvolume volumeOf(double level, std::uint8_t channels)
{
    pa_cvolume volume{};
    pa_cvolume_set(
        &volume, channels,
        static_cast<pa_volume_t>(std::ceil(level * static_cast<double>(PA_VOLUME_NORM))));
    return volume;
}

void letGo(pa_operation* operation)
{
    if (operation)
        pa_operation_unref(operation);
}

SinkFacts factsOf(const pa_sink_info& info)
{
    return {.name = info.name,
            .description = info.description ? info.description : info.name,
            .level = levelOf(info.volume),
            .isMuted = info.mute != 0,
            .isUnplugged = info.active_port && info.active_port->available == PA_PORT_AVAILABLE_NO,
            .isFlat = (info.flags & PA_SINK_FLAT_VOLUME) != 0,
            .channels = info.volume.channels};
}

}  // namespace

// libpulse's callbacks, each with the link as its user data.
struct PulseLink::Callbacks {
    static PulseLink& of(void* link) { return *static_cast<PulseLink*>(link); }

    static void state(pa_context*, void* link) { of(link).onState(); }

    static void event(pa_context*, pa_subscription_event_type_t, std::uint32_t, void* link)
    {
        of(link).m_listener.changed();
    }

    static void server(pa_context* context, const pa_server_info* info, void* link)
    {
        if (info && info->default_sink_name)
            of(link).m_answer.survey.defaultName = info->default_sink_name;
        letGo(pa_context_get_sink_info_list(context, sink, link));
    }

    static void sink(pa_context* context, const pa_sink_info* info, int isLast, void* link)
    {
        PulseLink& self = of(link);
        if (isLast == 0) {
            self.m_answer.survey.sinks.push_back(factsOf(*info));
            return;
        }
        if (!self.m_stream) {
            self.finish();
            return;
        }
        letGo(pa_context_get_sink_input_info(context, *self.m_stream, stream, link));
    }

    static void stream(pa_context*, const pa_sink_input_info* info, int isLast, void* link)
    {
        PulseLink& self = of(link);
        if (isLast == 0)
            self.m_answer.stream = StreamVolume{levelOf(info->volume), info->mute != 0};
        else
            self.finish();
    }
};

PulseLink::Lock::Lock(const PulseLink& link) : m_loop(link.m_loop)
{
    pa_threaded_mainloop_lock(m_loop);
}

PulseLink::Lock::~Lock() { pa_threaded_mainloop_unlock(m_loop); }

PulseLink::PulseLink(Listener listener)
    : m_listener(std::move(listener)), m_loop(pa_threaded_mainloop_new())
{
    assert(m_loop);
    pa_threaded_mainloop_set_name(m_loop, "sound");
    m_context = pa_context_new(pa_threaded_mainloop_get_api(m_loop), "Bathside");
    pa_context_set_state_callback(m_context, Callbacks::state, this);
    pa_context_set_subscribe_callback(m_context, Callbacks::event, this);
}

void PulseLink::start(const std::string& server)
{
    const char* name = server.empty() ? nullptr : server.c_str();
    if (pa_context_connect(m_context, name, PA_CONTEXT_NOAUTOSPAWN, nullptr) < 0)
        onState();
    pa_threaded_mainloop_start(m_loop);
}

PulseLink::~PulseLink()
{
    {
        const Lock lock(*this);
        end();
    }
    pa_threaded_mainloop_stop(m_loop);
    pa_context_unref(m_context);
    pa_threaded_mainloop_free(m_loop);
}

void PulseLink::end()
{
    pa_context_set_state_callback(m_context, nullptr, nullptr);
    pa_context_set_subscribe_callback(m_context, nullptr, nullptr);
    m_isLost = true;
    pa_context_disconnect(m_context);  // and with it every question that is not answered yet
}

void PulseLink::onState()
{
    const pa_context_state_t state = pa_context_get_state(m_context);
    if (state == PA_CONTEXT_READY) {
        const auto what = PA_SUBSCRIPTION_MASK_SINK | PA_SUBSCRIPTION_MASK_SINK_INPUT |
                          PA_SUBSCRIPTION_MASK_SERVER;
        letGo(pa_context_subscribe(m_context, static_cast<pa_subscription_mask_t>(what), nullptr,
                                   nullptr));
        m_listener.ready();
    }
    const bool isGood = PA_CONTEXT_IS_GOOD(state) && state != PA_CONTEXT_UNCONNECTED;
    if (!isGood && !std::exchange(m_isLost, true))
        m_listener.lost();
}

void PulseLink::ask(std::optional<std::uint32_t> stream)
{
    m_stream = stream;
    if (m_isAsking) {
        m_mustAskAgain = true;
        return;
    }
    m_isAsking = true;
    m_answer = {};
    letGo(pa_context_get_server_info(m_context, Callbacks::server, this));
}

void PulseLink::finish()
{
    m_isAsking = false;
    if (m_isLost)
        return;
    if (std::exchange(m_mustAskAgain, false))
        ask(m_stream);
    else
        m_listener.answered(m_answer);
}

void PulseLink::setSink(const SinkFacts& sink, double level)
{
    const pa_cvolume volume = volumeOf(level, sink.channels);
    const char* name = sink.name.c_str();
    letGo(pa_context_set_sink_volume_by_name(m_context, name, &volume, nullptr, nullptr));
    letGo(pa_context_set_sink_mute_by_name(m_context, name, 0, nullptr, nullptr));
}

void PulseLink::setStream(std::uint32_t stream, const SinkFacts& sink, double level)
{
    const pa_cvolume volume = volumeOf(level, 1);  // our stream has one channel
    letGo(pa_context_set_sink_input_volume(m_context, stream, &volume, nullptr, nullptr));
    letGo(pa_context_set_sink_input_mute(m_context, stream, 0, nullptr, nullptr));
    if (sink.isMuted)
        letGo(pa_context_set_sink_mute_by_name(m_context, sink.name.c_str(), 0, nullptr, nullptr));
}

}  // namespace bathside::ui
