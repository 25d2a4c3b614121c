#include "core/trail/store/projections.h"

#include <map>
#include <set>

#include "core/facts/points_at.h"
#include "core/record/days.h"
#include "core/trail/event_form.h"
#include "core/trail/store/queries.h"
#include "tests/core/trail/store/support.h"
#include "tests/support/sample_log.h"
#include "tests/support/temp_folder.h"
#include "tests/support/trail_days.h"

namespace bathside::store {
namespace {

using test::RandomFacts;
using test::TempFolder;
using test::TrailDays;

bool agree(const TrailDb& trail)
{
    const auto same = projectionsAgree(trail.connection());
    EXPECT_TRUE(same);
    return same.value_or(false);
}

// Openings, closings, taking back of either and of other things, and plain events, in any order.
std::vector<Entry> unruly(std::uint64_t seed, int count)
{
    RandomFacts random(seed);
    TrailDays days;
    std::vector<Entry> log;
    std::vector<Seq> shiftEvents{1};
    for (int i = 0; i < count; ++i) {
        const std::size_t choice = random.below(12);
        if (choice == 0)
            log.push_back(days.entry(ShiftOpened{"Europe/Amsterdam", {}}));
        else if (choice == 1)
            log.push_back(days.entry(ShiftClosed{}));
        else if (choice == 2)
            log.push_back(days.entry(
                FactTakenBack{{shiftEvents[random.below(shiftEvents.size())]}, std::nullopt}));
        else if (choice == 3)
            log.push_back(days.entry(FactTakenBack{{shiftEvents.back(), days.head().seq}, "why"}));
        else
            log.push_back(days.entry(random.fact()));
        if (choice < 2)
            shiftEvents.push_back(log.back().seq);
    }
    return log;
}

// The index against the rule that the program goes by, for every kind of fact.
TEST(SubjectIndexTest, knowsWhatEachFactPointsAt)
{
    const TempFolder folder;
    const auto log = test::sampleLog(3000);
    const auto trail = opened(written(folder / "trail.db", log));
    std::map<Seq, std::set<Seq>> expected, found;
    for (const Entry& entry : log) {
        for (const Seq seq : pointsAt(eventOf(entry)->fact))
            expected[seq].insert(entry.seq);
    }
    auto query = trail->connection().prepared(
        "SELECT CAST(id AS INTEGER), seq FROM subject_index WHERE what = 7");
    ASSERT_TRUE(query && query->exec());
    while (query->next())
        found[query->value(0).toLongLong()].insert(query->value(1).toLongLong());
    EXPECT_GT(expected.size(), 50U);
    EXPECT_EQ(found, expected);
}

// The rule itself, which reads every entry, against the projection, which reads none.
void expectSameAnswers(const TrailDb& trail, const std::vector<Entry>& log)
{
    DayFinder rule;
    for (const Entry& entry : log)
        rule.take(entry);
    const auto all = shiftsOpened(trail, WallTime{}, WallTime(Millis(4102444800000)));
    ASSERT_TRUE(all);
    EXPECT_EQ(*all, rule.shifts());
    const WallTime from = log[log.size() / 3].at;
    const WallTime to = log[log.size() * 2 / 3].at;
    EXPECT_EQ(*rangesOf(trail, from, to), rule.record(from, to));
    EXPECT_EQ(*rangesOf(trail, WallTime{}, from), rule.record(WallTime{}, from));
}

class UnrulyShifts : public testing::TestWithParam<int> {};

TEST_P(UnrulyShifts, areProjectedTheSameTapByTapAndAtOnce)
{
    const TempFolder folder;
    const auto log = unruly(static_cast<std::uint64_t>(GetParam()), 120);
    const auto trail = opened(folder / "trail.db");
    RandomFacts random(99);
    for (std::size_t at = 0; at < log.size();) {
        const std::size_t tap = std::min(log.size() - at, 1 + random.below(4));
        ASSERT_TRUE(trail->append(std::span(log).subspan(at, tap)));
        at += tap;
    }
    EXPECT_TRUE(agree(*trail));
    expectSameAnswers(*trail, log);
    ASSERT_TRUE(rebuild(trail->connection()));
    EXPECT_TRUE(agree(*trail));
    expectSameAnswers(*trail, log);
}

INSTANTIATE_TEST_SUITE_P(Projections, UnrulyShifts, testing::Range(1, 17));

struct Touched {
    const char* name;
    const char* sql;
};

class ProjectionsTouched : public testing::TestWithParam<Touched> {};

TEST_P(ProjectionsTouched, areFoundAndMadeAnew)
{
    const TempFolder folder;
    TrailDays days;
    auto log = days.day(60);
    const auto second = days.day(60);
    log.insert(log.end(), second.begin(), second.end());
    const auto file = written(folder / "trail.db", log);
    ASSERT_EQ(tool(file, GetParam().sql).first, SQLITE_OK);
    const auto trail = opened(file);
    EXPECT_FALSE(agree(*trail));
    ASSERT_TRUE(rebuild(trail->connection()));
    EXPECT_TRUE(agree(*trail));
}

INSTANTIATE_TEST_SUITE_P(
    Projections, ProjectionsTouched,
    testing::Values(
        Touched{"aShiftGone", "DELETE FROM shift WHERE opened_seq = 2"},
        Touched{"aShiftMoved",
                "UPDATE shift SET opened_at = '2026-03-05T00:00:00.000Z' WHERE opened_seq = 2"},
        Touched{"aShiftReopened",
                "UPDATE shift SET closed_seq = NULL, closed_at = NULL WHERE opened_seq = 2"},
        Touched{"aShiftTooMany",
                "INSERT INTO shift VALUES (9, NULL, 'UTC', '2026-03-05T00:00:00.000Z', NULL)"},
        Touched{"anEventHidden",
                "DELETE FROM subject_index WHERE what = 3 AND id = 'B1' AND seq % 5 = 0"},
        Touched{"anEventShownWrongly", "INSERT INTO subject_index VALUES (5, 'K99', 7)"},
        Touched{"looseGone", "DELETE FROM loose"},
        Touched{"looseTooMany", "INSERT INTO loose SELECT seq, at FROM event WHERE seq = 5"}),
    [](const auto& test) { return std::string(test.param.name); });

TEST(ProjectionsTest, agreeOnAReadOnlyFileAndAfterReopening)
{
    const TempFolder folder;
    const auto file = written(folder / "trail.db", TrailDays().day(200));
    EXPECT_TRUE(agree(*opened(file, Mode::ReadOnly)));
    EXPECT_TRUE(agree(*opened(file)));
}

TEST(ProjectionsTest, everyKindOfEventIsIndexed)
{
    const TempFolder folder;
    const auto log = test::sampleLog(400);
    const auto trail = opened(written(folder / "trail.db", log));
    EXPECT_TRUE(agree(*trail));
    const auto kinds =
        trail->connection().value("SELECT count(*) FROM subject_index WHERE what = 1");
    EXPECT_EQ(kinds->toInt(), 400);
}

}  // namespace
}  // namespace bathside::store
