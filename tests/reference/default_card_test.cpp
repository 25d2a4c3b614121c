// The default card against the table of the trade, each value with where it comes from.
//
// None of these values has a published source: "common practice" is what benches do, "from memory"
// is to be confirmed against the label. Both are defaults that every site sets for itself.

#include <algorithm>
#include <set>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/card/card.h"
#include "tests/support/cards.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;

const Card& card() { return *test::defaultCard(); }

struct Row {
    const char* name;
    LimitName limit;
    Sort sort;
    Thresholds<Millis> time;
    Thresholds<std::int64_t> birds;
    const char* source;
};

class DefaultLimit : public testing::TestWithParam<Row> {};

TEST_P(DefaultLimit, isTheTables)
{
    const Limit& limit = card().limit(GetParam().limit);
    EXPECT_EQ(limit.sort, GetParam().sort);
    EXPECT_EQ(limit.time, GetParam().time);
    EXPECT_EQ(limit.birds, GetParam().birds);
    EXPECT_EQ(limit.source, GetParam().source);
}

constexpr auto kNone = std::nullopt;
constexpr const char* kFromMemory = "from memory";

INSTANTIATE_TEST_SUITE_P(
    DefaultCard, DefaultLimit,
    testing::Values(
        Row{"Exposure",
            LimitName::Exposure,
            Sort::Limit,
            {7s, 10s, 15s},
            {},
            "limit: common practice; heads-up and overrun: from memory"},
        Row{"Thaw",
            LimitName::Thaw,
            Sort::Limit,
            {80s, 90s, 95s},
            {},
            "heads-up and limit: common practice; overrun: from memory"},
        Row{"InUse", LimitName::InUse, Sort::Limit, {45min, 60min, 62min}, {}, kFromMemory},
        Row{"BathAtPull", LimitName::BathAtPull, Sort::Limit, {}, {}, "common practice"},
        Row{"Diluent", LimitName::Diluent, Sort::Limit, {}, {}, kFromMemory},
        Row{"BathBetweenPulls",
            LimitName::BathBetweenPulls,
            Sort::Reminder,
            {kNone, kNone, 2min},
            {},
            kFromMemory},
        Row{"Reading", LimitName::Reading, Sort::Reminder, {8min, 10min, 15min}, {}, kFromMemory},
        Row{"Swirl", LimitName::Swirl, Sort::Reminder, {9min, 10min, 15min}, {}, kFromMemory},
        Row{"Needle", LimitName::Needle, Sort::Reminder, {}, {900, 1000, 1200}, kFromMemory},
        Row{"DoseCheck",
            LimitName::DoseCheck,
            Sort::Reminder,
            {kNone, 2h, kNone},
            {kNone, 5000, kNone},
            kFromMemory},
        Row{"NextPull", LimitName::NextPull, Sort::Reminder, {-5min, 0min, 5min}, {}, kFromMemory}),
    [](const auto& test) { return std::string(test.param.name); });

// Common practice: bath 28 ± 1 °C, diluent drawn 5 mL. All else here is from memory.
TEST(DefaultCardTest, hasTheOtherValues)
{
    const Card::Content& content = card().content();
    EXPECT_EQ(content.bath.target, MilliCelsius{28'000});
    EXPECT_EQ(content.bath.tolerance, MilliCelsius{1'000});
    EXPECT_EQ(content.sources.at("bath"),
              "target and tolerance: common practice; the rest: from memory");
    EXPECT_EQ(content.bath.guardPercent, 100);
    EXPECT_EQ(content.bath.settling, 5min);
    EXPECT_EQ(content.bath.steady, MilliCelsius{200});
    EXPECT_EQ(content.diluentLow, MilliCelsius{18'000});
    EXPECT_EQ(content.diluentHigh, MilliCelsius{27'000});
    EXPECT_EQ(content.dose, MicroLitres{200});
    EXPECT_EQ(content.syringe, MicroLitres{10'000});
    EXPECT_EQ(content.diluentDrawn, MicroLitres{5'000});
    EXPECT_EQ(content.sources.at("make_up"),
              "diluent drawn: common practice; the rest: from memory");
    EXPECT_EQ(content.ampoulesPerPull, 3);
    EXPECT_EQ(content.handling, 8s);
    EXPECT_EQ(content.shortestThaw, 40s);
    EXPECT_EQ(content.windowTail, 10s);
    EXPECT_EQ(content.pullSoon, 15min);
    EXPECT_EQ(content.sameTap, 350ms);
    EXPECT_EQ(content.takeBackFree, 10s);
    EXPECT_EQ(content.hushInWindow, 20s);
    EXPECT_EQ(content.hushOutside, 2min);
}

TEST(DefaultCardTest, hasARecipeOfTwoAndThreeBags)
{
    ASSERT_EQ(card().content().recipe.size(), 2U);
    EXPECT_EQ(card().content().recipe[0].id, ComponentId{"serotype 3"});
    EXPECT_EQ(card().content().recipe[1].id, ComponentId{"serotype 1"});
    EXPECT_EQ(card().content().bagVolumes,
              (std::vector<MicroLitres>{{200'000}, {400'000}, {800'000}}));
}

// From the spec: alarm not heard and diluent not inspected are blocking by default, nothing else.
TEST(DefaultCardTest, blocksByTwoChecksOnly)
{
    std::set<std::string> blocking;
    for (const Check& check : card().content().checks)
        if (check.blocking)
            blocking.insert(check.id.text);
    EXPECT_EQ(blocking, (std::set<std::string>{"alarm-heard", "diluent-inspected"}));
    EXPECT_EQ(card().content().checks.size(), 13U);
}

std::size_t characters(const std::string& text)
{
    return static_cast<std::size_t>(std::ranges::count_if(
        text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

// Words of alarms are read at 1.5 m: 40 characters at most.
TEST(DefaultCardTest, speaksShortlyInBothLanguages)
{
    for (const Limit& limit : card().content().limits)
        for (const Words& words : limit.words)
            for (const auto& [language, text] : words.byLanguage) {
                EXPECT_LE(characters(text), 40U) << text;
                EXPECT_GT(characters(text), 0U);
            }
    EXPECT_EQ(card().content().languages, (std::vector<std::string>{"en", "es"}));
    EXPECT_EQ(card().limit(LimitName::Thaw).wordsAt(Level::HeadsUp).in("en"), "Look for slush");
}

TEST(DefaultCardTest, saysTheSameInNoTwoLanguages)
{
    for (const Limit& limit : card().content().limits)
        for (const Words& words : limit.words)
            if (!words.byLanguage.empty()) {
                EXPECT_NE(words.in("en"), words.in("es"));
            }
    for (const Check& check : card().content().checks)
        EXPECT_NE(check.words.in("en"), check.words.in("es"));
}

}  // namespace
}  // namespace bathside
