// Rows of `evolve`: the critical steps, ampoule by ampoule.

#include <algorithm>

#include "core/bench/evolve_rows.h"

namespace bathside::folds {
namespace {

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
        const auto off = bench.lastGoodReading()->fact.corrected.value_or(MilliCelsius{}).count -
                         rules.target.count;
        bath.over = std::max<std::int64_t>(0, std::abs(off) - rules.tolerance.count);
    }
    return bath;
}

/// Of the reading that holds, where its thermometer is calibrated: from any other the cue for slush
/// would be led astray.
std::optional<MilliCelsius> waterAt(const Bench& bench, const Event& event)
{
    if (!bathVerdict(bench, event.at))
        return std::nullopt;
    const auto reading = bench.lastGoodReading();
    const auto probe = bench.probes.find(reading->fact.probe);
    const bool isCalibrated = probe != bench.probes.end() && !probe->second->points.empty();
    return isCalibrated ? reading->fact.corrected : std::nullopt;
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

}  // namespace

void on(Bench& bench, const Event& event, const AmpouleOut& fact)
{
    Pull& pull = pullIn(bench, fact.ampoule.pull);
    pull.closed.reset();
    Ampoule ampoule;
    ampoule.ref = fact.ampoule;
    ampoule.component = fact.component;
    ampoule.lot = fact.lot;
    ampoule.lotStanding = fitness(bench.stores, ampoulesOf(fact.component, fact.lot));
    ampoule.steps[0] = momentOf(event);
    const auto place = std::ranges::lower_bound(pull.ampoules, fact.ampoule, {}, &Ampoule::ref);
    pull.ampoules.insert(place, std::move(ampoule));
    bench.nextPull.reset();
}

void on(Bench& bench, const Event& event, const AmpouleInBath& fact)
{
    setStep(bench, event, fact.ampoule, Step::Bath, fact.timed);
    if (Ampoule* ampoule = ampouleIn(bench, fact.ampoule))
        ampoule->water = waterAt(bench, event);
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

}  // namespace bathside::folds
