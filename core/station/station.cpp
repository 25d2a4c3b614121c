#include "core/station/station.h"

#include <algorithm>
#include <utility>

namespace bathside {
namespace {

constexpr auto kTraceEvery =
    std::chrono::seconds(10);  // a steady thermometer is written this often

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

bool isNews(const Bench& bench, const ReadingTaken& taken, const Stamp& at)
{
    const auto& last = bench.lastTaken;
    if (!last || last->fact.probe != taken.probe || last->fact.fault != taken.fault)
        return true;
    if (taken.fault)
        return false;
    return last->fact.verdict != taken.verdict || elapsed(last->at, at).time >= kTraceEvery;
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
    auto taken = take(intent, tap);
    if (!taken && !tap.place.empty())
        write({TapRefused{std::string(nameOf(intent)), std::string(nameOf(taken.error().code))}},
              tap);
    settleAlarms(now());
    changed();
    return taken;
}

Result<Taken, Refusal> Station::note(const Intent& intent)
{
    return handle(intent, TapInput{.place = {}, .at = now(), .byReceipt = false, .id = {}});
}

void Station::feed(const RawReading& reading)
{
    const Tap tap{.id = m_newTapId(), .place = {}, .at = reading.at};
    const auto decision = decide(m_state, TakeReading{reading.probe, reading.value}, tap);
    if (!decision || decision->empty())
        return;
    const auto* taken = std::get_if<ReadingTaken>(&decision->front());
    if (!taken || !isNews(m_state.bench, *taken, reading.at))
        return;
    write(*decision, tap);
    settleAlarms(now());
    changed();
}

void Station::tick()
{
    const Seq before = m_state.bench.lastSeq;
    settleAlarms(now());
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
    return write(std::move(*decision), tap);
}

Taken Station::write(std::vector<Fact> facts, const Tap& tap)
{
    if (facts.empty())
        return {.again = true};
    const auto person = speaker(m_state.bench, facts, tap);
    std::vector<Event> events;
    for (Fact& fact : facts) {
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
}

void Station::changed() const
{
    if (m_changed)
        m_changed();
}

State restored(const std::vector<Event>& carried, const std::vector<Event>& since)
{
    State state;
    for (const Event& event : carried)
        state = evolve(std::move(state), event);
    for (const Event& event : since)
        state = evolve(std::move(state), event);
    return state;
}

const std::vector<std::string>& carriedKinds()
{
    static const std::vector<std::string> kinds{std::string(CardAdopted::kKind),
                                                std::string(ProbeDescribed::kKind)};
    return kinds;
}

}  // namespace bathside
