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

const std::string kLead =
    R"({"t":"2026-03-05T06:50:00Z","do":"person","person":"LS","name":"Lena","role":"shift lead"})"
    "\n"
    R"({"t":"2026-03-05T06:51:00Z","do":"pin","person":"LS"})"
    "\n";

TEST(PlayerTest, whatIsSignedOrCommentedIsNamedByAnEntryBefore)
{
    for (const char* line :
         {R"({"t":"2026-03-05T07:01:00Z","do":"sign","person":"LS","meaning":"done","of":["x"]})",
          R"({"t":"2026-03-05T07:01:00Z","do":"comment","of":"x","by":"LS","text":"why?"})"}) {
        const Played day = played(kLead + line);
        ASSERT_TRUE(day.fault) << line;
        EXPECT_EQ(day.fault->kind, PlayFault::Kind::UnknownEntry);
    }
    const Played day = played(
        kLead + R"({"t":"2026-03-05T07:01:00Z","do":"note","id":"n","text":"late"})" + "\n" +
        R"({"t":"2026-03-05T07:02:00Z","do":"sign","person":"LS","meaning":"witnessed","of":["n"]})");
    ASSERT_FALSE(day.fault);
    Seq note = 0;
    std::vector<Seq> of;
    for (const Event& event : day.events) {
        if (std::holds_alternative<NoteMade>(event.fact))
            note = event.seq;
        if (const auto* signature = std::get_if<RecordSigned>(&event.fact))
            of = signature->of;
    }
    EXPECT_EQ(of, std::vector<Seq>{note});
}

TEST(PlayerTest, theCardThatWaitsIsApproved)
{
    const auto next = cardWith(R"({"version": 2})");
    const std::string adopt =
        R"({"t":"2026-03-05T06:52:00Z","do":"adopt-card","card":)" + next->document() + "}\n";
    const Played day =
        played(kLead + adopt + R"({"t":"2026-03-05T06:53:00Z","do":"approve-card","by":"LS"})");
    ASSERT_FALSE(day.fault);
    const auto approved = std::ranges::find_if(day.events, [](const Event& event) {
        return std::holds_alternative<CardApproved>(event.fact);
    });
    ASSERT_NE(approved, day.events.end());
    EXPECT_EQ(std::get<CardApproved>(approved->fact).card, next->hash());
}

}  // namespace
}  // namespace bathside::test
