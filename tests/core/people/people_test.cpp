// Who is who, and the table of rights.

#include "core/people/people.h"

#include <gtest/gtest.h>

#include "tests/support/staff.h"

namespace bathside::test {
namespace {

// Spec, the job, section 1: who must get what done.
TEST(PeopleTest, theTableOfRights)
{
    struct Row {
        Role role;
        bool works, judges, approves, signs;
    };
    for (const Row& row : {Row{Role::Vaccinator, true, false, false, true},
                           Row{Role::ShiftLead, true, true, true, true},
                           Row{Role::Auditor, false, false, false, true}}) {
        SCOPED_TRACE(nameOf(row.role));
        EXPECT_EQ(may(row.role, Act::WorkAtBench), row.works);
        EXPECT_EQ(may(row.role, Act::Judge), row.judges);
        EXPECT_EQ(may(row.role, Act::Approve), row.approves);
        EXPECT_EQ(may(row.role, Act::Sign), row.signs);
    }
}

TEST(PeopleTest, whileNobodyIsListedEverybodyMayDoEverything)
{
    const People nobody;
    for (const Act act : {Act::WorkAtBench, Act::Judge, Act::Approve, Act::Sign})
        EXPECT_TRUE(may(nobody, {"XY"}, act));
}

TEST(PeopleTest, whoIsNotListedOrHasLeftMayNothing)
{
    BenchShift shift;
    staff(shift);
    shift.say(departed("MK", "Mira Kolar", Role::Vaccinator));
    EXPECT_TRUE(may(shift.bench().people, {"AB"}, Act::WorkAtBench));
    EXPECT_FALSE(may(shift.bench().people, {"MK"}, Act::WorkAtBench));
    EXPECT_FALSE(may(shift.bench().people, {"MK"}, Act::Sign));
    EXPECT_FALSE(may(shift.bench().people, {"XY"}, Act::WorkAtBench));
    EXPECT_FALSE(may(shift.bench().people, {}, Act::Sign));
}

TEST(PeopleTest, refusalsCountInARowUntilARightPin)
{
    BenchShift shift;
    staff(shift);
    const auto lead = [&] { return *shift.bench().people.find({"LS"}); };
    shift.at(10).say(RefusePin{{"LS"}});
    shift.at(20).say(RefusePin{{"LS"}});
    EXPECT_EQ(lead().refused, 2);
    EXPECT_EQ(lead().lastRefused->boot, shift.clock.now().boot);
    EXPECT_EQ(shift.bench().people.find({"AB"})->refused, 0);

    shift.say(Sign{{"LS"}, Meaning::Done, {}, {}});
    EXPECT_EQ(lead().refused, 0);
    EXPECT_FALSE(lead().lastRefused);

    shift.say(RefusePin{{"LS"}});
    shift.say(SetPin{{"LS"}});
    EXPECT_EQ(lead().refused, 0);
}

TEST(PeopleTest, aSecondListingTakesThePlaceOfTheFirstAndKeepsThePin)
{
    BenchShift shift;
    staff(shift);
    shift.say(listed("QA", "Quim Abad Roca", Role::ShiftLead));
    const Member* now = shift.bench().people.find({"QA"});
    EXPECT_EQ(now->name, "Quim Abad Roca");
    EXPECT_EQ(now->role, Role::ShiftLead);
    EXPECT_TRUE(now->hasPin);
}

}  // namespace
}  // namespace bathside::test
