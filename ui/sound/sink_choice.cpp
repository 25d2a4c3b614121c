#include "ui/sound/sink_choice.h"

#include <algorithm>

namespace bathside::ui {

namespace {

// What PulseAudio's module-always-sink and PipeWire's server call the device they make up when
// there is none.
constexpr std::string_view kDummySink = "auto_null";

bool isSilent(const SinkFacts& sink) { return sink.isMuted || sink.level <= 0.0; }

// Lower is better.
int rank(const SinkFacts& sink, const SinkSurvey& survey, const SinkWish& wish)
{
    const int unplugged = sink.isUnplugged ? 10 : 0;
    if (sink.name == wish.preferred)
        return unplugged;
    if (sink.name == wish.current)
        return unplugged + 1;
    return unplugged + (sink.name == survey.defaultName ? 2 : 3);
}

}  // namespace

Result<std::string, OutFault> chooseSink(const SinkSurvey& survey, const SinkWish& wish)
{
    OutFault fault = OutFault::NoDevice;
    const SinkFacts* best = nullptr;
    for (const SinkFacts& sink : survey.sinks) {
        if (sink.name == kDummySink)
            continue;
        if (wish.refused.contains(sink.name)) {
            fault = OutFault::Refused;
            continue;
        }
        if (isSilent(sink) && !wish.mayUnmute) {
            fault = OutFault::Muted;
            continue;
        }
        if (!best || rank(sink, survey, wish) < rank(*best, survey, wish))
            best = &sink;
    }
    if (!best)
        return failure(fault);
    return best->name;
}

std::vector<DeviceName> deviceNames(const SinkSurvey& survey)
{
    std::vector<DeviceName> names;
    for (const SinkFacts& sink : survey.sinks) {
        if (sink.name != kDummySink)
            names.push_back({sink.name, sink.description});
    }
    return names;
}

}  // namespace bathside::ui
