#pragma once

// The screen's way to the station's one service: forwards taps, keeps it ticking, tells of changes.
//
// Holds no truth: every answer is read from the service's state and the clock at that moment.
// A tap's instant is the input event's own, through the mapping app gives. One single-shot timer,
// re-armed from the clock, wakes at the next change of an alarm and at least once a second (ten
// times in the critical window); where time is stepped by hand, only `tick` does. UI thread only.

#include <QObject>
#include <QString>
#include <QTimer>
#include <optional>

#include "core/station/station.h"
#include "ui/models/feedback.h"
#include "ui/models/input_time.h"

namespace bathside::ui {

class StationModel final : public QObject {
    Q_OBJECT

public:
    enum class Ticking : std::uint8_t { ByTimer, ByHand };

    StationModel(Station& station, Feedback& feedback, MapInputTime inputTime, Ticking ticking);

    [[nodiscard]] const State& state() const noexcept { return m_station.state(); }
    [[nodiscard]] const Bench& bench() const noexcept { return m_station.bench(); }
    [[nodiscard]] Stamp now() const { return m_station.now(); }
    /// The day's plan as last reckoned; none where nothing is planned. While a bag is being made
    /// up it is the one by which that bag was started.
    [[nodiscard]] const std::optional<DayPlan>& day() const noexcept { return m_station.day(); }
    [[nodiscard]] const RecordState& record() const noexcept { return m_station.record(); }
    [[nodiscard]] std::optional<TakenReading> newest(const ProbeId& probe) const
    {
        return m_station.newest(probe);
    }
    /// As of the last change or tick.
    [[nodiscard]] const Alarms& alarms() const noexcept { return m_alarms; }
    [[nodiscard]] std::optional<BootTime> nextChange() const noexcept
    {
        return m_station.nextChange();
    }
    [[nodiscard]] bool isInCriticalWindow() const { return inCriticalWindow(bench(), now()); }

    /// None: it would be taken (or has been already).
    [[nodiscard]] std::optional<Refusal> refusal(const Intent& intent) const;
    [[nodiscard]] bool wouldTake(const Intent& intent) const { return !refusal(intent); }

    /// A tap at that place. True when it was taken, now or before.
    bool say(const Intent& intent, std::uint64_t inputMs, const QString& place);
    /// A slip that never came to an intent: seen, heard, not noted.
    void refuse(const Refusal& refusal);

public slots:
    /// Time has passed.
    void tick();

signals:
    /// Something that is shown may differ: the state, the record or the time.
    void changed();
    /// The state or the record differs, not only the time.
    void stateChanged();
    void taken();
    void refused(const bathside::Refusal& refusal);

private:
    void follow();
    void rearm();
    [[nodiscard]] Millis wait() const;

    Station& m_station;
    Feedback& m_feedback;
    MapInputTime m_inputTime;
    Ticking m_ticking;
    QTimer m_timer;
    Alarms m_alarms;
};

}  // namespace bathside::ui
