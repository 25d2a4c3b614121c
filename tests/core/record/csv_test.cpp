#include "core/record/csv.h"

#include <array>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "tests/support/random_facts.h"

namespace bathside {
namespace {

constexpr std::array kColumns{TableColumn{"bag", ""}, TableColumn{"age_at_down", "s"},
                              TableColumn{"started", kInstant}};

std::string rowOf(CsvDialect dialect, const auto& write)
{
    CsvWriter csv(dialect, kColumns);
    std::ignore = csv.take();
    write(csv);
    csv.endRow();
    return csv.take();
}

std::string textOf(const std::string& text, CsvDialect dialect = CsvDialect::forPrograms())
{
    std::string row = rowOf(dialect, [&](CsvWriter& csv) { csv.text(text); });
    EXPECT_TRUE(row.ends_with("\r\n"));
    return row.substr(0, row.size() - 2);
}

/// A reader by the grammar of RFC 4180, section 2, for any separator.
std::vector<std::vector<std::string>> parsed(std::string_view text, char separator)
{
    std::vector<std::vector<std::string>> rows(1, {""});
    bool quoted = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '"' && quoted && i + 1 < text.size() && text[i + 1] == '"')
            rows.back().back() += text[++i];
        else if (text[i] == '"')
            quoted = !quoted;
        else if (!quoted && text[i] == separator)
            rows.back().emplace_back();
        else if (!quoted && text.substr(i, 2) == "\r\n" && ++i)
            rows.push_back({""});
        else
            rows.back().back() += text[i];
    }
    rows.pop_back();
    return rows;
}

// From memory: RFC 4180, section 2, rules 5 to 7 (the quotes that a cell does not need are left
// out).
TEST(CsvTest, quotesAsTheStandardSays)
{
    const std::string row = rowOf(CsvDialect::forPrograms(), [](CsvWriter& csv) {
        csv.text("aaa");
        csv.text("b\r\nbb");
        csv.text("ccc");
    });
    EXPECT_EQ(row, "aaa,\"b\r\nbb\",ccc\r\n");
    EXPECT_EQ(textOf("b\"bb"), "\"b\"\"bb\"");
    EXPECT_EQ(textOf("a,b"), "\"a,b\"");
    EXPECT_EQ(textOf(" spaces are data "), "\" spaces are data \"");
    EXPECT_EQ(textOf(""), "");
}

TEST(CsvTest, quotesTheOtherDialectsSeparatorToo)
{
    EXPECT_EQ(textOf("a;=1+1"), "\"a;=1+1\"");
    EXPECT_EQ(textOf("a,b", CsvDialect::forSpreadsheets(',')), "\"a,b\"");
}

TEST(CsvTest, everyTextComesBackInEveryDialect)
{
    test::RandomFacts random(9);
    for (const CsvDialect dialect : {CsvDialect::forPrograms(), CsvDialect::forSpreadsheets('.'),
                                     CsvDialect::forSpreadsheets(',')}) {
        for (int i = 0; i < 2000; ++i) {
            const std::vector<std::string> cells{random.text(), random.text(), random.text()};
            const std::string row = rowOf(dialect, [&](CsvWriter& csv) {
                for (const std::string& cell : cells)
                    csv.text(cell);
            });
            const auto rows = parsed(row, dialect.separator());
            ASSERT_EQ(rows.size(), 1U) << row;
            ASSERT_EQ(rows[0].size(), 3U) << row;
            for (std::size_t cell = 0; cell < 3; ++cell) {
                const bool guarded = rows[0][cell] == "'" + cells[cell];
                ASSERT_TRUE(guarded || rows[0][cell] == cells[cell]) << row;
            }
        }
    }
}

// Published: OWASP ASVS 5, requirement 1.2.10 names = + - @ tab and NUL; other guides add CR, LF
// and (from memory) the full-width forms; some spreadsheets drop blanks before one (from memory).
TEST(CsvTest, textThatASpreadsheetWouldRunGetsAnApostrophe)
{
    for (const std::string text :
         {"=1+1", "+1", "-1", "@SUM(A1)", "\uFF1D1", "\uFF0B1", "\uFF0D1", "\uFF201"})
        EXPECT_EQ(textOf(text), "'" + text);
    EXPECT_EQ(textOf("\t=1"), "\"'\t=1\"");
    EXPECT_EQ(textOf("\r=1"), "\"'\r=1\"");
    EXPECT_EQ(textOf("\n=1"), "\"'\n=1\"");
    EXPECT_EQ(textOf(std::string("\0=1", 3)), std::string("'\0=1", 4));
    for (const std::string blanks : {" ", "   ", "\u00A0", "\u3000 ", "\uFEFF"}) {
        EXPECT_EQ(textOf(blanks + "=1"), "'" + blanks + "=1") << blanks;
        EXPECT_EQ(textOf(blanks + "\t@A1"), "\"'" + blanks + "\t@A1\"") << blanks;
    }
    EXPECT_EQ(textOf("   "), "\"   \"");
    EXPECT_EQ(textOf(" 1=1"), "\" 1=1\"");
    EXPECT_EQ(textOf("1=1"), "1=1");
    EXPECT_EQ(textOf("K-07"), "K-07");
}

TEST(CsvTest, numbersAreNeverGuarded)
{
    EXPECT_EQ(rowOf(CsvDialect::forPrograms(), [](CsvWriter& csv) { csv.whole(-5); }), "-5\r\n");
    EXPECT_EQ(rowOf(CsvDialect::forPrograms(), [](CsvWriter& csv) { csv.scaled(-500, 3); }),
              "-0.500\r\n");
}

TEST(CsvTest, scaledNumbersAreExact)
{
    const auto scaled = [](std::int64_t count, int decimals, char sign = '.') {
        std::string row =
            rowOf(sign == '.' ? CsvDialect::forPrograms() : CsvDialect::forSpreadsheets(sign),
                  [&](CsvWriter& csv) { csv.scaled(count, decimals); });
        return row.substr(0, row.size() - 2);
    };
    EXPECT_EQ(scaled(400000, 3), "400.000");
    EXPECT_EQ(scaled(9999, 3), "9.999");
    EXPECT_EQ(scaled(10000, 3), "10.000");
    EXPECT_EQ(scaled(7, 3), "0.007");
    EXPECT_EQ(scaled(0, 3), "0.000");
    EXPECT_EQ(scaled(-7, 3), "-0.007");
    EXPECT_EQ(scaled(-12345, 3), "-12.345");
    EXPECT_EQ(scaled(1200, 0), "1200");
    EXPECT_EQ(scaled(28400, 3, ','), "28,400");
    EXPECT_EQ(scaled(9007199254740991, 3), "9007199254740.991");
}

TEST(CsvTest, headsCarryTheUnitAndTheBasisOfTime)
{
    CsvWriter programs(CsvDialect::forPrograms(), kColumns);
    CsvWriter sheets(CsvDialect::forSpreadsheets(','), kColumns);
    CsvWriter pointSheets(CsvDialect::forSpreadsheets('.'), kColumns);
    EXPECT_EQ(programs.take(), "bag,age_at_down_s,started_utc\r\n");
    EXPECT_EQ(sheets.take(),
              "\xEF\xBB\xBF"
              "bag;age at down [s];started [local]\r\n");
    EXPECT_EQ(pointSheets.take(),
              "\xEF\xBB\xBF"
              "bag,age at down [s],started [local]\r\n");
}

TEST(CsvTest, instantsAreUtcForProgramsAndLocalForSheets)
{
    const LocalInstant at{WallTime(Millis(1772691000123)), std::chrono::hours(1)};
    const auto instant = [&](CsvWriter& csv) { csv.instant(at); };
    EXPECT_EQ(rowOf(CsvDialect::forPrograms(), instant), "2026-03-05T06:10:00.123Z\r\n");
    EXPECT_EQ(rowOf(CsvDialect::forSpreadsheets('.'), instant), "2026-03-05 07:10:00.123\r\n");
    EXPECT_EQ(rowOf(CsvDialect::forSpreadsheets(','), instant), "2026-03-05 07:10:00,123\r\n");
}

TEST(CsvTest, offsetsOfSheetsAreNoFormula)
{
    const auto offset = [](CsvWriter& csv) { csv.offset({{}, std::chrono::hours(1)}); };
    EXPECT_EQ(rowOf(CsvDialect::forPrograms(), offset), "+01:00\r\n");
    EXPECT_EQ(rowOf(CsvDialect::forSpreadsheets('.'), offset), "UTC+01:00\r\n");
}

TEST(CsvTest, offsetsAreAsInRfc3339)
{
    EXPECT_EQ(offsetText(std::chrono::seconds(0)), "+00:00");
    EXPECT_EQ(offsetText(std::chrono::minutes(630)), "+10:30");
    EXPECT_EQ(offsetText(std::chrono::minutes(-210)), "-03:30");
    EXPECT_EQ(offsetText(std::chrono::seconds(1172)), "+00:19");  // Amsterdam until 1937
}

}  // namespace
}  // namespace bathside
