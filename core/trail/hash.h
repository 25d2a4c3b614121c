#pragma once

// SHA-256 (FIPS 180-4) through libcrypto, and its hex form.
//
// The algorithm is fetched once and each thread reuses one context, which for messages of an
// event's size is several times faster than the one-shot call. Cannot fail while libcrypto works;
// if it does not, the program stops, because nothing could be recorded truthfully. Callable from
// any thread.

#include <array>
#include <cstdint>
#include <initializer_list>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace bathside {

using Hash = std::array<std::uint8_t, 32>;

/// Lower-case hex, 64 digits.
[[nodiscard]] std::string toHex(const Hash& hash);
void appendHex(std::string& out, const Hash& hash);

/// Exactly 64 lower-case hex digits; anything else is nothing.
[[nodiscard]] std::optional<Hash> hashFromHex(std::string_view hex);

/// Of all `pieces` in a row.
[[nodiscard]] Hash sha256(std::initializer_list<std::string_view> pieces);
[[nodiscard]] Hash sha256(std::string_view bytes);

/// The same of bytes that arrive in pieces.
class Sha256 {
public:
    Sha256();
    ~Sha256();
    Sha256(Sha256&&) noexcept;
    Sha256& operator=(Sha256&&) noexcept;

    void add(std::string_view bytes);

    /// Of all bytes added; the object starts anew.
    [[nodiscard]] Hash finish();

private:
    struct Context;
    std::unique_ptr<Context> m_context;
};

}  // namespace bathside
