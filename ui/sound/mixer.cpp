#include "ui/sound/mixer.h"

#include <algorithm>

namespace bathside::ui {

namespace {

constexpr std::size_t kFadeSamples = kSampleRate / 200;  // 5 ms: no crack
constexpr std::size_t kMostVoices = 16;                  // a stuck key cannot pile up more

std::size_t firstPulseEnd(const Burst& burst)
{
    if (burst.pulses.empty())
        return 0;
    const Pulse& first = burst.pulses.front();
    return static_cast<std::size_t>((first.start + first.length).count() * kSampleRate / 1'000'000);
}

float gainAt(std::size_t position, const std::optional<std::size_t>& fadeFrom)
{
    if (!fadeFrom || position < *fadeFrom)
        return 1.0F;
    const std::size_t into = position - *fadeFrom;
    return into >= kFadeSamples
               ? 0.0F
               : 1.0F - static_cast<float>(into) / static_cast<float>(kFadeSamples);
}

}  // namespace

void Mixer::play(Voice voice, std::shared_ptr<const Burst> burst)
{
    const std::scoped_lock lock(m_mutex);
    if (voice == Voice::Alarm)
        cutAlarms(Cut::AtOnce);
    else if (m_playing.size() >= kMostVoices)
        return;
    m_playing.push_back({voice, std::move(burst), 0, std::nullopt});
}

void Mixer::silence()
{
    const std::scoped_lock lock(m_mutex);
    cutAlarms(Cut::AfterFirstPulse);
}

void Mixer::cutAlarms(Cut cut)
{
    for (Playing& playing : m_playing) {
        if (playing.voice != Voice::Alarm)
            continue;
        const std::size_t earliest = cut == Cut::AtOnce ? 0 : firstPulseEnd(*playing.burst);
        const std::size_t from = std::max(playing.position, earliest);
        playing.fadeFrom = std::min(from, playing.fadeFrom.value_or(from));
    }
}

void Mixer::render(std::span<float> out)
{
    std::ranges::fill(out, 0.0F);
    const std::scoped_lock lock(m_mutex);
    std::erase_if(m_playing,
                  [&](Playing& playing) { return mixIn(playing, out) == Left::Nothing; });
    if (!m_playing.empty())
        std::ranges::transform(out, out.begin(),
                               [](float s) { return std::clamp(s, -1.0F, 1.0F); });
}

Mixer::Left Mixer::mixIn(Playing& playing, std::span<float> out)
{
    const auto& samples = playing.burst->samples;
    std::size_t end = samples.size();
    if (playing.fadeFrom)
        end = std::min(end, *playing.fadeFrom + kFadeSamples);
    for (float& sample : out) {
        if (playing.position >= end)
            return Left::Nothing;
        sample += samples[playing.position] * gainAt(playing.position, playing.fadeFrom);
        ++playing.position;
    }
    return playing.position < end ? Left::Some : Left::Nothing;
}

}  // namespace bathside::ui
