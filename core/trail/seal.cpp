#include "core/trail/seal.h"

#include <cstdlib>
#include <vector>

#include <openssl/evp.h>
#include <openssl/rand.h>

#include "core/base/hex.h"

namespace bathside {
namespace {

using Bytes = std::vector<std::uint8_t>;

constexpr std::size_t kKeyBytes = 32, kSignatureBytes = 64;

// Without its own algorithms the library cannot be relied on for anything.
void demand(bool worked)
{
    if (!worked)
        std::abort();
}

struct FreeKey {
    void operator()(EVP_PKEY* key) const { EVP_PKEY_free(key); }
};
struct FreeContext {
    void operator()(EVP_MD_CTX* context) const { EVP_MD_CTX_free(context); }
};
using Context = std::unique_ptr<EVP_MD_CTX, FreeContext>;

const std::uint8_t* raw(std::string_view bytes)
{
    return reinterpret_cast<const std::uint8_t*>(bytes.data());
}

std::string hexOf(const Bytes& bytes)
{
    std::string hex;
    for (const std::uint8_t byte : bytes) {
        hex += kHexDigits[byte >> 4U];
        hex += kHexDigits[byte & 15U];
    }
    return hex;
}

/// Nothing unless it is exactly so many bytes.
std::optional<Bytes> bytesOf(std::string_view hex, std::size_t count)
{
    if (hex.size() != 2 * count)
        return std::nullopt;
    Bytes bytes;
    for (std::size_t i = 0; i < count; i += kKeyBytes) {
        const auto part = hashFromHex(hex.substr(2 * i, 2 * kKeyBytes));
        if (!part)
            return std::nullopt;
        bytes.insert(bytes.end(), part->begin(), part->end());
    }
    return bytes;
}

std::string_view viewOf(const Hash& hash)
{
    return {reinterpret_cast<const char*>(hash.data()), hash.size()};
}

}  // namespace

void SealKey::Free::operator()(void* key) const { EVP_PKEY_free(static_cast<EVP_PKEY*>(key)); }

SealKey::SealKey(const Seed& seed)
    : m_seed(seed),
      m_key(EVP_PKEY_new_raw_private_key(EVP_PKEY_ED25519, nullptr, seed.data(), seed.size()))
{
    demand(m_key != nullptr);
}

SealKey SealKey::from(const Seed& seed) { return SealKey(seed); }

SealKey SealKey::fresh()
{
    Seed seed{};
    demand(RAND_priv_bytes(seed.data(), static_cast<int>(seed.size())) == 1);
    return SealKey(seed);
}

std::string SealKey::publicKey() const
{
    Bytes bytes(kKeyBytes);
    std::size_t size = bytes.size();
    demand(EVP_PKEY_get_raw_public_key(static_cast<EVP_PKEY*>(m_key.get()), bytes.data(), &size) ==
           1);
    return hexOf(bytes);
}

std::string SealKey::signatureOf(std::string_view bytes) const
{
    const Context context(EVP_MD_CTX_new());
    Bytes signature(kSignatureBytes);
    std::size_t size = signature.size();
    demand(context && EVP_DigestSignInit(context.get(), nullptr, nullptr, nullptr,
                                         static_cast<EVP_PKEY*>(m_key.get())) == 1);
    demand(EVP_DigestSign(context.get(), signature.data(), &size, raw(bytes), bytes.size()) == 1);
    return hexOf(signature);
}

bool isSignedBy(std::string_view publicKey, std::string_view signature, std::string_view bytes)
{
    const auto point = bytesOf(publicKey, kKeyBytes);
    const auto signedBytes = bytesOf(signature, kSignatureBytes);
    if (!point || !signedBytes)
        return false;
    const std::unique_ptr<EVP_PKEY, FreeKey> key(
        EVP_PKEY_new_raw_public_key(EVP_PKEY_ED25519, nullptr, point->data(), point->size()));
    const Context context(EVP_MD_CTX_new());
    return key && context &&
           EVP_DigestVerifyInit(context.get(), nullptr, nullptr, nullptr, key.get()) == 1 &&
           EVP_DigestVerify(context.get(), signedBytes->data(), signedBytes->size(), raw(bytes),
                            bytes.size()) == 1;
}

DaySealed sealOf(const Head& head, const SealKey& key)
{
    return {.count = head.seq,
            .head = toHex(head.hash),
            .key = key.publicKey(),
            .signature = key.signatureOf(viewOf(head.hash))};
}

bool isGenuine(const DaySealed& seal)
{
    const auto head = hashFromHex(seal.head);
    return head && isSignedBy(seal.key, seal.signature, viewOf(*head));
}

}  // namespace bathside
