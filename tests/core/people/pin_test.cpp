// What may be a PIN, that it is checked by scrypt and nothing else, how long one waits.
//
// The function's own published vectors: tests/reference/scrypt_test.cpp.

#include "core/people/pin.h"

#include <gtest/gtest.h>

#include "tests/support/staff.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

struct Candidate {
    const char* name;
    const char* pin;
    std::optional<PinFault> fault;
};

class PinCandidate : public testing::TestWithParam<Candidate> {};

TEST_P(PinCandidate, mayOrMayNotBeAPin) { EXPECT_EQ(faultOf(GetParam().pin), GetParam().fault); }

INSTANTIATE_TEST_SUITE_P(Pin, PinCandidate,
                         testing::Values(Candidate{"Four", "4071", {}},
                                         Candidate{"Eight", "40713926", {}},
                                         Candidate{"NoughtAtTheFront", "0815", {}},
                                         Candidate{"NearlyEqual", "7776", {}},
                                         Candidate{"NearlyARun", "2346", {}},
                                         Candidate{"Three", "471", PinFault::Length},
                                         Candidate{"None", "", PinFault::Length},
                                         Candidate{"Nine", "407139265", PinFault::Length},
                                         Candidate{"Letter", "40a1", PinFault::NotDigits},
                                         Candidate{"Space", "40 1", PinFault::NotDigits},
                                         Candidate{"AllEqual", "7777", PinFault::AllEqual},
                                         Candidate{"Upwards", "2345", PinFault::Run},
                                         Candidate{"OverNought", "7890", PinFault::Run},
                                         Candidate{"Downwards", "8765", PinFault::Run},
                                         Candidate{"DownwardsOverNought", "2109", PinFault::Run}),
                         [](const auto& test) { return std::string(test.param.name); });

TEST(PinTest, onlyThePinItselfIsRight)
{
    const auto hash = hashOf("4071", PinSalt{1, 2, 3});
    ASSERT_TRUE(hash);
    EXPECT_TRUE(isRight("4071", *hash));
    for (const char* other : {"4072", "04071", "407", "", "40710"})
        EXPECT_FALSE(isRight(other, *hash)) << other;
}

TEST(PinTest, theSamePinOfTwoPeopleGivesTwoHashes)
{
    const auto one = hashOf("4071", PinSalt{1}), other = hashOf("4071", PinSalt{2});
    ASSERT_TRUE(one && other);
    EXPECT_NE(one->key, other->key);
    PinHash mixed = *one;
    mixed.salt = other->salt;
    EXPECT_FALSE(isRight("4071", mixed));
}

TEST(PinTest, aCostThatIsNoneNeverFits)
{
    PinHash hash = *hashOf("4071", PinSalt{1});
    hash.cost.n = 1000;  // no power of two
    hash.key = {};       // what is left where nothing was reckoned
    EXPECT_FALSE(isRight("4071", hash));
}

// Three tries are free; 5 s, 10 s, 20 s … after the fourth; never more than 5 minutes.
TEST(PinTest, waitsLongerAfterEachRefusal)
{
    const std::vector<Millis> waits{0s, 0s, 0s, 0s, 5s, 10s, 20s, 40s, 80s, 160s, 300s, 300s};
    Member member;
    const Stamp now{.wall = {}, .boot = 100s, .bootId = {1}};
    for (std::size_t refused = 0; refused < waits.size(); ++refused) {
        member.refused = static_cast<int>(refused);
        member.lastRefused = refused ? std::optional(now) : std::nullopt;
        EXPECT_EQ(waitBeforePin(member, now), waits[refused]) << refused;
    }
    member.refused = 1'000'000;
    EXPECT_EQ(waitBeforePin(member, now), 5min);
}

TEST(PinTest, theWaitEndsByTheClockAndOutlivesARestart)
{
    BenchShift shift;
    staff(shift);
    for (int i = 0; i < 5; ++i)
        shift.at(10 + i).say(RefusePin{{"LS"}});
    const auto wait = [&](const Bench& bench) {
        return waitBeforePin(*bench.people.find({"LS"}), shift.clock.now());
    };
    EXPECT_EQ(wait(shift.bench()), 10s);
    shift.at(18);
    EXPECT_EQ(wait(shift.bench()), 6s);

    const State again = restored({}, shift.recorder.events);
    EXPECT_EQ(wait(again.bench), 6s);
    shift.clock.restart(shift.clock.now().wall + 2s);
    EXPECT_EQ(wait(again.bench), 4s);
    shift.clock.runTo(shift.clock.now().wall + 4s);
    EXPECT_EQ(wait(again.bench), 0s);
}

// A year ahead by mistake, then set right over a restart: nobody is locked out for that year.
TEST(PinTest, afterAClockThatWasSetBackTheWaitEndsWithinTheBoot)
{
    const Stamp refused{.wall = WallTime(300 * 24h), .boot = 900s, .bootId = {1}};
    Member member;
    member.refused = 4;
    member.lastRefused = refused;
    const auto waitAt = [&](Micros boot) {
        return waitBeforePin(member, {.wall = WallTime(9 * 24h), .boot = boot, .bootId = {2}});
    };
    EXPECT_EQ(waitAt(0s), 5s);
    EXPECT_EQ(waitAt(2s), 3s);
    EXPECT_EQ(waitAt(5s), 0s);
}

}  // namespace
}  // namespace bathside::test
