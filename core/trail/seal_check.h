#pragma once

// The seals on the way through a trail: does each fit what came before it, and is it by the key
// that all the others are by?
//
// A seal names an earlier entry; the heads of the last `kRemembered` entries are kept for that. One
// that names an entry farther back, or one that an export leaves out, is checked for its signature
// only.

#include <array>
#include <cstdint>
#include <deque>
#include <optional>
#include <string>
#include <string_view>

#include "core/facts/names.h"
#include "core/trail/entry.h"

namespace bathside {

enum class SealFlaw : std::uint8_t {
    NotGenuine,  // the signature is not by the key that it names
    OtherHead,   // the chain has another hash at that count
    OtherKey,    // not by the key of the seals before it, or not by the expected one
};

template <>
struct Names<SealFlaw> {
    static constexpr std::array<std::string_view, 3> all{"not genuine", "another head",
                                                         "another key"};
};

class SealCheck {
public:
    static constexpr std::size_t kRemembered = 4096;

    /// `key`: the public key that is known from elsewhere, hex; none: that of the first seal.
    explicit SealCheck(std::optional<std::string> key = std::nullopt) : m_key(std::move(key)) {}

    /// A sound entry, in order.
    [[nodiscard]] std::optional<SealFlaw> take(const Entry& entry);
    [[nodiscard]] std::int64_t seals() const noexcept { return m_seals; }

private:
    [[nodiscard]] bool agrees(Seq seq, const std::string& head) const;

    std::optional<std::string> m_key;
    std::deque<Head> m_heads;
    std::int64_t m_seals = 0;
};

}  // namespace bathside
