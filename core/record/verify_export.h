#pragma once

// Is an export what was once written? From its lines alone, or with the manifest beside it.
//
// Bytes arrive in pieces of any size. Without a manifest the lines are checked by themselves
// (verify.h). With one, also that they are the runs, the last hash, the station and the very bytes
// it lists. A byte order mark, CR or a missing last line end is a line that cannot be read.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/manifest.h"
#include "core/trail/verify.h"

namespace bathside {

struct ExportVerification {
    Verification chain;
    /// The manifest lists this file, and it is not the one listed; the chain may still be sound.
    bool otherBytes = false;
    [[nodiscard]] bool isSound() const { return !chain.flaw && !chain.badSeal && !otherBytes; }
};

class ExportVerifier {
public:
    /// `witnesses`: heads kept elsewhere, besides the manifest's; `key`: the public key of the
    /// seals.
    explicit ExportVerifier(std::optional<Manifest> manifest = std::nullopt,
                            std::vector<Head> witnesses = {},
                            std::optional<std::string> key = std::nullopt);

    void add(std::string_view bytes);
    [[nodiscard]] ExportVerification finish();

private:
    std::optional<Manifest> m_manifest;
    Verifier m_verifier;
    Sha256 m_digest;
    std::int64_t m_bytes = 0;
    std::string m_rest;  // the line that has begun
};

/// Does the manifest list a file of that name with another size or digest?
[[nodiscard]] bool contradicts(const Manifest& manifest, std::string_view name, std::int64_t bytes,
                               const Hash& sha256);

}  // namespace bathside
