// What is written of a cause, an action and a bag, as the trail has it.

#include "core/review/causes.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

TEST(CausesTest, theBagStandsBehindTheAction)
{
    EXPECT_EQ(actionText("shown again", {}), "shown again");
    EXPECT_EQ(actionText("plan changed", textOf(Disposition::Discard, {})),
              "plan changed; bag: discard");
    EXPECT_EQ(actionText("shown again", textOf(Disposition::UseWithNote, "line A only")),
              "shown again; bag: use with note: line A only");
}

}  // namespace
}  // namespace bathside
