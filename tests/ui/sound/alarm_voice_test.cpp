#include "ui/sound/alarm_voice.h"

#include <cstdlib>
#include <random>

#include <gtest/gtest.h>

#include "tests/ui/sound/stand_ins.h"

namespace bathside::ui {

namespace {

using std::chrono::hours;
using std::chrono::milliseconds;
using std::chrono::minutes;
using std::chrono::seconds;
using test::FakeClock;
using test::FakeOut;
using test::FakeSpeaker;
using test::Timetable;
using Row = Timetable::Row;

struct AlarmVoiceTest : testing::Test {
    FakeClock clock;
    std::shared_ptr<FakeSpeaker> speaker = std::make_shared<FakeSpeaker>();
    Sounder sounder{paths()};
    SoundBook book;
    AlarmVoice voice{sounder, book};
    std::vector<SoundReport> reports;

    AlarmVoiceTest() { (void)sounder.look(BootTime{}); }

    std::vector<std::unique_ptr<AudioOut>> paths() const
    {
        std::vector<std::unique_ptr<AudioOut>> all;
        all.push_back(std::make_unique<FakeOut>(speaker));
        return all;
    }
    [[nodiscard]] BootTime now() const { return clock.now().boot; }
    BootTime look(const SoundSource& source) { return voice.look(&source, clock.now(), reports); }
    template <typename Kind>
    std::vector<Kind> taken()
    {
        std::vector<Kind> found;
        for (const SoundReport& one : reports) {
            if (const auto* kind = std::get_if<Kind>(&one))
                found.push_back(*kind);
        }
        return found;
    }
};

TEST_F(AlarmVoiceTest, isSilentUntilTheInstantAndNotAMicrosecondLess)
{
    const Timetable source({{now() + seconds{10}, Level::Limit, "cane"}});
    EXPECT_EQ(look(source), now() + seconds{1});
    clock.pass(seconds{10} - Micros{1});
    EXPECT_EQ(look(source), now() + Micros{1});
    EXPECT_EQ(speaker->alarms(), 0U);
    clock.pass(Micros{1});
    (void)look(source);
    EXPECT_EQ(speaker->alarms(), 1U);
    const auto sounded = taken<report::AlarmSounded>();
    ASSERT_EQ(sounded.size(), 1U);
    EXPECT_EQ(sounded[0].late, Micros{0});
    EXPECT_EQ(sounded[0].alarm, "cane");
    EXPECT_EQ(sounded[0].device, "speaker");
}

TEST_F(AlarmVoiceTest, looksAgainWithinASecond)
{
    const Timetable source({});
    EXPECT_EQ(look(source), now() + seconds{1});
    EXPECT_EQ(voice.look(nullptr, clock.now(), reports), now() + seconds{1});
}

// Overrun repeats until somebody acts; the pause is the burst's own.
TEST_F(AlarmVoiceTest, repeatsUntilItEnds)
{
    const Micros repeat = burstOf(Level::Overrun).repeatAfter;
    const Timetable source(
        {{now(), Level::Overrun, "bag"}, {now() + 10 * repeat, std::nullopt, ""}});
    for (const BootTime end = now() + 12 * repeat; now() < end;)
        clock.pass(look(source) - now());
    EXPECT_EQ(speaker->alarms(), 10U);
    EXPECT_EQ(speaker->silenced, 1);
    EXPECT_EQ(taken<report::AlarmRaised>().size(), 1U);
    EXPECT_EQ(taken<report::AlarmSounded>().size(), 1U);  // not once a repeat
}

TEST_F(AlarmVoiceTest, aWorseLevelSoundsAtOnce)
{
    const Timetable source(
        {{now(), Level::HeadsUp, "bag"}, {now() + milliseconds{300}, Level::Limit, "bag"}});
    EXPECT_EQ(look(source), now() + milliseconds{300});
    clock.pass(milliseconds{300});
    (void)look(source);
    ASSERT_EQ(speaker->played.size(), 2U);
    EXPECT_EQ(speaker->played[1].second->samples, burstOf(Level::Limit).samples);
}

TEST_F(AlarmVoiceTest, hushedAndDueAgainIsSoundedAgain)
{
    const Timetable source({{now(), Level::Limit, "bag"},
                            {now() + seconds{1}, std::nullopt, ""},
                            {now() + seconds{21}, Level::Limit, "bag"}});
    for (int i = 0; i < 30; ++i) {
        (void)look(source);
        clock.pass(seconds{1});
    }
    EXPECT_EQ(taken<report::AlarmSounded>().size(), 2U);
}

TEST_F(AlarmVoiceTest, withoutADeviceItIsRaisedAndSoundedOnceThereIsOne)
{
    const Timetable source({{now(), Level::Limit, "bag"}});
    speaker->afterOpen = OutState::Failed;
    speaker->become(OutState::Failed, OutFault::NoDevice);
    (void)sounder.look(seconds{10});
    (void)look(source);
    clock.pass(seconds{4});
    EXPECT_EQ(taken<report::AlarmRaised>().size(), 1U);
    EXPECT_TRUE(taken<report::AlarmSounded>().empty());

    speaker->afterOpen = OutState::Ready;
    (void)sounder.look(seconds{12});
    (void)sounder.look(seconds{12});
    (void)look(source);
    const auto sounded = taken<report::AlarmSounded>();
    ASSERT_EQ(sounded.size(), 1U);
    EXPECT_EQ(sounded[0].late, seconds{4});
}

TEST_F(AlarmVoiceTest, anotherDeviceBeginsTheBurstAnew)
{
    const Timetable source({{now(), Level::HeadsUp, "bag"}});
    (void)look(source);
    speaker->name = "other";
    speaker->become(OutState::Ready);
    (void)sounder.look(seconds{11});
    clock.pass(milliseconds{100});
    (void)look(source);
    EXPECT_EQ(speaker->alarms(), 2U);
}

// Slept from before the heads-up until after the overrun: what sounds is the overrun, late by its
// own instant.
TEST_F(AlarmVoiceTest, saysHowLateAfterASuspend)
{
    const BootTime begin = now();
    const Timetable source({{begin + minutes{1}, Level::HeadsUp, "bag"},
                            {begin + minutes{2}, Level::Limit, "bag"},
                            {begin + minutes{3}, Level::Overrun, "bag"}});
    (void)look(source);
    clock.pass(minutes{10});
    (void)look(source);
    const auto sounded = taken<report::AlarmSounded>();
    ASSERT_EQ(sounded.size(), 1U);
    EXPECT_EQ(sounded[0].level, Level::Overrun);
    EXPECT_EQ(sounded[0].late, minutes{7});
}

TEST_F(AlarmVoiceTest, whatIsPublishedDueIsLateFromThereOn)
{
    const Timetable nothing({});
    const Timetable source({{now() - minutes{5}, Level::Limit, "bag"}});
    (void)look(nothing);
    clock.pass(milliseconds{400});
    voice.notePublished(now() - milliseconds{3});
    (void)look(source);
    EXPECT_EQ(taken<report::AlarmSounded>().at(0).late, milliseconds{3});
}

// Shifts of eight hours, 250 of them (a year) in the long form and 50 in the short one: alarms of
// random length at random instants, some hushed, the machine asleep now and then. Missed: due while
// awake and not sounded. False: sounded while not due.
TEST_F(AlarmVoiceTest, aYearOfShiftsWithoutAMissedOrAFalseAlarm)
{
    const std::size_t shifts = std::getenv("BATHSIDE_LONG") ? 250 : 50;
    std::mt19937 random(20'240'601);
    const auto between = [&](Micros low, Micros high) {
        return Micros{
            std::uniform_int_distribution<std::int64_t>(low.count(), high.count())(random)};
    };
    std::size_t due = 0;
    for (std::size_t shift = 0; shift < shifts; ++shift) {
        std::vector<Row> rows;
        const BootTime end = now() + hours{8};
        for (BootTime at = now() + between(seconds{1}, minutes{4}); at < end;) {
            rows.push_back(
                {at, static_cast<Level>(random() % 3), "a" + std::to_string(rows.size())});
            at += between(milliseconds{1}, minutes{2});
            rows.push_back({at, std::nullopt, ""});
            at += between(milliseconds{1}, minutes{8});
        }
        const Timetable source(rows);
        std::optional<std::string> last;
        while (now() < end) {
            const Sounding truth = source.at(clock.now());
            const std::size_t before = speaker->alarms();
            const BootTime next = look(source);
            const std::size_t begun = speaker->alarms() - before;
            if (truth.level && last != truth.alarm) {
                ++due;
                ASSERT_EQ(begun, 1U) << "missed";
            }
            if (!truth.level) {
                ASSERT_EQ(begun, 0U) << "false";
            }
            last = truth.level ? std::optional(truth.alarm) : std::nullopt;
            speaker->played.clear();
            const bool isAsleep = random() % 2000 == 0;
            clock.pass(isAsleep ? between(seconds{1}, minutes{10})
                                : next - now() + between(Micros{0}, milliseconds{2}));
        }
        reports.clear();
    }
    EXPECT_GT(due, shifts * 40);
}

}  // namespace

}  // namespace bathside::ui
