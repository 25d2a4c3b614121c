#include "ui/models/station_model.h"

#include <algorithm>

namespace bathside::ui {

using namespace std::chrono_literals;

StationModel::StationModel(Station& station, Feedback& feedback, MapInputTime inputTime,
                           Ticking ticking)
    : m_station(station),
      m_feedback(feedback),
      m_inputTime(std::move(inputTime)),
      m_ticking(ticking)
{
    m_timer.setSingleShot(true);
    m_timer.setTimerType(Qt::PreciseTimer);
    connect(&m_timer, &QTimer::timeout, this, &StationModel::tick);
    m_station.whenChanged([this] { follow(); });
    m_alarms = bathside::alarms(bench(), now());
    rearm();
}

std::optional<Refusal> StationModel::refusal(const Intent& intent) const
{
    const Decision decision = m_station.wouldTake(intent);
    if (decision)
        return std::nullopt;
    return decision.error();
}

bool StationModel::say(const Intent& intent, std::uint64_t inputMs, const QString& place)
{
    const InputTime time = m_inputTime(inputMs);
    const auto done = m_station.handle(
        intent,
        {.place = {place.toStdString()}, .at = time.at, .byReceipt = time.byReceipt, .id = {}});
    if (!done) {
        refuse(done.error());
        return false;
    }
    if (!done->again) {
        m_feedback.taken();
        emit taken();
    }
    return true;
}

void StationModel::refuse(const Refusal& refusal)
{
    m_feedback.refused();
    emit refused(refusal);
}

void StationModel::tick()
{
    m_station.tick();
    m_alarms = bathside::alarms(bench(), now());
    emit changed();
    rearm();
}

void StationModel::follow()
{
    m_alarms = bathside::alarms(bench(), now());
    emit stateChanged();
    emit changed();
    rearm();
}

void StationModel::rearm()
{
    if (m_ticking == Ticking::ByTimer)
        m_timer.start(wait());
}

Millis StationModel::wait() const
{
    const BootTime boot = now().boot;
    const Micros beat = isInCriticalWindow() ? Micros{100ms} : Micros{1s};
    BootTime wake = boot - boot % beat + beat;
    if (m_station.nextChange())
        wake = std::min(wake, *m_station.nextChange());
    // Never early: rounded up, and never a storm of timers should a change not go away.
    return std::max(std::chrono::ceil<Millis>(wake - boot), 5ms);
}

}  // namespace bathside::ui
