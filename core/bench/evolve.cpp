#include <algorithm>

#include "core/bench/bench.h"
#include "core/card/read.h"

namespace bathside {
namespace {

constexpr std::size_t kReadingsKept =
    128;  // two minutes of trend and any settling time, at one in 10 s

Moment momentOf(const Event& event, bool timed = true) { return {event.at, timed, event.seq}; }

Bag* bagIn(Bench& bench, const BagId& id)
{
    const auto found = std::ranges::find(bench.bags, id, &Bag::id);
    return found == bench.bags.end() ? nullptr : &*found;
}

Pull& pullIn(Bench& bench, int no)
{
    const auto found = std::ranges::find(bench.pulls, no, &Pull::no);
    if (found != bench.pulls.end())
        return *found;
    bench.pulls.push_back({.no = no, .ampoules = {}, .bath = {}, .closed = {}});
    return bench.pulls.back();
}

Ampoule* ampouleIn(Bench& bench, AmpouleRef ref)
{
    auto& ampoules = pullIn(bench, ref.pull).ampoules;
    const auto found = std::ranges::find(ampoules, ref, &Ampoule::ref);
    return found == ampoules.end() ? nullptr : &*found;
}

Line& lineIn(Bench& bench, const LineId& id, const Event& event)
{
    const auto found = bench.lines.find(id);
    if (found != bench.lines.end())
        return found->second;
    const Moment now = momentOf(event);
    return bench.lines
        .emplace(
            id,
            Line{.id = id, .since = now, .needle = now, .longestNeedleGap = {}, .stateSince = now})
        .first->second;
}

void closeIfDone(Pull& pull, const Event& event)
{
    if (std::ranges::none_of(pull.ampoules, &Ampoule::isOpen))
        pull.closed = momentOf(event);
}

void setStep(Bench& bench, const Event& event, AmpouleRef ref, Step step, bool timed)
{
    if (Ampoule* ampoule = ampouleIn(bench, ref))
        ampoule->steps[static_cast<std::size_t>(step)] = momentOf(event, timed);
}

void widen(std::optional<Gap>& gap, std::int64_t amount, Seq from, Seq to)
{
    if (!gap || amount > gap->amount)
        gap = Gap{amount, from, to};
}

void forgetWater(Bench& bench, const Event& event)
{
    bench.readings.clear();
    bench.waterSince = event.at;
}

// --- the station ---------------------------------------------------------------------------------

void on(Bench& bench, const Event& event, const StationStarted& fact)
{
    const bool otherBoot = bench.boot && *bench.boot != event.at.bootId;
    const bool wentBack = otherBoot && event.at.wall < bench.last.wall;
    bench.clockTrusted = !wentBack;
    if (wentBack)
        bench.untrusted.insert(event.at.bootId);
    bench.boot = event.at.bootId;
    bench.rehearsal = fact.rehearsal;
    bench.soundProven = false;
    bench.soundLost = false;
}

void on(Bench& bench, const Event& event, const ClockChecked& fact)
{
    if (fact.synchronised)
        return;
    bench.clockTrusted = false;
    bench.untrusted.insert(event.at.bootId);
}

void on(Bench& bench, const Event& event, const ClockStepped&) { bench.clockStepped = event.at; }
void on(Bench& bench, const Event&, const StoreFailed& fact) { bench.storeFailed = fact.fault; }
void on(Bench& bench, const Event&, const StoreRecovered&) { bench.storeFailed.reset(); }
void on(Bench& bench, const Event&, const SoundLost&) { bench.soundLost = true; }
void on(Bench& bench, const Event&, const SoundFound&) { bench.soundLost = false; }

void on(Bench& bench, const Event&, const SoundProven&)
{
    bench.soundProven = true;
    bench.soundLost = false;
}

void on(Bench& bench, const Event&, const CardAdopted& fact)
{
    const auto read = cardFrom(fact.document.text);
    if (!read)
        return;
    const auto card = std::make_shared<const Card>(*read);
    bench.cards[card->hash()] = card;
    (bench.card && bench.shiftIsOpen() ? bench.next : bench.card) = card;
}

void on(Bench& bench, const Event&, const ProbeDescribed& fact)
{
    if (const auto probe = probeFrom(fact.document.text))
        bench.probes[fact.probe] = std::make_shared<const Probe>(*probe);
}

// --- the shift -----------------------------------------------------------------------------------

void on(Bench& bench, const Event& event, const ShiftOpened& fact)
{
    bench.shift = Shift{.zone = fact.zone, .opened = momentOf(event), .closed = {}};
    if (const auto card = bench.cards.find(fact.card); card != bench.cards.end())
        bench.card = card->second;
    bench.next.reset();
    bench.onDuty.reset();
    bench.checks.clear();
    bench.waterSince = event.at;
    bench.overdue.clear();
    bench.nextPull.reset();
    bench.pulls.clear();
    bench.bags.clear();
    bench.lines.clear();
    bench.exposed.clear();
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

// --- the bath ------------------------------------------------------------------------------------

void noteOverdue(Bench& bench, const Event& event, const ProbeId& id)
{
    const auto probe = bench.probes.find(id);
    if (probe == bench.probes.end() || !probe->second->due)
        return;
    const auto firstDayAfter = *probe->second->due + std::chrono::days(1);
    const Millis over = event.at.wall - firstDayAfter;
    if (over >= Millis::zero())
        bench.overdue.try_emplace(id, Gap{over.count(), event.seq, event.seq});
}

void on(Bench& bench, const Event& event, const ReadingTaken& fact)
{
    bench.lastTaken = TakenReading{event.at, fact};
    if (fact.fault)
        return;
    bench.readings.push_back({event.at, fact});
    if (bench.readings.size() > kReadingsKept)
        bench.readings.erase(bench.readings.begin());
    noteOverdue(bench, event, fact.probe);
}

void on(Bench& bench, const Event& event, const BathChanged&) { forgetWater(bench, event); }

// --- bags ----------------------------------------------------------------------------------------

void on(Bench& bench, const Event& event, const BagStarted& fact)
{
    if (bench.next)
        bench.card = std::exchange(bench.next, nullptr);
    Bag bag;
    bag.id = fact.bag;
    bag.volume = fact.volume;
    bag.diluentLot = fact.diluentLot;
    bag.temperature = fact.temperature;
    bag.card = bench.card;
    bag.started = momentOf(event);
    bench.bags.push_back(std::move(bag));
}

void on(Bench& bench, const Event& event, const BagInspected& fact)
{
    if (Bag* bag = bagIn(bench, fact.bag); bag && fact.ok)
        bag->inspected = momentOf(event);
}

void on(Bench& bench, const Event& event, const DiluentDrawn& fact)
{
    if (Bag* bag = bagIn(bench, fact.bag))
        bag->drawn = momentOf(event);
}

void on(Bench& bench, const Event& event, const BagMixed& fact)
{
    if (Bag* bag = bagIn(bench, fact.bag))
        bag->mixed = bag->swirled = momentOf(event);
}

void on(Bench& bench, const Event& event, const BagHung& fact)
{
    Bag* bag = bagIn(bench, fact.bag);
    if (!bag)
        return;
    bag->line = fact.line;
    bag->hung = momentOf(event);
    bag->hungAtBirds = lineIn(bench, fact.line, event).birds;
}

void on(Bench& bench, const Event& event, const BagSwirled& fact)
{
    Bag* bag = bagIn(bench, fact.bag);
    if (!bag)
        return;
    if (bag->swirled) {
        const auto gap = std::chrono::floor<Millis>(elapsed(bag->swirled->at, event.at).time);
        widen(bag->longestSwirlGap, gap.count(), bag->swirled->seq, event.seq);
    }
    bag->swirled = momentOf(event);
}

void on(Bench& bench, const Event& event, const BagHeld& fact)
{
    if (Bag* bag = bagIn(bench, fact.bag))
        bag->held = BagHold{momentOf(event), fact.why, fact.words.value_or("")};
}

void on(Bench& bench, const Event&, const BagReleased& fact)
{
    if (Bag* bag = bagIn(bench, fact.bag))
        bag->held.reset();
}

void on(Bench& bench, const Event& event, const BagDown& fact)
{
    if (Bag* bag = bagIn(bench, fact.bag))
        bag->down = BagEnd{momentOf(event), fact.why, fact.left};
}

// --- ampoules
// --------------------------------------------------------------------------------------

void on(Bench& bench, const Event& event, const AmpouleOut& fact)
{
    Pull& pull = pullIn(bench, fact.ampoule.pull);
    pull.closed.reset();
    Ampoule ampoule;
    ampoule.ref = fact.ampoule;
    ampoule.component = fact.component;
    ampoule.lot = fact.lot;
    ampoule.steps[0] = momentOf(event);
    const auto place = std::ranges::lower_bound(pull.ampoules, fact.ampoule, {}, &Ampoule::ref);
    pull.ampoules.insert(place, std::move(ampoule));
    bench.nextPull.reset();
}

int badness(const std::optional<Verdict>& verdict)
{
    return !verdict ? 1 : static_cast<int>(*verdict);
}

BathAtPull bathAt(const Bench& bench, const Event& event)
{
    const auto verdict = bathVerdict(bench, event.at);
    BathAtPull bath{.verdict = verdict, .over = 0, .reading = event.seq};
    if (verdict == Verdict::Outside) {
        const auto& rules = bench.card->content().bath;
        const auto off = bench.readings.back().fact.corrected.value_or(MilliCelsius{}).count -
                         rules.target.count;
        bath.over = std::max<std::int64_t>(0, std::abs(off) - rules.tolerance.count);
    }
    return bath;
}

void on(Bench& bench, const Event& event, const AmpouleInBath& fact)
{
    setStep(bench, event, fact.ampoule, Step::Bath, fact.timed);
    const BathAtPull bath = bathAt(bench, event);
    auto& worst = pullIn(bench, fact.ampoule.pull).bath;
    if (!worst || std::pair(badness(bath.verdict), bath.over) >
                      std::pair(badness(worst->verdict), worst->over))
        worst = bath;
}

void on(Bench& bench, const Event& event, const AmpouleOpened& fact)
{
    setStep(bench, event, fact.ampoule, Step::Opened, fact.timed);
}

void on(Bench& bench, const Event& event, const AmpouleInDiluent& fact)
{
    setStep(bench, event, fact.ampoule, Step::Diluent, fact.timed);
}

void on(Bench& bench, const Event& event, const AmpouleRinsed& fact)
{
    setStep(bench, event, fact.ampoule, Step::Rinsed, fact.timed);
}

void takeIn(Bag& bag, const Ampoule& ampoule)
{
    const auto& diluent = ampoule.when(Step::Diluent);
    const bool first =
        diluent && (!bag.firstDiluent || diluent->at.wall < bag.firstDiluent->at.wall);
    if (first)
        bag.firstDiluent = diluent;
    bag.mixed.reset();
    bag.swirled.reset();
}

void on(Bench& bench, const Event& event, const AmpouleBagged& fact)
{
    setStep(bench, event, fact.ampoule, Step::Bagged, fact.timed);
    Ampoule* ampoule = ampouleIn(bench, fact.ampoule);
    if (!ampoule)
        return;
    ampoule->bag = fact.bag;
    if (Bag* bag = bagIn(bench, fact.bag))
        takeIn(*bag, *ampoule);
    closeIfDone(pullIn(bench, fact.ampoule.pull), event);
}

void on(Bench& bench, const Event& event, const AmpouleLost& fact)
{
    Ampoule* ampoule = ampouleIn(bench, fact.ampoule);
    if (!ampoule)
        return;
    const bool inBath = ampoule->reached() == Step::Bath;
    ampoule->lost = Loss{momentOf(event), fact.why, inBath};
    if (inBath && fact.why == LossReason::Broken)
        forgetWater(bench, event);
    closeIfDone(pullIn(bench, fact.ampoule.pull), event);
}

void on(Bench& bench, const Event& event, const CaneExposed& fact)
{
    bench.exposed.push_back({fact.place, fact.time, momentOf(event)});
}

void on(Bench& bench, const Event&, const PullPlanned& fact) { bench.nextPull = fact.start; }

// --- lines
// -----------------------------------------------------------------------------------------

void on(Bench& bench, const Event& event, const BirdsCounted& fact)
{
    lineIn(bench, fact.line, event).birds = fact.total;
}

void on(Bench& bench, const Event& event, const NeedleChanged& fact)
{
    Line& line = lineIn(bench, fact.line, event);
    widen(line.longestNeedleGap, line.birds - line.birdsAtNeedle, line.needle.seq, event.seq);
    line.birdsAtNeedle = line.birds;
    line.needle = momentOf(event);
}

void setGoing(Bench& bench, const Event& event, const LineId& id, bool stopped)
{
    Line& line = lineIn(bench, id, event);
    line.stopped = stopped;
    line.stateSince = momentOf(event);
}

void on(Bench& bench, const Event& event, const LineStopped& fact)
{
    setGoing(bench, event, fact.line, true);
}
void on(Bench& bench, const Event& event, const LineGoing& fact)
{
    setGoing(bench, event, fact.line, false);
}

void on(Bench& bench, const Event& event, const DoseChecked& fact)
{
    Line& line = lineIn(bench, fact.line, event);
    if (!fact.ok)
        return;
    line.birdsAtDoseCheck = line.birds;
    line.since = momentOf(event);
}

// --- judgements, alarms, words
// ---------------------------------------------------------------------

void on(Bench& bench, const Event& event, const DeviationFound& fact)
{
    bench.judgements[{fact.limit, fact.subject}] = {fact.over, fact.bag, event.seq};
}

void on(Bench& bench, const Event& event, const Rejudged& fact)
{
    const JudgementKey key{fact.limit, fact.subject};
    if (fact.over)
        bench.judgements[key] = {*fact.over, fact.bag, event.seq};
    else
        bench.judgements.erase(key);
}

void on(Bench& bench, const Event& event, const AlarmRaised& fact)
{
    bench.alarms[fact.alarm] = {.alarm = fact.alarm,
                                .level = fact.level,
                                .subject = fact.subject,
                                .since = event.at,
                                .heard = {},
                                .sounded = false};
}

void on(Bench& bench, const Event&, const AlarmSounded& fact)
{
    if (const auto found = bench.alarms.find(fact.alarm); found != bench.alarms.end())
        found->second.sounded = true;
}

void on(Bench& bench, const Event& event, const AlarmHeard& fact)
{
    const auto found = bench.alarms.find(fact.alarm);
    if (found == bench.alarms.end())
        return;
    found->second.heard = event.at;
    if (fact.alarm.starts_with("clock stepped"))
        bench.clockStepped.reset();
}

void on(Bench& bench, const Event&, const AlarmEnded& fact) { bench.alarms.erase(fact.alarm); }

void on(Bench& bench, const Event&, const QuestionAnswered& fact)
{
    bench.answers[fact.question] = fact.choice;
}

// Facts that leave the bench alone are listed too, so that a new kind of fact stops the build until
// someone has decided what it does. Amendments work on the journal (state.h).
void on(Bench&, const Event&, const StationStopped&) {}
void on(Bench&, const Event&, const FactCorrected&) {}
void on(Bench&, const Event&, const FactTakenBack&) {}
void on(Bench&, const Event&, const NoteMade&) {}
void on(Bench&, const Event&, const TapRefused&) {}
void on(Bench&, const Event&, const CodeScanned&) {}

}  // namespace

Bench evolve(Bench bench, const Event& event)
{
    std::visit([&](const auto& fact) { on(bench, event, fact); }, event.fact);
    if (!event.place.empty())
        bench.lastTapAt[event.place] = event.at;
    bench.last = event.at;
    bench.lastSeq = event.seq;
    return bench;
}

}  // namespace bathside
