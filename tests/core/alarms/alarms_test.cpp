#include "core/alarms/alarms.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/alarms/support.h"
#include "tests/support/benches.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;
using testing::ElementsAre;
using testing::IsEmpty;

// --- order and names ---

TEST(Alarms, noneAreDueOnAQuietBench)
{
    BenchMaker maker;
    maker.bag("B1", 0s).mixed("B1", 10s, 20s).reading(Verdict::Inside, 30s).line("A", 40s, 100);
    const Alarms state = alarms(maker.bench, at(60s));
    EXPECT_THAT(state.due, IsEmpty());
    EXPECT_EQ(state.nextChange, at(30s + 8min).boot);  // the reading's heads-up comes first
}

TEST(Alarms, needNoCardToSayWhatIsWrongWithTheStation)
{
    Bench bench;
    bench.soundLost = true;
    EXPECT_THAT(idsIn(alarms(bench, at(0s))), ElementsAre("no sound station"));
}

TEST(Alarms, standWorstFirstAndTheOldestFirstAmongEquals)
{
    BenchMaker maker;
    maker.out({1, 1}, 0s).out({1, 2}, 1s).out({1, 3}, 8s).out({1, 4}, -10s).out({1, 5}, 100s);
    // after 15.5 s: 1 and 4 are overrun (since 15 s and 5 s), 2 is past its limit, 3 has its
    // heads-up
    EXPECT_THAT(idsIn(alarms(maker.bench, at(15'500ms))),
                ElementsAre("exposure ampoule:1/4", "exposure ampoule:1/1", "exposure ampoule:1/2",
                            "exposure ampoule:1/3"));
}

TEST(Alarms, keepTheOrderOfTheBenchWhereTheyAreEquallyOld)
{
    BenchMaker maker;
    maker.out({1, 1}, 0s).out({1, 2}, 0s).out({1, 10}, 0s);
    EXPECT_THAT(
        idsIn(alarms(maker.bench, at(7s))),
        ElementsAre("exposure ampoule:1/1", "exposure ampoule:1/2", "exposure ampoule:1/10"));
}

TEST(Alarms, keepOneIdAndSubjectWhileTheirLevelRises)
{
    const BenchMaker maker = outAt(0s);
    for (const Micros run : {Micros(7s), Micros(10s), Micros(15s)}) {
        const auto alarm = alarmIn(alarms(maker.bench, at(run)), kExposure);
        ASSERT_TRUE(alarm);
        EXPECT_EQ(alarm->subject, subjectOf(AmpouleRef{1, 1}));
        EXPECT_EQ(alarm->cause, AlarmCause(LimitName::Exposure));
        EXPECT_EQ(std::ranges::count(idsIn(alarms(maker.bench, at(run))), kExposure), 1);
    }
}

// --- limits of the component and the bag ---

TEST(Alarms, goByEachComponentsOwnLimits)
{
    BenchMaker maker(cardWith(R"({"recipe": [
        {"component": "serotype 3"},
        {"component": "serotype 1", "exposure": {"heads_up_ms": 4000, "at_ms": 6000, "overrun_ms": 8000},
         "thaw": {"heads_up_ms": 60000, "at_ms": 70000, "overrun_ms": 75000}}]})"));
    maker.out({1, 1}, 0s, "serotype 3").out({1, 2}, 0s, "serotype 1");
    EXPECT_EQ(levelIn(alarms(maker.bench, at(6s)), "exposure ampoule:1/2"), Level::Limit);
    EXPECT_EQ(levelIn(alarms(maker.bench, at(6s)), kExposure), std::nullopt);

    maker.step({1, 1}, Step::Bath, 6s).step({1, 2}, Step::Bath, 6s);
    EXPECT_EQ(levelIn(alarms(maker.bench, at(76s)), "thaw ampoule:1/2"), Level::Limit);
    EXPECT_EQ(levelIn(alarms(maker.bench, at(96s)), kThaw), Level::Limit);
}

TEST(Alarms, judgeABagByTheCardItWasStartedUnder)
{
    BenchMaker maker;
    maker.bag("B1", 0s,
              cardWith(R"({"limits": {"in use": {"heads_up_ms": 60000, "at_ms": 120000}}})"));
    maker.mixed("B1", 0s, 10s).bag("B2", 0s).mixed("B2", 0s, 10s);
    const Alarms state = alarms(maker.bench, at(120s));
    EXPECT_EQ(levelIn(state, "in use bag:B1"), Level::Limit);
    EXPECT_EQ(levelIn(state, "in use bag:B2"), std::nullopt);
}

// Three in together at 0 s, 8 s of handling each (from memory): the cues are 80 s, 80 s (limit less
// one handling is 82 s, later than the card's) and 74 s. (Spec: the job, section 2.4, pace.)
TEST(Alarms, bringTheThawsHeadsUpForwardByPace)
{
    BenchMaker maker;
    maker.bag("B1", -60s);
    for (const int no : {1, 2, 3})
        maker.out({1, no}, -5s).step({1, no}, Step::Bath, 0s);
    EXPECT_THAT(idsIn(alarms(maker.bench, at(74s - 1us))), IsEmpty());
    EXPECT_THAT(idsIn(alarms(maker.bench, at(74s))), ElementsAre("thaw ampoule:1/3"));
    EXPECT_EQ(alarms(maker.bench, at(74s)).nextChange, at(80s).boot);
    EXPECT_EQ(alarms(maker.bench, at(80s)).due.size(), 3U);
}

// The call at 74 s stands when the first is in diluent at 75 s, though the pace would call at 80 s
// now.
TEST(Alarms, doNotTakeBackACallOfThePace)
{
    BenchMaker maker;
    for (const int no : {1, 2, 3})
        maker.out({1, no}, -5s).step({1, no}, Step::Bath, 0s);
    maker.step({1, 1}, Step::Diluent, 75s);
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(76s)), "thaw ampoule:1/3"));
    maker.raised("thaw ampoule:1/3", Level::HeadsUp, at(74s));
    EXPECT_EQ(alarmIn(alarms(maker.bench, at(76s)), "thaw ampoule:1/3")->since, at(74s).boot);
    // but an *in bath* that was corrected to a later time has not been called for yet
    maker.step({1, 3}, Step::Bath, 40s);
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(76s)), "thaw ampoule:1/3"));
}

TEST(Alarms, countAThawFromOutOfCryogenWhereInBathWasNotTimed)
{
    BenchMaker maker = outAt(0s);
    maker.step({1, 1}, Step::Bath, 8s).ampouleOf({1, 1}).steps[1]->timed = false;
    EXPECT_EQ(levelIn(alarms(maker.bench, at(90s - 1us)), kThaw), Level::HeadsUp);
    EXPECT_EQ(levelIn(alarms(maker.bench, at(90s)), kThaw), Level::Limit);
}

TEST(Alarms, goOnForAHeldBagsAgeButNotItsSwirl)
{
    BenchMaker maker;
    maker.bag("B1", 0s).mixed("B1", 0s, 10s);
    maker.bagOf("B1").holds = {BagHold{momentAt(20s), HoldReason::Leak, {}}};
    EXPECT_THAT(idsIn(alarms(maker.bench, at(46min))),
                ElementsAre("reading bath", "in use bag:B1"));
}

TEST(Alarms, leaveTheLinesAloneOnceTheShiftIsClosed)
{
    BenchMaker maker;
    maker.line("A", 0s, 1500);
    EXPECT_TRUE(levelIn(alarms(maker.bench, at(3h)), "dose check line:A"));
    maker.bench.shift->closed = momentAt(2h);
    EXPECT_THAT(alarms(maker.bench, at(3h)).due, IsEmpty());
    EXPECT_EQ(alarms(maker.bench, at(3h)).nextChange, std::nullopt);
}

// --- the station itself ---

TEST(Station, noSoundIsAHeadsUpUntilProvenInAShiftAndALimitWhenLost)
{
    BenchMaker maker;
    maker.bench.soundProven = false;
    EXPECT_EQ(levelIn(alarms(maker.bench, at(1s)), "no sound station"), Level::HeadsUp);
    maker.bench.soundLost = true;
    EXPECT_EQ(levelIn(alarms(maker.bench, at(1s)), "no sound station"), Level::Limit);
    maker.bench.soundProven = true;
    EXPECT_EQ(levelIn(alarms(maker.bench, at(1s)), "no sound station"), Level::Limit);
    maker.bench.soundLost = false;
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(1s)), "no sound station"));
    maker.bench.soundProven = false;
    maker.bench.shift.reset();
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(1s)), "no sound station"));
}

TEST(Station, notRecordedIsALimitUntilRecovered)
{
    BenchMaker maker;
    maker.bench.storeFailed = StoreFault::NoSpace;
    maker.bench.last = at(5s);
    const auto alarm = alarmIn(alarms(maker.bench, at(9s)), "not recorded station");
    EXPECT_EQ(alarm->level, Level::Limit);
    EXPECT_EQ(alarm->since, at(5s).boot);
    EXPECT_EQ(alarm->left, std::nullopt);
    maker.bench.storeFailed.reset();
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(9s)), "not recorded station"));
}

TEST(Station, aClockStepIsAHeadsUp)
{
    BenchMaker maker;
    maker.bench.clockStepped = at(3s);
    EXPECT_EQ(levelIn(alarms(maker.bench, at(9s)), "clock stepped station"), Level::HeadsUp);
}

TEST(Station, aProbeThatDoesNotAnswerIsLost)
{
    const auto lostAfter = [](ReadingFault fault) {
        BenchMaker maker;
        maker.faulty(fault, 3s);
        return levelIn(alarms(maker.bench, at(9s)), "probe lost station").has_value();
    };
    for (const ReadingFault fault :
         {ReadingFault::Lost, ReadingFault::OpenLine, ReadingFault::Empty})
        EXPECT_TRUE(lostAfter(fault)) << nameOf(fault);
    for (const ReadingFault fault :
         {ReadingFault::CheckFailed, ReadingFault::PowerOn, ReadingFault::Shorted,
          ReadingFault::Unreadable, ReadingFault::Implausible, ReadingFault::Jump})
        EXPECT_FALSE(lostAfter(fault)) << nameOf(fault);
    BenchMaker maker;
    maker.faulty(ReadingFault::Lost, 3s).reading(Verdict::Inside, 6s);  // by hand, or it is back
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(9s)), "probe lost station"));
    maker.faulty(ReadingFault::Lost, 7s).bench.shift->closed = momentAt(8s);
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(9s)), "probe lost station"));
}

TEST(Station, aProbeWhoseFaultLastsIsLost)
{
    constexpr auto kLost = "probe lost station";
    for (const ReadingFault fault :
         {ReadingFault::CheckFailed, ReadingFault::PowerOn, ReadingFault::Shorted,
          ReadingFault::Unreadable, ReadingFault::Implausible, ReadingFault::Jump}) {
        BenchMaker maker;
        maker.reading(Verdict::Inside, 1s).faulty(fault, 3s).faulty(ReadingFault::PowerOn, 10s);
        const auto before = alarms(maker.bench, at(17'999ms));
        EXPECT_FALSE(levelIn(before, kLost)) << nameOf(fault);
        EXPECT_EQ(before.nextChange, at(18s).boot) << nameOf(fault);
        EXPECT_EQ(alarmIn(alarms(maker.bench, at(18s)), kLost)->since, at(18s).boot);
        maker.reading(Verdict::Inside, 20s);
        EXPECT_FALSE(levelIn(alarms(maker.bench, at(60s)), kLost)) << nameOf(fault);
    }
    BenchMaker maker;  // once told it stands, though the fault is another
    maker.faulty(ReadingFault::Lost, 3s).faulty(ReadingFault::PowerOn, 5s);
    maker.raised(kLost, Level::HeadsUp, at(3s));
    EXPECT_EQ(alarmIn(alarms(maker.bench, at(6s)), kLost)->since, at(3s).boot);
}

TEST(Station, aProbeTakenOutOfUseIsNotMissed)
{
    BenchMaker maker;
    maker.faulty(ReadingFault::Lost, 3s);
    Probe probe;
    maker.bench.probes[{}] = std::make_shared<const Probe>(probe);
    EXPECT_TRUE(levelIn(alarms(maker.bench, at(9s)), "probe lost station"));
    probe.source = OutOfUse{};
    maker.bench.probes[{}] = std::make_shared<const Probe>(probe);
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(9s)), "probe lost station"));
    EXPECT_EQ(maker.bench.readingFault(), std::nullopt);
}

// --- countdown ---

TEST(Countdown, runsThroughExposureThenThawAndGoesBelowZero)
{
    BenchMaker maker = outAt(0s);
    const auto& ampoule = maker.ampouleOf({1, 1});
    auto clock = countdown(maker.bench, ampoule, at(4s));
    EXPECT_EQ(clock->limit, LimitName::Exposure);
    EXPECT_EQ(clock->run, 4s);
    EXPECT_EQ(clock->left, 6s);
    EXPECT_EQ(countdown(maker.bench, ampoule, at(12s))->left, -2s);

    maker.step({1, 1}, Step::Bath, 12s);
    clock = countdown(maker.bench, ampoule, at(100s));
    EXPECT_EQ(clock->limit, LimitName::Thaw);
    EXPECT_EQ(clock->run, 88s);
    EXPECT_EQ(clock->left, 2s);
    EXPECT_EQ(clock->thresholds.headsUp, 80s);
    EXPECT_TRUE(clock->certain);

    maker.step({1, 1}, Step::Diluent, 101s);
    EXPECT_FALSE(countdown(maker.bench, ampoule, at(102s)));
}

TEST(Countdown, isOverForALostAmpoule)
{
    BenchMaker maker = outAt(0s);
    maker.lost({1, 1}, LossReason::Broken, 3s);
    EXPECT_FALSE(countdown(maker.bench, maker.ampouleOf({1, 1}), at(4s)));
}

TEST(Countdown, showsTheCueThatPaceBroughtForward)
{
    BenchMaker maker;
    for (const int no : {1, 2, 3})
        maker.out({1, no}, -5s).step({1, no}, Step::Bath, 0s);
    EXPECT_EQ(countdown(maker.bench, maker.ampouleOf({1, 3}), at(10s))->thresholds.headsUp, 74s);
}

TEST(Countdown, isMarkedAfterAStart)
{
    BenchMaker maker = outInLastBoot(0s);
    const auto clock = countdown(maker.bench, maker.ampouleOf({1, 1}), at(4s));
    EXPECT_EQ(clock->left, 6s);
    EXPECT_FALSE(clock->certain);
}

}  // namespace
}  // namespace bathside::test
