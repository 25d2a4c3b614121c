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
    if (const auto probe = probeFrom(fact.document.text))
        bench.probes[fact.probe] = std::make_shared<const Probe>(*probe);
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
