// When a copy is due and when it is late. Times are the header's own; the rule that none is made in
// a critical window is the trail's spec.

#include "core/record/copy_due.h"

#include <gtest/gtest.h>

#include "tests/support/shift.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;
using test::BenchShift;

constexpr CopyPlan kEvery4h{.every = 4h, .atShiftEnd = false};
constexpr CopyPlan kAfterShifts{.every = {}, .atShiftEnd = true};

bool isDue(const CopyPlan& plan, const BenchShift& shift)
{
    return isCopyDue(plan, shift.bench(), shift.station.now());
}

bool isLate(const CopyPlan& plan, const BenchShift& shift)
{
    return isCopyLate(plan, shift.bench(), shift.station.now());
}

void copy(BenchShift& shift)
{
    ASSERT_TRUE(shift.station.note(NoteBackup{BackupMade{"stick", 1, std::string(64, 'a')}}));
}

TEST(CopyDueTest, nothingIsDueWhereNothingIsSet)
{
    BenchShift shift;
    shift.open().say(CloseShift{});
    shift.at(1'000'000);
    EXPECT_FALSE(CopyPlan{}.isSet());
    EXPECT_FALSE(isDue({}, shift));
    EXPECT_FALSE(isLate({}, shift));
}

TEST(CopyDueTest, byTheClockItIsDueAtOnceAndThenSoManyHoursAfterTheLast)
{
    BenchShift shift;
    EXPECT_TRUE(isDue(kEvery4h, shift));
    copy(shift);
    EXPECT_FALSE(isDue(kEvery4h, shift));
    shift.at(4 * 3600 - 1);
    EXPECT_FALSE(isDue(kEvery4h, shift));
    shift.at(4 * 3600);
    EXPECT_TRUE(isDue(kEvery4h, shift));
    EXPECT_FALSE(isLate(kEvery4h, shift));
    shift.at(4 * 3600 + 900);
    EXPECT_TRUE(isLate(kEvery4h, shift));
    copy(shift);
    EXPECT_FALSE(isLate(kEvery4h, shift));
}

TEST(CopyDueTest, aShiftIsCopiedOnceItIsSealed)
{
    BenchShift shift;
    shift.open();
    EXPECT_FALSE(isDue(kAfterShifts, shift));
    shift.say(CloseShift{});
    EXPECT_FALSE(isDue(kAfterShifts, shift)) << "the seal comes first";
    ASSERT_TRUE(shift.station.note(NoteSealed{DaySealed{1, "aa", "bb", "cc"}}));
    EXPECT_TRUE(isDue(kAfterShifts, shift));
    copy(shift);
    EXPECT_FALSE(isDue(kAfterShifts, shift));
}

TEST(CopyDueTest, aShiftWithoutAKeyIsCopiedAfterAWhile)
{
    BenchShift shift;
    shift.open().at(100).say(CloseShift{});
    shift.at(129);
    EXPECT_FALSE(isDue(kAfterShifts, shift));
    shift.at(130);
    EXPECT_TRUE(isDue(kAfterShifts, shift));
    EXPECT_FALSE(isLate(kAfterShifts, shift));
    shift.at(130 + 900);
    EXPECT_TRUE(isLate(kAfterShifts, shift));
}

TEST(CopyDueTest, afterAClockThatWasSetBackItIsDue)
{
    for (const CopyPlan& plan : {kEvery4h, kAfterShifts}) {
        BenchShift shift;
        copy(shift);
        shift.open().at(100).say(CloseShift{});
        Stamp now = shift.station.now();
        now.wall -= std::chrono::days(300);
        now.bootId = {7};
        now.boot = kSealPatience;
        EXPECT_TRUE(isCopyDue(plan, shift.bench(), now));
        EXPECT_FALSE(isCopyLate(plan, shift.bench(), now));
        now.boot = kSealPatience + kCopyPatience;
        EXPECT_TRUE(isCopyLate(plan, shift.bench(), now));
    }
}

TEST(CopyDueTest, aPullPutsItOff)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(4000);
    ASSERT_TRUE(isDue(kEvery4h, shift));
    shift.say(test::out({1}));
    EXPECT_FALSE(isDue(kEvery4h, shift));
    EXPECT_FALSE(isTimeForCopies(shift.bench(), shift.station.now()));
    shift.say(test::moved(Step::Bath));
    shift.at(4070);
    for (const Step step : {Step::Opened, Step::Diluent, Step::Rinsed, Step::Bagged})
        shift.say(test::moved(step));
    EXPECT_FALSE(isDue(kEvery4h, shift)) << "the card's tail of the critical window";
    shift.at(4090);
    EXPECT_TRUE(isDue(kEvery4h, shift));
}

}  // namespace
}  // namespace bathside
