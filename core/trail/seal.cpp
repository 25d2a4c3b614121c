#include "core/trail/seal.h"

#include <vector>

#include <openssl/rand.h>

#include "core/base/hex.h"
#include "core/trail/digest.h"

namespace bathside {
namespace {

using Bytes = std::vector<std::uint8_t>;

constexpr std::size_t kKeyBytes = 32, kSignatureBytes = 64;

struct FreeKey {
    void operator()(EVP_PKEY* key) const { EVP_PKEY_free(key); }
};

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
    require(m_key != nullptr);
}

SealKey SealKey::from(const Seed& seed) { return SealKey(seed); }

SealKey SealKey::fresh()
{
    Seed seed{};
    require(RAND_priv_bytes(seed.data(), static_cast<int>(seed.size())) == 1);
    return SealKey(seed);
}

std::string SealKey::publicKey() const
{
    Bytes bytes(kKeyBytes);
    std::size_t size = bytes.size();
    require(EVP_PKEY_get_raw_public_key(static_cast<EVP_PKEY*>(m_key.get()), bytes.data(), &size) ==
            1);
    return hexOf(bytes);
}

std::string SealKey::signatureOf(std::string_view bytes) const
{
    const std::string raw = rawSignatureOf(bytes);
    return hexOf({raw.begin(), raw.end()});
}

std::string SealKey::rawSignatureOf(std::string_view bytes) const
{
    const DigestContext context(EVP_MD_CTX_new());
    Bytes signature(kSignatureBytes);
    std::size_t size = signature.size();
    require(context && EVP_DigestSignInit(context.get(), nullptr, nullptr, nullptr,
                                          static_cast<EVP_PKEY*>(m_key.get())) == 1);
    require(EVP_DigestSign(context.get(), signature.data(), &size, raw(bytes), bytes.size()) == 1);
    return {signature.begin(), signature.end()};
}

bool isSignedBy(std::string_view publicKey, std::string_view signature, std::string_view bytes)
{
    const auto raw = bytesOf(signature, kSignatureBytes);
    return raw && isSignedByRaw(publicKey, std::string(raw->begin(), raw->end()), bytes);
}

bool isSignedByRaw(std::string_view publicKey, std::string_view signature, std::string_view bytes)
{
    const auto point = bytesOf(publicKey, kKeyBytes);
    if (!point || signature.size() != kSignatureBytes)
        return false;
    const std::unique_ptr<EVP_PKEY, FreeKey> key(
        EVP_PKEY_new_raw_public_key(EVP_PKEY_ED25519, nullptr, point->data(), point->size()));
    const DigestContext context(EVP_MD_CTX_new());
    return key && context &&
           EVP_DigestVerifyInit(context.get(), nullptr, nullptr, nullptr, key.get()) == 1 &&
           EVP_DigestVerify(context.get(), raw(signature), signature.size(), raw(bytes),
                            bytes.size()) == 1;
}

std::string pemOf(std::string_view publicKey)
{
    // SubjectPublicKeyInfo up to the key itself: RFC 8410, section 10.1.
    Bytes info{0x30, 0x2a, 0x30, 0x05, 0x06, 0x03, 0x2b, 0x65, 0x70, 0x03, 0x21, 0x00};
    const auto point = bytesOf(publicKey, kKeyBytes);
    if (!point)
        return {};
    info.insert(info.end(), point->begin(), point->end());
    Bytes text((info.size() + 2) / 3 * 4 + 1);
    const int size = EVP_EncodeBlock(text.data(), info.data(), static_cast<int>(info.size()));
    return "-----BEGIN PUBLIC KEY-----\n" + std::string(text.begin(), text.begin() + size) +
           "\n-----END PUBLIC KEY-----\n";
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
