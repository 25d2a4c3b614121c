// The function that PINs are checked by, against its own publication: RFC 7914, "The scrypt
// Password-Based Key Derivation Function", section 12, test vectors 1 to 3 (the fourth takes 1
// GiB).

#include <cctype>

#include <gtest/gtest.h>

#include "core/people/pin.h"

namespace bathside {
namespace {

struct Vector {
    const char* name;
    std::string_view secret, salt;
    ScryptCost cost;
    const char* key;  // hex
};

class ScryptVector : public testing::TestWithParam<Vector> {};

std::string hex(std::span<const std::uint8_t> bytes)
{
    std::string text;
    for (const unsigned byte : bytes)
        text += std::string{"0123456789abcdef"[byte / 16], "0123456789abcdef"[byte % 16]};
    return text;
}

TEST_P(ScryptVector, isAsPublished)
{
    const Vector& one = GetParam();
    const std::vector<std::uint8_t> salt(one.salt.begin(), one.salt.end());
    std::array<std::uint8_t, 64> key{};
    ASSERT_TRUE(scrypt(one.secret, salt, one.cost, key));
    EXPECT_EQ(hex(key), one.key);
}

INSTANTIATE_TEST_SUITE_P(
    Rfc7914, ScryptVector,
    testing::Values(Vector{"Empty",
                           "",
                           "",
                           {16, 1, 1},
                           "77d6576238657b203b19ca42c18a0497f16b4844e3074ae8dfdffa3fede21442"
                           "fcd0069ded0948f8326a753a0fc81f17e8d3e0fb2e0d3628cf35e20c38d18906"},
                    Vector{"Password",
                           "password",
                           "NaCl",
                           {1024, 8, 16},
                           "fdbabe1c9d3472007856e7190d01e9fe7c6ad7cbc8237830e77376634b373162"
                           "2eaf30d92e22a3886ff109279d9830dac727afb94a83ee6d8360cbdfa2cc0640"},
                    Vector{"Please",
                           "pleaseletmein",
                           "SodiumChloride",
                           {16384, 8, 1},
                           "7023bdcb3afd7348461c06cd81fd38ebfda8fbba904f8e3ea9b543f6545da1f2"
                           "d5432955613f0fcf62d49705242a9af9e61e85dc0d651e40dfcf017b45575887"}),
    [](const auto& test) { return std::string(test.param.name); });

}  // namespace
}  // namespace bathside
