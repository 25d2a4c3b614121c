// What the charts are given: corrected values at their minutes, gaps, bands. Numbers by hand.

#include "ui/thermometers/bath_pictures.h"

#include <gtest/gtest.h>

#include "core/base/rfc3339.h"
#include "tests/ui/thermometers/thermo_stand.h"
#include "ui/thermometers/probe_words.h"

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;

Stamp stamp(Millis at)
{
    return {.wall = *fromRfc3339("2026-03-05T07:10:00.000+01:00") + at,
            .boot = BootTime{at},
            .bootId = {}};
}

Probe wire()
{
    Probe probe{.id = {"W"},
                .name = {},
                .certificate = {},
                .calibrated = {},
                .due = {},
                .points = {{28, 28.1, 0.1}},
                .source = OneWire{"28-1"}};
    return probe;
}

RawReading reading(Millis at, std::variant<MilliCelsius, ReadingFault> value)
{
    return {{"W"}, stamp(at), value};
}

TEST(BathTrace, isCorrectedInMinutesBeforeNowAndBrokenAtFaultsAndGaps)
{
    Bench bench;
    const std::vector<RawReading> live{
        reading(0s, MilliCelsius{28'000}),   reading(10s, MilliCelsius{27'900}),
        reading(20s, ReadingFault::Lost),    reading(30s, MilliCelsius{27'800}),
        reading(180s, MilliCelsius{28'000}),
    };
    const auto trace = traceOf(bench, wire(), live, stamp(240s));
    ASSERT_EQ(trace.size(), 5U);
    EXPECT_NEAR(trace[0].minutes, -4, 1e-9);
    EXPECT_NEAR(*trace[0].celsius, 28.1, 1e-9);
    EXPECT_FALSE(trace[2].celsius);
    const ChartContent content = traceContent(bench, wire(), trace);
    ASSERT_EQ(content.lines.size(), 3);
    EXPECT_EQ(content.lines[0].points.size(), 2);
    EXPECT_EQ(content.across.low, -5);
}

TEST(BathTrace, widensForWhatIsFarFromTheTarget)
{
    Bench bench;
    const auto content = traceContent(bench, wire(), {{-1, 22.0}, {-0.5, 33.0}});
    EXPECT_LT(content.up.low, 22);
    EXPECT_GT(content.up.high, 33);
}

// Readings by hand are the shift's own, as far back as an hour.
TEST(BathTrace, byHandIsWhatIsOnRecord)
{
    Bench bench;
    Probe glass = wire();
    glass.source = ByHand{};
    bench.readings = {{stamp(0s),
                       {.probe = {"W"},
                        .raw = MilliCelsius{28'000},
                        .corrected = MilliCelsius{28'100},
                        .expanded = MilliCelsius{100},
                        .verdict = Verdict::Inside,
                        .fault = {}}},
                      {stamp(0s),
                       {.probe = {"other"},
                        .raw = MilliCelsius{20'000},
                        .corrected = MilliCelsius{20'000},
                        .expanded = MilliCelsius{100},
                        .verdict = Verdict::Outside,
                        .fault = {}}}};
    const auto trace = traceOf(bench, glass, {}, stamp(20min));
    ASSERT_EQ(trace.size(), 1U);
    EXPECT_NEAR(trace[0].minutes, -20, 1e-9);
    const auto content = traceContent(bench, glass, trace);
    EXPECT_EQ(content.across.low, -20);
    EXPECT_EQ(content.marks.size(), 1);
}

TEST(ProbeWords, numbersHaveAsFewDecimalsAsTheyNeed)
{
    EXPECT_EQ(celsiusText(28), QStringLiteral("28"));
    EXPECT_EQ(celsiusText(28.1), QStringLiteral("28.1"));
    EXPECT_EQ(celsiusText(0.0625), QStringLiteral("0.063"));
    EXPECT_EQ(celsiusText(-0.05), QStringLiteral("−0.05"));
}

}  // namespace
}  // namespace bathside::ui
