#pragma once

// The end of a shift reckoned up: what there should be, what there is, and whether it adds up.
//
// Pieces (ampoules, bags, consumables) are held against the stores' counts; doses and volume
// against the birds done and what was left. Volume in µL, the mean dose in nL. Percentages are of
// what was expected. (Spec: checks and statistics, reconciliation; actual mean dose per bird =
// (volume in − left − losses) / birds. Mass balance is common practice.)

#include <cstdint>
#include <map>
#include <optional>
#include <vector>

#include "core/card/card.h"
#include "core/stores/stores.h"

namespace bathside {

/// What the bench's own events come to.
struct DayUse {
    std::int64_t out = 0, bagged = 0, lost = 0;  // ampoules
    std::map<Stock, std::int64_t> baggedOf;      // by lot
    std::int64_t birds = 0;                      // all lines
    std::int64_t lines = 0;                      // that had a bag
    MicroLitres in, left;                        // of the bags that are down
    std::int64_t bagsOpen = 0;  // not down yet: doses and volume cannot be reckoned
};

enum class Reckoned : std::uint8_t {
    Pulls,   // ampoules out = in bags and lost
    Pieces,  // of one lot in the stores
    Doses,   // of one component: made up against birds and what was left
    Volume,  // birds × dose against what went in less what was left and lost
};

enum class Outcome : std::uint8_t { DoesNotAddUp, NotCounted, AddsUp };

template <>
struct Names<Reckoned> {
    static constexpr std::array<std::string_view, 4> all{"pulls", "pieces", "doses", "volume"};
};
template <>
struct Names<Outcome> {
    static constexpr std::array<std::string_view, 3> all{"does not add up", "not counted",
                                                         "adds up"};
};

struct Reckoning {
    Reckoned what{};
    Stock of;  // the lot; of doses only its component
    std::int64_t expected = 0;
    std::optional<std::int64_t> counted;
    std::int64_t tolerance = 0;  // the most it may differ by
    Outcome outcome{};

    [[nodiscard]] std::int64_t difference() const { return counted.value_or(expected) - expected; }
};

struct Reconciliation {
    std::vector<Reckoning> rows;  // what does not add up first, then what was not counted
    std::optional<std::int64_t> meanDoseNl;  // none: no birds, or bags still open
    [[nodiscard]] bool addsUp() const;
};

[[nodiscard]] Reconciliation reconciled(const Stores& stores, const DayUse& use,
                                        const Card::Content& card);

}  // namespace bathside
