#include "app/cli/scan.h"

#include <sstream>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "tests/app/cli/spoken.h"

namespace bathside::cli {
namespace {

using namespace std::chrono_literals;

Spoken scan(const std::string& text, bool json = false, const std::string& input = {})
{
    return spoken(input, [&](Terminal& terminal) {
        return scanVerb({text, 2026y, json}, terminal);
    });
}

TEST(ScanVerbTest, printsOneJsonObject)
{
    const Spoken said = scan("]d2010952123450001817271200310300125010LOT7A", true);
    EXPECT_EQ(said.exit, Exit::Done);
    EXPECT_EQ(said.err, "");
    const auto found = nlohmann::json::parse(said.out);
    EXPECT_EQ(found.at("kind"), "elements");
    EXPECT_EQ(found.at("symbology"), "]d2");
    EXPECT_EQ(found.at("gtin"), "09521234500018");
    EXPECT_EQ(found.at("lot"), "LOT7A");
    EXPECT_EQ(found.at("expiry"), "2027-12-31");
    EXPECT_EQ(found.at("elements").at(2).at("ai"), "3103");
    EXPECT_DOUBLE_EQ(found.at("elements").at(2).at("value"), 1.25);
    EXPECT_EQ(found.at("elements").at(1).at("data"), "271200");
}

TEST(ScanVerbTest, namesEachKind)
{
    const auto kind = [](const std::string& text) {
        return nlohmann::json::parse(scan(text, true).out).at("kind");
    };
    EXPECT_EQ(kind("]E09521234500018"), "item");
    EXPECT_EQ(kind("BSB.20260305.B4.D"), "bag");
    EXPECT_EQ(kind("BSP.MK.S"), "person");
    EXPECT_EQ(kind("K07"), "plain");
    EXPECT_EQ(kind("\xff\x01"), "plain");
    EXPECT_EQ(kind("(01)09521234500019"), "fault");
}

TEST(ScanVerbTest, saysItInWords)
{
    EXPECT_EQ(scan("(17)271200(10)LOT7A(30)12(3922)5(95)x").out,
              "(17) use by: 2027-12-31\n(10) lot: LOT7A\n(30) count: 12\n"
              "(3922) amount payable: 0.05\n(95) x\n");
    EXPECT_EQ(scan("BSB.20260305.B4.D").out, "bag B4, mixed on 2026-03-05\n");
    EXPECT_EQ(scan("]E09521234500018").out, "trade item: 09521234500018\n");
    EXPECT_EQ(scan("a\x1b[31m").out, "plain text: a?[31m\n");
}

TEST(ScanVerbTest, answersNoToAWrongCode)
{
    const Spoken said = scan("(01)09521234500019");
    EXPECT_EQ(said.exit, Exit::No);
    EXPECT_EQ(said.out, "");
    EXPECT_EQ(said.err, "bathside-cli: sign 18, in (01): the check digit is wrong.\n");
    const auto found = nlohmann::json::parse(scan("(01)09521234500019", true).out);
    EXPECT_EQ(found.at("fault"), "check-digit");
    EXPECT_EQ(found.at("at"), 17);
    EXPECT_EQ(found.at("ai"), "01");
}

TEST(ScanVerbTest, cannotUseNothing)
{
    for (const char* text : {"", "]d2"})
        EXPECT_EQ(scan(text).exit, Exit::Unusable);
    EXPECT_EQ(scan("").err, "bathside-cli: TEXT: found nothing, expected what a scanner sends.\n");
    EXPECT_EQ(scan(std::string(8000, 'x')).exit, Exit::Unusable);
    EXPECT_EQ(scan("-", true, "\n").exit, Exit::Unusable);
}

TEST(ScanVerbTest, readsStandardInputWithoutItsLineEnd)
{
    for (const char* end : {"", "\n", "\r\n", "\r"})
        EXPECT_EQ(scan("-", false,
                       std::string("10K07\x1d"
                                   "21S1") +
                           end)
                      .out,
                  "(10) lot: K07\n(21) serial number: S1\n");
}

}  // namespace
}  // namespace bathside::cli
