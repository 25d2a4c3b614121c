#include "core/scan/said.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

using namespace std::chrono_literals;

ScannedCode codeIn(std::string_view text) { return scannedCodeFrom(text, 2026y).value(); }

TEST(SaidTest, byAnElementString)
{
    const ScannedCode code = codeIn(
        "]d2010952123450001817271200"
        "10LOT7A\x1d"
        "21S1\x1d"
        "3012");
    EXPECT_EQ(lotSaid(code), LotId{"LOT7A"});
    EXPECT_EQ(gtinSaid(code), gs1::Gtin{"09521234500018"});
    EXPECT_EQ(expirySaid(code), 2027y / 12 / 31);
    EXPECT_EQ(serialSaid(code), "S1");
    EXPECT_EQ(countSaid(code), 12);
    EXPECT_EQ(bagSaid(code), std::nullopt);
    EXPECT_EQ(personSaid(code), std::nullopt);
}

TEST(SaidTest, byOthers)
{
    EXPECT_EQ(gtinSaid(codeIn("]E09521234500018")), gs1::Gtin{"09521234500018"});
    EXPECT_EQ(gtinSaid(codeIn("(02)09521234500018(37)24")), gs1::Gtin{"09521234500018"});
    EXPECT_EQ(countSaid(codeIn("(02)09521234500018(37)24")), 24);
    EXPECT_EQ(expirySaid(codeIn("(7003)2603052359")), 2026y / 3 / 5);
    EXPECT_EQ(bagSaid(codeIn(textOf(BagCode{BagId{"B4"}, 2026y / 3 / 5}))),
              (BagCode{BagId{"B4"}, 2026y / 3 / 5}));
    EXPECT_EQ(personSaid(codeIn(textOf(PersonCode{PersonId{"MK"}}))), PersonId{"MK"});
    EXPECT_EQ(lotSaid(codeIn("K07")), std::nullopt);
    EXPECT_EQ(gtinSaid(codeIn("K07")), std::nullopt);
}

TEST(SaidTest, comparesLots)
{
    EXPECT_EQ(compared(codeIn("]d201095212345000"
                              "1810K07"),
                       LotId{"K07"}),
              LotMatch::Same);
    EXPECT_EQ(compared(codeIn("]d201095212345000"
                              "1810K08"),
                       LotId{"K07"}),
              LotMatch::Other);
    EXPECT_EQ(compared(codeIn("]d201095212345000"
                              "1810k07"),
                       LotId{"K07"}),
              LotMatch::Other);
    EXPECT_EQ(compared(codeIn("]d20109521234500018"), LotId{"K07"}), LotMatch::NotSaid);
    EXPECT_EQ(compared(codeIn("K07"), LotId{"K07"}), LotMatch::Same);
    EXPECT_EQ(compared(codeIn("K08"), LotId{"K07"}), LotMatch::NotSaid);
}

}  // namespace
}  // namespace bathside
