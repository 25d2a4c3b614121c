#include "core/trail/hash.h"

#include <string>

#include <gtest/gtest.h>

namespace bathside {
namespace {

struct Vector {
    const char* name;
    std::string message;
    const char* digest;
};

void PrintTo(const Vector& row, std::ostream* out) { *out << row.name; }

class Sha256Gives : public testing::TestWithParam<Vector> {};

TEST_P(Sha256Gives, thePublishedDigest)
{
    EXPECT_EQ(toHex(sha256(GetParam().message)), GetParam().digest);
}

TEST_P(Sha256Gives, theSameInPieces)
{
    Sha256 digest;
    for (const char byte : GetParam().message.substr(0, 1000))
        digest.add(std::string_view(&byte, 1));
    digest.add(std::string_view(GetParam().message)
                   .substr(std::min<std::size_t>(1000, GetParam().message.size())));
    EXPECT_EQ(toHex(digest.finish()), GetParam().digest);
    EXPECT_EQ(toHex(digest.finish()), toHex(sha256("")));  // starts anew
}

// Published: the empty message in RFC 6962, section 2.1 (the hash of an empty list). The others are
// the examples that accompany FIPS 180-4, from memory, each computed again with Python's hashlib.
INSTANTIATE_TEST_SUITE_P(
    Fips180, Sha256Gives,
    testing::Values(
        Vector{"Empty", "", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"},
        Vector{"Abc", "abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"},
        Vector{"TwoBlocks", "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
               "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"},
        Vector{"TwoBlocksOf112Bytes",
               "abcdefghbcdefghicdefghijdefghijkefghijklfghijklmghijklmnhijklmnoijklmnopjklmnopqklm"
               "nopqrlmno"
               "pqrsmnopqrstnopqrstu",
               "cf5b16a778af8380036ce59e7b0492370b249b11e8f07a51afac45037afee9d1"},
        Vector{"MillionTimesA", std::string(1'000'000, 'a'),
               "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"},
        Vector{"OneByte", "\xbd",
               "68325720aabd7c82f30f554b313d0570c95accbb7dc4b5aae11204c08ffe732b"}),
    [](const auto& row) { return std::string(row.param.name); });

TEST(HashTest, hexReadsBack)
{
    const Hash hash = sha256("abc");
    EXPECT_EQ(hashFromHex(toHex(hash)), hash);
}

TEST(HashTest, hexIsLowerCaseAnd64Digits)
{
    const std::string hex = toHex(sha256("abc"));
    EXPECT_FALSE(hashFromHex(hex.substr(1)));
    EXPECT_FALSE(hashFromHex(hex + "0"));
    EXPECT_FALSE(hashFromHex("BA" + hex.substr(2)));
    EXPECT_FALSE(hashFromHex("g" + hex.substr(1)));
    EXPECT_FALSE(hashFromHex(""));
}

}  // namespace
}  // namespace bathside
