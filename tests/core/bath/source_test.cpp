#include <algorithm>

#include <gtest/gtest.h>

#include "core/bath/recorded_source.h"
#include "core/bath/simulated_source.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;
using Value = std::variant<MilliCelsius, ReadingFault>;

const Stamp kStart{.wall = WallTime(1'772'000'000s), .boot = 5'000s, .bootId = {1}};

std::vector<RawReading> allBy(ReadingSource& source, Micros since)
{
    std::vector<RawReading> all;
    while (auto reading = source.poll(shifted(kStart, since)))
        all.push_back(*reading);
    return all;
}

TEST(RecordedSourceTest, playsPlainLinesWhenTheyAreDue)
{
    const auto source =
        RecordedSource::from("# bath\n0 27.9\n\n10.5 28.0625\r\n20 open line\n", {"P1"}, kStart);
    ASSERT_TRUE(source);
    EXPECT_EQ(allBy(**source, 0s).size(), 1U);
    EXPECT_TRUE(allBy(**source, 10'499ms).empty());
    const auto second = allBy(**source, 10'500ms);
    ASSERT_EQ(second.size(), 1U);
    EXPECT_EQ(second[0].probe, ProbeId{"P1"});
    EXPECT_EQ(second[0].at, shifted(kStart, 10'500ms));
    EXPECT_EQ(second[0].value, Value(MilliCelsius{28'063}));
    const auto third = allBy(**source, 1h);
    ASSERT_EQ(third.size(), 1U);
    EXPECT_EQ(third[0].value, Value(ReadingFault::OpenLine));
    EXPECT_TRUE(allBy(**source, 2h).empty());
}

TEST(RecordedSourceTest, playsJsonLinesFromTheirFirstInstant)
{
    const auto source = RecordedSource::from(
        R"({"t": "2026-03-05T07:00:00.000+01:00", "indicated_c": 28.1}
{"t": "2026-03-05T06:00:05Z", "fault": "lost"}
{"t": "2026-03-05T06:00:06Z", "w1": ["c0 01 4b 46 7f ff 0c 10 2e : crc=2e YES", "c0 01 4b 46 7f ff 0c 10 2e t=28000"]}
{"t": "2026-03-05T06:00:07Z", "w1": ["c0 01 4b 46 7f ff 0c 10 2e : crc=2e NO", "c0 01 4b 46 7f ff 0c 10 2e t=28000"]})",
        {"P1"}, kStart);
    ASSERT_TRUE(source) << source.error().found;
    const auto all = allBy(**source, 1min);
    ASSERT_EQ(all.size(), 4U);
    EXPECT_EQ(all[0].at, kStart);
    EXPECT_EQ(all[0].value, Value(MilliCelsius{28'100}));
    EXPECT_EQ(all[1].at, shifted(kStart, 5s));
    EXPECT_EQ(all[1].value, Value(ReadingFault::Lost));
    EXPECT_EQ(all[2].value, Value(MilliCelsius{28'000}));
    EXPECT_EQ(all[3].value, Value(ReadingFault::CheckFailed));
}

struct BadRecording {
    const char* name;
    const char* text;
    std::size_t line;
};

class RecordingFaults : public testing::TestWithParam<BadRecording> {};

TEST_P(RecordingFaults, nameTheLine)
{
    const auto source = RecordedSource::from(GetParam().text, {"P1"}, kStart);
    ASSERT_FALSE(source);
    EXPECT_EQ(source.error().line, GetParam().line);
    EXPECT_FALSE(source.error().expected.empty());
}

INSTANTIATE_TEST_SUITE_P(
    Recording, RecordingFaults,
    testing::Values(
        BadRecording{"NoNumber", "warm\n", 1}, BadRecording{"NoValue", "0 28\n5\n", 2},
        BadRecording{"DecimalComma", "0 28,1\n", 1}, BadRecording{"BeforeTheStart", "-1 28\n", 1},
        BadRecording{"BackInTime", "#\n5 28\n4 28\n", 3}, BadRecording{"NoJson", "{\n", 1},
        BadRecording{"NoInstant", R"({"indicated_c": 28})", 1},
        BadRecording{"LocalTime", R"({"t": "2026-03-05T07:00:00", "indicated_c": 28})", 1},
        BadRecording{"NoReading", R"({"t": "2026-03-05T07:00:00Z"})", 1},
        BadRecording{"TwoReadings",
                     R"({"t": "2026-03-05T07:00:00Z", "indicated_c": 28, "fault": "lost"})", 1},
        BadRecording{"BackInTimeByOffset",
                     "{\"t\": \"2026-03-05T07:00:00Z\", \"indicated_c\": 28}\n"
                     "{\"t\": \"2026-03-05T07:30:00+01:00\", \"indicated_c\": 28}",
                     2},
        BadRecording{"NotANumber", "0 nan\n", 1}, BadRecording{"Endless", "1e300 28\n", 1}),
    [](const auto& test) { return std::string(test.param.name); });

TEST(SimulatedSourceTest, readsEveryTenSecondsAroundItsLevel)
{
    SimulatedSource source({}, {"sim"}, kStart);
    const auto all = allBy(source, 20min);
    ASSERT_EQ(all.size(), 121U);
    const auto [low, high] = std::ranges::minmax_element(
        all, {}, [](const RawReading& reading) { return std::get<MilliCelsius>(reading.value); });
    EXPECT_GE(std::get<MilliCelsius>(low->value), MilliCelsius{27'850});
    EXPECT_LE(std::get<MilliCelsius>(high->value), MilliCelsius{28'150});
    EXPECT_LT(std::get<MilliCelsius>(low->value), std::get<MilliCelsius>(high->value));
    EXPECT_EQ(all[7].at, shifted(kStart, 70s));
}

TEST(SimulatedSourceTest, dipsAndRecovers)
{
    SimulatedSource source({.level = 28, .drift = 0, .recovery = 60s}, {"sim"}, kStart);
    source.dip(shifted(kStart, 30s), 0.8);
    const auto all = allBy(source, 10min);
    const auto value = [&](std::size_t i) { return std::get<MilliCelsius>(all.at(i).value).count; };
    EXPECT_EQ(value(2), 28'000);
    EXPECT_EQ(value(3), 27'188);  // 28 − 0.8, to the sensor's step of 0.0625 °C
    EXPECT_EQ(value(9), 27'688);  // a minute later: 28 − 0.8 / e = 27.7057
    EXPECT_EQ(value(60), 28'000);
}

TEST(SimulatedSourceTest, givesTheSameReadingsAgain)
{
    SimulatedSource one({}, {"sim"}, kStart);
    SimulatedSource two({}, {"sim"}, kStart);
    one.dip(kStart, 0.5);
    two.dip(kStart, 0.5);
    const auto first = allBy(one, 1h);
    const auto second = allBy(two, 1h);
    EXPECT_TRUE(std::ranges::equal(first, second, {}, &RawReading::value, &RawReading::value));
}

}  // namespace
}  // namespace bathside
