#pragma once

// The PIN behind a signature: what may be one, how it is checked, how long one waits after wrong
// ones.
//
// Only scrypt's result is kept, never the PIN, and outside the trail (D18). Function: RFC 7914,
// through libcrypto. Cost N = 2^15, r = 8: 32 MiB and some 0.1 s a try. Salts are the caller's:
// this room has no source of chance.

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "core/base/time.h"
#include "core/facts/names.h"
#include "core/people/people.h"

namespace bathside {

enum class PinFault : std::uint8_t {
    NotDigits,
    Length,    // fewer than 4 or more than 8
    AllEqual,  // 7777
    Run,       // 2345, 8765, 7890
};
template <>
struct Names<PinFault> {
    static constexpr std::array<std::string_view, 4> all{"not digits", "length", "all equal",
                                                         "run"};
};

inline constexpr std::size_t kShortestPin = 4, kLongestPin = 8;

/// None: it may be a PIN.
[[nodiscard]] std::optional<PinFault> faultOf(std::string_view pin);

struct ScryptCost {
    std::uint64_t n = 1U << 15U, r = 8, p = 1;
    friend bool operator==(const ScryptCost&, const ScryptCost&) = default;
};

using PinSalt = std::array<std::uint8_t, 16>;
using PinKey = std::array<std::uint8_t, 32>;

/// What a PIN is checked against.
struct PinHash {
    PinSalt salt{};
    PinKey key{};
    ScryptCost cost{};
    friend bool operator==(const PinHash&, const PinHash&) = default;
};

/// Fills `out`. False where that cost is no cost, or takes more than 64 MiB.
[[nodiscard]] bool scrypt(std::string_view secret, std::span<const std::uint8_t> salt,
                          const ScryptCost& cost, std::span<std::uint8_t> out);

/// None only where there is not the memory for it.
[[nodiscard]] std::optional<PinHash> hashOf(std::string_view pin, const PinSalt& salt);
/// In the same time whichever byte differs.
[[nodiscard]] bool isRight(std::string_view pin, const PinHash& hash);

/// How long before that person's next try: nothing up to three refusals in a row, then 5 s after
/// the fourth, doubling to 5 minutes. By the trail's own refusals, so that a restart changes
/// nothing; where the clock went back over it, the wait begins again with the boot.
[[nodiscard]] Millis waitBeforePin(const Member& member, const Stamp& now);

}  // namespace bathside
