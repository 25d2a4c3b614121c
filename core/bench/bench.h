#pragma once

// What is true at the bench now: a value, folded from events and from nothing else.
//
// Everything here is derived. Times are the instants of the taps; durations come from
// `elapsed` (core/base/time.h). Ids are unique within the shift. (Spec: the job, 2.3 to 2.6, 3, 4.)

#include <array>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "core/bath/card_heat.h"
#include "core/bath/learned.h"
#include "core/bath/probe.h"
#include "core/bath/water.h"
#include "core/card/card.h"
#include "core/checks/vessel_log.h"
#include "core/facts/event.h"
#include "core/people/people.h"
#include "core/review/reviews.h"
#include "core/stores/stores.h"

namespace bathside {

/// An instant on record: when, whether the step was tapped or implied by a later one, and by which
/// event.
struct Moment {
    Stamp at;
    bool timed = true;
    Seq seq = 0;
};

struct Loss {
    Moment moment;
    LossReason why{};
    bool inBath = false;  // it was in the bath, not yet opened
};

struct Ampoule {
    AmpouleRef ref;
    ComponentId component;
    LotId lot;
    LotStanding lotStanding = LotStanding::Fit;       // when it came out of the cryogen
    std::array<std::optional<Moment>, kSteps> steps;  // by Step; Out is always there
    std::optional<Loss> lost;
    std::optional<BagId> bag;             // once it is in one
    std::optional<MilliCelsius> water{};  // it went into, where a calibrated thermometer told

    [[nodiscard]] const std::optional<Moment>& when(Step step) const
    {
        return steps[static_cast<std::size_t>(step)];
    }
    /// Neither in a bag nor lost.
    [[nodiscard]] bool isOpen() const { return !lost && !bag; }
    /// The step it has reached, `Rinsed` counted only before `Bagged`.
    [[nodiscard]] Step reached() const;
};

/// What the bath was when a pull's ampoules went in: the worst of them.
struct BathAtPull {
    std::optional<Verdict> verdict;  // none: there was no valid reading
    std::int64_t over = 0;           // m°C beyond the tolerance, when outside
    Seq reading = 0;
};

struct Pull {
    int no = 0;
    std::vector<Ampoule> ampoules;   // by number
    std::optional<BathAtPull> bath;  // once one is in the bath
    std::optional<Moment> closed;    // its last ampoule in a bag or lost
};

/// What a shift lead decided on a bag on hold, in their words.
struct HoldRelease {
    Moment moment;
    PersonId by;
    std::string words;
};

struct BagHold {
    Moment moment;
    HoldReason why{};
    std::string words;
    std::optional<HoldRelease> released{};
};

struct BagEnd {
    Moment moment;
    DownReason why{};
    MicroLitres left;
};

/// The longest stretch between two facts that a reminder asks for, in the limit's unit.
struct Gap {
    std::int64_t amount = 0;
    Seq from = 0;
    Seq to = 0;
};

struct Bag {
    BagId id;
    MicroLitres volume;
    LotId diluentLot;
    LotStanding lotStanding = LotStanding::Fit;  // of the diluent, at its start
    std::optional<MilliCelsius> temperature;
    std::shared_ptr<const Card> card;  // the one it is judged by, for its whole life
    Moment started;
    std::optional<Moment> inspected;     // and found good
    std::optional<Moment> drawn;         // diluent in the syringe
    std::optional<Moment> firstDiluent;  // its first ampoule in diluent: its age runs from here
    std::optional<Moment> mixed;         // since its last ampoule came in
    std::optional<Moment> swirled;       // mixed, or the last swirl
    std::optional<LineId> line;          // hangs on
    std::int64_t hungAtBirds = 0;        // the line's running total when it was hung there
    std::optional<Moment> hung;
    std::vector<BagHold> holds;  // in order, released ones too
    std::optional<BagEnd> down;
    std::optional<Gap> longestSwirlGap;  // ms

    [[nodiscard]] bool isOpen() const { return !down; }
    /// The hold that stands, also after the bag is down; null: none does.
    [[nodiscard]] const BagHold* held() const
    {
        return holds.empty() || holds.back().released ? nullptr : &holds.back();
    }
    [[nodiscard]] bool isBeingMadeUp() const { return !down && !held() && !mixed; }
};

/// A running total as it was counted.
struct BirdCount {
    WallTime at{};
    std::int64_t total = 0;
};

/// A vaccination check.
struct BirdsLooked {
    Moment moment;
    std::int64_t looked = 0;
    std::int64_t good = 0;
    std::optional<std::int64_t> targetPerMille{};  // what it was held to
    std::optional<std::int64_t> confidencePerMille{};
};

/// A line stopped, until it went on.
struct StandStill {
    WallTime from{};
    std::optional<WallTime> to;
};

struct Line {
    LineId id;
    std::int64_t birds = 0;  // running total of the shift
    std::int64_t birdsAtNeedle = 0;
    std::int64_t birdsAtDoseCheck = 0;
    std::int64_t birdsAtGoodDose = 0;     // at the last good check; below zero: in shifts before
    Moment since;                         // first mention, or the last dose check
    Moment needle;                        // first mention, or the last needle change
    std::optional<Gap> longestNeedleGap;  // birds
    std::optional<Gap> failedDose{};      // birds since the last good check, at a failed one
    std::optional<BirdsLooked> looked{};  // at the last vaccination check
    bool stopped = false;
    Moment stateSince;                // stopped or going since
    std::vector<BirdCount> counts{};  // from its first bag on
    std::vector<StandStill> stops{};
};

struct CheckState {
    bool ok = false;
    std::string value;
    std::string overridden;  // the reason, when it was
    Moment moment;
};

/// An alarm as it stands in the record.
struct RaisedAlarm {
    std::string alarm;
    Level level{};
    Subject subject;
    Stamp since;                 // of this level
    std::optional<Stamp> heard;  // and hushed from then for the card's time
    bool sounded = false;        // at this level
};

struct Judgement {
    std::int64_t over = 0;
    std::optional<BagId> bag;
    Seq seq = 0;  // the deviation, or the last rejudgement
};
using JudgementKey = std::pair<LimitName, Subject>;

struct Shift {
    std::string zone;
    std::chrono::sys_days day{};  // local, on which it was opened: all of it belongs to that day
    Moment opened;
    std::optional<Moment> closed;
};

struct ExposedCane {
    std::string place;
    Millis time{};
    Moment moment;
};

/// The stretch of the record from which a chart's limits come, both ends included.
struct Baseline {
    Seq from = 0;
    Seq to = 0;
};

struct Bench {
    // the station
    Stamp last;  // of the last event
    Seq lastSeq = 0;
    bool rehearsal = false;
    std::optional<BootId> boot;  // of the last start
    bool clockTrusted = true;    // false: wall time across the last start cannot be relied on
    std::set<BootId> untrusted;  // the boots for which that was so
    bool soundProven = false;    // since the last start
    bool soundLost = false;
    std::optional<StoreFault> storeFailed;  // until recovered
    std::optional<Stamp> clockStepped;      // until heard

    // the rules in force
    std::map<CardHash, std::shared_ptr<const Card>> cards;
    std::map<CardHash, std::shared_ptr<const SlushScale>> slush;  // of each card
    std::shared_ptr<const Card> card;  // in force; none before the first is adopted
    std::shared_ptr<const Card> next;  // adopted, in force from the next bag
    std::map<ProbeId, std::shared_ptr<const Probe>> probes;
    std::shared_ptr<const BathLearned> learned;  // of the bath, in the shifts before; null: nothing

    // the shift
    std::optional<Shift> shift;
    std::optional<Person> onDuty;
    std::map<CheckId, CheckState> checks;
    // of the bath (`isOfBath`), as far as `latest`
    std::vector<TakenReading> readings;  // the last ones since the water was changed, oldest first
    std::optional<TakenReading> lastTaken;   // good or faulty
    std::optional<Stamp> faultySince;        // nothing but faults from here on
    std::map<ProbeId, TakenReading> latest;  // the last one of each probe, good or faulty
    std::optional<Stamp>
        waterSince;  // the shift's opening, or the last change of water: readings count from here
    std::map<ProbeId, Gap> overdue;    // probes read past their due date: by how much (ms) at first
    std::optional<WallTime> nextPull;  // planned start

    std::vector<Pull> pulls;  // in order; at most the last is open
    std::vector<Bag> bags;    // in order of start
    std::map<LineId, Line> lines;
    std::map<LineId, std::int64_t> unproven;  // birds since a good dose check, in shifts before
    std::vector<ExposedCane> exposed;         // canes whose rest is in quarantine
    std::vector<LinePlanned> planned;         // what the day plans, in the order of first mention

    Stores stores;

    // beyond the shift
    std::map<VesselId, VesselLog> vessels;
    People people;
    Reviews reviews;
    std::set<CardHash> approved;                // by a shift lead's signature
    std::optional<Seq> sealed;                  // the last seal
    std::optional<Moment> backedUp;             // the last copy
    std::map<std::string, Baseline> baselines;  // by chart, as a lead chose them

    // judgements, alarms, questions
    std::map<JudgementKey, Judgement> judgements;  // deviations that stand
    std::map<std::string, RaisedAlarm> alarms;     // not ended
    std::map<std::string, std::string> answers;    // by question
    std::map<PlaceId, Stamp> lastTapAt;            // for the same-place lock

    [[nodiscard]] bool shiftIsOpen() const { return shift && !shift->closed; }
    [[nodiscard]] const Pull* openPull() const;
    [[nodiscard]] const Ampoule* ampoule(AmpouleRef ref) const;
    [[nodiscard]] const Bag* bag(const BagId& id) const;
    [[nodiscard]] const Bag* bagOn(const LineId& line) const;
    /// The one started last that is neither mixed nor held nor down.
    [[nodiscard]] const Bag* bagBeingMadeUp() const;
    /// It was said to be in the bath, or no other in use was, or a person reads it.
    [[nodiscard]] bool isOfBath(const ProbeId& probe) const;
    /// The open shift's day, else UTC's.
    [[nodiscard]] std::chrono::sys_days dayAt(WallTime now) const;
    /// None where its thermometer has had a fault since: what it said then is no reading now.
    [[nodiscard]] std::optional<TakenReading> lastGoodReading() const;
    /// Why there is no reading now; none where the last one was good, or its thermometer is out of
    /// use.
    [[nodiscard]] std::optional<ReadingFault> readingFault() const;
};

/// The card an ampoule is judged by: its bag's, else that of the bag being made up, else the one in
/// force.
[[nodiscard]] const Card* cardOf(const Bench& bench, const Ampoule& ampoule);

/// From the first *out of cryogen* until every ampoule of the pull is in a bag or lost, and the
/// card's tail on.
[[nodiscard]] bool inCriticalWindow(const Bench& bench, const Stamp& now);

/// The verdict that holds now: of the last good reading, none when there is none or it is too old.
[[nodiscard]] std::optional<Verdict> bathVerdict(const Bench& bench, const Stamp& now);

/// The bench after one more event. May not refuse. Corrections and take-backs need the journal: see
/// state.h.
[[nodiscard]] Bench evolve(Bench bench, const Event& event);

}  // namespace bathside
