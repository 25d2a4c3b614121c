#include "core/day/day_input.h"

#include <algorithm>

#include "core/day/ampoule_doses.h"
#include "core/day/line_supply.h"

namespace bathside {
namespace {

plan::Lot anyLot(const PlanRules& rules, std::chrono::sys_days day)
{
    return {
        .name = std::string(kAnyLot), .doses = rules.dosesPerAmpoule, .count = {}, .expires = day};
}

/// Lots that may be used today; one that does not expire is good through the day.
std::vector<plan::Lot> lotsOf(const Stores& stores, const ComponentId& component,
                              const PlanRules& rules, std::chrono::sys_days day)
{
    if (!keeps(stores, ampoulesOf(component, {})))
        return {anyLot(rules, day)};
    std::vector<plan::Lot> lots;
    for (const auto& [of, lot] : stores.lots) {
        if (of.kind != StockKind::Ampoule || of.item != component.text || lot.balance() <= 0 ||
            fitness(stores, of) != LotStanding::Fit)
            continue;
        lots.push_back({.name = of.lot.text,
                        .doses = ampouleDoses(lot, rules),
                        .count = lot.balance(),
                        .expires = std::max(lot.expires.value_or(day), day)});
    }
    return lots;
}

std::vector<plan::BagStock> bagsOf(const Bench& bench)
{
    std::map<MicroLitres, std::int64_t> counts;
    for (const auto& [of, lot] : bench.stores.lots) {
        if (of.kind == StockKind::Diluent && of.volume && lot.balance() > 0 &&
            fitness(bench.stores, of) == LotStanding::Fit)
            counts[*of.volume] += lot.balance();
    }
    std::vector<plan::BagStock> bags;
    for (const auto& [volume, count] : counts)
        bags.push_back({volume, count});
    if (!bags.empty() || std::ranges::any_of(bench.stores.lots, [](const auto& lot) {
            return lot.first.kind == StockKind::Diluent;
        }))
        return bags;
    for (const MicroLitres volume : bench.card->content().bagVolumes)
        bags.push_back({volume, {}});
    return bags;
}

plan::DayInput rulesOf(const Bench& bench, const DayClock& clock)
{
    const Card::Content& card = bench.card->content();
    const PlanRules& rules = card.plan;
    plan::DayInput input{.day = clock.day()};
    input.dose = card.dose;
    input.useLimit = *bench.card->limit(LimitName::InUse).time.at;
    input.diluteTime = rules.dilute;
    input.hangTime = rules.hang;
    input.changeover = rules.changeover;
    input.benchSlack = rules.slack;
    input.residual = rules.residual;
    input.prime = card.stores.primeLoss;
    input.longestIdle = rules.longestIdle;
    input.prepareTime = rules.prepare;
    input.preparers = static_cast<std::size_t>(rules.preparers);
    input.bags = bagsOf(bench);
    for (const Component& part : card.recipe)
        input.recipe.push_back({part.id.text, lotsOf(bench.stores, part.id, rules, clock.day())});
    return input;
}

LineToday lineToday(const Bench& bench, const LinePlanned& planned, const DayClock& clock,
                    WallTime now)
{
    LineToday line{.planned = planned,
                   .flow = flowOf(bench, planned, clock, now),
                   .openBag = {},
                   .mixedBags = {}};
    if (const Bag* bag = bench.bagOn(planned.line); bag && !bag->held())
        line.openBag = bag->id;
    return line;
}

plan::Line plannedLine(const Supply& supply, const LineToday& line, const DayClock& clock)
{
    plan::Line made{.name = line.planned.line.text, .birds = line.planned.birds};
    made.birdsDone = std::min(line.flow.birdsNow, line.planned.birds);
    made.ratePerHour = line.flow.ratePerHour;
    made.start = clock.elapsedAt(line.planned.start);
    made.breaks = breaksOf(line.planned, clock);
    if (line.openBag)
        made.openBag = supply.madeBag(*line.openBag);
    for (const BagId& bag : line.mixedBags)
        made.mixedBags.push_back(supply.madeBag(bag));
    return made;
}

}  // namespace

std::optional<DayToday> dayToday(const Bench& bench, const DayClock& clock, const Stamp& now)
{
    if (!bench.shiftIsOpen() || !bench.card || bench.planned.empty())
        return std::nullopt;
    DayToday today{.input = rulesOf(bench, clock), .lines = {}};
    today.input.now = clock.elapsedAt(now.wall);
    for (const LinePlanned& planned : bench.planned)
        today.lines.push_back(lineToday(bench, planned, clock, now.wall));
    const Supply supply(bench, clock, now);
    supply.shareOut(today.lines);
    for (const LineToday& line : today.lines)
        today.input.lines.push_back(plannedLine(supply, line, clock));
    return today;
}

}  // namespace bathside
