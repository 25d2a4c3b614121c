#include "core/record/bag_content.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

Ampoule ampoule(int no, const char* component, const char* lot, const char* bag)
{
    Ampoule made;
    made.ref = {1, no};
    made.component = {component};
    made.lot = {lot};
    made.bag = BagId{bag};
    return made;
}

TEST(BagContentTest, countsAmpoulesOfEachLot)
{
    Bench bench;
    bench.pulls.push_back(
        {.no = 1,
         .ampoules = {ampoule(1, "serotype 3", "K07", "B1"), ampoule(2, "serotype 1", "R11", "B1"),
                      ampoule(3, "serotype 3", "K07", "B1"), ampoule(4, "serotype 3", "K07", "B2")},
         .bath = {},
         .closed = {}});
    const BagContent content = contentOf(bench, {"B1"});
    EXPECT_EQ(content.ampoules, 3);
    EXPECT_EQ(content.text(), "1 × serotype 1 R11, 2 × serotype 3 K07");
    EXPECT_EQ(contentOf(bench, {"B3"}).ampoules, 0);
    EXPECT_EQ(contentOf(bench, {"B3"}).text(), "");
}

}  // namespace
}  // namespace bathside
