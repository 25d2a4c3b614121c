#include "core/bench/delivery.h"

#include <gtest/gtest.h>

#include "tests/support/shift.h"

namespace bathside {
namespace {

constexpr std::string_view kFile =
    "kind,item,lot,doses,count,expires\n"
    "ampoule,serotype 3,K60,2000,6,2027-01-31\n"
    "ampoule,serotype 9,K61,2000,6,2027-01-31\n";

TEST(DeliveryTest, isHeldAgainstTheCard)
{
    const test::BenchShift shift;
    const Intake intake = intakeFor(shift.bench(), kFile);
    ASSERT_EQ(intake.taken.size(), 1U);
    ASSERT_EQ(intake.faults.size(), 1U);
    EXPECT_EQ(intake.faults.front().expected, IntakeExpects::KnownComponent);
}

TEST(DeliveryTest, takesAnyComponentWithoutACard)
{
    EXPECT_EQ(intakeFor(Bench{}, kFile).taken.size(), 2U);
}

TEST(DeliveryTest, isOneStatement)
{
    const Receive said = deliveryOf(intakeFor(Bench{}, kFile));
    ASSERT_EQ(said.lines.size(), 2U);
    EXPECT_EQ(said.lines.front().of.lot, LotId{"K60"});
    EXPECT_EQ(said.lines.back().count, 6);
}

}  // namespace
}  // namespace bathside
