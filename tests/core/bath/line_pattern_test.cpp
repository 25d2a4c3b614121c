#include "core/bath/line_pattern.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

using Value = std::variant<MilliCelsius, ReadingFault>;

struct Row {
    const char* name;
    const char* pattern;
    DecimalSign decimal;
    const char* line;
    double number;
};

class LinePatternFinds : public testing::TestWithParam<Row> {};

TEST_P(LinePatternFinds, theNumber)
{
    const Row& row = GetParam();
    const auto pattern = LinePattern::from(row.pattern, row.decimal);
    ASSERT_TRUE(pattern);
    const auto number = pattern->numberIn(row.line);
    ASSERT_TRUE(number);
    EXPECT_DOUBLE_EQ(*number, row.number);
}

constexpr auto kPoint = DecimalSign::Point;
constexpr auto kComma = DecimalSign::Comma;

INSTANTIATE_TEST_SUITE_P(
    Lines, LinePatternFinds,
    testing::Values(
        Row{"Alone", "#", kPoint, "28.06\r\n", 28.06}, Row{"Whole", "#", kPoint, "28", 28},
        Row{"Comma", "#", kComma, " 28,06 ", 28.06}, Row{"Negative", "#", kPoint, "-0.5", -0.5},
        Row{"Plus", "#", kPoint, "+27.9", 27.9},
        Row{"PlusWithAGap", "+ #", kPoint, "+   27.9", 27.9},
        Row{"Unit", "# C", kPoint, "28.1   C", 28.1},
        Row{"NamedChannel", "T1 = # C*", kPoint, "T1  =  28.1 C ok", 28.1},
        Row{"AfterADate", "* #", kPoint, "2026-03-05 07:12:00  27.95", 27.95},
        Row{"SecondField", "*,#,*", kPoint, "1,23.5,40.1", 23.5},
        Row{"SecondFieldByComma", "*;#;*", kComma, "1;23,5;40,1", 23.5},
        Row{"FirstFieldOfCommas", "#,*", kPoint, "23,5", 23},
        Row{"SignNames", "W\\#1:#g", kPoint, "W#1:0.2013g", 0.2013},
        Row{"FullStop", "is #.", kPoint, "is 23.", 23}, Row{"Tab", "a #", kPoint, "a\t7", 7}),
    [](const auto& test) { return std::string(test.param.name); });

struct BadLine {
    const char* name;
    const char* pattern;
    DecimalSign decimal;
    const char* line;
    ReadingFault fault;
};

class LinePatternRefuses : public testing::TestWithParam<BadLine> {};

TEST_P(LinePatternRefuses, aLineWithoutOne)
{
    const BadLine& row = GetParam();
    const auto pattern = LinePattern::from(row.pattern, row.decimal);
    ASSERT_TRUE(pattern);
    EXPECT_EQ(pattern->numberIn(row.line).error(), row.fault);
}

constexpr auto kUnreadable = ReadingFault::Unreadable;

INSTANTIATE_TEST_SUITE_P(
    Lines, LinePatternRefuses,
    testing::Values(BadLine{"Blank", "#", kPoint, " \r\n", ReadingFault::Empty},
                    BadLine{"Words", "#", kPoint, "warm", kUnreadable},
                    BadLine{"OtherDecimalSign", "#", kPoint, "28,1", kUnreadable},
                    BadLine{"OtherDecimalSignBeforeAnything", "#*", kPoint, "28,1", kUnreadable},
                    BadLine{"PartOfANumber", "*#*", kComma, "1.234,5", kUnreadable},
                    BadLine{"TwoSigns", "*#", kPoint, "--5", kUnreadable},
                    BadLine{"Exponent", "#", kPoint, "2.8e1", kUnreadable},
                    BadLine{"NoDigitFirst", "#", kPoint, ".5", kUnreadable},
                    BadLine{"OtherUnit", "# C", kPoint, "82.4 F", kUnreadable},
                    BadLine{"MoreBehind", "# C", kPoint, "28.1 C ok", kUnreadable},
                    BadLine{"BlankMissing", "T #", kPoint, "T28", kUnreadable},
                    BadLine{"NotANumber", "#", kPoint, "nan", kUnreadable}),
    [](const auto& test) { return std::string(test.param.name); });

TEST(LinePatternTest, doesNotReadAnEndlessLine)
{
    const auto pattern = LinePattern::from("*#*", kPoint);
    EXPECT_TRUE(pattern->numberIn("a" + std::string(250, ' ') + "28.1"));
    EXPECT_EQ(pattern->numberIn("a" + std::string(300, ' ') + "28.1").error(), kUnreadable);
}

TEST(LinePatternTest, refusesWhatIsNoPattern)
{
    using enum PatternFault;
    EXPECT_EQ(LinePattern::from("", kPoint).error(), NoNumber);
    EXPECT_EQ(LinePattern::from("T \\#", kPoint).error(), NoNumber);
    EXPECT_EQ(LinePattern::from("# #", kPoint).error(), TwoNumbers);
    EXPECT_EQ(LinePattern::from("#\\", kPoint).error(), OpenEscape);
    EXPECT_EQ(LinePattern::from("#\n", kPoint).error(), NotText);
    EXPECT_EQ(LinePattern::from("#" + std::string(80, 'x'), kPoint).error(), TooLong);
}

TEST(ReadLineTest, takesTheNumberAsCelsiusOrAsOhms)
{
    const auto pattern = LinePattern::from("#", kPoint).value();
    EXPECT_EQ(readLine(pattern, {}, "28.0626"), Value(MilliCelsius{28'063}));
    EXPECT_EQ(readLine(pattern, Platinum{100}, "110.90"), Value(MilliCelsius{28'005}));
    EXPECT_EQ(readLine(pattern, Platinum{100}, "1.2"), Value(ReadingFault::Shorted));
    EXPECT_EQ(readLine(pattern, {}, "1001"), Value(ReadingFault::Implausible));
    EXPECT_EQ(readLine(pattern, {}, "-273.2"), Value(ReadingFault::Implausible));
    EXPECT_EQ(readLine(pattern, {}, "warm"), Value(ReadingFault::Unreadable));
}

}  // namespace
}  // namespace bathside
