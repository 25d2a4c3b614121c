#include "core/plan/read_input.h"

#include <gtest/gtest.h>

#include "tests/support/replaced.h"

namespace bathside::plan {
namespace {

using bathside::test::replaced;

using namespace std::chrono_literals;

constexpr const char* kLeast =
    R"({"day": "2026-03-05", "dose_ml": 0.2, "use_limit_min": 60, "prepare_min": 8,
        "lines": [{"name": "A", "birds": 9300, "rate_per_hour": 3000, "start": "07:00:00"}],
        "bags": [{"volume_ml": 400}],
        "recipe": [{"component": "serotype 3", "ampoules": [{"lot": "K07", "doses": 2000, "expires": "2027-01-31"}]}]})";

std::string with(const std::string& more)
{
    return replaced(kLeast, "{\"day\"", "{" + more + ", \"day\"");
}

std::string withInLine(const std::string& more)
{
    return replaced(kLeast, "{\"name\"", "{" + more + ", \"name\"");
}

TEST(ReadInputTest, fillsInWhatMayBeMissing)
{
    const auto input = dayInputFrom(kLeast);
    ASSERT_TRUE(input);
    EXPECT_EQ(input->dose, (MicroLitres{200}));
    EXPECT_EQ(input->useLimit, 60min);
    EXPECT_EQ(input->longestIdle, 10min);
    EXPECT_EQ(input->benchSlack, 0min);
    EXPECT_EQ(input->changeover, 0min);
    EXPECT_EQ(input->hangTime, 0min);
    EXPECT_EQ(input->diluteTime, 0min);
    EXPECT_EQ(input->residual, MicroLitres{});
    EXPECT_EQ(input->prime, MicroLitres{});
    EXPECT_EQ(input->preparers, 1U);
    EXPECT_EQ(input->bags[0].count, std::nullopt);
    EXPECT_EQ(input->recipe[0].lots[0].count, std::nullopt);
    EXPECT_EQ(input->now, std::nullopt);
    EXPECT_EQ(input->lines[0].start, 7h);
    EXPECT_TRUE(input->lines[0].breaks.empty());
}

TEST(ReadInputTest, takesWholeUnitsHoweverTheyAreWritten)
{
    const auto input = dayInputFrom(with(
        R"("bag_residual_ml": 4.001, "line_prime_ml": 0.29, "hang_min": 0.1, "changeover_min": 1.5e0)"));
    ASSERT_TRUE(input);
    EXPECT_EQ(input->residual, (MicroLitres{4001}));
    EXPECT_EQ(input->prime, (MicroLitres{290}));
    EXPECT_EQ(input->hangTime, 6s);
    EXPECT_EQ(input->changeover, 90s);
}

TEST(ReadInputTest, readsTheMiddleOfADay)
{
    const auto input = dayInputFrom(replaced(
        withInLine(
            R"("birds_done": 2310, "open_bag": {"volume_ml": 400, "left_ml": 120.5, "first_in_diluent": "08:41:10"},
               "mixed_bags": [{"volume_ml": 800, "first_in_diluent": "09:05:00"},
                              {"volume_ml": 400, "first_in_diluent": "09:01:00.250"}])"),
        "{\"day\"", R"({"now": "09:12:30", "day")"));
    ASSERT_TRUE(input) << input.error().key << input.error().found;
    const Line& line = input->lines[0];
    EXPECT_EQ(input->now, 9h + 12min + 30s);
    EXPECT_EQ(line.birdsDone, 2310);
    ASSERT_TRUE(line.openBag);
    EXPECT_EQ(line.openBag->left, (MicroLitres{120'500}));
    EXPECT_EQ(line.openBag->firstInDiluent, 8h + 41min + 10s);
    ASSERT_EQ(line.mixedBags.size(), 2U);
    EXPECT_EQ(line.mixedBags[0].firstInDiluent, 9h + 1min + 250ms);  // the oldest first
    EXPECT_EQ(line.mixedBags[1].left, (MicroLitres{800'000}));
}

struct Fault {
    const char* name;
    std::string document;
    std::string key;
    std::string found;
    std::string expected;
};

class ReadInputFaults : public testing::TestWithParam<Fault> {};

TEST_P(ReadInputFaults, areNamed)
{
    const auto input = dayInputFrom(GetParam().document);
    ASSERT_FALSE(input);
    EXPECT_EQ(input.error().key, GetParam().key);
    EXPECT_EQ(input.error().found, GetParam().found);
    EXPECT_EQ(input.error().expected, GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    Documents, ReadInputFaults,
    testing::Values(
        Fault{"Missing", replaced(kLeast, "\"prepare_min\": 8,", ""), "prepare_min", "nothing",
              "a number from 0 to 1440 min"},
        Fault{"NotWholeMicroLitres", replaced(kLeast, "0.2", "0.2005"), "dose_ml", "0.2005",
              "a whole number of µL"},
        Fault{"NotWholeMillis", with("\"hang_min\": 0.33333"), "hang_min", "0.33333",
              "a whole number of ms"},
        Fault{"NoDose", replaced(kLeast, "0.2", "0"), "dose_ml", "0",
              "a number above 0 and at most 100000 mL"},
        Fault{"NoLimit", replaced(kLeast, "60", "0"), "use_limit_min", "0",
              "a number above 0 and at most 1440 min"},
        Fault{"NoRate", replaced(kLeast, "3000", "0"), "lines[0].rate_per_hour", "0",
              "a whole number of birds an hour from 1 to 1000000"},
        Fault{"HalfABird", replaced(kLeast, "9300", "9300.5"), "lines[0].birds", "9300.5",
              "a whole number of birds from 0 to 1000000"},
        Fault{"TooFine", replaced(kLeast, "07:00:00", "07:00:00.0001"), "lines[0].start",
              "\"07:00:00.0001\"", "a time of the day, HH:MM:SS or HH:MM:SS.mmm, before 48:00:00"},
        Fault{"NoSuchDay", replaced(kLeast, "2026-03-05", "2026-02-29"), "day", "\"2026-02-29\"",
              "a day, YYYY-MM-DD"},
        Fault{"BreakBackwards", withInLine(R"("breaks": [{"from": "23:50:00", "to": "00:10:00"}])"),
              "lines[0].breaks[0].to", "\"00:10:00\"",
              "a time not before \"from\" (past midnight: 24:10:00)"},
        Fault{"NoDoses", replaced(kLeast, "2000", "0"), "recipe[0].ampoules[0].doses", "0",
              "a whole number of doses from 1 to 1000000"},
        Fault{"NoPreparers", with("\"preparers\": 0"), "preparers", "0",
              "a whole number from 1 to 100"},
        Fault{
            "MoreLeftThanThereWas",
            withInLine(
                R"("open_bag": {"volume_ml": 400, "left_ml": 401, "first_in_diluent": "08:41:10"})"),
            "lines[0].open_bag.left_ml", "401", "at most the bag's volume"},
        Fault{
            "UnknownKey", withInLine("\"colour\": 1"), "lines[0].colour", "an unknown key",
            "none but birds, birds_done, breaks, mixed_bags, name, open_bag, rate_per_hour, start"},
        Fault{"NoLines",
              R"({"day": "2026-03-05", "dose_ml": 1, "use_limit_min": 1, "prepare_min": 1,
                             "lines": [], "bags": [], "recipe": []})",
              "lines", "a list of 0", "a list of 1 to 50 objects"},
        Fault{
            "TwoOfOneName",
            replaced(
                kLeast, "\"lines\": [",
                R"("lines": [{"name": "A", "birds": 1, "rate_per_hour": 1, "start": "00:00:00"},)"),
            "lines[1].name", "\"A\"", "a name that no other has"}),
    [](const auto& test) { return std::string(test.param.name); });

}  // namespace
}  // namespace bathside::plan
