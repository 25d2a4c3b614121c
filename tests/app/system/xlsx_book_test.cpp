// The workbook's own promises; what is in it is read back by tests/app/cli/export_files.py.

#include "app/system/xlsx_book.h"

#include <array>

#include <gtest/gtest.h>

namespace bathside::app {
namespace {

constexpr std::array kColumns{TableColumn{"seq", ""}, TableColumn{"left", "mL"}};

std::string bookOf(std::uint32_t rowsEach, int rows)
{
    XlsxBook book(rowsEach);
    Table& table = book.add("events", kColumns);
    for (int row = 0; row < rows; ++row) {
        table.whole(row);
        table.scaled(row, 3);
        table.endRow();
    }
    return book.finish(WallTime(Millis(1772691000123))).value();
}

// ECMA-376 part 2: a package is a ZIP file; its local headers begin with PK 03 04.
TEST(XlsxBookTest, isOnePackageAndTheSameEachTime)
{
    const std::string bytes = bookOf(XlsxBook::kMostRows, 5);
    EXPECT_TRUE(bytes.starts_with("PK\x03\x04"));
    EXPECT_EQ(bookOf(XlsxBook::kMostRows, 5), bytes);
}

TEST(XlsxBookTest, moreRowsThanASheetHasGoOnOnAnother)
{
    const std::string second = "xl/worksheets/sheet2.xml", third = "xl/worksheets/sheet3.xml";
    EXPECT_EQ(bookOf(4, 2).find(second), std::string::npos);
    EXPECT_NE(bookOf(4, 5).find(second), std::string::npos);
    EXPECT_EQ(bookOf(4, 5).find(third), std::string::npos);
    EXPECT_NE(bookOf(4, 7).find(third), std::string::npos);
}

TEST(XlsxBookTest, aBookThatIsLeftLeavesNothing)
{
    XlsxBook book;
    book.add("events", kColumns).whole(1);
    SUCCEED();
}

// Limits: 32,767 signs in a cell (from memory); what XML 1.0 cannot hold (section 2.2, Char) and
// what a cell takes for an escape (ECMA-376 part 1, ST_Xstring).
TEST(CellTextTest, isWhatACellCanHold)
{
    EXPECT_EQ(cellText("=1+1"), "=1+1");  // a text cell: never run
    EXPECT_EQ(cellText("a\uFFFE\uFFFFb"), "a\uFFFD\uFFFDb");
    EXPECT_EQ(cellText(std::string("a\0b", 3)), "a\uFFFDb");
    EXPECT_EQ(cellText("_x0041_ _x41_"), "_x005F_x0041_ _x41_");
    EXPECT_EQ(cellText(std::string(32'767, 'a')), std::string(32'767, 'a'));
    const std::string cut = cellText(std::string(32'768, 'a'));
    EXPECT_TRUE(cut.ends_with("(cut: whole in events.jsonl)"));
    EXPECT_LE(cut.size(), 32'767U + 2);  // the ellipsis has three bytes
}

}  // namespace
}  // namespace bathside::app
