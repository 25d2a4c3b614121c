#pragma once

// Seals: the head of the trail, signed by the station's own key, so that whoever has the public key
// can tell the record from one that was written anew.
//
// Ed25519 (RFC 8032) through libcrypto. A seal signs the 32 raw bytes of a head's hash; it stands
// in the trail as `day.sealed` and on paper. The private key is a seed of 32 bytes; where it is
// kept is the rim's affair (app/system/key_file.h). (Spec: the trail, day seal.)

#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "core/facts/facts.h"
#include "core/trail/entry.h"

namespace bathside {

class SealKey {
public:
    using Seed = std::array<std::uint8_t, 32>;

    /// From the system's source of randomness.
    [[nodiscard]] static SealKey fresh();
    [[nodiscard]] static SealKey from(const Seed& seed);

    [[nodiscard]] const Seed& seed() const noexcept { return m_seed; }
    /// Lower-case hex, 64 digits.
    [[nodiscard]] std::string publicKey() const;
    /// Lower-case hex, 128 digits.
    [[nodiscard]] std::string signatureOf(std::string_view bytes) const;
    /// The same as its 64 bytes, as OpenSSL reads it from a file.
    [[nodiscard]] std::string rawSignatureOf(std::string_view bytes) const;

private:
    struct Free {
        void operator()(void* key) const;
    };

    explicit SealKey(const Seed& seed);

    Seed m_seed;
    std::unique_ptr<void, Free> m_key;
};

/// False, too, where key or signature are not hex of their length.
[[nodiscard]] bool isSignedBy(std::string_view publicKey, std::string_view signature,
                              std::string_view bytes);

/// The same by the signature's 64 bytes.
[[nodiscard]] bool isSignedByRaw(std::string_view publicKey, std::string_view signature,
                                 std::string_view bytes);
/// A public key as a PEM file (RFC 8410, section 4), for OpenSSL; empty where it is no key.
[[nodiscard]] std::string pemOf(std::string_view publicKey);

[[nodiscard]] DaySealed sealOf(const Head& head, const SealKey& key);
/// Whether its signature is by its own key. Whose key that is, is another question.
[[nodiscard]] bool isGenuine(const DaySealed& seal);

}  // namespace bathside
