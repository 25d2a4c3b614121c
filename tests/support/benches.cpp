#include "tests/support/benches.h"

#include <algorithm>

namespace bathside::test {

Stamp at(Micros time)
{
    const Stamp opening{.wall = WallTime(Millis(1'772'690'400'000)),  // 2026-03-05T06:00:00Z
                        .boot = kOpening,
                        .bootId = kThisBoot};
    return shifted(opening, time);
}

Stamp inLastBoot(Micros time)
{
    const BootTime anything = std::chrono::hours(777);
    return {.wall = at(time).wall, .boot = anything, .bootId = kLastBoot};
}

Moment momentAt(Micros time) { return {.at = at(time), .timed = true, .seq = 1}; }

BenchMaker::BenchMaker(std::shared_ptr<const Card> card)
{
    bench.last = at({});
    bench.boot = kThisBoot;
    bench.soundProven = true;
    bench.cards[card->hash()] = card;
    bench.card = std::move(card);
    bench.shift = Shift{.zone = "Europe/Madrid", .opened = momentAt({}), .closed = {}};
    bench.waterSince = at({});
}

Pull& BenchMaker::pullOf(int no)
{
    const auto found = std::ranges::find(bench.pulls, no, &Pull::no);
    if (found != bench.pulls.end())
        return *found;
    bench.pulls.push_back({.no = no, .ampoules = {}, .bath = {}, .closed = {}});
    return bench.pulls.back();
}

Ampoule& BenchMaker::ampouleOf(AmpouleRef ref)
{
    auto& ampoules = pullOf(ref.pull).ampoules;
    const auto found = std::ranges::find(ampoules, ref, &Ampoule::ref);
    if (found != ampoules.end())
        return *found;
    ampoules.push_back(
        {.ref = ref, .component = {}, .lot = {}, .steps = {}, .lost = {}, .bag = {}});
    return ampoules.back();
}

Bag& BenchMaker::bagOf(const std::string& id)
{
    return *std::ranges::find(bench.bags, BagId{id}, &Bag::id);
}

BenchMaker& BenchMaker::out(AmpouleRef ref, Micros time, const std::string& component)
{
    ampouleOf(ref).component = {component};
    return step(ref, Step::Out, time);
}

BenchMaker& BenchMaker::step(AmpouleRef ref, Step step, Micros time)
{
    ampouleOf(ref).steps[static_cast<std::size_t>(step)] = momentAt(time);
    return *this;
}

BenchMaker& BenchMaker::bagged(AmpouleRef ref, const std::string& bag, Micros time)
{
    ampouleOf(ref).bag = BagId{bag};
    return step(ref, Step::Bagged, time);
}

BenchMaker& BenchMaker::lost(AmpouleRef ref, LossReason why, Micros time)
{
    ampouleOf(ref).lost = Loss{momentAt(time), why, false};
    return *this;
}

BenchMaker& BenchMaker::bathAtPull(int pull, std::optional<Verdict> verdict)
{
    pullOf(pull).bath = BathAtPull{.verdict = verdict, .over = 0, .reading = 1};
    return *this;
}

BenchMaker& BenchMaker::closePull(Micros time)
{
    bench.pulls.back().closed = momentAt(time);
    return *this;
}

BenchMaker& BenchMaker::bag(const std::string& id, Micros time, std::shared_ptr<const Card> card)
{
    Bag bag;
    bag.id = {id};
    bag.card = card ? std::move(card) : bench.card;
    bag.started = momentAt(time);
    bench.bags.push_back(std::move(bag));
    return *this;
}

BenchMaker& BenchMaker::mixed(const std::string& id, Micros firstDiluent, Micros time)
{
    Bag& bag = bagOf(id);
    bag.firstDiluent = momentAt(firstDiluent);
    bag.mixed = bag.swirled = momentAt(time);
    return *this;
}

BenchMaker& BenchMaker::reading(Verdict verdict, Micros time)
{
    ReadingTaken fact;
    fact.verdict = verdict;
    bench.readings.push_back({at(time), fact});
    bench.lastTaken = bench.latest[fact.probe] = bench.readings.back();
    bench.faultySince.reset();
    return *this;
}

BenchMaker& BenchMaker::faulty(ReadingFault fault, Micros time)
{
    ReadingTaken fact;
    fact.fault = fault;
    bench.lastTaken = bench.latest[fact.probe] = TakenReading{at(time), fact};
    bench.faultySince = bench.faultySince.value_or(at(time));
    return *this;
}

BenchMaker& BenchMaker::line(const std::string& id, Micros time, std::int64_t birds)
{
    const Moment moment = momentAt(time);
    Line line;
    line.id = {id};
    line.birds = birds;
    line.since = line.needle = line.stateSince = moment;
    bench.lines[line.id] = line;
    return *this;
}

BenchMaker& BenchMaker::raised(const std::string& alarm, Level level, const Stamp& since,
                               std::optional<Stamp> heard)
{
    RaisedAlarm raised;
    raised.alarm = alarm;
    raised.level = level;
    raised.since = since;
    raised.heard = heard;
    bench.alarms[alarm] = raised;
    return *this;
}

}  // namespace bathside::test
