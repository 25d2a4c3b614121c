// Cases from RFC 4180, section 2, rules 1 to 7; the byte order mark and the semicolon as
// spreadsheets write them (common practice).

#include "core/stores/csv_reader.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

using Cells = std::vector<std::vector<std::string>>;

Cells cellsOf(std::string_view text)
{
    Cells cells;
    const auto table = csvFrom(text);
    if (table) {
        for (const CsvRow& row : table->rows)
            cells.push_back(row.cells);
    }
    return cells;
}

struct Case {
    const char* name;
    const char* text;
    Cells cells;
};

class ReadsCsv : public testing::TestWithParam<Case> {};

TEST_P(ReadsCsv, asTheStandardSays) { EXPECT_EQ(cellsOf(GetParam().text), GetParam().cells); }

INSTANTIATE_TEST_SUITE_P(
    Csv, ReadsCsv,
    testing::Values(
        Case{"Rule1LinesEndInCrLf",
             "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
             {{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}},
        Case{"Rule2TheLastMayHaveNoEnd", "aaa,bbb\r\nzzz,yyy", {{"aaa", "bbb"}, {"zzz", "yyy"}}},
        Case{"Rule4BlanksBelongToTheCell", "a ,b\r\n", {{"a ", "b"}}},
        Case{"Rule5Quotes", "\"aaa\",\"bbb\"\r\nzzz,yyy", {{"aaa", "bbb"}, {"zzz", "yyy"}}},
        Case{"Rule6QuotedLineEnd", "\"a\",\"b\r\nbb\"\r\nz,y", {{"a", "b\r\nbb"}, {"z", "y"}}},
        Case{"Rule7DoubledQuote", "\"aaa\",\"b\"\"bb\"", {{"aaa", "b\"bb"}}},
        Case{"EmptyCells", ",\r\n,x,", {{"", ""}, {"", "x", ""}}},
        Case{"EmptyLinesArePassedOver", "a\n\n\nb\n", {{"a"}, {"b"}}},
        Case{"ByteOrderMark",
             "\xEF\xBB\xBF"
             "a,b\n",
             {{"a", "b"}}},
        Case{"Semicolon", "a;b\n1,5;2\n", {{"a", "b"}, {"1,5", "2"}}},
        Case{"SemicolonInQuotesIsNone", "\"a;b\",c\n", {{"a;b", "c"}}},
        Case{"Tab", "a\tb\n1,5\t2\n", {{"a", "b"}, {"1,5", "2"}}}, Case{"Nothing", "", {}}),
    [](const auto& row) { return std::string(row.param.name); });

TEST(CsvFaultTest, namesTheLine)
{
    const auto openQuote = csvFrom("a,b\n1,\"two\nthree\n");
    ASSERT_FALSE(openQuote.has_value());
    EXPECT_EQ(openQuote.error().kind, CsvFault::Kind::OpenQuote);
    EXPECT_EQ(openQuote.error().line, 2);

    const auto after = csvFrom("a,b\n\"1\"x,2\n");
    ASSERT_FALSE(after.has_value());
    EXPECT_EQ(after.error().kind, CsvFault::Kind::TextAfterQuote);
    EXPECT_EQ(after.error().line, 2);

    const auto latin1 = csvFrom("a\nb\nc\xE4\n");
    ASSERT_FALSE(latin1.has_value());
    EXPECT_EQ(latin1.error().kind, CsvFault::Kind::NotUtf8);
    EXPECT_EQ(latin1.error().line, 3);
}

TEST(CsvLineTest, isWhereTheRowBegins)
{
    const auto table = csvFrom("a\r\n\"x\r\ny\"\r\n\r\nb\r\n");
    ASSERT_TRUE(table.has_value());
    ASSERT_EQ(table->rows.size(), 3U);
    EXPECT_EQ(table->rows[1].line, 2);
    EXPECT_EQ(table->rows[2].line, 5);
}

}  // namespace
}  // namespace bathside
