#include "app/system/background_source.h"

#include <utility>

namespace bathside::app {

BackgroundSource::BackgroundSource(Take take, Millis every, const Clock& clock)
    : m_take(std::move(take)),
      m_every(every),
      m_clock(clock),
      m_thread([this](const std::stop_token& stop) { run(stop); })
{
}

std::optional<RawReading> BackgroundSource::poll(const Stamp& now)
{
    const std::lock_guard lock(m_mutex);
    if (m_waiting.empty() || m_waiting.front().at.boot > now.boot)
        return std::nullopt;
    RawReading reading = std::move(m_waiting.front());
    m_waiting.pop_front();
    return reading;
}

void BackgroundSource::run(const std::stop_token& stop)
{
    while (!stop.stop_requested()) {
        put(m_take());
        std::unique_lock lock(m_mutex);
        m_wake.wait_for(lock, stop, m_every, [] { return false; });
    }
}

void BackgroundSource::put(std::vector<ProbeValue> values)
{
    const Stamp now = m_clock.now();
    const std::lock_guard lock(m_mutex);
    for (ProbeValue& value : values)
        m_waiting.push_back({std::move(value.probe), now, value.value});
    while (m_waiting.size() > kMostWaiting)
        m_waiting.pop_front();
}

}  // namespace bathside::app
