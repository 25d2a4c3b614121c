#include "core/facts/subject.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

TEST(SubjectTest, ofAnAmpouleNamesThatAmpoule)
{
    EXPECT_EQ(toText(subjectOf(AmpouleRef{3, 2})), "ampoule:3/2");
    EXPECT_EQ(ampouleOf(subjectOf(AmpouleRef{3, 2})), (AmpouleRef{3, 2}));
}

TEST(SubjectTest, readsBackWhatItWrites)
{
    for (const Subject& subject :
         {subjectOfPull(4), subjectOf(BagId{"B:4"}), subjectOf(LineId{"A"}),
          Subject{SubjectKind::Bath, ""}, Subject{SubjectKind::Station, ""}})
        EXPECT_EQ(subjectFromText(toText(subject)), subject);
}

TEST(SubjectTest, ofAnythingElseIsNoAmpoule)
{
    const AmpouleRef none{};
    EXPECT_EQ(ampouleOf({SubjectKind::Bag, "3/2"}), none);
    for (const char* id : {"", "3", "3/", "/2", "3/2x", "x/2", "3-2"})
        EXPECT_EQ(ampouleOf({SubjectKind::Ampoule, id}), none) << id;
}

TEST(SubjectTest, unknownTextIsTheBench)
{
    EXPECT_EQ(subjectFromText("cupboard:1"), (Subject{SubjectKind::Bench, ""}));
}

}  // namespace
}  // namespace bathside
