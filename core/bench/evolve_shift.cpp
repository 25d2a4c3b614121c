// Rows of `evolve`: the shift, its set-up and its bath.

#include "core/bench/card_in_force.h"
#include "core/bench/evolve_rows.h"

namespace bathside::folds {
namespace {

constexpr std::size_t kReadingsKept =
    128;  // two minutes of trend and any settling time, at one in 10 s

void noteOverdue(Bench& bench, const Event& event, const ProbeId& id)
{
    const auto probe = bench.probes.find(id);
    if (probe == bench.probes.end() || !probe->second->due)
        return;
    const Millis over = bench.dayAt(event.at.wall) - *probe->second->due;
    if (over > Millis::zero())
        bench.overdue.try_emplace(id, Gap{over.count(), event.seq, event.seq});
}

}  // namespace

void forgetWater(Bench& bench, const Event& event)
{
    bench.readings.clear();
    bench.waterSince = event.at;
}

void on(Bench& bench, const Event& event, const ShiftOpened& fact)
{
    bench.shift =
        Shift{.zone = fact.zone,
              .day = fact.day.value_or(std::chrono::floor<std::chrono::days>(event.at.wall)),
              .opened = momentOf(event),
              .closed = {}};
    if (const auto card = bench.cards.find(fact.card); card != bench.cards.end())
        bench.card = card->second;
    if (bench.next && mayHold(bench, bench.next->hash()))
        bench.next.reset();
    bench.onDuty.reset();
    bench.checks.clear();
    bench.waterSince = event.at;
    bench.overdue.clear();
    bench.nextPull.reset();
    bench.pulls.clear();
    bench.bags.clear();
    bench.lines.clear();
    bench.unproven.clear();
    for (const UnprovenBirds& line : fact.unproven.value_or(std::vector<UnprovenBirds>{}))
        bench.unproven[line.line] = line.birds;
    bench.exposed.clear();
    bench.planned.clear();
    bench.judgements.clear();
    bench.answers.clear();
    bench.lastTapAt.clear();
}

void on(Bench& bench, const Event& event, const ShiftClosed&)
{
    if (bench.shift)
        bench.shift->closed = momentOf(event);
    bench.nextPull.reset();
}

void on(Bench& bench, const Event&, const DutyTaken& fact)
{
    bench.onDuty = Person{.id = fact.person};
}

/// Who may work here no longer is not on duty any more. The bench goes on: nobody's list stands in
/// the way of a frozen ampoule.
void on(Bench& bench, const Event&, const PersonListed& fact)
{
    const bool works = !fact.departed && may(fact.role, Act::WorkAtBench);
    if (bench.onDuty && bench.onDuty->id == fact.person && !works)
        bench.onDuty.reset();
}

void on(Bench& bench, const Event& event, const CheckRecorded& fact)
{
    bench.checks[fact.check] = {.ok = fact.ok,
                                .value = fact.value.value_or(""),
                                .overridden = {},
                                .moment = momentOf(event)};
}

void on(Bench& bench, const Event& event, const CheckOverridden& fact)
{
    bench.checks[fact.check].overridden = fact.why;
    bench.checks[fact.check].moment = momentOf(event);
}

void on(Bench& bench, const Event& event, const ReadingTaken& fact)
{
    bench.latest[fact.probe] = {event.at, fact};
    if (!bench.isOfBath(fact.probe))
        return;
    bench.lastTaken = TakenReading{event.at, fact};
    if (fact.fault) {
        bench.faultySince = bench.faultySince.value_or(event.at);
        return;
    }
    bench.faultySince.reset();
    bench.readings.push_back({event.at, fact});
    if (bench.readings.size() > kReadingsKept)
        bench.readings.erase(bench.readings.begin());
    noteOverdue(bench, event, fact.probe);
}

void on(Bench& bench, const Event& event, const BathChanged&) { forgetWater(bench, event); }

}  // namespace bathside::folds
