#pragma once

// Stores with a few lots, for tests: received fact by fact, as the trail would have it.

#include <string>

#include "core/base/day.h"
#include "core/stores/stores.h"

namespace bathside::test {

inline const ComponentId kThree{"serotype 3"};
inline const Stock kK07 = ampoulesOf(kThree, {"K07"});
inline const std::string kCane = "vessel 1 / canister 2 / cane 5";
inline const std::string kOtherCane = "vessel 1 / canister 2 / cane 6";

[[nodiscard]] inline std::chrono::sys_days onDay(const char* text) { return *dayFrom(text); }

[[nodiscard]] inline StoreReceived ampoules(const std::string& lot, std::int64_t count,
                                            const char* expires = "2027-01-31",
                                            const std::string& place = kCane)
{
    return {.of = ampoulesOf(kThree, {lot}),
            .place = place,
            .count = count,
            .doses = 2000,
            .expires = onDay(expires),
            .titre = {},
            .delivery = {}};
}

[[nodiscard]] inline StoreReceived diluent(const std::string& lot, std::int64_t count,
                                           MicroLitres volume = {400'000})
{
    return {.of = diluentOf(volume, {lot}),
            .place = "shelf",
            .count = count,
            .doses = {},
            .expires = onDay("2026-12-31"),
            .titre = {},
            .delivery = {}};
}

inline void tell(Stores& stores, Fact fact)
{
    Event event;
    event.fact = std::move(fact);
    evolve(stores, event);
}

}  // namespace bathside::test
