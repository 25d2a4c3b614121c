// Rows of `decide`: the stores, which lots may be used, and what the day plans for its lines.

#include <algorithm>

#include "core/bench/decide_rows.h"
#include "core/stores/intake.h"

namespace bathside::rows {
namespace {

constexpr auto kLatestStart = std::chrono::hours(24);
constexpr std::int64_t kMostBirds = 10'000'000;

std::optional<Refusal> unknownStock(const Stores& stores, const Stock& of)
{
    if (stores.lot(of))
        return std::nullopt;
    return Refusal{RefusalCode::NotInStores, {}, of.lot.empty() ? of.item : of.lot.text};
}

/// Fewer are there than are to be taken.
std::optional<Refusal> tooFew(const Stores& stores, const Stock& of, const std::string& place,
                              std::int64_t wanted)
{
    if (auto no = unknownStock(stores, of))
        return no;
    if (wanted < 1)
        return Refusal{RefusalCode::OutOfRange, {}, "pieces"};
    const auto& places = stores.lot(of)->places;
    const auto here = places.find(place);
    if (here == places.end())
        return Refusal{RefusalCode::NotInStores, {}, place};
    if (here->second.count < wanted)
        return Refusal{RefusalCode::NotEnough, {}, std::to_string(here->second.count)};
    return std::nullopt;
}

std::optional<Refusal> badName(const std::string& text, const std::string& what)
{
    return isPlainName(text) ? std::nullopt
                             : std::optional(Refusal{RefusalCode::BadValue, {}, what});
}

/// A shift lead's word: who, and why.
std::optional<Refusal> unfounded(const PersonId& by, const std::string& why)
{
    if (by.empty())
        return Refusal{RefusalCode::NoPerson, {}, {}};
    if (why.empty())
        return Refusal{RefusalCode::ReasonMissing, {}, {}};
    return badName(why, "why");
}

Refusal refusalFor(const ReceiptFault& fault, const StoreReceived& line)
{
    const bool differs = fault.expected == IntakeExpects::AsBefore;
    return {differs ? RefusalCode::LotDiffers : RefusalCode::BadValue,
            {},
            differs ? line.of.lot.text : fault.column};
}

}  // namespace

std::optional<Refusal> unfit(const Stores& stores, const Stock& of)
{
    const auto refused = [&](RefusalCode code) { return Refusal{code, {}, of.lot.text}; };
    switch (fitness(stores, of)) {
        case LotStanding::Fit:
            return std::nullopt;
        case LotStanding::Expired:
            return refused(RefusalCode::LotExpired);
        case LotStanding::Quarantined:
            return refused(RefusalCode::LotInQuarantine);
        case LotStanding::Unknown:
            return refused(RefusalCode::LotUnknown);
    }
    std::unreachable();
}

Decision on(const Context& now, const Receive& meant)
{
    if (meant.lines.empty())
        return refuse(RefusalCode::BadValue, {}, "delivery");
    std::vector<Fact> said;
    Stores stores = now.bench.stores;
    for (const StoreReceived& line : meant.lines) {
        if (const auto fault = faultOf(line, stores))
            return failure(refusalFor(*fault, line));
        Event event;
        event.fact = line;
        evolve(stores, event);
        said.emplace_back(line);
    }
    return said;
}

Decision on(const Context& now, const MoveStock& meant)
{
    if (const auto no = tooFew(now.bench.stores, meant.of, meant.from, meant.count))
        return failure(*no);
    if (const auto no = badName(meant.to, "stock place"))
        return failure(*no);
    if (meant.from == meant.to)
        return refuse(RefusalCode::NothingChanges);
    return facts(StoreMoved{meant.of, meant.from, meant.to, meant.count});
}

Decision on(const Context& now, const CountStock& meant)
{
    constexpr std::int64_t kMost = 1'000'000;
    if (const auto no = unknownStock(now.bench.stores, meant.of))
        return failure(*no);
    if (const auto no = badName(meant.place, "stock place"))
        return failure(*no);
    if (meant.count < 0 || meant.count > kMost)
        return refuse(RefusalCode::OutOfRange, {}, "pieces");
    return facts(StoreCounted{meant.of, meant.place, meant.count});
}

Decision on(const Context& now, const DiscardStock& meant)
{
    if (const auto no = tooFew(now.bench.stores, meant.of, meant.place, meant.count))
        return failure(*no);
    return facts(StoreDiscarded{meant.of, meant.place, meant.count, meant.why});
}

Decision on(const Context& now, const QuarantineLot& meant)
{
    if (const auto no = unknownStock(now.bench.stores, meant.of))
        return failure(*no);
    const auto& places = now.bench.stores.lot(meant.of)->places;
    if (meant.place && !places.contains(*meant.place))
        return refuse(RefusalCode::NotInStores, {}, *meant.place);
    if (meant.why.empty())
        return refuse(RefusalCode::ReasonMissing);
    if (const auto no = badName(meant.why, "why"))
        return failure(*no);
    return facts(LotQuarantined{meant.of, meant.place, meant.why});
}

Decision on(const Context& now, const ReleaseLot& meant)
{
    if (const auto no = unknownStock(now.bench.stores, meant.of))
        return failure(*no);
    const StockLot& lot = *now.bench.stores.lot(meant.of);
    const bool isApart =
        !lot.quarantine.empty() || std::ranges::any_of(lot.places, [](const auto& place) {
            return !place.second.quarantine.empty();
        });
    if (!isApart)
        return refuse(RefusalCode::NothingChanges);
    if (const auto no = unfounded(meant.by, meant.why))
        return failure(*no);
    if (const auto no = unprovenJudge(now.bench, meant.by))
        return failure(*no);
    return facts(LotReleased{meant.of, meant.by, meant.why});
}

Decision on(const Context& now, const AllowLot& meant)
{
    if (!now.bench.shiftIsOpen())
        return refuse(RefusalCode::ShiftNotOpen);
    if (const auto no = unfounded(meant.by, meant.why))
        return failure(*no);
    if (fitness(now.bench.stores, meant.of) == LotStanding::Fit)
        return refuse(RefusalCode::NothingChanges);
    if (const auto no = unprovenJudge(now.bench, meant.by))
        return failure(*no);
    return facts(LotAllowed{meant.of, meant.by, meant.why});
}

Decision on(const Context& now, const ChooseLot& meant)
{
    const Stores& stores = now.bench.stores;
    if (!now.bench.shiftIsOpen())
        return refuse(RefusalCode::ShiftNotOpen);
    if (meant.component.empty() || !isPlainName(meant.component.text))
        return refuse(RefusalCode::BadValue, {}, "component");
    if (meant.lot.empty() || !isPlainName(meant.lot.text))
        return refuse(RefusalCode::BadValue, {}, "lot");
    const Stock of = ampoulesOf(meant.component, meant.lot);
    if (const auto no = unfit(stores, of))
        return failure(*no);
    const StockLot* lot = stores.lot(of);
    const auto here = lot && meant.place ? lot->places.find(*meant.place)
                                         : std::map<std::string, Holding>::const_iterator();
    if (lot && meant.place && here == lot->places.end())
        return refuse(RefusalCode::NotInStores, {}, *meant.place);
    const bool isApart = lot && meant.place && !here->second.quarantine.empty();
    if (isApart && !stores.allowed.contains(of))
        return refuse(RefusalCode::LotInQuarantine, {}, meant.lot.text);
    return facts(LotChosen{meant.component, meant.lot, meant.place});
}

Decision on(const Context& now, const PlanLine& meant)
{
    const LinePlanned& plan = meant.plan;
    const Subject subject = subjectOf(plan.line);
    if (!now.bench.shiftIsOpen())
        return refuse(RefusalCode::ShiftNotOpen);
    if (plan.line.empty())
        return refuse(RefusalCode::WhichLine);
    if (plan.removed)
        return facts(LinePlanned{.line = plan.line, .breaks = {}, .removed = true});
    if (plan.birds < 1 || plan.birds > kMostBirds)
        return refuse(RefusalCode::OutOfRange, subject, "birds");
    if (plan.birdsPerHour < 1 || plan.birdsPerHour > kMostBirds)
        return refuse(RefusalCode::OutOfRange, subject, "rate");
    if (plan.start < Millis::zero() || plan.start >= kLatestStart)
        return refuse(RefusalCode::OutOfRange, subject, "start");
    const bool inOrder = std::ranges::all_of(plan.breaks, [](const DaySpan& span) {
        return span.from >= Millis::zero() && span.from <= span.to && span.to <= 2 * kLatestStart;
    });
    if (!inOrder)
        return refuse(RefusalCode::OutOfRange, subject, "breaks");
    return facts(plan);
}

}  // namespace bathside::rows
