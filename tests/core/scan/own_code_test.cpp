#include "core/scan/own_code.h"

#include <algorithm>
#include <limits>
#include <vector>

#include <gtest/gtest.h>

namespace bathside {
namespace {

using namespace std::chrono_literals;

const BagCode kBag{BagId{"B4"}, 2026y / 3 / 5};
// SHA-256 of "abc" (FIPS 180-2, appendix B.1).
const SealCode kSeal{187, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"};

TEST(OwnCodeTest, hasOneForm)
{
    // The check characters were computed with a second program, in another
    // formulation of the standard.
    EXPECT_EQ(textOf(kBag), "BSB.20260305.B4.D");
    EXPECT_EQ(textOf(PersonCode{PersonId{"MK"}}), "BSP.MK.S");
}

TEST(OwnCodeTest, readsWhatItWrites)
{
    std::vector<OwnCode> codes;
    for (const char* id : {"B4", "b4", "B-4 blue", ".", "%", "%41", "Señal", "\x01\xff", "0"}) {
        codes.emplace_back(BagCode{BagId{id}, 2024y / 2 / 29});
        codes.emplace_back(PersonCode{PersonId{id}});
    }
    codes.emplace_back(kSeal);
    codes.emplace_back(SealCode{std::numeric_limits<std::int64_t>::max(), kSeal.head});
    for (const OwnCode& code : codes) {
        const std::string text = textOf(code);
        EXPECT_EQ(ownCodeFrom(text), code) << text;
        EXPECT_TRUE(std::ranges::all_of(text, [](char sign) {
            return (sign >= 'A' && sign <= 'Z') || (sign >= '0' && sign <= '9') || sign == '.' ||
                   sign == '%';
        })) << text;
    }
}

TEST(OwnCodeTest, survivesALockedCapsKey)
{
    std::string text = textOf(kBag);
    std::ranges::transform(text, text.begin(), [](unsigned char sign) {
        return static_cast<char>(std::tolower(sign));
    });
    EXPECT_TRUE(beginsAsOwnCode(text));
    EXPECT_EQ(ownCodeFrom(text), OwnCode(kBag));
}

TEST(OwnCodeTest, saysAHeadInCapitals)
{
    const std::string text = textOf(kSeal);
    EXPECT_TRUE(text.starts_with("BSS.187.BA7816BF8F01CFEA")) << text;
    EXPECT_EQ(text.size(), std::string("BSS.187.").size() + 64 + 2);
    EXPECT_TRUE(beginsAsOwnCode(text));
}

// A German keyboard swaps Y and Z, a French one A and Q.
TEST(OwnCodeTest, tellsAnotherKeyboardLayout)
{
    std::string text = textOf(PersonCode{PersonId{"YA"}});
    for (char& sign : text)
        sign = sign == 'Y' ? 'Z' : sign;
    EXPECT_EQ(ownCodeFrom(text).error().kind, ScanFaultKind::CheckCharacter);
}

TEST(OwnCodeTest, findsEachMissingSign)
{
    const std::string good = textOf(BagCode{BagId{"B-4"}, 2026y / 3 / 5});
    for (std::size_t at = 0; at < good.size(); ++at) {
        const std::string text = good.substr(0, at) + good.substr(at + 1);
        const auto read = ownCodeFrom(text);
        EXPECT_FALSE(read && *read == OwnCode(BagCode{BagId{"B-4"}, 2026y / 3 / 5})) << text;
    }
}

std::string sealed(const std::string& text)
{
    for (const char sign : std::string("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ")) {
        const auto read = ownCodeFrom(text + '.' + sign);
        if (read || read.error().kind != ScanFaultKind::CheckCharacter)
            return text + '.' + sign;
    }
    return text;
}

TEST(OwnCodeTest, takesNoOtherForm)
{
    for (const char* text :
         {"BSB.20260305.", "BSB.20260305", "BSB.2026035.B4", "BSB.20260230.B4", "BSB.B4", "BSP.",
          "BSP.%4", "BSP.%41", "BSP.%G1", "BSP.A-B", "BSP.A.B", "BSB.20260305.B.4"})
        EXPECT_EQ(ownCodeFrom(sealed(text)).error().kind, ScanFaultKind::NotOurForm)
            << sealed(text);
    const std::string head(64, 'A');
    const std::vector<std::string> wrong{"BSS.0." + head,
                                         "BSS.-1." + head,
                                         "BSS.01." + head,
                                         "BSS." + head,
                                         "BSS..",
                                         "BSS.7.",
                                         "BSS.7." + head + "A",
                                         "BSS.7." + head.substr(1),
                                         "BSS.7." + head.substr(1) + "G",
                                         "BSS.9223372036854775808." + head};
    for (const std::string& text : wrong)
        EXPECT_EQ(ownCodeFrom(sealed(text)).error().kind, ScanFaultKind::NotOurForm)
            << sealed(text);
    EXPECT_EQ(ownCodeFrom("BSB.").error().kind, ScanFaultKind::NotOurForm);
    EXPECT_EQ(ownCodeFrom("BSP.MK.").error().kind, ScanFaultKind::NotOurForm);
}

}  // namespace
}  // namespace bathside
