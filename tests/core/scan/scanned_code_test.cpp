#include "core/scan/scanned_code.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

using namespace std::chrono_literals;
using enum ScanFaultKind;

Result<ScannedCode, ScanFault> read(std::string_view text) { return scannedCodeFrom(text, 2026y); }

std::string elementsOf(std::string_view text)
{
    const auto code = read(text);
    const auto* string = code ? std::get_if<gs1::ElementString>(&code->content) : nullptr;
    return string == nullptr ? "none" : gs1::bracketed(*string);
}

bool isPlain(std::string_view text)
{
    const auto code = read(text);
    return code && std::holds_alternative<PlainText>(code->content);
}

// Published: the tests of GS1's own engine (gs1-syntax-engine, scandata.c).
TEST(ScannedCodeTest, readsGs1sOwnStrings)
{
    for (const std::string symbology : {"]Q3", "]d2", "]C1", "]J1", "]e0"}) {
        const std::string text = symbology +
                                 "011231231231233310ABC123\x1d"
                                 "99TESTING";
        EXPECT_EQ(elementsOf(text), "(01)12312312312333(10)ABC123(99)TESTING") << symbology;
        EXPECT_EQ(elementsOf(text + '\x1d'), elementsOf(text));
        EXPECT_EQ(read(text)->symbology, symbology);
        EXPECT_EQ(read(symbology).error(), (ScanFault{Empty, 3, ""}));
    }
    EXPECT_EQ(read("]E02112345678900")->content, ScannedContent(gs1::Gtin{"02112345678900"}));
}

// Constructed (952 is GS1's prefix for demonstrations); results from GS1's own engine.
TEST(ScannedCodeTest, agreesWithGs1sEngine)
{
    EXPECT_EQ(elementsOf("]d201095212345000181727123110LOT7A"),
              "(01)09521234500018(17)271231(10)LOT7A");
    EXPECT_EQ(elementsOf("]C1010952123450001810LOT7A\x1d"
                         "21S0001"),
              "(01)09521234500018(10)LOT7A(21)S0001");
    EXPECT_EQ(elementsOf("]e0010952123450001810A1\x1d"
                         "17261130"),
              "(01)09521234500018(10)A1(17)261130");
    EXPECT_EQ(elementsOf("]d2010952123450001810X\x1d"
                         "30100"),
              "(01)09521234500018(10)X(30)100");
    EXPECT_EQ(elementsOf("]d2010952123450001810LOT7A\x1d"), "(01)09521234500018(10)LOT7A");
    EXPECT_EQ(read("]d201095212345000191727123110LOT7A").error(),
              (ScanFault{CheckDigit, 18, "01"}));
    EXPECT_EQ(read("]d2010952123450001817271331").error(), (ScanFault{NoSuchMonth, 23, "17"}));
    EXPECT_EQ(read("]d2010952123450001817270230").error(), (ScanFault{NoSuchDay, 25, "17"}));
    EXPECT_EQ(read("]d2010952123450001810ABCDEFGHIJKLMNOPQRSTU").error(),
              (ScanFault{TooLong, 41, "10"}));
    EXPECT_EQ(read("]E09521234500018")->content, ScannedContent(gs1::Gtin{"09521234500018"}));
    EXPECT_EQ(read("]C001095212345000181727123110LOT7A")->content,
              ScannedContent(PlainText{"01095212345000181727123110LOT7A"}));
    EXPECT_EQ(read("]d201095212345000181727123110LOT 7").error().kind, SignNotAllowed);
}

// The engine refuses a separator in front; scanners send it.
TEST(ScannedCodeTest, forgivesASeparatorInFront)
{
    EXPECT_EQ(elementsOf("]d2\x1d"
                         "0109521234500018"),
              "(01)09521234500018");
}

TEST(ScannedCodeTest, tellsElementStringsWithoutSymbology)
{
    EXPECT_EQ(elementsOf("01095212345000181727123110LOT7A"),
              "(01)09521234500018(17)271231(10)LOT7A");
    EXPECT_EQ(elementsOf("10LOT7A\x1d"
                         "21S1"),
              "(10)LOT7A(21)S1");
    EXPECT_EQ(elementsOf("1727123110LOT7A"), "(17)271231(10)LOT7A");
    EXPECT_EQ(elementsOf("(10)LOT7A"), "(10)LOT7A");
    EXPECT_EQ(elementsOf("00123456789012345675"), "(00)123456789012345675");
    EXPECT_EQ(read("01095212345000191727123110LOT7A").error(), (ScanFault{CheckDigit, 15, "01"}));
    EXPECT_EQ(read("(01)09521234500019").error(), (ScanFault{CheckDigit, 17, "01"}));
    EXPECT_EQ(read("LOT\x1d"
                   "7")
                  .error(),
              (ScanFault{UnknownIdentifier, 0, ""}));
}

TEST(ScannedCodeTest, leavesAllElseAsItIs)
{
    for (const char* text : {"K07", "10LOT7A", "17271231", "9521234500018", "1012345", "0109521",
                             "(a)", "(", "]", "]d", "BSB", "BS", " ", "Señal", "\x01", "00000000"})
        EXPECT_TRUE(isPlain(text)) << text;
    EXPECT_EQ(read("]Q1K07")->content, ScannedContent(PlainText{"K07"}));
}

TEST(ScannedCodeTest, readsOurOwnUnderAnySymbology)
{
    const BagCode bag{BagId{"B4"}, 2026y / 3 / 5};
    for (const std::string symbology : {"", "]d1", "]C0", "]Q1"})
        EXPECT_EQ(read(symbology + textOf(bag))->content, ScannedContent(bag));
    EXPECT_EQ(read("]d1BSB.20260305.B4.").error(), (ScanFault{NotOurForm, 3, ""}));
}

TEST(ScannedCodeTest, checksItemNumbers)
{
    EXPECT_EQ(read("]E402345673")->content, ScannedContent(gs1::Gtin{"00000002345673"}));
    EXPECT_EQ(read("]E09521234500019").error(), (ScanFault{CheckDigit, 15, ""}));
    EXPECT_EQ(read("]E0952123450001A").error(), (ScanFault{NotADigit, 15, ""}));
    EXPECT_EQ(read("]E41234567").error(), (ScanFault{TooShort, 10, ""}));
    EXPECT_EQ(read("]E009521234500018").error(), (ScanFault{TooLong, 16, ""}));
}

TEST(ScannedCodeTest, hasABound)
{
    EXPECT_EQ(read("").error(), (ScanFault{Empty, 0, ""}));
    EXPECT_TRUE(isPlain(std::string(kLongestScan, 'x')));
    EXPECT_EQ(read(std::string(kLongestScan + 1, 'x')).error().kind, TooMuch);
}

}  // namespace
}  // namespace bathside
