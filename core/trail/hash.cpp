#include "core/trail/hash.h"

#include "core/base/hex.h"
#include "core/trail/digest.h"

namespace bathside {
namespace {

const EVP_MD* algorithm()
{
    static const EVP_MD* const fetched = EVP_MD_fetch(nullptr, "SHA256", nullptr);
    require(fetched != nullptr);
    return fetched;
}

int digitOf(char c)
{
    if (c >= '0' && c <= '9')
        return c - '0';
    return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

}  // namespace

struct Sha256::Context {
    DigestContext evp{EVP_MD_CTX_new()};

    Context() { start(); }
    void start() { require(evp && EVP_DigestInit_ex2(evp.get(), algorithm(), nullptr) == 1); }
};

Sha256::Sha256() : m_context(std::make_unique<Context>()) {}
Sha256::~Sha256() = default;
Sha256::Sha256(Sha256&&) noexcept = default;
Sha256& Sha256::operator=(Sha256&&) noexcept = default;

void Sha256::add(std::string_view bytes)
{
    require(EVP_DigestUpdate(m_context->evp.get(), bytes.data(), bytes.size()) == 1);
}

Hash Sha256::finish()
{
    Hash hash{};
    require(EVP_DigestFinal_ex(m_context->evp.get(), hash.data(), nullptr) == 1);
    m_context->start();
    return hash;
}

Hash sha256(std::initializer_list<std::string_view> pieces)
{
    thread_local Sha256 digest;
    for (const std::string_view piece : pieces)
        digest.add(piece);
    return digest.finish();
}

Hash sha256(std::string_view bytes) { return sha256({bytes}); }

void appendHex(std::string& out, const Hash& hash)
{
    std::array<char, 64> hex{};
    for (std::size_t i = 0; i < hash.size(); ++i) {
        hex[2 * i] = kHexDigits[hash[i] >> 4U];
        hex[2 * i + 1] = kHexDigits[hash[i] & 15U];
    }
    out.append(hex.data(), hex.size());
}

std::string toHex(const Hash& hash)
{
    std::string hex;
    appendHex(hex, hash);
    return hex;
}

std::optional<Hash> hashFromHex(std::string_view hex)
{
    Hash hash{};
    if (hex.size() != 2 * hash.size())
        return std::nullopt;
    for (std::size_t i = 0; i < hash.size(); ++i) {
        const int high = digitOf(hex[2 * i]);
        const int low = digitOf(hex[2 * i + 1]);
        if (high < 0 || low < 0)
            return std::nullopt;
        hash[i] = static_cast<std::uint8_t>(high * 16 + low);
    }
    return hash;
}

}  // namespace bathside
