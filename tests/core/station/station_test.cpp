#include "core/station/station.h"

#include <gmock/gmock.h>

#include "tests/support/shift.h"

namespace bathside::test {
namespace {

using testing::ElementsAre;

TEST(StationTest, eventsAreOneWithoutAGapInTheOrderOfTheTaps)
{
    BenchShift shift;
    shift.open().madeUp("B1", 60);
    Seq expected = 0;
    for (const Event& event : shift.recorder.events)
        EXPECT_EQ(event.seq, ++expected);
    EXPECT_EQ(shift.bench().lastSeq, expected);
}

TEST(StationTest, aTapSaysWhoAndByWhichCard)
{
    BenchShift shift;
    shift.open();
    const Taken taken = shift.say(MakeNote{"draught from the door"});
    const Event& event = shift.recorder.events[static_cast<std::size_t>(taken.first - 1)];
    EXPECT_EQ(event.person->id.text, "AB");
    EXPECT_EQ(event.person->proof, Proof::Claimed);
    EXPECT_EQ(event.card, shift.bench().card->hash());

    shift.say(TakeDuty{{"CD"}});
    shift.say(MakeNote{"door shut"});
    EXPECT_EQ(shift.recorder.events.back().person->id.text, "CD");
}

TEST(StationTest, anAlarmIsRaisedAtItsInstantRisesAndEndsWithTheStep)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(out({1}));
    shift.at(80).say(moved(Step::Bath));

    std::vector<std::string> story;
    for (const Event& event : shift.recorder.events) {
        const auto* raised = std::get_if<AlarmRaised>(&event.fact);
        const auto* ended = std::get_if<AlarmEnded>(&event.fact);
        const auto seconds = (event.at.boot - std::chrono::hours(1)) / std::chrono::seconds(1);
        if (raised && raised->alarm.starts_with("exposure"))
            story.push_back(std::string(nameOf(raised->level)) + " at " + std::to_string(seconds));
        if (ended && ended->alarm.starts_with("exposure"))
            story.push_back("ended at " + std::to_string(seconds));
    }
    EXPECT_THAT(story,
                ElementsAre("heads-up at 67", "limit at 70", "overrun at 75", "ended at 80"));
}

TEST(StationTest, heardHushesAndDoesNotEnd)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(out({1}));
    shift.at(71).say(HearAlarm{});
    const auto due = alarms(shift.bench(), shift.clock.now());
    ASSERT_FALSE(due.due.empty());
    EXPECT_EQ(due.due[0].level, Level::Limit);
    EXPECT_TRUE(due.due[0].hushed);
}

TEST(StationTest, aRefusalIsNotedAndTheProgramsOwnIsNot)
{
    BenchShift shift;
    shift.open();
    (void)shift.refused(moved(Step::Bath));
    EXPECT_THAT(shift.kindsFrom(shift.bench().lastSeq), ElementsAre("tap.refused"));
    EXPECT_EQ(shift.all<TapRefused>().back().why, "no open pull");

    const std::size_t before = shift.recorder.events.size();
    EXPECT_FALSE(shift.station.note(EndAlarm{"none"}));
    EXPECT_EQ(shift.recorder.events.size(), before);
}

TEST(StationTest, aSteadyThermometerIsWrittenEveryTenSecondsAndAtEveryChange)
{
    BenchShift shift;
    shift.open();
    for (int second = 0; second < 60; ++second) {
        shift.at(second);
        shift.station.feed({{"p1"}, shift.clock.now(), MilliCelsius{28'000}});
    }
    EXPECT_EQ(shift.all<ReadingTaken>().size(), 6U);

    for (int second = 60; second < 70; ++second) {
        shift.at(second);
        shift.station.feed({{"p1"}, shift.clock.now(), ReadingFault::CheckFailed});
    }
    EXPECT_EQ(shift.all<ReadingTaken>().size(), 7U);
    shift.at(70.5).station.feed({{"p1"}, shift.clock.now(), MilliCelsius{28'000}});
    EXPECT_EQ(shift.all<ReadingTaken>().size(), 8U);
}

TEST(StationTest, twoThermometersAreThinnedEachForItself)
{
    BenchShift shift;
    shift.open();
    for (int second = 0; second < 60; ++second) {
        shift.at(second);
        shift.station.feed({{"p1"}, shift.clock.now(), MilliCelsius{28'000}});
        shift.station.feed({{"p2"}, shift.clock.now(), MilliCelsius{28'100}});
    }
    EXPECT_EQ(shift.all<ReadingTaken>().size(), 12U);
}

// Spec: temperatures: a reading that fails is none; one that is good beside it is not disturbed.
TEST(StationTest, aFaultOfOneThermometerDoesNotDisturbAnother)
{
    BenchShift shift;
    shift.open();
    const auto feed = [&](double at, const char* probe,
                          std::variant<MilliCelsius, ReadingFault> v) {
        shift.at(at).station.feed({{probe}, shift.clock.now(), v});
    };
    feed(1, "p1", MilliCelsius{28'000});
    feed(1.5, "p2", MilliCelsius{28'100});
    feed(2, "p2", ReadingFault::Lost);
    shift.at(7);
    EXPECT_FALSE(bathVerdict(shift.bench(), shift.clock.now()));
    feed(7.5, "p1", MilliCelsius{28'000});  // written at once, not only 10 s after its last
    EXPECT_TRUE(bathVerdict(shift.bench(), shift.clock.now()));
    EXPECT_EQ(shift.bench().readingFault(), std::nullopt);
    feed(8, "p2", ReadingFault::Lost);  // as before: not told again
    EXPECT_EQ(shift.all<ReadingTaken>().size(), 4U);
}

TEST(StationTest, aChangeOfVerdictIsOneEvent)
{
    BenchShift shift;
    shift.open();
    constexpr int kOut = 3, kBack = 12, kEnd = 30;  // s
    for (int second = 0; second < kEnd; ++second) {
        const bool isOut = second >= kOut && second < kBack;
        shift.at(second).station.feed(
            {{"p1"}, shift.clock.now(), MilliCelsius{isOut ? 29'500 : 28'000}});
    }
    const auto taken = shift.all<ReadingTaken>();
    ASSERT_EQ(taken.size(), 3U);
    EXPECT_EQ(taken[1].verdict, Verdict::Outside);
    EXPECT_EQ(taken[2].verdict, Verdict::Undecided);  // not calibrated: at best
}

TEST(StationTest, theLastReadingBeforeAStepIsWrittenWithItsOwnInstant)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(out({1}));
    shift.station.feed({{"p1"}, shift.clock.now(), MilliCelsius{28'000}});
    shift.at(63).station.feed({{"p1"}, shift.clock.now(), MilliCelsius{28'050}});
    EXPECT_EQ(shift.all<ReadingTaken>().size(), 1U);
    const Seq before = shift.bench().lastSeq;
    shift.at(65).say(moved(Step::Bath));
    EXPECT_EQ(shift.kindsFrom(before + 1).front(), "reading.taken");
    const Event& event = shift.recorder.events[static_cast<std::size_t>(before)];
    EXPECT_EQ(std::get<ReadingTaken>(event.fact).raw, MilliCelsius{28'050});
    EXPECT_EQ((shift.clock.now().boot - event.at.boot) / std::chrono::seconds(1), 2);
    shift.at(66).say(moved(Step::Opened));  // nothing new to write
    EXPECT_EQ(shift.all<ReadingTaken>().size(), 2U);
}

TEST(StationTest, outsideAShiftOnlyChangesAreWritten)
{
    BenchShift shift;
    for (int second = 0; second < 600; ++second)
        shift.at(second).station.feed({{"p1"}, shift.clock.now(), MilliCelsius{28'000}});
    EXPECT_EQ(shift.all<ReadingTaken>().size(), 1U);
    shift.station.feed({{"p1"}, shift.clock.now(), ReadingFault::Lost});
    shift.at(610);
    EXPECT_EQ(shift.all<ReadingTaken>().size(), 2U);
}

TEST(StationTest, whatWouldBeTakenIsWhatIsTaken)
{
    BenchShift shift;
    shift.open();
    EXPECT_FALSE(shift.station.wouldTake(moved(Step::Bath)));
    shift.readyBag("B1").say(out({1}));
    EXPECT_TRUE(shift.station.wouldTake(moved(Step::Bath)));
    EXPECT_EQ(shift.bench().pulls[0].ampoules[0].reached(), Step::Out);
}

TEST(StationTest, listenersHearOfEveryChangeOfStateOrRecord)
{
    BenchShift shift;
    int heard = 0;
    shift.station.whenChanged([&] { ++heard; });
    shift.open();
    const int afterOpening = heard;
    EXPECT_GT(afterOpening, 0);

    RecordState record = shift.station.record();
    record.health = RecordState::Health::Behind;
    shift.station.recorded(record);
    shift.station.recorded(record);
    EXPECT_EQ(heard, afterOpening + 1);
}

TEST(StationTest, aFailingStoreIsAFactAnAlarmAndEndsWithItsRecovery)
{
    BenchShift shift;
    shift.open();
    RecordState record = shift.station.record();
    record.health = RecordState::Health::NotRecorded;
    record.failures = 1;
    record.trouble = {StoreFault::NoSpace, 28};
    shift.station.recorded(record);

    const auto failed = shift.all<StoreFailed>();
    ASSERT_EQ(failed.size(), 1U);
    EXPECT_EQ(failed[0].fault, StoreFault::NoSpace);
    EXPECT_EQ(failed[0].errorNumber, 28);
    EXPECT_TRUE(shift.bench().alarms.contains("not recorded station"));

    record.health = RecordState::Health::Recorded;
    record.merges = 1;
    record.merged = 3;
    record.mergedSpool = "trail.spool-1";
    shift.station.recorded(record);
    const auto recovered = shift.all<StoreRecovered>();
    ASSERT_EQ(recovered.size(), 1U);
    EXPECT_EQ(recovered[0].merged, 3);
    EXPECT_FALSE(shift.bench().alarms.contains("not recorded station"));
}

}  // namespace
}  // namespace bathside::test
