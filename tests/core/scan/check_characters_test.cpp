#include "core/scan/check_characters.h"

#include <string>

#include <gtest/gtest.h>

namespace bathside {
namespace {

// Published: GS1's own check of checksums (gs1-syntax-dictionary, lint_csum.c); all recomputed.
TEST(Gs1CheckDigitTest, agreesWithGs1sOwnVectors)
{
    for (const char* digits : {"02345673", "416000336108", "1234567890128", "12345678901231",
                               "123456789012345675", "24012345678905"})
        EXPECT_TRUE(hasGs1CheckDigit(digits)) << digits;
    for (const char* digits : {"12345673", "416000336109", "1234567890129", "12345678901232",
                               "123456789012345670", "24012345678909"})
        EXPECT_FALSE(hasGs1CheckDigit(digits)) << digits;
    // From memory, and computed.
    EXPECT_EQ(gs1CheckDigit("629104150021"), '3');
    EXPECT_EQ(gs1CheckDigit("400638133393"), '1');
}

TEST(Gs1CheckDigitTest, isOfDigitsOnly)
{
    EXPECT_FALSE(hasGs1CheckDigit(""));
    EXPECT_FALSE(hasGs1CheckDigit("0234567A"));
    EXPECT_TRUE(hasGs1CheckDigit("0"));
}

// From memory: the example of ISO 15707 for MOD 37,36 (A1-2425G-ABC1234002-M).
TEST(Iso7064Test, agreesWithAPublishedExample)
{
    EXPECT_EQ(iso7064CheckCharacter("A12425GABC1234002"), 'M');
    EXPECT_EQ(iso7064CheckCharacter("A1-2425G-ABC1234002"), 'M');
}

TEST(Iso7064Test, findsAnySingleWrongSign)
{
    const std::string signs = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ", good = "BSB20260305B4";
    for (std::size_t at = 0; at < good.size(); ++at)
        for (const char sign : signs) {
            std::string other = good;
            other[at] = sign;
            EXPECT_EQ(iso7064CheckCharacter(other) == iso7064CheckCharacter(good),
                      sign == good[at]);
        }
}

}  // namespace
}  // namespace bathside
