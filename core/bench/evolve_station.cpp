// Rows of `evolve`: the station, and what the day is judged by.

#include <algorithm>
#include <utility>

#include "core/bath/card_heat.h"
#include "core/bench/card_in_force.h"
#include "core/bench/evolve_rows.h"
#include "core/card/read.h"

namespace bathside::folds {

void on(Bench& bench, const Event& event, const StationStarted& fact)
{
    const bool wentBack =
        bench.boot && wentBackOverRestart({bench.last.wall, {}, *bench.boot}, event.at);
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

namespace {

/// One already made for the same rules, so that a start does not reckon it for every version of a
/// card.
std::shared_ptr<const SlushScale> slushScaleIn(const Bench& bench, const Card::Content& card)
{
    const auto same = std::ranges::find_if(bench.cards, [&](const auto& known) {
        const Card::Content& other = known.second->content();
        return other.heat == card.heat && other.bath.target == card.bath.target &&
               bench.slush.contains(known.first);
    });
    return same == bench.cards.end() ? slushScaleOf(card) : bench.slush.at(same->first);
}

/// One thermometer is the bath's; the others stay what they are.
void takeOthersOut(Bench& bench)
{
    for (auto& [id, known] : bench.probes) {
        if (!known->inBath)
            continue;
        Probe out = *known;
        out.inBath = false;
        known = std::make_shared<const Probe>(std::move(out));
    }
}

/// The last word of those that are the bath's, by what has just been said of them.
const TakenReading* lastOfBath(const Bench& bench)
{
    const TakenReading* last = nullptr;
    for (const auto& [id, taken] : bench.latest) {
        if (bench.isOfBath(id) && (!last || last->at.wall < taken.at.wall))
            last = &taken;
    }
    return last;
}

/// What was taken for the bath and is not goes; what its own thermometer said last comes in.
void goByBathsOwn(Bench& bench)
{
    std::erase_if(bench.readings, [&bench](const TakenReading& reading) {
        return !bench.isOfBath(reading.fact.probe);
    });
    if (!bench.lastTaken || bench.isOfBath(bench.lastTaken->fact.probe))
        return;
    bench.lastTaken.reset();
    bench.faultySince.reset();
    const TakenReading* last = lastOfBath(bench);
    if (!last)
        return;
    bench.lastTaken = *last;
    const bool isOfThisWater = !bench.waterSince || bench.waterSince->wall <= last->at.wall;
    const bool isKept = !bench.readings.empty() && bench.readings.back().at.wall >= last->at.wall;
    if (last->fact.fault)
        bench.faultySince = last->at;
    else if (isOfThisWater && !isKept)
        bench.readings.push_back(*last);
}

}  // namespace

void on(Bench& bench, const Event&, const CardAdopted& fact)
{
    const auto read = cardFrom(fact.document.text);
    if (!read)
        return;
    const auto card = std::make_shared<const Card>(*read);
    bench.slush[card->hash()] = slushScaleIn(bench, card->content());
    bench.cards[card->hash()] = card;
    const bool atOnce = !bench.card || (!bench.shiftIsOpen() && mayHold(bench, card->hash()));
    (atOnce ? bench.card : bench.next) = card;
}

void on(Bench& bench, const Event&, const ProbeDescribed& fact)
{
    const auto probe = probeFrom(fact.document.text);
    if (!probe)
        return;
    if (probe->inBath)
        takeOthersOut(bench);
    bench.probes[fact.probe] = std::make_shared<const Probe>(*probe);
    goByBathsOwn(bench);
}

void on(Bench& bench, const Event&, const BathCarried& fact)
{
    if (auto learned = bathLearnedFrom(fact.document.text))
        bench.learned = std::make_shared<const BathLearned>(std::move(*learned));
}

void on(Bench& bench, const Event&, const VesselDescribed& fact)
{
    if (auto vessel = vesselFrom(fact.document.text))
        bench.vessels[fact.vessel].vessel = std::move(*vessel);
}

void on(Bench& bench, const Event& event, const VesselDipped& fact)
{
    // a correction may have put it before others
    auto& dips = bench.vessels[fact.vessel].dips;
    dips.insert(std::ranges::upper_bound(dips, event.at.wall, {}, &Dip::at),
                {event.at.wall, fact.millimetres, fact.filled, event.seq});
}

void on(Bench& bench, const Event&, const CardApproved& fact)
{
    bench.approved.insert(fact.card);
    if (bench.next && bench.next->hash() == fact.card && !bench.shiftIsOpen())
        bench.card = std::exchange(bench.next, nullptr);
}

void on(Bench& bench, const Event& event, const DaySealed&) { bench.sealed = event.seq; }

void on(Bench& bench, const Event&, const BaselineChosen& fact)
{
    if (fact.isWithdrawal())
        bench.baselines.erase(fact.chart);
    else
        bench.baselines[fact.chart] = {fact.from, fact.to};
}

void on(Bench& bench, const Event& event, const BackupMade&) { bench.backedUp = momentOf(event); }

}  // namespace bathside::folds
