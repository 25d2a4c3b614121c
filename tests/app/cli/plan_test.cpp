#include "app/cli/plan.h"

#include <sstream>
#include <string>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "tests/app/cli/spoken.h"
#include "tests/support/replaced.h"

namespace bathside::cli {
namespace {

constexpr const char* kDay =
    R"({"day": "2026-03-05", "dose_ml": 0.2, "use_limit_min": 60, "hang_min": 3, "changeover_min": 1,
        "bench_slack_min": 5, "bag_residual_ml": 4, "line_prime_ml": 20, "prepare_min": 8, "preparers": 1,
        "lines": [{"name": "A", "birds": 2500, "rate_per_hour": 3000, "start": "23:40:00", "breaks": []}],
        "bags": [{"volume_ml": 400, "count": 20}],
        "recipe": [{"component": "serotype 3", "ampoules": [{"lot": "K07", "doses": 2000, "count": 30, "expires": "2027-01-31"}]}]})";

Spoken planned(const std::string& day, bool json)
{
    return spoken(
        day, [&](Terminal& terminal) { return planVerb({.file = "-", .json = json}, terminal); });
}

// By hand: 400 mL − 4 − 20 hold 1,880 birds (37 min 36 s), 400 − 4 hold 1,980: two bags of one
// ampoule of 2,000 doses each; after a minute the other 620 take 12 min 24 s.
TEST(PlanVerbTest, printsOneJsonObject)
{
    const Spoken said = planned(kDay, true);
    EXPECT_EQ(said.exit, Exit::Done);
    EXPECT_EQ(said.err, "");
    EXPECT_EQ(
        nlohmann::json::parse(said.out),
        nlohmann::json::parse(
            R"({"feasible": true, "lines": [{"name": "A", "feasible": true, "doses_opened": 4000, "diluent_ml": 800,
                "finish": "24:31:00.000", "bags": [
                {"volume_ml": 400, "lots": [{"component": "serotype 3", "lot": "K07", "ampoules": 1}], "birds": 1880,
                 "pull_start": "23:29:00.000", "mixed_by": "23:37:00.000", "first_bird": "23:40:00.000",
                 "last_bird": "24:17:36.000", "age_at_last_min": 40.6, "margin_min": 19.4, "doses_left": 120},
                {"volume_ml": 400, "lots": [{"component": "serotype 3", "lot": "K07", "ampoules": 1}], "birds": 620,
                 "pull_start": "24:07:36.000", "mixed_by": "24:15:36.000", "first_bird": "24:18:36.000",
                 "last_bird": "24:31:00.000", "age_at_last_min": 15.4, "margin_min": 44.6, "doses_left": 1380}]}],
                "bench": {"feasible": true, "preparers_needed": 1, "slack_needed_min": null, "schedule": [
                 {"line": "A", "bag": 1, "preparer": 1, "start": "23:29:00.000", "mixed": "23:37:00.000"},
                 {"line": "A", "bag": 2, "preparer": 1, "start": "24:07:36.000", "mixed": "24:15:36.000"}]},
                "totals": {"doses_opened": 4000, "birds": 2500, "doses_discarded": 1500, "bags": 2,
                 "bags_by_size": [{"volume_ml": 400, "count": 2}],
                 "ampoules": [{"component": "serotype 3", "lot": "K07", "count": 2}]},
                "warnings": []})"));
}

TEST(PlanVerbTest, speaksToPeople)
{
    const Spoken said = planned(kDay, false);
    EXPECT_EQ(said.exit, Exit::Done);
    EXPECT_EQ(said.out,
              "Line A: 2 new bags, 4000 doses opened, 800 mL of diluent, last bird at 24:31:00\n"
              "  1. 400 mL, 1 × K07 (serotype 3); pull at 23:29:00, mixed by 23:37:00; 1880 birds "
              "from 23:40:00 to 24:17:36; margin 19.4 min, 120 doses left\n"
              "  2. 400 mL, 1 × K07 (serotype 3); pull at 24:07:36, mixed by 24:15:36; 620 birds "
              "from 24:18:36 to 24:31:00; margin 44.6 min, 1380 doses left\n"
              "Bench: every bag can be made in time; 1 preparer would do.\n"
              "In all: 2500 birds, 4000 doses opened, 1500 of them discarded; 2 bags of 400 mL; 2 "
              "ampoules of K07 (serotype 3).\n");
}

TEST(PlanVerbTest, answersNoWithTheReason)
{
    const Spoken said = planned(test::replaced(kDay, "\"count\": 30", "\"count\": 1"), true);
    EXPECT_EQ(said.exit, Exit::No);
    const auto line = nlohmann::json::parse(said.out).at("lines").at(0);
    EXPECT_EQ(line.at("feasible"), false);
    EXPECT_EQ(line.at("why"), "Not enough ampoules of serotype 3 for 2500 birds: 1 missing.");
}

TEST(PlanVerbTest, saysWhatItCannotUse)
{
    const Spoken said =
        planned(test::replaced(kDay, "\"dose_ml\": 0.2", "\"dose_ml\": 0.2005"), true);
    EXPECT_EQ(said.exit, Exit::Unusable);
    EXPECT_EQ(said.out, "");
    EXPECT_EQ(said.err,
              "bathside-cli: standard input, key dose_ml: found 0.2005, expected a whole number of "
              "µL.\n");
}

}  // namespace
}  // namespace bathside::cli
