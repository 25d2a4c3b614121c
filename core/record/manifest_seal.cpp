#include "core/record/manifest_seal.h"

#include "core/trail/seal.h"

namespace bathside {

std::optional<SignatureFlaw> signatureFlaw(const Manifest& manifest, std::string_view text,
                                           const BesideManifest& beside,
                                           const std::optional<std::string>& key)
{
    if (manifest.key.empty())
        return key ? std::optional(SignatureFlaw::NotSigned) : std::nullopt;
    if (!beside.signature)
        return SignatureFlaw::Missing;
    if (!isSignedByRaw(manifest.key, *beside.signature, text))
        return SignatureFlaw::NotGenuine;
    if (key && *key != manifest.key)
        return SignatureFlaw::OtherKey;
    if (beside.pem && *beside.pem != pemOf(manifest.key))
        return SignatureFlaw::OtherPem;
    return std::nullopt;
}

}  // namespace bathside
