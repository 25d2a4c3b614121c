#include "core/bath/pattern_offer.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

const OfferedPattern* offerOf(const std::vector<OfferedPattern>& all, double number)
{
    for (const OfferedPattern& each : all) {
        if (each.number == number)
            return &each;
    }
    return nullptr;
}

TEST(PatternOfferTest, aNumberAloneIsTheWholeLine)
{
    const auto all = patternsFor(" 28.13\r\n");
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0], (OfferedPattern{"#", DecimalSign::Point, 28.13}));
}

TEST(PatternOfferTest, otherNumbersMayChangeAndOtherTextMayNot)
{
    const auto all = patternsFor("T1 = 28.13 C");
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0], (OfferedPattern{"T# = * C", DecimalSign::Point, 1}));
    EXPECT_EQ(all[1], (OfferedPattern{"T* = # C", DecimalSign::Point, 28.13}));
}

TEST(PatternOfferTest, aDecimalCommaIsKnownByTheNumber)
{
    const auto all = patternsFor("28,13 C");
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0], (OfferedPattern{"# C", DecimalSign::Comma, 28.13}));
}

// A logger's line with a date and a time before the value.
TEST(PatternOfferTest, aDateAndATimeAreNoPartOfTheValue)
{
    const auto all = patternsFor("2026-03-05 09:41:07 28.13 0");
    const auto* value = offerOf(all, 28.13);
    ASSERT_TRUE(value);
    const auto pattern = LinePattern::from(value->pattern, value->decimal);
    ASSERT_TRUE(pattern);
    EXPECT_EQ(pattern->numberIn("2026-12-31 23:59:59 -4.5 1").value(), -4.5);
    EXPECT_FALSE(pattern->numberIn("2026-12-31 23:59:59 err"));
}

TEST(PatternOfferTest, signsThatMeanSomethingInAPatternAreTakenAsTheyAre)
{
    const auto all = patternsFor("#1 * 28.5");
    const auto* value = offerOf(all, 28.5);
    ASSERT_TRUE(value);
    const auto pattern = LinePattern::from(value->pattern, value->decimal);
    ASSERT_TRUE(pattern);
    EXPECT_EQ(pattern->numberIn("#7 * 29.5").value(), 29.5);
    EXPECT_FALSE(pattern->numberIn("x7 * 29.5"));
}

// Bytes that are no printable ASCII (a degree sign in any encoding) may be anything.
TEST(PatternOfferTest, aDegreeSignIsAnyText)
{
    const auto all = patternsFor(
        "28.1 \xc2\xb0"
        "C");
    const auto* value = offerOf(all, 28.1);
    ASSERT_TRUE(value);
    const auto pattern = LinePattern::from(value->pattern, value->decimal);
    ASSERT_TRUE(pattern);
    EXPECT_EQ(pattern
                  ->numberIn("27.4 \xb0"
                             "C")
                  .value(),
              27.4);
}

TEST(PatternOfferTest, whatIsOfferedReadsItsNumberInTheLine)
{
    for (const std::string_view line : {"28.13,29.14", "a1b2c3", "-5", "+28.0;OK;7", "1.234,5",
                                        "ch 1: 28.1 ch 2: 4.0", "28.", ".5", "1-2-3"}) {
        for (const OfferedPattern& offer : patternsFor(line)) {
            const auto pattern = LinePattern::from(offer.pattern, offer.decimal);
            ASSERT_TRUE(pattern) << line;
            EXPECT_EQ(pattern->numberIn(line), offer.number) << line << " | " << offer.pattern;
        }
    }
}

TEST(PatternOfferTest, offersNothingWhereThereIsNothing)
{
    EXPECT_TRUE(patternsFor("").empty());
    EXPECT_TRUE(patternsFor("  \n").empty());
    EXPECT_TRUE(patternsFor("no number").empty());
    EXPECT_TRUE(patternsFor(std::string(LinePattern::kLongestLine + 1, '1')).empty());
}

}  // namespace
}  // namespace bathside
