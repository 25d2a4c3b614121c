#pragma once

// The signature beside a manifest: by the key that seals the days, over the manifest's very bytes.
//
// `manifest.sig` holds the 64 bytes of it (Ed25519, RFC 8032), `seal-key.pem` the public key, so
// that OpenSSL alone can check it. That an export is signed says only that whoever has the key made
// it: the key is compared with the one written down elsewhere, or with that of the seals.

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/facts/names.h"
#include "core/record/manifest.h"

namespace bathside {

inline constexpr std::string_view kSignatureFile = "manifest.sig";
inline constexpr std::string_view kKeyFile = "seal-key.pem";

enum class SignatureFlaw : std::uint8_t {
    NotSigned,   // a key was expected, and the manifest names none
    Missing,     // the manifest names a key, and there is no signature beside it
    NotGenuine,  // it is not by that key, or the manifest was changed after it
    OtherKey,    // by another key than the expected one
    OtherPem,    // the file with the public key holds another
};
template <>
struct Names<SignatureFlaw> {
    static constexpr std::array<std::string_view, 5> all{
        "not signed", "signature missing", "not genuine", "another key", "another key file"};
};

/// What lies beside a manifest, as bytes; none: no such file.
struct BesideManifest {
    std::optional<std::string> signature;
    std::optional<std::string> pem;
};

/// `text`: the manifest's bytes as they were read; `key`: known from elsewhere, hex.
[[nodiscard]] std::optional<SignatureFlaw> signatureFlaw(const Manifest& manifest,
                                                         std::string_view text,
                                                         const BesideManifest& beside,
                                                         const std::optional<std::string>& key);

}  // namespace bathside
