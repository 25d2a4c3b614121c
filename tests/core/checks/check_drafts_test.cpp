// What was typed and not yet said: read back as it was, or not at all.

#include "core/checks/check_drafts.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

using namespace std::chrono_literals;

TEST(CheckDraftsTest, weightsReadBackAsTheyWere)
{
    const WallTime at{std::chrono::sys_days{std::chrono::year(2026) / 3 / 5}.time_since_epoch()};
    for (const auto& liquid :
         {std::optional<ShotLiquid>(), std::optional<ShotLiquid>(Water{{21'500}}),
          std::optional<ShotLiquid>(OtherLiquid{1'012})}) {
        const WeighedDraft draft{.line = {"A"},
                                 .weights = {1'991, 1'996},
                                 .liquid = liquid,
                                 .dose = MicroLitres{250},
                                 .since = at + 8h};
        const auto again = weighedDraftFrom(documentOf(draft));
        ASSERT_TRUE(again);
        EXPECT_EQ(documentOf(*again), documentOf(draft));
        EXPECT_EQ(again->weights, draft.weights);
        EXPECT_EQ(again->since, draft.since);
        EXPECT_EQ(again->line, draft.line);
    }
    EXPECT_EQ(documentOf(WeighedDraft{.line = {"A"}}), "");  // nothing is unfinished
}

TEST(CheckDraftsTest, aTableReadsBackAsItWas)
{
    const VesselDraft draft{.vessel = {"K"},
                            .rows = {{0, 0}, {240, 168}},
                            .millimetres = 480,
                            .isTable = false,
                            .minimum = 80,
                            .usual = MicroLitres{250'000},
                            .cubicMetres = {}};
    const auto again = vesselDraftFrom(documentOf(draft));
    ASSERT_TRUE(again);
    EXPECT_EQ(documentOf(*again), documentOf(draft));
    EXPECT_EQ(again->rows.size(), 2U);
    EXPECT_EQ(again->millimetres, 480);
    EXPECT_EQ(documentOf(VesselDraft{.vessel = {"K"}}), "");
}

TEST(CheckDraftsTest, whatCannotBeReadIsNoDraft)
{
    for (const char* text : {"", "ten drops", R"({"weights": [1]})",
                             R"({"weights": [0], "since": "2026-03-05T06:00:00Z"})"})
        EXPECT_FALSE(weighedDraftFrom(text)) << text;
    for (const char* text :
         {"", R"({"vessel": "K", "rows": [], "table": true})",
          R"({"vessel": "K", "rows": [{"mm": 9, "dl": 9}, {"mm": 5, "dl": 10}], "table": false})"})
        EXPECT_FALSE(vesselDraftFrom(text)) << text;
}

}  // namespace
}  // namespace bathside
