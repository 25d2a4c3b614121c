// The default card's table, row by row, as it stands in the paper of the job (section 3): numbers
// here are written anew, not read from the card. `common practice` (no published source) is said
// beside the number, all others are from memory. A limit is kept when the elapsed time is less than
// it.

#include <functional>

#include <gtest/gtest.h>

#include "core/alarms/rows.h"
#include "tests/core/alarms/support.h"
#include "tests/support/benches.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

using Maybe = std::optional<Micros>;

struct TimedRow {
    const char* name;
    const char* alarm;
    std::function<void(BenchMaker&)> begin;  // what starts it
    Micros start;
    Maybe headsUp, limit, overrun;         // after the start
    std::function<void(BenchMaker&)> end;  // what ends it
};

void PrintTo(const TimedRow& row, std::ostream* out) { *out << row.name; }

const AmpouleRef kOne{1, 1};

// clang-format off
const std::vector<TimedRow> kTimedRows{
    {"Exposure", "exposure ampoule:1/1",
     [](BenchMaker& m) { m.out(kOne, 60s); }, 60s,
     7s, 10s /* common practice */, 15s,
     [](BenchMaker& m) { m.step(kOne, Step::Bath, 100s); }},
    {"ExposureEndedByLoss", "exposure ampoule:1/1",
     [](BenchMaker& m) { m.out(kOne, 60s); }, 60s,
     7s, 10s /* common practice */, 15s,
     [](BenchMaker& m) { m.lost(kOne, LossReason::Dropped, 100s); }},
    {"Thaw", "thaw ampoule:1/1",
     [](BenchMaker& m) { m.out(kOne, 60s).step(kOne, Step::Bath, 65s); }, 65s,
     80s /* common practice */, 90s /* common practice */, 95s,
     [](BenchMaker& m) { m.step(kOne, Step::Diluent, 200s); }},
    {"ThawEndedByLoss", "thaw ampoule:1/1",
     [](BenchMaker& m) { m.out(kOne, 60s).step(kOne, Step::Bath, 65s); }, 65s,
     80s /* common practice */, 90s /* common practice */, 95s,
     [](BenchMaker& m) { m.lost(kOne, LossReason::Broken, 200s); }},
    {"ThawOpenedInBetween", "thaw ampoule:1/1",
     [](BenchMaker& m) { m.out(kOne, 60s).step(kOne, Step::Bath, 65s).step(kOne, Step::Opened, 66s); }, 65s,
     80s /* common practice */, 90s /* common practice */, 95s,
     [](BenchMaker& m) { m.step(kOne, Step::Diluent, 200s); }},
    {"InUse", "in use bag:B1",
     [](BenchMaker& m) { m.bag("B1", 10s).mixed("B1", 120s, 150s); }, 120s,
     45min, 60min, 62min,
     [](BenchMaker& m) { m.bagOf("B1").down = BagEnd{momentAt(4000s), DownReason::Empty, {}}; }},
    {"InUseNotYetMixed", "in use bag:B1",
     [](BenchMaker& m) { m.bag("B1", 10s).bagOf("B1").firstDiluent = momentAt(120s); }, 120s,
     45min, 60min, 62min,
     [](BenchMaker& m) { m.bagOf("B1").down = BagEnd{momentAt(4000s), DownReason::Expired, {}}; }},
    {"SwirlAfterMixing", "swirl bag:B1",
     [](BenchMaker& m) { m.bag("B1", 10s).mixed("B1", 120s, 150s); }, 150s,
     9min, 10min, 15min,
     [](BenchMaker& m) { m.bagOf("B1").swirled = momentAt(1200s); }},
    {"SwirlAfterSwirl", "swirl bag:B1",
     [](BenchMaker& m) { m.bag("B1", 10s).mixed("B1", 120s, 150s).bagOf("B1").swirled = momentAt(300s); }, 300s,
     9min, 10min, 15min,
     [](BenchMaker& m) { m.bagOf("B1").holds = {BagHold{momentAt(1200s), HoldReason::Leak, {}}}; }},
    {"SwirlEndedByDown", "swirl bag:B1",
     [](BenchMaker& m) { m.bag("B1", 10s).mixed("B1", 120s, 150s); }, 150s,
     9min, 10min, 15min,
     [](BenchMaker& m) { m.bagOf("B1").down = BagEnd{momentAt(1200s), DownReason::Empty, {}}; }},
    {"ReadingSinceTheOpening", "reading bath",
     [](BenchMaker&) {}, 0s,
     8min, 10min, 15min,
     [](BenchMaker& m) { m.reading(Verdict::Undecided, 905s); }},
    {"ReadingSinceTheLast", "reading bath",
     [](BenchMaker& m) { m.reading(Verdict::Inside, 100s); }, 100s,
     8min, 10min, 15min,
     [](BenchMaker& m) { m.bench.shift->closed = momentAt(1005s); }},
    {"ReadingSinceNewWater", "reading bath",
     [](BenchMaker& m) { m.bench.waterSince = at(200s); }, 200s,
     8min, 10min, 15min,
     [](BenchMaker& m) { m.reading(Verdict::Inside, 1105s); }},
    {"DoseCheckByTime", "dose check line:A",
     [](BenchMaker& m) { m.line("A", 300s); }, 300s,
     {}, 2h, {},
     [](BenchMaker& m) { m.bench.lines[LineId{"A"}].since = momentAt(7600s); }},
    {"DoseCheckOfAStoppedLine", "dose check line:A",
     [](BenchMaker& m) { m.line("A", 300s).bench.lines[LineId{"A"}].stopped = true; }, 300s,
     {}, 2h, {},
     [](BenchMaker& m) { m.bench.lines[LineId{"A"}].since = momentAt(7600s); }},
    {"NextPull", "next pull bench",
     [](BenchMaker& m) { m.bench.nextPull = at(1000s).wall; }, 700s,
     0s, 5min, 10min,  // that is: 5 min before, at, and 5 min after the planned start
     [](BenchMaker& m) { m.bench.nextPull.reset(); }},
};
// clang-format on

class ATimedRow : public testing::TestWithParam<TimedRow> {
protected:
    void SetUp() override { GetParam().begin(m_maker); }

    [[nodiscard]] Alarms after(Micros time) const
    {
        return alarms(m_maker.bench, at(GetParam().start + time));
    }

    [[nodiscard]] std::optional<Level> levelAfter(Micros time) const
    {
        return levelIn(after(time), GetParam().alarm);
    }

    void expectRise(std::optional<Level> before, const Maybe& threshold, Level level)
    {
        if (!threshold)
            return;
        EXPECT_EQ(levelAfter(*threshold - 1us), before);
        const auto alarm = alarmIn(after(*threshold), GetParam().alarm);
        ASSERT_TRUE(alarm);
        EXPECT_EQ(alarm->level, level);
        EXPECT_EQ(alarm->since, at(GetParam().start + *threshold).boot);
        EXPECT_EQ(alarm->left, *GetParam().limit - *threshold);
        EXPECT_TRUE(alarm->certain);
    }

    BenchMaker m_maker;
};

TEST_P(ATimedRow, risesAtEachThresholdAndNotAMicrosecondBefore)
{
    const TimedRow& row = GetParam();
    expectRise({}, row.headsUp, Level::HeadsUp);
    expectRise(row.headsUp ? std::optional(Level::HeadsUp) : std::nullopt, row.limit, Level::Limit);
    expectRise(Level::Limit, row.overrun, Level::Overrun);
}

TEST_P(ATimedRow, neverEndsByTime)
{
    const TimedRow& row = GetParam();
    const Level last = row.overrun ? Level::Overrun : Level::Limit;
    EXPECT_EQ(levelAfter(6h), last);
    EXPECT_EQ(alarmIn(after(6h), row.alarm)->left, *row.limit - 6h);  // counts up beyond zero
}

TEST_P(ATimedRow, isEndedByItsFact)
{
    const TimedRow& row = GetParam();
    const Micros late = row.overrun.value_or(*row.limit);
    ASSERT_TRUE(levelAfter(late));
    row.end(m_maker);
    EXPECT_EQ(levelAfter(late), std::nullopt);
}

INSTANTIATE_TEST_SUITE_P(DefaultCard, ATimedRow, testing::ValuesIn(kTimedRows),
                         [](const auto& test) { return std::string(test.param.name); });

// --- rows counted in birds ---

struct BirdsRow {
    const char* name;
    const char* alarm;
    std::int64_t birds;  // since the last one
    std::optional<Level> level;
    std::int64_t left;
};

void PrintTo(const BirdsRow& row, std::ostream* out) { *out << row.name; }

class ABirdsRow : public testing::TestWithParam<BirdsRow> {};

TEST_P(ABirdsRow, risesAtTheBirdAndNotBefore)
{
    const BirdsRow& row = GetParam();
    BenchMaker maker;
    maker.line("A", 0s, 20'000 + row.birds);
    maker.bench.lines[LineId{"A"}].birdsAtNeedle = 20'000;
    maker.bench.lines[LineId{"A"}].birdsAtDoseCheck = 20'000;
    maker.bench.last = at(60s);
    const auto alarm = alarmIn(alarms(maker.bench, at(61s)), row.alarm);
    ASSERT_EQ(alarm ? std::optional(alarm->level) : std::nullopt, row.level);
    if (alarm) {
        EXPECT_EQ(alarm->birdsLeft, row.left);
        EXPECT_EQ(alarm->since, at(60s).boot);  // with the count
    }
}

// Needle: 900, 1,000, 1,200 birds; dose check: 5,000 birds. All from memory.
INSTANTIATE_TEST_SUITE_P(
    DefaultCard, ABirdsRow,
    testing::Values(BirdsRow{"Needle899", "needle line:A", 899, {}, 101},
                    BirdsRow{"Needle900", "needle line:A", 900, Level::HeadsUp, 100},
                    BirdsRow{"Needle999", "needle line:A", 999, Level::HeadsUp, 1},
                    BirdsRow{"Needle1000", "needle line:A", 1000, Level::Limit, 0},
                    BirdsRow{"Needle1199", "needle line:A", 1199, Level::Limit, -199},
                    BirdsRow{"Needle1200", "needle line:A", 1200, Level::Overrun, -200},
                    BirdsRow{"DoseCheck4999", "dose check line:A", 4999, {}, 1},
                    BirdsRow{"DoseCheck5000", "dose check line:A", 5000, Level::Limit, 0}),
    [](const auto& test) { return std::string(test.param.name); });

TEST(BirdsRow, keepsTheInstantAtWhichTheRecordRaisedIt)
{
    BenchMaker maker;
    maker.line("A", 0s, 1000).raised("needle line:A", Level::Limit, at(40s));
    maker.bench.last = at(60s);
    EXPECT_EQ(alarmIn(alarms(maker.bench, at(61s)), "needle line:A")->since, at(40s).boot);
    maker.bench.lines[LineId{"A"}].birds = 1200;  // a new level, not on record yet
    EXPECT_EQ(alarmIn(alarms(maker.bench, at(61s)), "needle line:A")->since, at(60s).boot);
}

TEST(DoseCheck, isDueByBirdsOrByTimeWhicheverComesFirst)
{
    BenchMaker maker;
    maker.line("A", 0s, 5000);
    maker.bench.last = at(60s);
    EXPECT_EQ(alarmIn(alarms(maker.bench, at(61s)), "dose check line:A")->since, at(60s).boot);
    maker.bench.last = at(3h);  // more birds are counted, but the two hours came first
    EXPECT_EQ(alarmIn(alarms(maker.bench, at(3h)), "dose check line:A")->since, at(2h).boot);
}

// A check that failed is due again at once, and no count of birds says how long it can wait.
TEST(DoseCheck, standsAfterOneThatFailed)
{
    BenchMaker maker;
    maker.line("A", 60s, 100);
    Line& line = maker.bench.lines[LineId{"A"}];
    line.since.seq = 7;
    line.failedDose = Gap{100, 1, 7};
    const auto alarm = alarmIn(alarms(maker.bench, at(61s)), "dose check line:A");
    ASSERT_TRUE(alarm);
    EXPECT_EQ(alarm->level, Level::Limit);
    EXPECT_EQ(alarm->since, at(60s).boot);
    EXPECT_EQ(alarm->birdsLeft, std::nullopt);
    line.since.seq = 9;  // a good one since
    EXPECT_FALSE(alarmIn(alarms(maker.bench, at(61s)), "dose check line:A"));
}

// --- the cryogen vessel ---

VesselLog vesselLosing(double litresPerDay, int readings, Millis apart)
{
    const auto vessel =
        vesselFrom(R"({"name":"1","dipstick":[{"mm":0,"litres":0},{"mm":5000,"litres":50}],)"
                   R"("minimum_litres":8,"usual_litres_per_day":0.3})");
    VesselLog log{.vessel = *vessel, .dips = {}};
    for (int i = 0; i < readings; ++i) {
        const WallTime when = at(0s).wall + i * apart;
        const double days =
            std::chrono::duration<double, std::chrono::days::period>(i * apart).count();
        log.dips.push_back({when, std::llround(4'000 - 100 * litresPerDay * days), false, i + 1});
    }
    return log;
}

// Too high is one and a half times the usual 0.3 L/day; ours, no published value.
TEST(VesselAlarm, saysHowSureItIsThatTheVacuumFails)
{
    const auto levelFor = [](double litresPerDay, int readings, Millis apart) {
        BenchMaker maker;
        maker.bench.vessels[VesselId{"1"}] = vesselLosing(litresPerDay, readings, apart);
        return levelIn(alarms(maker.bench, at(60s)), "vessel station:1");
    };
    EXPECT_EQ(levelFor(0.3, 8, 24h), std::nullopt);
    EXPECT_EQ(levelFor(0.9, 8, 24h), Level::Limit);
    EXPECT_EQ(levelFor(0.9, 2, 24h), Level::HeadsUp);  // two readings have no interval
    EXPECT_EQ(levelFor(5.0, 2, 10min), std::nullopt);  // the hand, not the vessel
    EXPECT_EQ(levelFor(0.9, 1, 24h), std::nullopt);
}

TEST(VesselAlarm, isEachVesselsOwnAndEndedByWhatIsReadNext)
{
    BenchMaker maker;
    VesselLog& failing = maker.bench.vessels[VesselId{"1"}] = vesselLosing(0.9, 8, 24h);
    maker.bench.vessels[VesselId{"2"}] = vesselLosing(0.3, 8, 24h);
    EXPECT_TRUE(alarmIn(alarms(maker.bench, at(60s)), "vessel station:1"));
    EXPECT_FALSE(alarmIn(alarms(maker.bench, at(60s)), "vessel station:2"));
    failing.dips = vesselLosing(0.3, 8, 24h).dips;
    EXPECT_FALSE(alarmIn(alarms(maker.bench, at(60s)), "vessel station:1"));
}

// 1 L every 100 mm, 8 L at least.
TEST(VesselAlarm, aLevelBelowItsMinimumStandsUntilTheDipstickShowsMore)
{
    BenchMaker maker;
    VesselLog& log = maker.bench.vessels[VesselId{"1"}] = vesselLosing(0.3, 1, 24h);
    const auto level = [&] {
        return levelIn(alarms(maker.bench, at(60s)), "vessel low station:1");
    };
    EXPECT_EQ(level(), std::nullopt);
    log.dips.push_back({at(30s).wall, 790, false, 2});
    EXPECT_EQ(level(), Level::Limit);
    EXPECT_FALSE(alarmIn(alarms(maker.bench, at(60s)), "vessel station:1"));
    log.dips.push_back({at(40s).wall, 800, true, 3});  // just at it
    EXPECT_EQ(level(), std::nullopt);
    log.vessel.reset();
    EXPECT_EQ(level(), std::nullopt);
}

// By hand: 40 L, of which 32 L are above the minimum, at 0.8 L a day: 40 days from the first
// reading.
TEST(VesselAlarm, aLevelThatMustHaveReachedItsMinimumIsReadOrFilled)
{
    BenchMaker maker;
    VesselLog& log = maker.bench.vessels[VesselId{"1"}] = vesselLosing(0.8, 4, 24h);
    const auto then = [&](Millis after) { return alarms(maker.bench, at(40 * 24h + after)); };
    const std::string id = "vessel low station:1";
    EXPECT_EQ(levelIn(then(-2s), id), std::nullopt);
    EXPECT_LE(then(-2s).nextChange.value(), at(40 * 24h + 1ms).boot);
    EXPECT_EQ(levelIn(then(1ms), id), Level::HeadsUp);
    EXPECT_EQ(levelIn(then(24h), id), Level::HeadsUp);  // until somebody looks
    log.dips.push_back({at(40 * 24h).wall, 790, false, 9});
    EXPECT_EQ(levelIn(then(24h), id), Level::Limit);
    log.dips.push_back({at(40 * 24h + 1h).wall, 4'000, true, 10});
    EXPECT_EQ(levelIn(then(24h), id), std::nullopt);
}

// --- rows by verdict ---

using Said = std::optional<Verdict>;

TEST(BathAtPull, isJudgedWhereTheAmpoulesWentInAndStandsUntilThePullCloses)
{
    const auto levelFor = [](Said verdict) {
        BenchMaker maker;
        maker.out({3, 1}, 60s).step({3, 1}, Step::Bath, 65s).bathAtPull(3, verdict);
        return levelIn(alarms(maker.bench, at(65s)), "bath at pull pull:3");
    };
    EXPECT_EQ(levelFor(Verdict::Inside), std::nullopt);
    EXPECT_EQ(levelFor(Verdict::Undecided), Level::HeadsUp);
    EXPECT_EQ(levelFor(std::nullopt), Level::HeadsUp);  // no valid reading
    EXPECT_EQ(levelFor(Verdict::Outside), Level::Limit);

    BenchMaker maker;
    maker.out({3, 1}, 60s);
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(64s)), "bath at pull pull:3"));  // not in yet
    maker.step({3, 1}, Step::Bath, 65s).bathAtPull(3, Verdict::Outside);
    const auto alarm = alarmIn(alarms(maker.bench, at(70s)), "bath at pull pull:3");
    EXPECT_EQ(alarm->since, at(65s).boot);
    EXPECT_EQ(alarm->left, std::nullopt);
    maker.lost({3, 1}, LossReason::Abandoned, 80s).closePull(80s);
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(81s)), "bath at pull pull:3"));
}

TEST(BathAtPull, leavingTheToleranceAroundAnAmpouleIsAHeadsUp)
{
    constexpr auto kPull = "bath at pull pull:3";
    const auto inBath = [] {
        BenchMaker maker;
        maker.reading(Verdict::Inside, 50s).out({3, 1}, 60s).out({3, 2}, 60s);
        maker.step({3, 1}, Step::Bath, 65s).step({3, 2}, Step::Bath, 67s);
        maker.bathAtPull(3, Verdict::Inside);
        return maker;
    };
    BenchMaker maker = inBath();
    maker.reading(Verdict::Undecided, 70s);
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(79s)), kPull));
    maker.reading(Verdict::Outside, 80s).reading(Verdict::Outside, 90s);
    const auto alarm = alarmIn(alarms(maker.bench, at(95s)), kPull);
    ASSERT_TRUE(alarm);
    EXPECT_EQ(alarm->level, Level::HeadsUp);
    EXPECT_EQ(alarm->since, at(80s).boot);
    maker.step({3, 1}, Step::Opened, 130s);
    EXPECT_TRUE(levelIn(alarms(maker.bench, at(131s)), kPull));  // the other one still lies in it
    maker.step({3, 2}, Step::Opened, 135s);
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(136s)), kPull));

    maker = inBath();
    maker.reading(Verdict::Outside, 80s).reading(Verdict::Inside, 90s);
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(95s)), kPull));
}

// 18 to 27 °C, both ends within; from memory.
TEST(Diluent, isOutsideBeyondTheCardsWindow)
{
    const auto levelFor = [](std::int64_t milliCelsius) {
        BenchMaker maker;
        maker.bag("B1", 30s).bagOf("B1").temperature = MilliCelsius{milliCelsius};
        return levelIn(alarms(maker.bench, at(30s)), "diluent bag:B1");
    };
    EXPECT_EQ(levelFor(17'999), Level::Limit);
    EXPECT_EQ(levelFor(18'000), std::nullopt);
    EXPECT_EQ(levelFor(27'000), std::nullopt);
    EXPECT_EQ(levelFor(27'001), Level::Limit);
}

TEST(Diluent, standsUntilTheBagIsMixedHeldOrDown)
{
    BenchMaker maker;
    maker.bag("B1", 30s).bagOf("B1").temperature = MilliCelsius{30'000};
    EXPECT_EQ(alarmIn(alarms(maker.bench, at(2h)), "diluent bag:B1")->since, at(30s).boot);
    const auto standsAfter = [&maker](auto&& change) {
        BenchMaker changed = maker;
        change(changed.bagOf("B1"));
        return levelIn(alarms(changed.bench, at(2h)), "diluent bag:B1").has_value();
    };
    EXPECT_TRUE(standsAfter([](Bag& bag) { bag.firstDiluent = momentAt(60s); }));
    EXPECT_FALSE(standsAfter([](Bag& bag) { bag.mixed = momentAt(60s); }));
    EXPECT_FALSE(standsAfter([](Bag& bag) {
        bag.holds = {BagHold{momentAt(60s), HoldReason::Other, {}}};
    }));
    EXPECT_FALSE(standsAfter([](Bag& bag) {
        bag.down = BagEnd{momentAt(60s), DownReason::Discarded, {}};
    }));
}

// --- the bath between pulls ---

const char* const kBath = "bath between pulls bath";

TEST(BathBetweenPulls, isDueOnceAPullIsWithinFifteenMinutes)  // from memory
{
    BenchMaker maker;
    maker.reading(Verdict::Outside, 0s).bench.nextPull = at(1000s).wall;
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(100s - 1us)), kBath));
    const auto alarm = alarmIn(alarms(maker.bench, at(100s)), kBath);
    EXPECT_EQ(alarm->level, Level::Limit);
    EXPECT_EQ(alarm->since, at(100s).boot);
    // 2 min from the moment it is passed, that is: from when somebody could have acted on it
    EXPECT_EQ(levelIn(alarms(maker.bench, at(220s - 1us)), kBath), Level::Limit);
    EXPECT_EQ(levelIn(alarms(maker.bench, at(220s)), kBath), Level::Overrun);
    EXPECT_EQ(levelIn(alarms(maker.bench, at(2000s)), kBath), Level::Overrun);  // the start is past
}

TEST(BathBetweenPulls, isDueWhileABagIsBeingMadeUpAndNoPullIsOpen)
{
    BenchMaker maker;
    maker.reading(Verdict::Undecided, 10s);
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(60s)), kBath));
    maker.bag("B1", 30s);
    EXPECT_EQ(levelIn(alarms(maker.bench, at(60s)), kBath), Level::HeadsUp);
    EXPECT_EQ(alarmIn(alarms(maker.bench, at(60s)), kBath)->since, at(30s).boot);
    maker.out({1, 1}, 61s);
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(61s)), kBath));
    maker.lost({1, 1}, LossReason::Broken, 70s).closePull(70s);
    EXPECT_EQ(alarmIn(alarms(maker.bench, at(80s)), kBath)->since, at(70s).boot);
    maker.mixed("B1", 75s, 90s);
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(90s)), kBath));
}

TEST(BathBetweenPulls, countsFromTheFirstOfTheReadingsThatSayTheSame)
{
    BenchMaker maker;
    maker.bag("B1", 0s).reading(Verdict::Outside, 10s).reading(Verdict::Undecided, 20s);
    EXPECT_EQ(levelIn(alarms(maker.bench, at(200s)), kBath), Level::HeadsUp);
    maker.reading(Verdict::Outside, 30s).reading(Verdict::Outside, 100s);
    EXPECT_EQ(alarmIn(alarms(maker.bench, at(149s)), kBath)->since, at(30s).boot);
    EXPECT_EQ(levelIn(alarms(maker.bench, at(150s)), kBath), Level::Overrun);
    maker.reading(Verdict::Inside, 160s);
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(160s)), kBath));
}

TEST(BathBetweenPulls, goesOnWhileWhatMadeThePullDueChanges)
{
    BenchMaker maker;
    maker.bag("B1", 0s).reading(Verdict::Outside, 10s).raised(kBath, Level::Overrun, at(130s));
    maker.bench.nextPull = at(15min + 100s).wall;  // due soon from 100 s on
    maker.mixed("B1", 50s, 140s);                  // and no bag is being made up any more
    EXPECT_EQ(alarmIn(alarms(maker.bench, at(150s)), kBath)->level, Level::Overrun);
    EXPECT_EQ(alarmIn(alarms(maker.bench, at(150s)), kBath)->since, at(130s).boot);
    maker.bench.nextPull = at(1h).wall;  // planned anew: nothing is due soon
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(150s)), kBath));
}

TEST(BathBetweenPulls, isNotOverrunBeforeAnybodyCouldKnow)
{
    BenchMaker maker;
    maker.reading(Verdict::Outside, 10s).bench.nextPull = at(15min + 20s).wall;
    maker.bench.last = at(500s);  // that it was planned for, only now
    EXPECT_EQ(alarmIn(alarms(maker.bench, at(500s)), kBath)->level, Level::Limit);
    EXPECT_EQ(levelIn(alarms(maker.bench, at(620s)), kBath), Level::Overrun);
}

TEST(BathBetweenPulls, isEndedByAReadingNotByForgettingOne)
{
    BenchMaker maker;
    maker.bag("B1", 0s).reading(Verdict::Outside, 10s);
    EXPECT_EQ(levelIn(alarms(maker.bench, at(3h)), kBath), Level::Overrun);
    maker.bench.waterSince = at(2h);  // that water is gone
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(3h)), kBath));
}

TEST(Reading, countsOnlyGoodOnes)
{
    BenchMaker maker;
    maker.reading(Verdict::Inside, 100s).faulty(ReadingFault::Jump, 500s);
    EXPECT_EQ(levelIn(alarms(maker.bench, at(580s)), "reading bath"), Level::HeadsUp);
}

}  // namespace
}  // namespace bathside::test
