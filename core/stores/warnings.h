#pragma once

// What in the stores will not do for what is planned, or not for long. Pure.
//
// Doses and pieces are whole; "near" is the card's number of days. What is expired or in quarantine
// counts for nothing, unless a shift lead allowed it.

#include <cstdint>
#include <vector>

#include "core/stores/stores.h"

namespace bathside {

/// What the coming plans ask of the stores: doses of a component, bags of a volume (0: any), or
/// pieces of a consumable.
struct Demand {
    StockKind kind{};
    std::string item;
    std::optional<MicroLitres> volume;
    std::int64_t amount = 0;
};

enum class StoreWarningKind : std::uint8_t {
    TooLittle,    // `amount` missing of what is planned
    Expired,      // `amount` pieces left of a lot that has expired
    Quarantined,  // `amount` pieces set apart
    NearExpiry,   // `amount` days left, of a lot that has any
};

template <>
struct Names<StoreWarningKind> {
    static constexpr std::array<std::string_view, 4> all{"too little", "expired", "in quarantine",
                                                         "near expiry"};
};

struct StoreWarning {
    StoreWarningKind kind{};
    Stock of;
    std::int64_t amount = 0;
    friend bool operator==(const StoreWarning&, const StoreWarning&) = default;
};

/// The gravest first: too little, expired, in quarantine, near expiry; the soonest first.
[[nodiscard]] std::vector<StoreWarning> warnings(const Stores& stores,
                                                 const std::vector<Demand>& demands,
                                                 std::chrono::sys_days day, std::int64_t nearDays);

}  // namespace bathside
