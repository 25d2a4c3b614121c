#include "app/cli/stores.h"

#include <limits>
#include <memory>

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include "app/cli/trail_file.h"
#include "core/base/day.h"
#include "core/bench/day_use.h"
#include "core/trail/store/day_order.h"
#include "core/trail/store/queries.h"
#include "core/trail/store/restore.h"
#include "core/trail/store/zone_days.h"

namespace bathside::cli {
namespace {

using Json = nlohmann::ordered_json;

/// What is printed of one shift.
struct ShiftStores {
    Stores stores;
    Reconciliation sums;
    std::vector<StoreWarning> warnings;
};

std::chrono::sys_days dayOf(const Stores& stores)
{
    return stores.day.value_or(std::chrono::sys_days());
}

std::string nameOf(const Stock& of)
{
    std::string text = of.item;
    if (of.volume)
        text = "diluent " + std::to_string(of.volume->count / 1000) + " mL";
    return of.lot.empty() ? text : text + ", lot " + of.lot.text;
}

// --- as JSON -------------------------------------------------------------------------------------

void addStock(Json& json, const Stock& of)
{
    json["kind"] = bathside::nameOf(of.kind);
    if (!of.item.empty())
        json["item"] = of.item;
    if (!of.lot.empty())
        json["lot"] = of.lot.text;
    if (of.volume)
        json["volume_ul"] = of.volume->count;
}

Json jsonOf(const Stores& stores, const StockLot& lot)
{
    Json json;
    addStock(json, lot.of);
    if (lot.doses)
        json["doses"] = *lot.doses;
    if (lot.expires)
        json["expires"] = toText(*lot.expires);
    if (lot.titre)
        json["titre_pfu"] = *lot.titre;
    json["standing"] = bathside::nameOf(standing(stores, lot.of, stores.day));
    json["balance"] = lot.balance();
    json["opening"] = lot.flow.opening;
    json["received"] = lot.flow.received;
    json["used"] = lot.flow.used;
    json["discarded"] = lot.flow.discarded;
    json["places"] = Json::array();
    for (const auto& [place, holding] : lot.places) {
        Json one{{"place", place}, {"count", holding.count}};
        if (!holding.quarantine.empty())
            one["quarantine"] = holding.quarantine;
        json["places"].push_back(std::move(one));
    }
    return json;
}

Json jsonOf(const Reckoning& row)
{
    Json json{{"what", bathside::nameOf(row.what)}};
    if (row.what == Reckoned::Pieces || row.what == Reckoned::Doses)
        addStock(json, row.of);
    json["expected"] = row.expected;
    json["counted"] = row.counted ? Json(*row.counted) : Json();
    json["difference"] = row.difference();
    json["tolerance"] = row.tolerance;
    json["outcome"] = bathside::nameOf(row.outcome);
    return json;
}

Json jsonOf(const StoreWarning& warning)
{
    Json json{{"warning", bathside::nameOf(warning.kind)}};
    addStock(json, warning.of);
    json["amount"] = warning.amount;
    return json;
}

std::string jsonOf(const ShiftStores& found)
{
    Json json{{"day", toText(dayOf(found.stores))}, {"lots", Json::array()}};
    for (const auto& [of, lot] : found.stores.lots)
        json["lots"].push_back(jsonOf(found.stores, lot));
    json["adds_up"] = found.sums.addsUp();
    json["mean_dose_nl"] = found.sums.meanDoseNl ? Json(*found.sums.meanDoseNl) : Json();
    json["reconciliation"] = Json::array();
    for (const Reckoning& row : found.sums.rows)
        json["reconciliation"].push_back(jsonOf(row));
    json["warnings"] = Json::array();
    for (const StoreWarning& warning : found.warnings)
        json["warnings"].push_back(jsonOf(warning));
    return json.dump() + "\n";
}

// --- for people ----------------------------------------------------------------------------------

std::string lineOf(const Reckoning& row)
{
    const std::string unit = row.what == Reckoned::Volume ? " uL" : "";
    const std::string counted = row.counted ? std::to_string(*row.counted) + unit : "not counted";
    const std::string what = row.what == Reckoned::Pieces ? nameOf(row.of)
                             : row.what == Reckoned::Doses
                                 ? "doses of " + row.of.item
                                 : std::string(bathside::nameOf(row.what));
    return "  " + std::string(bathside::nameOf(row.outcome)) + ": " + what + ", expected " +
           std::to_string(row.expected) + unit + ", counted " + counted + ", may differ by " +
           std::to_string(row.tolerance) + unit + "\n";
}

std::string lineOf(const Stores& stores, const StockLot& lot)
{
    std::string text = "  " + std::to_string(lot.balance()) + "  " + nameOf(lot.of);
    if (lot.expires)
        text += ", expires " + toText(*lot.expires);
    text += ", " + std::string(bathside::nameOf(standing(stores, lot.of, stores.day)));
    for (const auto& [place, holding] : lot.places)
        text += "; " + std::to_string(holding.count) + " at " +
                (place.empty() ? "no place named" : place);
    return text + "\n";
}

std::string wordsOf(const ShiftStores& found)
{
    std::string text = "Stores on " + toText(dayOf(found.stores)) + ":\n";
    for (const auto& [of, lot] : found.stores.lots)
        text += lineOf(found.stores, lot);
    text += "Reconciliation:\n";
    for (const Reckoning& row : found.sums.rows)
        text += lineOf(row);
    if (found.sums.meanDoseNl)
        text += "Mean dose per bird: " + std::to_string(*found.sums.meanDoseNl) + " nL\n";
    for (const StoreWarning& warning : found.warnings)
        text += "Warning: " + nameOf(warning.of) + ", " +
                std::string(bathside::nameOf(warning.kind)) + ", " +
                std::to_string(warning.amount) + "\n";
    return text;
}

// --- which shift ---------------------------------------------------------------------------------

/// The events of the day's last shift, up to the next one's opening; none: no shift was opened.
Result<std::optional<SeqRange>, StoreTrouble> shiftOf(const store::TrailDb& trail,
                                                      std::chrono::sys_days date)
{
    const auto zone = store::zoneOf(trail);
    const auto day = zone ? store::ZoneDays().day(*zone, date) : std::nullopt;
    if (!day)
        return std::optional<SeqRange>();
    using namespace std::chrono;
    constexpr sys_days kEnd(9999y / December / 31);  // of what RFC 3339 can write
    const auto all = store::shiftsOpened(trail, day->start, WallTime(kEnd));
    if (!all)
        return failure(all.error());
    std::optional<SeqRange> found;
    for (const ShiftSpan& shift : *all) {
        if (found && shift.openedAt >= day->end) {
            found->last = shift.opened - 1;
            break;
        }
        if (shift.openedAt < day->end)
            found = SeqRange{shift.opened, std::numeric_limits<Seq>::max()};
    }
    return found;
}

Exit sayNothing(const StoresOrder& order, Terminal& terminal)
{
    terminal.err << "bathside-cli: " << order.trail << " has no shift"
                 << (order.day.empty() ? "" : " on " + order.day) << ".\n";
    return Exit::No;
}

Exit answer(const StoresOrder& order, const Bench& bench, Terminal& terminal)
{
    if (!bench.shift || !bench.card)
        return sayNothing(order, terminal);
    const Card::Content& card = bench.card->content();
    const ShiftStores found{
        bench.stores, reconciled(bench.stores, dayUse(bench), card),
        warnings(bench.stores, demands(bench), dayOf(bench.stores), card.stores.nearExpiryDays)};
    const bool wrong = std::ranges::any_of(
        found.sums.rows, [](const Reckoning& row) { return row.outcome == Outcome::DoesNotAddUp; });
    return print(terminal, order.json ? jsonOf(found) : wordsOf(found),
                 wrong ? Exit::No : Exit::Done);
}

}  // namespace

Exit storesVerb(const StoresOrder& order, Terminal& terminal)
{
    const auto date = dayFrom(order.day);
    if (!order.day.empty() && !date)
        return refuse(terminal, {"--day", "", order.day, "a date as YYYY-MM-DD"});
    const auto trail = openTrail(order.trail);
    if (!trail)
        return refuse(terminal, trail.error());
    std::optional<SeqRange> shift;
    if (date) {
        const auto found = shiftOf(**trail, *date);
        if (!found)
            return refuse(terminal, unusable(order.trail, found.error()));
        if (!*found)
            return sayNothing(order, terminal);
        shift = **found;
    }
    const auto state =
        shift ? store::stateOf(**trail, shift->first, shift->last) : store::stateOf(**trail);
    if (!state)
        return refuse(terminal, unusable(order.trail, state.error()));
    return answer(order, state->bench, terminal);
}

void addStores(CLI::App& app, Call& call)
{
    const auto order = std::make_shared<StoresOrder>();
    CLI::App* verb =
        app.add_subcommand("stores", "What the stores hold after a shift, and whether it adds up");
    verb->add_option("--trail", order->trail, "A trail no station holds open")->required();
    verb->add_option("--day", order->day,
                     "The last shift of that local day, YYYY-MM-DD; the "
                     "trail's last when left out");
    verb->add_flag("--json", order->json, "Print one JSON object");
    verb->footer(
        "Exit: 0 printed, 1 something does not add up or no such shift, 2 unusable input.");
    verb->callback([order, &call] {
        call.run = [order](Terminal& terminal) { return storesVerb(*order, terminal); };
    });
}

}  // namespace bathside::cli
