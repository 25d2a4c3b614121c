#include "core/day/bag_cells.h"

#include <algorithm>
#include <map>

#include "core/day/ampoule_doses.h"

namespace bathside {
namespace {

constexpr int kCoursePoints = 24;

using Band = std::map<ComponentId, Interval>;
using Bands = Result<Band, CellsGap>;

double hours(Micros time) { return std::chrono::duration<double, std::ratio<3600>>(time).count(); }

LossRate rateOf(const CellLoss& loss)
{
    return {{hours(loss.shortest), hours(loss.longest)}, loss.source};
}

std::vector<const Ampoule*> ampoulesIn(const Bench& bench, const Bag& bag)
{
    std::vector<const Ampoule*> all;
    for (const Pull& pull : bench.pulls)
        for (const Ampoule& ampoule : pull.ampoules)
            if (ampoule.bag == bag.id)
                all.push_back(&ampoule);
    return all;
}

// What is known only by a later step counts from the step before it: longer in the bath, not
// shorter.
const std::optional<Moment>& intoBath(const Ampoule& ampoule)
{
    const auto& bath = ampoule.when(Step::Bath);
    return bath && bath->timed ? bath : ampoule.when(Step::Out);
}

struct Times {
    double bath = 0, bag = 0;  // h
};

std::optional<Times> timesOf(const Ampoule& ampoule, const Stamp& until)
{
    const auto& from = intoBath(ampoule);
    const auto& diluent = ampoule.when(Step::Diluent);
    if (!from || !diluent)
        return std::nullopt;
    const Elapsed bath = elapsed(from->at, diluent->at);
    const Elapsed bag = elapsed(diluent->at, until);
    if (!bath.certain || !bag.certain)
        return std::nullopt;
    return Times{hours(bath.time), hours(bag.time)};
}

/// What one ampoule brings to each dose of the bag.
Result<Interval, CellsGap> broughtBy(const Bench& bench, const Bag& bag, const Ampoule& ampoule,
                                     const Stamp& until)
{
    const Card::Content& card = bag.card->content();
    const LiveCellRules& rules = card.liveCells;
    const StockLot* lot = bench.stores.lot(ampoulesOf(ampoule.component, ampoule.lot));
    if (!lot || !lot->titre)
        return failure(CellsGap::NoTitre);
    const auto times = timesOf(ampoule, until);
    if (!times)
        return failure(CellsGap::NoTimes);
    const auto titre = static_cast<double>(*lot->titre);
    const double off = titre * static_cast<double>(rules.titreOffPercent) / 100;
    return *perDose(
        {.titre = {titre - off, titre + off},
         .dosesIn = static_cast<double>(ampouleDoses(*lot, card.plan)),
         .dosesOut = static_cast<double>(bag.volume.count) / static_cast<double>(card.dose.count),
         .bathHours = times->bath,
         .bagHours = times->bag,
         .bathLoss = rateOf(*rules.inBath),
         .bagLoss = rateOf(*rules.inBag)});
}

Bands bandsAt(const Bench& bench, const Bag& bag, const Stamp& until)
{
    Band bands;
    for (const Ampoule* ampoule : ampoulesIn(bench, bag)) {
        const auto brought = broughtBy(bench, bag, *ampoule, until);
        if (!brought)
            return failure(brought.error());
        Interval& sum = bands[ampoule->component];
        sum = {sum.low + brought->low, sum.high + brought->high};
    }
    if (bands.empty())
        return failure(CellsGap::NotMixed);
    return bands;
}

Stamp limitOf(const Bag& bag)
{
    return shifted(bag.firstDiluent->at, *bag.card->limit(LimitName::InUse).time.at);
}

}  // namespace

std::optional<CellsGap> gapOn(const LiveCellRules& rules)
{
    if (!rules.isShown)
        return CellsGap::Off;
    if (!rules.minimum)
        return CellsGap::NoMinimum;
    if (!rules.inBath)
        return CellsGap::NoBathLoss;
    return rules.inBag ? std::nullopt : std::optional(CellsGap::NoBagLoss);
}

Result<BagCells, CellsGap> cellsOf(const Bench& bench, const Bag& bag, const Stamp& now)
{
    if (const auto gap = gapOn(bag.card->content().liveCells))
        return failure(*gap);
    if (!bag.mixed || !bag.firstDiluent)
        return failure(CellsGap::NotMixed);
    const Elapsed left = elapsed(now, limitOf(bag));
    const Bands bands = bandsAt(bench, bag, now);
    if (!bands)
        return failure(bands.error());
    const Bands later = left.time > Micros{0} ? bandsAt(bench, bag, limitOf(bag)) : bands;
    const auto least =
        std::ranges::min_element(*later, {}, [](const auto& each) { return each.second.low; });
    return BagCells{.component = least->first,
                    .now = bands->at(least->first),
                    .atLimit = least->second,
                    .minimum = static_cast<double>(*bag.card->content().liveCells.minimum)};
}

std::vector<CellsPoint> cellsCourse(const Bench& bench, const Bag& bag, const Stamp& now)
{
    std::vector<CellsPoint> course;
    const auto cells = cellsOf(bench, bag, now);
    if (!cells)
        return course;
    const Micros from = elapsed(bag.firstDiluent->at, bag.mixed->at).time;
    const Micros to = *bag.card->limit(LimitName::InUse).time.at;
    for (int i = 0; i <= kCoursePoints; ++i) {
        const Micros age = from + (to - from) * i / kCoursePoints;
        const Bands bands = bandsAt(bench, bag, shifted(bag.firstDiluent->at, age));
        if (bands)
            course.push_back({hours(age) * 60, bands->at(cells->component)});
    }
    return course;
}

}  // namespace bathside
