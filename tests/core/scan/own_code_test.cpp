#include "core/scan/own_code.h"

#include <algorithm>
#include <vector>

#include <gtest/gtest.h>

namespace bathside {
namespace {

using namespace std::chrono_literals;

const BagCode kBag{BagId{"B4"}, 2026y / 3 / 5};

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
    EXPECT_EQ(ownCodeFrom("BSB.").error().kind, ScanFaultKind::NotOurForm);
    EXPECT_EQ(ownCodeFrom("BSP.MK.").error().kind, ScanFaultKind::NotOurForm);
}

}  // namespace
}  // namespace bathside
