// Where the timeline's rows and bars stand: inside, in order, apart; now as a line.

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/ui/plan/plan_stand.h"
#include "ui/plan/timeline_layout.h"

namespace bathside::test {
namespace {

using Kind = ui::TimelineBar::Kind;

const QRectF kRoom(0, 0, 1256, 430);
constexpr double kHair = 1e-6;  // px

struct Day {
    const char* name;
    void (*set)(Stand&);
};

void running(Stand& stand)
{
    planTwoLines(stand);
    runForAnHour(stand);
}

class TimelineTest : public testing::TestWithParam<Day> {
protected:
    TimelineTest() : pages(kTenInch, QStringLiteral("en"))
    {
        GetParam().set(pages.stand());
        pages.show();
        timeline = ui::timelineOf(*pages.day());
    }

    [[nodiscard]] ui::TimelineLayout layOut(std::size_t first = 0) const
    {
        return ui::layOut(timeline, first, kRoom, metrics);
    }

    PlanStand pages;
    ui::Metrics metrics;
    ui::Timeline timeline;
};

bool isInside(const QRectF& outer, const QRectF& inner)
{
    return outer.adjusted(-kHair, -kHair, kHair, kHair).contains(inner);
}

TEST_P(TimelineTest, barsAndLivesAreInsideTheirRow)
{
    for (const ui::PlacedRow& row : layOut().rows) {
        EXPECT_TRUE(isInside(kRoom, row.room));
        EXPECT_TRUE(isInside(row.room, row.head));
        EXPECT_TRUE(isInside(row.room, row.track));
        EXPECT_LE(row.head.right(), row.track.left());
        for (const ui::PlacedBar& bar : row.bars) {
            EXPECT_TRUE(isInside(row.track, bar.plate));
            if (bar.bar.kind != Kind::Making) {
                EXPECT_TRUE(isInside(row.track, bar.age));
                EXPECT_TRUE(isInside(row.track, bar.margin));
                EXPECT_LE(bar.plate.bottom(), bar.age.top() + kHair);
                EXPECT_NEAR(bar.age.right(), bar.margin.left(), kHair);
            }
        }
    }
}

TEST_P(TimelineTest, barsAreInOrderAndApart)
{
    for (const ui::PlacedRow& row : layOut().rows) {
        std::map<std::size_t, double> ends;  // of each lane
        for (const ui::PlacedBar& bar : row.bars) {
            const auto [end, first] = ends.try_emplace(bar.bar.lane, bar.plate.left());
            EXPECT_GE(bar.plate.left(), end->second - kHair);
            end->second = bar.plate.right();
        }
    }
}

TEST_P(TimelineTest, livesOfOneTrackAreApart)
{
    for (const ui::PlacedRow& row : layOut().rows) {
        for (std::size_t i = 0; i + 1 < row.bars.size(); ++i) {
            if (row.bars[i].bar.kind != Kind::Making) {
                EXPECT_NE(row.bars[i].age.top(), row.bars[i + 1].age.top());
            }
        }
    }
}

TEST_P(TimelineTest, rowsAreApartAndTheBenchIsLast)
{
    const auto all = layOut();
    for (std::size_t i = 0; i + 1 < all.rows.size(); ++i)
        EXPECT_LT(all.rows[i].room.bottom(), all.rows[i + 1].room.top() + kHair);
    EXPECT_FALSE(timeline.rows[all.rows.back().row].line);
    EXPECT_LE(all.rows.back().room.bottom(), all.legend.top() + kHair);
}

TEST_P(TimelineTest, everyLineIsOnOneOfTheSheets)
{
    const std::size_t each = ui::linesThatFit(timeline, kRoom, metrics);
    std::size_t seen = 0;
    for (std::size_t first = 0; first + 1 < timeline.rows.size(); first += each)
        seen += layOut(first).rows.size() - 1;
    EXPECT_EQ(seen, timeline.rows.size() - 1);
}

TEST_P(TimelineTest, nowStandsWhereItsTimeIs)
{
    const auto all = layOut();
    ASSERT_TRUE(all.now);
    const QRectF& track = all.rows.front().track;
    const double part = static_cast<double>((timeline.now - timeline.from).count()) /
                        static_cast<double>((timeline.to - timeline.from).count());
    EXPECT_NEAR(*all.now, track.left() + part * track.width(), kHair);
}

TEST_P(TimelineTest, hoursAreInOrderAndTheirTextsApart)
{
    const auto hours = layOut().hours;
    ASSERT_FALSE(hours.empty());
    for (std::size_t i = 0; i + 1 < hours.size(); ++i)
        EXPECT_LE(hours[i].text.right(), hours[i + 1].text.left() + kHair);
}

TEST_P(TimelineTest, everyBagOfThePlanHasItsBar)
{
    for (std::size_t line = 0; line < pages.day()->plan.lines.size(); ++line) {
        const auto& planned = pages.day()->plan.lines[line];
        EXPECT_EQ(timeline.rows[line].bars.size(), planned ? planned->bags.size() : 0);
    }
    EXPECT_EQ(timeline.rows.back().bars.size(), pages.day()->plan.bench.schedule.size());
}

INSTANTIATE_TEST_SUITE_P(Days, TimelineTest,
                         testing::Values(Day{"morning", planTwoLines},
                                         Day{"crowded", planTooManyLines},
                                         Day{"many", planALineForEveryLetter},
                                         Day{"running", running}),
                         [](const auto& test) { return test.param.name; });

TEST(Timeline, bagsThatAreThereDifferFromPlannedOnes)
{
    PlanStand pages(kTenInch, QStringLiteral("en"));
    running(pages.stand());
    pages.show();
    const ui::Timeline timeline = ui::timelineOf(*pages.day());
    EXPECT_EQ(timeline.rows[0].bars[0].kind, Kind::Open);
    EXPECT_EQ(timeline.rows[0].bars[1].kind, Kind::Planned);
    EXPECT_EQ(timeline.rows[1].bars[0].kind, Kind::Mixed);
    EXPECT_TRUE(timeline.rows[1].bars[0].small);
    EXPECT_TRUE(timeline.rows[2].bars[0].next);
}

}  // namespace
}  // namespace bathside::test
