#include "core/replay/player.h"

#include <gtest/gtest.h>

#include "tests/support/shift.h"

namespace bathside::test {
namespace {

const std::string kOpen =
    R"({"t":"2026-03-05T07:00:00Z","do":"open-shift","zone":"UTC","person":"AB","checks":"all-ok"})"
    "\n";
const std::string kBag =
    R"({"t":"2026-03-05T07:01:00Z","do":"start-bag","bag":"B1","volume_ml":400,"diluent_lot":"D1"})"
    "\n"
    R"({"t":"2026-03-05T07:02:00Z","do":"out-of-cryogen","id":"out","ampoules":[1]})"
    "\n";

struct Played {
    std::optional<PlayFault> fault;
    std::vector<Event> events;
};

Played played(const std::string& text)
{
    const auto script = scriptFrom(text);
    EXPECT_TRUE(script);
    MemoryRecorder recorder;
    Player player(*script, defaultCard()->document(), recorder, "test");
    auto fault = player.play();
    return {fault, recorder.events};
}

TEST(PlayerTest, stopsAtARefusalThatWasNotExpected)
{
    const Played day = played(kOpen + R"({"t":"2026-03-05T07:01:00Z","do":"in-bath"})");
    ASSERT_TRUE(day.fault);
    EXPECT_EQ(day.fault->line, 2);
    EXPECT_EQ(day.fault->kind, PlayFault::Kind::Refused);
    EXPECT_EQ(day.fault->refusal.code, RefusalCode::NoOpenPull);
    EXPECT_EQ(kindOf(day.events.back().fact), "tap.refused");
}

TEST(PlayerTest, stopsWhereARefusalWasExpectedAndNoneCame)
{
    const Played day = played(
        kOpen + R"({"t":"2026-03-05T07:01:00Z","do":"needle","line":"A","expect":"refused"})");
    ASSERT_TRUE(day.fault);
    EXPECT_EQ(day.fault->kind, PlayFault::Kind::NotRefused);
}

TEST(PlayerTest, anExpectedRefusalIsPartOfTheDay)
{
    EXPECT_FALSE(
        played(kOpen + R"({"t":"2026-03-05T07:01:00Z","do":"in-bath","expect":"refused"})").fault);
}

TEST(PlayerTest, stopsWhereTimeGoesBack)
{
    const Played day = played(kOpen + R"({"t":"2026-03-05T06:59:59Z","do":"needle","line":"A"})");
    ASSERT_TRUE(day.fault);
    EXPECT_EQ(day.fault->kind, PlayFault::Kind::GoesBack);
}

TEST(PlayerTest, aCorrectionNamesAnEntry)
{
    const Played good = played(
        kOpen + kBag +
        R"({"t":"2026-03-05T07:02:05Z","do":"correct","of":"out","field":"lot","value":"K2","why":"typo"})");
    EXPECT_FALSE(good.fault);
    const Played none = played(
        kOpen + kBag +
        R"({"t":"2026-03-05T07:02:05Z","do":"correct","of":"in","field":"lot","value":"K2","why":"typo"})");
    ASSERT_TRUE(none.fault);
    EXPECT_EQ(none.fault->kind, PlayFault::Kind::UnknownEntry);
    const Played field = played(
        kOpen + kBag +
        R"({"t":"2026-03-05T07:02:05Z","do":"correct","of":"out","field":"count","value":2,"why":"typo"})");
    ASSERT_TRUE(field.fault);
    EXPECT_EQ(field.fault->refusal.code, RefusalCode::NoSuchField);
}

TEST(PlayerTest, theClockRunsOnSoThatWhatFallsDueIsRaised)
{
    const Played day = played(kOpen + kBag);
    int levels = 0;
    for (const Event& event : day.events) {
        const auto* raised = std::get_if<AlarmRaised>(&event.fact);
        levels += raised && raised->alarm.starts_with("exposure") ? 1 : 0;
    }
    EXPECT_EQ(levels, 3);
    EXPECT_EQ(kindOf(day.events.back().fact), "station.stopped");
}

TEST(PlayerTest, aRestartIsAnotherBootAndTheClocksGoOn)
{
    const Played day = played(kOpen + kBag +
                              R"({"t":"2026-03-05T07:02:04Z","do":"restart"})"
                              "\n"
                              R"({"t":"2026-03-05T07:02:08Z","do":"in-bath"})");
    ASSERT_FALSE(day.fault);
    const State state = restored({}, day.events);
    const Ampoule& ampoule = state.bench.pulls[0].ampoules[0];
    const Elapsed run = elapsed(ampoule.when(Step::Out)->at, ampoule.when(Step::Bath)->at);
    EXPECT_EQ(run.time, std::chrono::seconds(8));
    EXPECT_FALSE(run.certain);
}

}  // namespace
}  // namespace bathside::test
