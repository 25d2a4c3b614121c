#pragma once

// The station's one service: every tap, reading and alarm goes through here, and nothing else
// changes the state.
//
// intent → decide → (refused: worded elsewhere, noted in the trail) or facts → events → evolve, and
// in the same order the recorder, which never blocks. State is the fold over what is recorded and,
// after it, what is not durable yet; `record()` tells the two apart. One thread. (Spec: the trail.)

#include <functional>
#include <map>
#include <vector>

#include "core/alarms/alarms.h"
#include "core/base/clock.h"
#include "core/bath/source.h"
#include "core/bench/decide.h"
#include "core/day/day_plan.h"
#include "core/station/reading_change.h"
#include "core/trail/ports.h"

namespace bathside {

/// A tap as it comes from the screen, a key or a script.
struct TapInput {
    PlaceId place;           // empty: not a person's tap; no same-place lock
    Stamp at;                // the input's own instant
    bool byReceipt = false;  // that was not plausible: `at` is when it was received
    TapId id;                // empty: the station makes one
};

struct Taken {
    bool again = false;  // the same tap as before: nothing was written
    Seq first = 0;       // the events it became; 0 when `again`
    Seq last = 0;
};

class Station {
public:
    /// `newTapId` gives an id that was never given before, in this trail or any other.
    Station(State state, const Clock& clock, Recorder& recorder, std::function<TapId()> newTapId);

    [[nodiscard]] const State& state() const noexcept { return m_state; }
    [[nodiscard]] const Bench& bench() const noexcept { return m_state.bench; }
    [[nodiscard]] Stamp now() const { return m_clock.now(); }
    [[nodiscard]] const RecordState& record() const noexcept { return m_record; }
    /// Whether that tap would be taken now: what enables a button is what will judge the tap.
    [[nodiscard]] Decision wouldTake(const Intent& intent) const;

    /// A person's tap. A refusal is noted in the trail, a repeat is not.
    Result<Taken, Refusal> handle(const Intent& intent, const TapInput& tap);
    /// The program's own: start, alarms, sound, store. Refusals are returned and not noted.
    Result<Taken, Refusal> note(const Intent& intent);
    /// A thermometer's reading: written when its verdict or fault has changed for long enough
    /// (reading_change.h), else thinned: in a shift every 10 s, and the last one before each step
    /// of an ampoule.
    void feed(const RawReading& reading);
    /// What that thermometer said last and how it is judged, also where it is not written; a fault
    /// only where it is.
    [[nodiscard]] std::optional<TakenReading> newest(const ProbeId& probe) const;
    /// From now on the day is planned anew as it goes, and the next pull's start written down when
    /// it moves; never while a bag is being made up. `days` outlives the station.
    void planBy(const LocalDays& days);
    /// The day's plan as last reckoned; none where nothing is planned.
    [[nodiscard]] const std::optional<DayPlan>& day() const noexcept { return m_day; }
    /// Raises and ends what is due by now; call at `nextChange` and after a sleep.
    void tick();
    [[nodiscard]] std::optional<BootTime> nextChange() const noexcept { return m_nextChange; }

    /// How far the record has come; called by whoever owns the recorder, on this thread.
    void recorded(const RecordState& record);

    /// Called after every change of state or record. One listener.
    void whenChanged(std::function<void()> listener) { m_changed = std::move(listener); }

private:
    Result<Taken, Refusal> take(const Intent& intent, const Tap& tap);
    void noteChange(const RawReading& reading, const ReadingTaken& taken);
    void writeReading(const RawReading& reading, std::vector<Fact> said);
    void writeLasting(const Stamp& now);
    void writeThinned();
    Taken write(std::vector<Fact> facts, const Tap& tap, std::optional<Person> proven = {});
    void settle();
    void settleAlarms(const Stamp& now);
    void lookAgainAt(std::optional<BootTime> then);
    void settlePlan(const Stamp& now);
    [[nodiscard]] std::optional<BootTime> nextPlanning(const Stamp& now) const;
    void changed() const;

    State m_state;
    const Clock& m_clock;
    Recorder& m_recorder;
    std::function<TapId()> m_newTapId;
    std::map<ProbeId, RawReading> m_thinned;     // newer than what is written of that probe
    std::map<ProbeId, ReadingChange> m_changes;  // from what is written, not lasting yet
    RecordState m_record;
    std::optional<BootTime> m_nextChange;
    const LocalDays* m_days = nullptr;
    std::optional<DayPlan> m_day;
    std::optional<Stamp> m_plannedAt;  // none: something happened that the plan does not know
    std::function<void()> m_changed;
};

/// A state folded from the trail: first the carried facts (cards, probes) before the last shift,
/// then everything since it opened.
[[nodiscard]] State restored(const std::vector<Event>& carried, const std::vector<Event>& since);

/// The kinds that are carried over shifts.
[[nodiscard]] const std::vector<std::string>& carriedKinds();

/// How many of the latest of a kind matter to whoever reads what is carried: of what comes every
/// day only so many, so that a start takes no longer with the years. None: all.
[[nodiscard]] std::optional<int> latestThatMatter(std::string_view kind);

}  // namespace bathside
