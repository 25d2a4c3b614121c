#pragma once

// What the stores hold now: a value, folded from events and from nothing else.
//
// Balances are whole pieces (ampoules, bags, consumables), by lot and place. A lot is controlled
// once the stores hold any of its sort: another lot of that component, other diluent. A site that
// keeps no stores here is not. Everything that is of a shift begins anew with it. (Spec: the job,
// 2.2; one bag, one lot; earliest expiry first.)

#include <chrono>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/facts/event.h"

namespace bathside {

/// Why a holding is in quarantine that no person put there: its cane was out of the cryogen.
inline constexpr std::string_view kCaneExposed = "cane exposed";

/// The consumable by whose name a needle change takes one.
inline constexpr std::string_view kNeedle = "needle";

/// What there is of a lot at one place.
struct Holding {
    std::int64_t count = 0;  // below zero: more went than the record knows of
    std::string quarantine;  // why; empty: none
    bool counted = false;    // in this shift

    friend bool operator==(const Holding&, const Holding&) = default;
};

/// What happened to a lot in this shift, in pieces.
struct LotFlow {
    std::int64_t opening = 0;
    std::int64_t received = 0;
    std::int64_t used = 0;
    std::int64_t discarded = 0;
    std::int64_t miscounted = 0;  // counted less what the record said, over all counts

    friend bool operator==(const LotFlow&, const LotFlow&) = default;
};

/// By which the same delivery is known again; the last ones of each lot.
inline constexpr std::size_t kReceiptsKept = 200;
struct Receipt {
    std::string place;
    std::int64_t count = 0;
    std::string delivery;

    friend bool operator==(const Receipt&, const Receipt&) = default;
};

struct StockLot {
    Stock of;
    std::optional<std::int64_t> doses;             // per ampoule
    std::optional<std::chrono::sys_days> expires;  // good through this day; none: it does not
    std::optional<std::int64_t> titre;             // PFU a dose, by its certificate
    std::string quarantine;                        // of all of it: why; empty: none
    std::map<std::string, Holding> places;         // by place; empty: a place without a name
    std::vector<Receipt> receipts;
    LotFlow flow;

    [[nodiscard]] std::int64_t balance() const;
    friend bool operator==(const StockLot&, const StockLot&) = default;
};

struct Allowance {
    PersonId by;
    std::string why;
    friend bool operator==(const Allowance&, const Allowance&) = default;
};

struct LotChoice {
    LotId lot;
    std::string place;  // empty: any
    friend bool operator==(const LotChoice&, const LotChoice&) = default;
};

struct Stores {
    std::map<Stock, StockLot> lots;
    std::optional<std::chrono::sys_days> day;  // the shift's local day; none before the first

    // of this shift
    std::map<Stock, Allowance> allowed;       // in spite of their standing
    std::map<ComponentId, LotChoice> chosen;  // which lot the next ampoules are of
    std::map<Stock, std::int64_t> strangers;  // used, and of a lot that the stores do not have

    [[nodiscard]] const StockLot* lot(const Stock& of) const;
    friend bool operator==(const Stores&, const Stores&) = default;
};

enum class LotStanding : std::uint8_t { Fit, Expired, Quarantined, Unknown };

template <>
struct Names<LotStanding> {
    static constexpr std::array<std::string_view, 4> all{"fit", "expired", "in quarantine",
                                                         "unknown"};
};

/// Whether the stores hold anything of that sort, so that a lot of it can be known or unknown.
[[nodiscard]] bool keeps(const Stores& stores, const Stock& of);

/// As the lot stands on that day. In quarantine: all of it, or all that is left of it.
[[nodiscard]] LotStanding standing(const Stores& stores, const Stock& of,
                                   std::optional<std::chrono::sys_days> day);

/// Whether it may be used in this shift: fit, too, where it is not controlled or was allowed.
[[nodiscard]] LotStanding fitness(const Stores& stores, const Stock& of);

/// The lot that is chosen; else the fit one that expires first and has any left (ties: by name);
/// empty: none.
[[nodiscard]] LotId lotToUse(const Stores& stores, const ComponentId& component);

/// The fit lot of diluent bags of that volume that expires first and has any left; empty: none.
[[nodiscard]] LotId diluentToUse(const Stores& stores, MicroLitres volume);

/// The stores after one more event. May not refuse.
void evolve(Stores& stores, const Event& event);

}  // namespace bathside
