#include "core/station/station.h"

#include <algorithm>
#include <utility>

#include "core/bench/card_in_force.h"
#include "core/day/bath_log.h"
#include "core/trail/canonical.h"

namespace bathside {
namespace {

constexpr auto kPlanEvery = std::chrono::minutes(1);  // as time goes by without an event
constexpr auto kLookAgain = std::chrono::seconds(1);  // whether the critical window is over

template <typename T, typename... Of>
constexpr bool isOneOf = (std::is_same_v<T, Of> || ...);

/// Whoever has shown by a PIN who they are, to say this.
std::optional<PersonId> provenBy(const Bench& bench, const Intent& intent)
{
    return std::visit(
        [&bench]<typename T>(const T& meant) -> std::optional<PersonId> {
            if constexpr (isOneOf<T, ReviewDeviation, CommentNote, ApproveCard, ChooseBaseline>)
                return meant.by;
            else if constexpr (isOneOf<T, ListPerson, SetPin>)
                return meant.by;
            else if constexpr (isOneOf<T, ReleaseBag, ReleaseLot, AllowLot, TakeBagDown>)
                return bench.people.areListed() ? std::optional<PersonId>(meant.by) : std::nullopt;
            else if constexpr (std::is_same_v<T, Sign>)
                return meant.person;
            else
                return std::nullopt;
        },
        intent);
}

/// Who says it: whoever takes duty with these facts, else whoever has it; nobody for the program
/// itself.
std::optional<Person> speaker(const Bench& bench, const std::vector<Fact>& facts, const Tap& tap)
{
    if (tap.place.empty())
        return std::nullopt;
    for (const Fact& fact : facts) {
        if (const auto* duty = std::get_if<DutyTaken>(&fact))
            return Person{.id = duty->person};
    }
    return bench.onDuty;
}

/// Whether the day's plan depends on it.
bool concernsPlan(const Fact& fact)
{
    return std::visit(
        []<typename T>(const T&) {
            return isOneOf<T, ShiftOpened, CardAdopted, LinePlanned, BirdsCounted, LineStopped,
                           LineGoing, BagMixed, BagHung, BagHeld, BagReleased, BagDown,
                           AmpouleBagged, AmpouleLost, CaneExposed, StoreReceived, StoreCounted,
                           StoreDiscarded, LotQuarantined, LotReleased, LotAllowed, FactCorrected,
                           FactTakenBack>;
        },
        fact);
}

/// What the pulls so far say of the bath goes with the opening of a shift: a start reads no
/// further.
void addLearned(const State& state, std::vector<Fact>& facts)
{
    const Card* card = cardOfNextBag(state.bench);
    const auto learned = card ? learnedFor(state, *card) : std::nullopt;
    if (learned)
        facts.emplace_back(
            BathCarried{Document{canonicalised(documentOf(*learned)).value_or("{}")}});
}

bool isStep(const Intent& intent)
{
    return std::holds_alternative<TakeOut>(intent) || std::holds_alternative<MoveOn>(intent);
}

/// What the reading comes to, itself first; nothing before there is a card.
std::vector<Fact> judgedBy(const State& state, const RawReading& reading)
{
    const Tap tap{.id = {}, .place = {}, .at = reading.at};
    return decide(state, TakeReading{reading.probe, reading.value}, tap)
        .value_or(std::vector<Fact>{});
}

}  // namespace

Station::Station(State state, const Clock& clock, Recorder& recorder,
                 std::function<TapId()> newTapId)
    : m_state(std::move(state)),
      m_clock(clock),
      m_recorder(recorder),
      m_newTapId(std::move(newTapId))
{
    m_record.recorded = m_state.bench.lastSeq;
}

Decision Station::wouldTake(const Intent& intent) const
{
    return decide(m_state, intent, Tap{.id = {}, .place = {}, .at = now()});
}

Result<Taken, Refusal> Station::handle(const Intent& intent, const TapInput& input)
{
    const Tap tap{.id = input.id.empty() ? m_newTapId() : input.id,
                  .place = input.place,
                  .at = input.at,
                  .byReceipt = input.byReceipt};
    if (isStep(intent))
        writeThinned();
    auto taken = take(intent, tap);
    if (!taken && !tap.place.empty())
        write({TapRefused{std::string(nameOf(intent)), std::string(nameOf(taken.error().code))}},
              tap);
    settle();
    changed();
    return taken;
}

Result<Taken, Refusal> Station::note(const Intent& intent)
{
    return handle(intent, TapInput{.place = {}, .at = now(), .byReceipt = false, .id = {}});
}

void Station::feed(const RawReading& reading)
{
    auto said = judgedBy(m_state, reading);
    const auto* taken = said.empty() ? nullptr : std::get_if<ReadingTaken>(&said.front());
    if (!taken)
        return;
    const Seq before = m_state.bench.lastSeq;
    switch (newsOf(m_state.bench, *taken, reading.at)) {
        case ReadingNews::None:
            m_changes.erase(reading.probe);
            if (!taken->fault)
                m_thinned.insert_or_assign(reading.probe, reading);
            return;
        case ReadingNews::Change:
            noteChange(reading, *taken);
            break;
        case ReadingNews::AtOnce:
            writeReading(reading, std::move(said));
            break;
    }
    settle();
    if (m_state.bench.lastSeq != before)
        changed();
}

std::optional<TakenReading> Station::newest(const ProbeId& probe) const
{
    if (const auto thinned = m_thinned.find(probe); thinned != m_thinned.end()) {
        const auto said = judgedBy(m_state, thinned->second);
        if (!said.empty())
            return TakenReading{thinned->second.at, std::get<ReadingTaken>(said.front())};
    }
    const auto written = m_state.bench.latest.find(probe);
    return written == m_state.bench.latest.end() ? std::nullopt : std::optional(written->second);
}

void Station::noteChange(const RawReading& reading, const ReadingTaken& taken)
{
    ReadingChange& change = m_changes[reading.probe];
    if (change.readings++ == 0)
        change.since = reading.at;
    change.last = reading;
    change.patience = patienceWith(m_state.bench, taken);
    if (!taken.fault)
        m_thinned.insert_or_assign(reading.probe, reading);
}

void Station::writeLasting(const Stamp& now)
{
    std::vector<RawReading> lasting;
    for (const auto& [probe, change] : m_changes) {
        if (const auto due = dueAt(change); due && *due <= now.boot)
            lasting.push_back(change.last);
    }
    for (const RawReading& reading : lasting)
        writeReading(reading, judgedBy(m_state, reading));
}

void Station::writeReading(const RawReading& reading, std::vector<Fact> said)
{
    m_thinned.erase(reading.probe);
    m_changes.erase(reading.probe);
    write(std::move(said), Tap{.id = m_newTapId(), .place = {}, .at = reading.at});
}

void Station::writeThinned()
{
    for (const auto& [probe, reading] : std::exchange(m_thinned, {}))
        writeReading(reading, judgedBy(m_state, reading));
}

void Station::tick()
{
    const Seq before = m_state.bench.lastSeq;
    settle();
    if (m_state.bench.lastSeq != before)
        changed();
}

void Station::recorded(const RecordState& record)
{
    if (record == m_record)
        return;
    const RecordState before = std::exchange(m_record, record);
    if (record.failures != before.failures && !m_state.bench.storeFailed)
        (void)note(
            NoteStoreFailure{record.trouble.fault, record.trouble.errorNumber, record.spool});
    else if (record.health == RecordState::Health::Recorded && m_state.bench.storeFailed)
        (void)note(NoteStoreRecovery{record.merged, record.mergedSpool});
    else
        changed();
}

Result<Taken, Refusal> Station::take(const Intent& intent, const Tap& tap)
{
    auto decision = decide(m_state, intent, tap);
    if (!decision)
        return failure(std::move(decision.error()));
    if (std::holds_alternative<OpenShift>(intent))
        addLearned(m_state, *decision);
    const auto proven = provenBy(m_state.bench, intent);
    return write(
        std::move(*decision), tap,
        proven ? std::optional(Person{.id = *proven, .proof = Proof::Proven}) : std::nullopt);
}

Taken Station::write(std::vector<Fact> facts, const Tap& tap, std::optional<Person> proven)
{
    if (facts.empty())
        return {.again = true};
    const auto person = proven ? std::move(proven) : speaker(m_state.bench, facts, tap);
    std::vector<Event> events;
    for (Fact& fact : facts) {
        if (concernsPlan(fact))
            m_plannedAt.reset();
        const Bench& bench = m_state.bench;
        events.push_back({.seq = bench.lastSeq + 1,
                          .at = tap.at,
                          .byReceipt = tap.byReceipt,
                          .person = person,
                          .tap = tap.id,
                          .place = tap.place,
                          .card = bench.card ? bench.card->hash() : CardHash{},
                          .fact = std::move(fact)});
        m_state = evolve(std::move(m_state), events.back());
    }
    const Taken taken{.again = false, .first = events.front().seq, .last = events.back().seq};
    m_recorder.record(std::move(events));
    return taken;
}

void Station::planBy(const LocalDays& days)
{
    m_days = &days;
    m_plannedAt.reset();
    settle();
}

void Station::settle()
{
    const Stamp at = now();
    writeLasting(at);
    settlePlan(at);
    settleAlarms(at);
}

// While a bag is being made up the hands are full, and what comes next can wait.
std::optional<BootTime> Station::nextPlanning(const Stamp& at) const
{
    const Bench& bench = m_state.bench;
    if (!m_days || !bench.shiftIsOpen() || bench.planned.empty() || bench.bagBeingMadeUp() ||
        bench.openPull())
        return std::nullopt;
    if (inCriticalWindow(bench, at))
        return at.boot + kLookAgain;
    if (!m_plannedAt || m_plannedAt->bootId != at.bootId)
        return at.boot;
    return m_plannedAt->boot + kPlanEvery;
}

void Station::settlePlan(const Stamp& at)
{
    if (!m_state.bench.shiftIsOpen() || m_state.bench.planned.empty())
        m_day.reset();
    if (const auto next = nextPlanning(at); !next || *next > at.boot)
        return;
    const Bench& bench = m_state.bench;
    const auto day = bench.stores.day.value_or(std::chrono::floor<std::chrono::days>(at.wall));
    const auto clock = DayClock::of(*m_days, bench.shift->zone, day);
    m_plannedAt = at;
    m_day = clock ? dayPlan(bench, *clock, at) : std::nullopt;
    const auto start = m_day ? movedStart(bench, *m_day, at.wall) : std::nullopt;
    if (start)
        write({PullPlanned{*start}}, Tap{.id = m_newTapId(), .place = {}, .at = at});
}

void Station::settleAlarms(const Stamp& at)
{
    const Alarms due = alarms(m_state.bench, at);
    const Tap tap{.id = m_newTapId(), .place = {}, .at = at};
    std::vector<Fact> news;
    for (const auto& [id, standing] : m_state.bench.alarms) {
        if (std::ranges::find(due.due, id, &Alarm::id) == due.due.end())
            news.emplace_back(AlarmEnded{id});
    }
    for (const Alarm& alarm : due.due) {
        const auto standing = m_state.bench.alarms.find(alarm.id);
        if (standing == m_state.bench.alarms.end() || standing->second.level != alarm.level)
            news.emplace_back(AlarmRaised{alarm.id, alarm.level, alarm.subject});
    }
    write(std::move(news), tap);
    m_nextChange = due.nextChange;
    lookAgainAt(nextPlanning(at));
    for (const auto& [probe, change] : m_changes)
        lookAgainAt(dueAt(change));
}

void Station::lookAgainAt(std::optional<BootTime> then)
{
    if (then && (!m_nextChange || *then < *m_nextChange))
        m_nextChange = then;
}

void Station::changed() const
{
    if (m_changed)
        m_changed();
}

}  // namespace bathside
