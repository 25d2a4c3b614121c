#include "core/bath/w1_text.h"

#include <array>
#include <string>
#include <vector>

#include <gtest/gtest.h>

namespace bathside {
namespace {

using Read = std::variant<MilliCelsius, ReadingFault>;

std::string text(const std::string& bytes, const std::string& crc, const std::string& answer,
                 const std::string& t)
{
    return bytes + " " + crc + " : crc=" + crc + " " + answer + "\n" + bytes + " " + crc +
           " t=" + t + "\n";
}

TEST(W1CrcTest, agreesWithThePublishedVectors)
{
    // Published: Maxim Application Note 27, ROM 02 1C B8 01 00 00 00 has the CRC A2, and with it
    // the remainder 0.
    const std::vector<std::uint8_t> rom{0x02, 0x1c, 0xb8, 0x01, 0x00, 0x00, 0x00};
    EXPECT_EQ(w1Crc(rom), 0xa2);
    const std::vector<std::uint8_t> whole{0x02, 0x1c, 0xb8, 0x01, 0x00, 0x00, 0x00, 0xa2};
    EXPECT_EQ(w1Crc(whole), 0);
    // From memory, and computed with an independent program: the check value of CRC-8/MAXIM for
    // "123456789".
    const std::string digits = "123456789";
    EXPECT_EQ(w1Crc(std::vector<std::uint8_t>(digits.begin(), digits.end())), 0xa1);
    // Computed with an independent program: a dead bus of zeros passes, one of ones does not.
    EXPECT_EQ(w1Crc(std::vector<std::uint8_t>(8, 0x00)), 0x00);
    EXPECT_EQ(w1Crc(std::vector<std::uint8_t>(8, 0xff)), 0xc9);
}

struct W1Row {
    const char* name;
    std::string text;
    Read expected;
};

class ReadsW1 : public testing::TestWithParam<W1Row> {};

TEST_P(ReadsW1, asTemperatureOrFault) { EXPECT_EQ(readW1(GetParam().text), GetParam().expected); }

std::string nameOfW1(const testing::TestParamInfo<W1Row>& row) { return row.param.name; }

// Constructed after the kernel's own format (drivers/w1/slaves/w1_therm.c, w1_slave_show); CRCs
// computed with an independent program. Bytes for a temperature: DS18B20 data sheet, table 1 (from
// memory, arithmetic computed).
INSTANTIATE_TEST_SUITE_P(
    Temperatures, ReadsW1,
    testing::Values(
        W1Row{"Body", text("50 02 4b 46 7f ff 0c 10", "af", "YES", "37000"), MilliCelsius{37'000}},
        W1Row{"Bath", text("c0 01 4b 46 7f ff 0c 10", "2e", "YES", "28000"), MilliCelsius{28'000}},
        W1Row{"CutToMilli", text("b1 01 4b 46 7f ff 0c 10", "d8", "YES", "27062"),
              MilliCelsius{27'062}},
        W1Row{"BathMinusOne", text("b0 01 4b 46 7f ff 0c 10", "9b", "YES", "27000"),
              MilliCelsius{27'000}},
        W1Row{"Room", text("40 01 4b 46 7f ff 0c 10", "bc", "YES", "20000"), MilliCelsius{20'000}},
        W1Row{"Fridge", text("40 00 4b 46 7f ff 0c 10", "81", "YES", "4000"), MilliCelsius{4'000}},
        W1Row{"BelowZero", text("f8 ff 4b 46 7f ff 0c 10", "c3", "YES", "-500"),
              MilliCelsius{-500}},
        W1Row{"Coldest", text("90 fc 4b 46 7f ff 0c 10", "4f", "YES", "-55000"),
              MilliCelsius{-55'000}},
        W1Row{"Hottest", text("d0 07 4b 46 7f ff 0c 10", "f4", "YES", "125000"),
              MilliCelsius{125'000}},
        W1Row{"ByteSixOther", text("72 01 4b 46 7f ff 0e 10", "57", "YES", "23125"),
              MilliCelsius{23'125}},
        W1Row{"LowerCaseYes", text("c0 01 4b 46 7f ff 0c 10", "2e", "yes", "28000"),
              MilliCelsius{28'000}},
        W1Row{"CarriageReturns",
              "c0 01 4b 46 7f ff 0c 10 2e : crc=2e YES\r\nc0 01 4b 46 7f ff 0c 10 2e t=28000\r\n",
              MilliCelsius{28'000}}),
    nameOfW1);

INSTANTIATE_TEST_SUITE_P(
    Faults, ReadsW1,
    testing::Values(
        W1Row{"Empty", "", ReadingFault::Empty}, W1Row{"Blank", " \n\n", ReadingFault::Empty},
        // The kernel computes t= from the bad read while it shows the last good bytes: never to be
        // looked at.
        W1Row{"No", text("c0 01 4b 46 7f ff 0c 10", "2e", "NO", "28000"),
              ReadingFault::CheckFailed},
        W1Row{"LowerCaseNo", text("c0 01 4b 46 7f ff 0c 10", "2e", "no", "28000"),
              ReadingFault::CheckFailed},
        W1Row{"YesButNot", text("c0 01 4b 46 7f ff 0c 11", "2e", "YES", "28000"),
              ReadingFault::CheckFailed},
        W1Row{"OtherCrcShown",
              "c0 01 4b 46 7f ff 0c 10 2e : crc=2f YES\nc0 01 4b 46 7f ff 0c 10 2e t=28000\n",
              ReadingFault::CheckFailed},
        W1Row{"AllOnes", text("ff ff ff ff ff ff ff ff", "ff", "NO", "-62"),
              ReadingFault::CheckFailed},
        W1Row{"AllZeros", text("00 00 00 00 00 00 00 00", "00", "YES", "0"), ReadingFault::Shorted},
        W1Row{"PowerOn", text("50 05 4b 46 7f ff 0c 10", "1c", "YES", "85000"),
              ReadingFault::PowerOn},
        W1Row{"TooLittlePower", text("ff 07 4b 46 7f ff 0c 10", "a6", "YES", "127937"),
              ReadingFault::PowerOn},
        W1Row{"OpenLine", text("c0 01 4b 46 7f ff 0c 10", "2e", "YES", "-127000"),
              ReadingFault::OpenLine},
        W1Row{"TooHot", text("c0 01 4b 46 7f ff 0c 10", "2e", "YES", "125001"),
              ReadingFault::Implausible},
        W1Row{"TooCold", text("c0 01 4b 46 7f ff 0c 10", "2e", "YES", "-55001"),
              ReadingFault::Implausible},
        W1Row{"OtherText", "28.0 C", ReadingFault::Unreadable},
        W1Row{"OneLine", "c0 01 4b 46 7f ff 0c 10 2e : crc=2e YES\n", ReadingFault::Unreadable},
        W1Row{"NoValue", text("c0 01 4b 46 7f ff 0c 10", "2e", "YES", ""),
              ReadingFault::Unreadable},
        W1Row{"ValueWithText", text("c0 01 4b 46 7f ff 0c 10", "2e", "YES", "28000C"),
              ReadingFault::Unreadable},
        W1Row{"ValueTooLong", text("c0 01 4b 46 7f ff 0c 10", "2e", "YES", "99999999999999999999"),
              ReadingFault::Unreadable},
        W1Row{"OtherBytesKept",
              "c0 01 4b 46 7f ff 0c 10 2e : crc=2e YES\n40 01 4b 46 7f ff 0c 10 bc t=20000\n",
              ReadingFault::Unreadable},
        W1Row{"NoAnswer",
              "c0 01 4b 46 7f ff 0c 10 2e : crc=2e\nc0 01 4b 46 7f ff 0c 10 2e t=28000\n",
              ReadingFault::Unreadable},
        W1Row{"EightBytes", "c0 01 4b 46 7f ff 0c 10 : crc=2e YES\n", ReadingFault::Unreadable}),
    nameOfW1);

TEST(ReadsW1Test, takesNoSingleFlippedBitOfTheFirstLine)
{
    const std::array<std::uint8_t, 9> good{0xc0, 0x01, 0x4b, 0x46, 0x7f, 0xff, 0x0c, 0x10, 0x2e};
    constexpr std::string_view kDigits = "0123456789abcdef";
    for (std::size_t bit = 0; bit < good.size() * 8; ++bit) {
        auto bytes = good;
        bytes.at(bit / 8) ^= static_cast<std::uint8_t>(1U << (bit % 8));
        std::string hex;
        for (const std::uint8_t byte : bytes)
            hex += std::string{kDigits[byte >> 4U], kDigits[byte & 15U], ' '};
        EXPECT_EQ(readW1(hex + ": crc=2e YES\n" + hex + "t=28000\n"),
                  Read(ReadingFault::CheckFailed))
            << hex;
    }
}

}  // namespace
}  // namespace bathside
