// Reference: RFC 8032, 7.1, the first two test vectors for Ed25519 (seed, public key, message,
// signature).

#include "core/trail/seal.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

struct SealVector {
    const char *name, *seed, *key, *message, *signature;
};

constexpr SealVector kSealVectors[]{
    {"Test1", "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
     "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
     "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b"
     "46bd25bf5f0595bbe24655141438e7a100b"},
    {"Test2", "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
     "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "\x72",
     "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11"
     "d8c387b2eaeb4302aeeb00d291612bb0c00"}};

class SealVectors : public testing::TestWithParam<SealVector> {};

TEST_P(SealVectors, agree)
{
    const SealVector& known = GetParam();
    const SealKey key = SealKey::from(*hashFromHex(known.seed));
    EXPECT_EQ(key.publicKey(), known.key);
    EXPECT_EQ(key.signatureOf(known.message), known.signature);
    EXPECT_TRUE(isSignedBy(known.key, known.signature, known.message));
    EXPECT_FALSE(isSignedBy(known.key, known.signature, std::string(known.message) + "x"));
}

INSTANTIATE_TEST_SUITE_P(Rfc8032, SealVectors, testing::ValuesIn(kSealVectors),
                         [](const auto& test) { return std::string(test.param.name); });

Head someHead() { return {7, sha256("seven")}; }

TEST(SealTest, isGenuineAsItWasMade)
{
    const SealKey key = SealKey::fresh();
    const DaySealed seal = sealOf(someHead(), key);
    EXPECT_EQ(seal.count, 7);
    EXPECT_EQ(seal.head, toHex(someHead().hash));
    EXPECT_TRUE(isGenuine(seal));
}

TEST(SealTest, isNotGenuineWithAnythingChanged)
{
    const DaySealed seal = sealOf(someHead(), SealKey::fresh());
    DaySealed other = seal;
    other.head = toHex(sha256("eight"));
    EXPECT_FALSE(isGenuine(other));
    other = seal;
    other.key = SealKey::fresh().publicKey();
    EXPECT_FALSE(isGenuine(other));
    other = seal;
    other.signature.back() = other.signature.back() == '0' ? '1' : '0';
    EXPECT_FALSE(isGenuine(other));
    other.signature = "short";
    EXPECT_FALSE(isGenuine(other));
    other = seal;
    other.key = "not hex";
    EXPECT_FALSE(isGenuine(other));
}

TEST(SealTest, freshKeysDiffer)
{
    EXPECT_NE(SealKey::fresh().publicKey(), SealKey::fresh().publicKey());
}

}  // namespace
}  // namespace bathside
