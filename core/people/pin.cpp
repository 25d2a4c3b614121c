#include "core/people/pin.h"

#include <algorithm>

#include <openssl/crypto.h>
#include <openssl/evp.h>

namespace bathside {
namespace {

using namespace std::chrono_literals;

constexpr std::uint64_t kMostMemory = 64ULL * 1024 * 1024;
constexpr int kFreeTries = 3;
constexpr Millis kFirstWait = 5s, kLongestWait = 5min;

/// Each digit the one before it plus `by`, nine followed by nought.
bool isRun(std::string_view pin, int by)
{
    return std::ranges::adjacent_find(pin, [by](char a, char b) {
               return (a - '0' + by + 10) % 10 != b - '0';
           }) == pin.end();
}

Millis waitAfter(int refused)
{
    Millis wait = kFirstWait;
    for (int i = kFreeTries + 1; i < refused && wait < kLongestWait; ++i)
        wait *= 2;
    return refused > kFreeTries ? std::min(wait, kLongestWait) : Millis::zero();
}

/// Where the clock went back over a restart, no more is certain than how long this boot has lasted.
Millis timeSince(const Stamp& refused, const Stamp& now)
{
    return std::chrono::floor<Millis>(
        wentBackOverRestart(refused, now) ? now.boot : elapsed(refused, now).time);
}

}  // namespace

std::optional<PinFault> faultOf(std::string_view pin)
{
    if (!std::ranges::all_of(pin, [](char sign) { return sign >= '0' && sign <= '9'; }))
        return PinFault::NotDigits;
    if (pin.size() < kShortestPin || pin.size() > kLongestPin)
        return PinFault::Length;
    if (isRun(pin, 0))
        return PinFault::AllEqual;
    if (isRun(pin, 1) || isRun(pin, -1))
        return PinFault::Run;
    return std::nullopt;
}

bool scrypt(std::string_view secret, std::span<const std::uint8_t> salt, const ScryptCost& cost,
            std::span<std::uint8_t> out)
{
    return EVP_PBE_scrypt(secret.data(), secret.size(), salt.data(), salt.size(), cost.n, cost.r,
                          cost.p, kMostMemory, out.data(), out.size()) == 1;
}

std::optional<PinHash> hashOf(std::string_view pin, const PinSalt& salt)
{
    PinHash hash{.salt = salt};
    if (!scrypt(pin, hash.salt, hash.cost, hash.key))
        return std::nullopt;
    return hash;
}

bool isRight(std::string_view pin, const PinHash& hash)
{
    PinKey key{};
    const bool made = scrypt(pin, hash.salt, hash.cost, key);
    const bool same = CRYPTO_memcmp(key.data(), hash.key.data(), key.size()) == 0;
    OPENSSL_cleanse(key.data(), key.size());
    return made && same;
}

Millis waitBeforePin(const Member& member, const Stamp& now)
{
    if (!member.lastRefused)
        return Millis::zero();
    const Millis wait = waitAfter(member.refused) - timeSince(*member.lastRefused, now);
    return std::max(wait, Millis::zero());
}

}  // namespace bathside
