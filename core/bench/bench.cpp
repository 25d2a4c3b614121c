#include "core/bench/bench.h"

#include <algorithm>

namespace bathside {

Step Ampoule::reached() const
{
    if (bag)
        return Step::Bagged;
    for (const Step step : {Step::Rinsed, Step::Diluent, Step::Opened, Step::Bath}) {
        if (when(step))
            return step;
    }
    return Step::Out;
}

const Pull* Bench::openPull() const
{
    return pulls.empty() || pulls.back().closed ? nullptr : &pulls.back();
}

const Ampoule* Bench::ampoule(AmpouleRef ref) const
{
    for (const Pull& pull : pulls) {
        if (pull.no != ref.pull)
            continue;
        const auto found = std::ranges::find(pull.ampoules, ref, &Ampoule::ref);
        return found == pull.ampoules.end() ? nullptr : &*found;
    }
    return nullptr;
}

const Bag* Bench::bag(const BagId& id) const
{
    const auto found = std::ranges::find(bags, id, &Bag::id);
    return found == bags.end() ? nullptr : &*found;
}

const Bag* Bench::bagOn(const LineId& line) const
{
    const auto found = std::ranges::find_if(
        bags, [&line](const Bag& bag) { return bag.isOpen() && bag.line == line; });
    return found == bags.end() ? nullptr : &*found;
}

const Bag* Bench::bagBeingMadeUp() const
{
    const auto found = std::find_if(bags.rbegin(), bags.rend(),
                                    [](const Bag& bag) { return bag.isBeingMadeUp(); });
    return found == bags.rend() ? nullptr : &*found;
}

std::chrono::sys_days Bench::dayAt(WallTime now) const
{
    return shiftIsOpen() ? shift->day : std::chrono::floor<std::chrono::days>(now);
}

bool Bench::isOfBath(const ProbeId& probe) const
{
    const auto said = probes.find(probe);
    if (said == probes.end() || said->second->inBath ||
        std::holds_alternative<ByHand>(said->second->source))
        return true;
    return std::ranges::none_of(probes, [](const auto& known) {
        return known.second->inBath && !std::holds_alternative<OutOfUse>(known.second->source);
    });
}

std::optional<TakenReading> Bench::lastGoodReading() const
{
    if (readings.empty())
        return std::nullopt;
    const auto said = latest.find(readings.back().fact.probe);
    const bool isFaulty = said != latest.end() && said->second.fact.fault;
    return isFaulty ? std::nullopt : std::optional(readings.back());
}

std::optional<ReadingFault> Bench::readingFault() const
{
    if (!lastTaken)
        return std::nullopt;
    const auto probe = probes.find(lastTaken->fact.probe);
    const bool isOutOfUse =
        probe != probes.end() && std::holds_alternative<OutOfUse>(probe->second->source);
    return isOutOfUse ? std::nullopt : lastTaken->fact.fault;
}

const Card* cardOf(const Bench& bench, const Ampoule& ampoule)
{
    const Bag* bag = ampoule.bag ? bench.bag(*ampoule.bag) : bench.bagBeingMadeUp();
    return bag && bag->card ? bag->card.get() : bench.card.get();
}

bool inCriticalWindow(const Bench& bench, const Stamp& now)
{
    if (bench.openPull())
        return true;
    if (bench.pulls.empty() || !bench.card)
        return false;
    const Elapsed since = elapsed(bench.pulls.back().closed->at, now);
    return since.certain && since.time < bench.card->content().windowTail;
}

std::optional<Verdict> bathVerdict(const Bench& bench, const Stamp& now)
{
    const auto reading = bench.lastGoodReading();
    if (!reading || !bench.card)
        return std::nullopt;
    const auto& oldest = bench.card->limit(LimitName::Reading).time.at;
    if (oldest && elapsed(reading->at, now).time >= *oldest)
        return std::nullopt;
    return reading->fact.verdict;
}

}  // namespace bathside
