#include "core/scan/element_string.h"

#include <gtest/gtest.h>

namespace bathside::gs1 {
namespace {

using namespace std::chrono_literals;
using enum ScanFaultKind;

constexpr auto kNow = 2026y;

struct CenturyRow {
    std::chrono::year now;
    int twoDigits;
    std::chrono::year expected;
};
class Century : public testing::TestWithParam<CenturyRow> {};
TEST_P(Century, followsTheGeneralSpecifications)
{
    EXPECT_EQ(yearOf(GetParam().twoDigits, GetParam().now), GetParam().expected);
}
std::string centuryName(const testing::TestParamInfo<CenturyRow>& row)
{
    return std::to_string(int(row.param.now)) + "_" + std::to_string(row.param.twoDigits);
}

// GS1 General Specifications, 7.12: 49 years back to 50 years ahead. Years computed with GS1's own
// check of dates (gs1-syntax-dictionary, lint_yymmd0.c).
INSTANTIATE_TEST_SUITE_P(Rows, Century,
                         testing::Values(CenturyRow{2025y, 0, 2000y}, CenturyRow{2025y, 26, 2026y},
                                         CenturyRow{2025y, 49, 2049y}, CenturyRow{2025y, 50, 2050y},
                                         CenturyRow{2025y, 75, 2075y}, CenturyRow{2025y, 76, 1976y},
                                         CenturyRow{2025y, 77, 1977y}, CenturyRow{2025y, 99, 1999y},
                                         CenturyRow{2026y, 0, 2000y}, CenturyRow{2026y, 75, 2075y},
                                         CenturyRow{2026y, 76, 2076y}, CenturyRow{2026y, 77, 1977y},
                                         CenturyRow{2026y, 99, 1999y}, CenturyRow{2050y, 0, 2100y},
                                         CenturyRow{2050y, 26, 2026y}, CenturyRow{2050y, 49, 2049y},
                                         CenturyRow{2050y, 77, 2077y}, CenturyRow{2050y, 99, 2099y},
                                         CenturyRow{2099y, 0, 2100y}, CenturyRow{2099y, 26, 2126y},
                                         CenturyRow{2099y, 49, 2149y}, CenturyRow{2099y, 50, 2050y},
                                         CenturyRow{2099y, 99, 2099y}),
                         centuryName);

Value valueOfOnly(std::string_view text)
{
    const auto read = elementsFrom(text, kNow);
    EXPECT_TRUE(read) << text;
    return read ? read->elements.at(0).value : Value(Text{"none"});
}

TEST(ElementStringTest, typesEachIdentifiersData)
{
    EXPECT_EQ(valueOfOnly("00123456789012345675"), Value(Key{"123456789012345675"}));
    EXPECT_EQ(valueOfOnly("0224012345678905"), Value(Gtin{"24012345678905"}));
    EXPECT_EQ(valueOfOnly("11260305"), Value(Date(2026y / 3 / 5)));
    EXPECT_EQ(valueOfOnly("13260305"), Value(Date(2026y / 3 / 5)));
    EXPECT_EQ(valueOfOnly("15260305"), Value(Date(2026y / 3 / 5)));
    EXPECT_EQ(valueOfOnly("2007"), Value(Text{"07"}));
    EXPECT_EQ(valueOfOnly("21S/0001"), Value(Text{"S/0001"}));
    EXPECT_EQ(valueOfOnly("240ABC"), Value(Text{"ABC"}));
    EXPECT_EQ(valueOfOnly("3000000100"), Value(Count{100}));
    EXPECT_EQ(valueOfOnly("3103001250"), Value(Measure{1250, 3}));
    EXPECT_EQ(valueOfOnly("39221299"), Value(Measure{1299, 2}));
    EXPECT_EQ(valueOfOnly("3929999999999999999"), Value(Measure{999'999'999'999'999, 9}));
    EXPECT_EQ(valueOfOnly("3724"), Value(Count{24}));
    EXPECT_EQ(valueOfOnly("400PO-7"), Value(Text{"PO-7"}));
    for (const char ai : {'0', '1', '2', '3', '4', '5', '6', '7'})
        EXPECT_EQ(valueOfOnly(std::string("41") + ai + "1234567890128"),
                  Value(Key{"1234567890128"}));
    EXPECT_EQ(valueOfOnly("91own"), Value(Text{"own"}));
    EXPECT_EQ(valueOfOnly("99" + std::string(90, 'x')), Value(Text{std::string(90, 'x')}));
    EXPECT_EQ(valueOfOnly("70032603052359"),
              Value(DateTime(std::chrono::local_days(2026y / 3 / 5) + 23h + 59min)));
}

// Quoted: GS1 General Specifications, 3.4 (day 00), with these two dates.
TEST(ElementStringTest, dayZeroIsTheMonthsLast)
{
    EXPECT_EQ(valueOfOnly("17130200"), Value(Date(2013y / 2 / 28)));
    EXPECT_EQ(valueOfOnly("17160200"), Value(Date(2016y / 2 / 29)));
    EXPECT_EQ(valueOfOnly("17261200"), Value(Date(2026y / 12 / 31)));
}

struct FaultRow {
    const char* name;
    std::string text;
    ScanFault expected;
};
class Refuses : public testing::TestWithParam<FaultRow> {};
TEST_P(Refuses, withKindAndPlace)
{
    const auto read = elementsFrom(GetParam().text, kNow);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error(), GetParam().expected);
}

// Constructed; those that are in check with GS1's own engine are in tests/reference too.
INSTANTIATE_TEST_SUITE_P(
    Rows, Refuses,
    testing::Values(FaultRow{"CheckDigit", "0109521234500019", {CheckDigit, 15, "01"}},
                    FaultRow{"KeysCheckDigit", "4101234567890129", {CheckDigit, 15, "410"}},
                    FaultRow{"Month", "010952123450001817271331", {NoSuchMonth, 20, "17"}},
                    FaultRow{"MonthZero", "17270031", {NoSuchMonth, 4, "17"}},
                    FaultRow{"Day", "010952123450001817270230", {NoSuchDay, 22, "17"}},
                    FaultRow{"DayZeroWithTime", "70032703001200", {NoSuchDay, 8, "7003"}},
                    FaultRow{"Hour", "70032703012400", {NoSuchTime, 10, "7003"}},
                    FaultRow{"Minute", "70032703012360", {NoSuchTime, 12, "7003"}},
                    FaultRow{"LotOf21", "10ABCDEFGHIJKLMNOPQRSTU", {TooLong, 22, "10"}},
                    FaultRow{"LotOfNone",
                             "10\x1d"
                             "17271231",
                             {TooShort, 2, "10"}},
                    FaultRow{"LotOfNoneAtTheEnd", "1727123110", {TooShort, 10, "10"}},
                    FaultRow{"ShortDate", "172712", {TooShort, 6, "17"}},
                    FaultRow{"DateCutBySeparator",
                             "172712\x1d"
                             "10A",
                             {TooShort, 6, "17"}},
                    FaultRow{"ShortGtin", "01095212345", {TooShort, 11, "01"}},
                    FaultRow{"LetterInCount", "3012A", {NotADigit, 4, "30"}},
                    FaultRow{"LongCount", "30123456789", {TooLong, 10, "30"}},
                    FaultRow{"Blank", "10LOT 7", {SignNotAllowed, 5, "10"}},
                    FaultRow{"NotAscii", "10LOT\xc3\xb1", {SignNotAllowed, 5, "10"}},
                    FaultRow{"NoSuchIdentifier", "051", {UnknownIdentifier, 0, ""}},
                    FaultRow{"TooManyDecimals", "3106001250", {UnknownIdentifier, 0, ""}},
                    FaultRow{"NoDecimals", "392", {UnknownIdentifier, 0, ""}},
                    FaultRow{"TwoSeparators",
                             "10A\x1d\x1d"
                             "17271231",
                             {UnknownIdentifier, 4, ""}},
                    FaultRow{"TwoLots",
                             "10A\x1d"
                             "10B",
                             {Contradiction, 6, "10"}},
                    FaultRow{"SeparatorAlone", "\x1d", {Empty, 0, ""}},
                    FaultRow{"Nothing", "", {Empty, 0, ""}}),
    [](const auto& row) { return std::string(row.param.name); });

TEST(ElementStringTest, takesHarmlessSeparators)
{
    const auto plain = elementsFrom("011234567890123110LOT7A", kNow);
    ASSERT_TRUE(plain);
    for (const char* text : {"\x1d"
                             "011234567890123110LOT7A",
                             "011234567890123110LOT7A\x1d",
                             "0112345678901231\x1d"
                             "10LOT7A"})
        EXPECT_EQ(elementsFrom(text, kNow), plain) << text;
}

TEST(ElementStringTest, theSameTwiceIsTheSameOnce)
{
    EXPECT_EQ(elementsFrom("10A\x1d"
                           "10A",
                           kNow),
              elementsFrom("10A", kNow));
}

TEST(BracketedTest, isTheSameAsScanned)
{
    const auto scanned = elementsFrom(
        "010952123450001817271231"
        "10LOT7A\x1d"
        "21S(1)",
        kNow);
    ASSERT_TRUE(scanned);
    EXPECT_EQ(bracketedFrom("(01)09521234500018 (17)271231  (10)LOT7A(21)S(1) ", kNow), scanned);
    EXPECT_EQ(bracketed(*scanned), "(01)09521234500018(17)271231(10)LOT7A(21)S(1)");
    EXPECT_EQ(scannedForm(*scanned),
              "010952123450001817271231"
              "10LOT7A\x1d"
              "21S(1)");
}

TEST(BracketedTest, saysWhereItIsWrong)
{
    EXPECT_EQ(bracketedFrom("(01)09521234500019", kNow).error(), (ScanFault{CheckDigit, 17, "01"}));
    EXPECT_EQ(bracketedFrom("(05)1", kNow).error(), (ScanFault{UnknownIdentifier, 0, ""}));
    EXPECT_EQ(bracketedFrom("(10)A(10)B", kNow).error(), (ScanFault{Contradiction, 9, "10"}));
    EXPECT_EQ(bracketedFrom("(10)", kNow).error(), (ScanFault{TooShort, 4, "10"}));
}

}  // namespace
}  // namespace bathside::gs1
