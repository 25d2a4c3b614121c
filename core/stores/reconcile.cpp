#include "core/stores/reconcile.h"

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace bathside {
namespace {

Reckoning judged(Reckoning row)
{
    if (!row.counted)
        row.outcome = Outcome::NotCounted;
    else
        row.outcome =
            std::abs(row.difference()) > row.tolerance ? Outcome::DoesNotAddUp : Outcome::AddsUp;
    return row;
}

std::int64_t share(std::int64_t of, std::int64_t percent) { return of * percent / 100; }

std::int64_t toleranceOf(StockKind kind, const StoreRules& rules)
{
    switch (kind) {
        case StockKind::Ampoule:
            return rules.ampoulesOff;
        case StockKind::Diluent:
            return rules.bagsOff;
        case StockKind::Consumable:
            return rules.consumablesOff;
    }
    std::unreachable();
}

Reckoning pulls(const DayUse& use)
{
    return judged({.what = Reckoned::Pulls,
                   .of = {},
                   .expected = use.out,
                   .counted = use.bagged + use.lost,
                   .tolerance = 0});
}

/// Each place that has any (or should) has been counted in this shift.
bool isCounted(const StockLot& lot)
{
    return std::ranges::all_of(lot.places, [](const auto& place) { return place.second.counted; });
}

Reckoning pieces(const StockLot& lot, const StoreRules& rules)
{
    const std::int64_t now = lot.balance();
    Reckoning row{.what = Reckoned::Pieces,
                  .of = lot.of,
                  .expected = now - lot.flow.miscounted,
                  .counted = {},
                  .tolerance = toleranceOf(lot.of.kind, rules)};
    const bool isImpossible = now < 0;  // nobody can have counted that
    if (isCounted(lot) || isImpossible || lot.flow.miscounted != 0)
        row.counted = isImpossible ? 0 : now;
    return judged(row);
}

/// Nobody may use what is not in the stores: each one is one too many.
Reckoning stranger(const Stock& of, std::int64_t used)
{
    return judged(
        {.what = Reckoned::Pieces, .of = of, .expected = 0, .counted = -used, .tolerance = 0});
}

/// By component; none for one with an ampoule whose doses nobody knows.
std::map<std::string, std::optional<std::int64_t>> dosesMade(const Stores& stores,
                                                             const DayUse& use)
{
    std::map<std::string, std::optional<std::int64_t>> made;
    for (const auto& [of, count] : use.baggedOf) {
        const StockLot* lot = stores.lot(of);
        auto& sum = made.try_emplace(of.item, 0).first->second;
        if (!lot || !lot->doses)
            sum.reset();
        else if (sum)
            *sum += count * *lot->doses;
    }
    return made;
}

class Reckoner {
public:
    Reckoner(const Stores& stores, const DayUse& use, const Card::Content& card)
        : m_stores(stores), m_use(use), m_card(card)
    {
    }

    Reconciliation reckon() &&
    {
        m_result.rows.push_back(pulls(m_use));
        for (const auto& [of, lot] : m_stores.lots)
            m_result.rows.push_back(pieces(lot, m_card.stores));
        for (const auto& [of, used] : m_stores.strangers)
            m_result.rows.push_back(stranger(of, used));
        reckonDoses();
        reckonVolume();
        std::ranges::stable_sort(m_result.rows, {}, &Reckoning::outcome);
        return std::move(m_result);
    }

private:
    [[nodiscard]] bool isOver() const { return m_use.bagsOpen == 0; }

    void reckonDoses()
    {
        const std::int64_t spent = m_use.birds + m_use.left.count / m_card.dose.count;
        for (const auto& [component, made] : dosesMade(m_stores, m_use)) {
            if (!made)
                continue;
            m_result.rows.push_back(
                judged({.what = Reckoned::Doses,
                        .of = ampoulesOf({component}, {}),
                        .expected = *made,
                        .counted = isOver() ? std::optional(spent) : std::nullopt,
                        .tolerance = share(*made, m_card.stores.dosesOffPercent)}));
        }
    }

    void reckonVolume()
    {
        const MicroLitres lost{m_use.lines * m_card.stores.primeLoss.count};
        const std::int64_t injected = (m_use.in - m_use.left - lost).count;
        const std::int64_t expected = m_use.birds * m_card.dose.count;
        if (m_use.in.count == 0 && m_use.birds == 0)
            return;
        m_result.rows.push_back(
            judged({.what = Reckoned::Volume,
                    .of = {},
                    .expected = expected,
                    .counted = isOver() ? std::optional(injected) : std::nullopt,
                    .tolerance = share(expected, m_card.stores.volumeOffPercent)}));
        if (isOver() && m_use.birds > 0)
            m_result.meanDoseNl = injected * 1000 / m_use.birds;
    }

    const Stores& m_stores;
    const DayUse& m_use;
    const Card::Content& m_card;
    Reconciliation m_result;
};

}  // namespace

bool Reconciliation::addsUp() const
{
    return std::ranges::all_of(rows,
                               [](const Reckoning& row) { return row.outcome == Outcome::AddsUp; });
}

Reconciliation reconciled(const Stores& stores, const DayUse& use, const Card::Content& card)
{
    return Reckoner(stores, use, card).reckon();
}

}  // namespace bathside
