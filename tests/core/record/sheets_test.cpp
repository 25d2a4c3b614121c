#include "core/record/sheets.h"

#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/record/deviations.h"
#include "tests/core/record/sample_day.h"
#include "tests/support/local_days.h"

namespace bathside {
namespace {

Sheets sheetsOf(const std::vector<Event>& events, const std::vector<Entry>& later = {})
{
    const test::TableDays days;
    SheetFold fold(days, "UTC", {CsvDialect::forPrograms()}, later);
    for (const Event& event : events)
        fold.take(event);
    return std::move(fold.finish().front());
}

std::vector<std::string> rowsOf(CsvWriter& csv)
{
    const std::string text = csv.take();
    std::vector<std::string> rows;
    for (std::size_t from = 0; from < text.size();) {
        const std::size_t end = text.find("\r\n", from);
        rows.push_back(text.substr(from, end - from));
        from = end + 2;
    }
    rows.erase(rows.begin());  // the head
    return rows;
}

bool has(const std::string& row, const std::string& cells)
{
    return row.find(cells) != std::string::npos;
}

class SheetsOfADay : public testing::Test {
protected:
    Sheets sheets = sheetsOf(test::sampleDay().events);
};

TEST_F(SheetsOfADay, haveARowForEachAmpouleBagAndDeviation)
{
    EXPECT_EQ(rowsOf(sheets.ampoules).size(), 3U);
    EXPECT_EQ(rowsOf(sheets.bags).size(), 3U);
    EXPECT_EQ(rowsOf(sheets.deviations).size(), 3U);
}

// Worked by hand from sample_day.h: 6.250 s to the bath; 70 s and 13.751 s more to diluent.
TEST_F(SheetsOfADay, giveTheTimesThatTheLimitsWereJudgedBy)
{
    const auto rows = rowsOf(sheets.ampoules);
    EXPECT_TRUE(has(rows[0], ",6.250,73.751,opened,no,")) << rows[0];
    EXPECT_TRUE(has(rows[1], ",9.000,90.999,,no,"))
        << rows[1];  // after the correction of *in bath*
    EXPECT_TRUE(has(rows[2], ",,,,no,2026-03-05T06:10:12.000Z,broken")) << rows[2];
}

TEST_F(SheetsOfADay, showCorrectedValues)
{
    EXPECT_TRUE(has(rowsOf(sheets.ampoules)[0], ",serotype 3,K08,B1,"));
    EXPECT_TRUE(has(rowsOf(sheets.bags)[0], ",2,\"1 × serotype 3 K07, 1 × serotype 3 K08\","));
}

TEST_F(SheetsOfADay, giveABagsAgeFromItsFirstAmpouleInDiluent)
{
    const auto rows = rowsOf(sheets.bags);
    EXPECT_TRUE(has(rows[0], ",3601.234,no,expired,30.250,")) << rows[0];
    EXPECT_TRUE(has(rows[1], ",,no,discarded,800.000,")) << rows[1];
}

TEST_F(SheetsOfADay, giveADeviationAsItStandsAfterRejudging)
{
    const auto rows = rowsOf(sheets.deviations);
    EXPECT_TRUE(has(rows[0], ",exposure,ampoule:1/2,B1,,s,yes,no")) << rows[0];
    EXPECT_TRUE(has(rows[1], ",in use,bag:B1,B1,1.234,s,no,yes")) << rows[1];
    EXPECT_TRUE(has(rows[2], ",diluent,bag:B2,B2,0.600,°C,no,yes")) << rows[2];
}

TEST_F(SheetsOfADay, neutraliseLabelsAndWords)
{
    const auto rows = rowsOf(sheets.bags);
    EXPECT_TRUE(has(rows[0], ",400.000,'=D7,21.500,")) << rows[0];
    EXPECT_TRUE(has(rows[1], ",\"'=HYPERLINK(\"\"http://x\"\")\"")) << rows[1];
}

TEST(DeviationsTest, areOneForEachLimitAndSubjectWithTheLastWord)
{
    test::DayScript day;
    const Subject ampoule = subjectOf(AmpouleRef{1, 1});
    day.at("2026-03-05T06:00:00Z", ShiftOpened{"Europe/Amsterdam", {}})
        .at("2026-03-05T06:01:00Z",
            DeviationFound{LimitName::Exposure, ampoule, BagId{"B1"}, 500, {}})
        .at("2026-03-05T06:02:00Z", DeviationFound{LimitName::Thaw, ampoule, BagId{"B1"}, 1, {}})
        .at("2026-03-05T06:03:00Z", Rejudged{LimitName::Exposure, ampoule, BagId{"B2"}, 700, {}})
        .at("2026-03-05T06:04:00Z",
            Rejudged{LimitName::Swirl, subjectOf(BagId{"B1"}), BagId{"B1"}, 9, {}});
    State state;
    for (const Event& event : day.events)
        state = evolve(std::move(state), event);
    const auto rows = deviationsOf(state);
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[0].seq, 2);
    EXPECT_EQ(rows[0].over, 700);
    EXPECT_EQ(rows[0].bag, BagId{"B2"});
    EXPECT_TRUE(rows[0].rejudged);
    EXPECT_EQ(rows[1].over, 1);
    EXPECT_FALSE(rows[1].rejudged);
    EXPECT_TRUE(rows[2].rejudged);  // a correction made it one in the first place
}

TEST(SheetFoldTest, whatWasTakenBackIsNotThere)
{
    test::DayScript day;
    day.at("2026-03-05T06:00:00Z", ShiftOpened{"Europe/Amsterdam", {}})
        .at("2026-03-05T06:01:00Z", BagStarted{{"B1"}, {400000}, {"D7"}, std::nullopt})
        .at("2026-03-05T06:01:02Z", FactTakenBack{{2}, std::nullopt});
    Sheets sheets = sheetsOf(day.events);
    EXPECT_TRUE(rowsOf(sheets.bags).empty());
}

TEST(SheetFoldTest, aBagHasItsLastHoldAndHowItEnded)
{
    test::DayScript day;
    day.at("2026-03-05T06:00:00Z", ShiftOpened{"Europe/Amsterdam", {}})
        .at("2026-03-05T06:01:00Z", BagStarted{{"B1"}, {400000}, {"D7"}, std::nullopt})
        .at("2026-03-05T06:02:00Z", BagHeld{{"B1"}, HoldReason::Leak, std::nullopt})
        .at("2026-03-05T06:03:00Z", BagReleased{{"B1"}, {"LS"}, "use"})
        .at("2026-03-05T06:04:00Z", BagHeld{{"B1"}, HoldReason::Colour, "rosy"})
        .at("2026-03-05T06:05:00Z", BagReleased{{"B1"}, {"LS"}, "use with note: line A"});
    Sheets sheets = sheetsOf(day.events);
    const auto rows = rowsOf(sheets.bags);
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_TRUE(has(rows[0],
                    ",2026-03-05T06:04:00.000Z,colour,rosy,"
                    "2026-03-05T06:05:00.000Z,LS,use with note: line A"))
        << rows[0];
}

// The second shift reviews a deviation of the first and says something of itself; after its closing
// a lot of it is corrected, past the end of what is exported.
TEST(SheetFoldTest, eachShiftHasWhatLaterOnesSaidOfIt)
{
    test::DayScript day;
    const auto over = [](const char* bag, Seq from) {
        return DeviationFound{LimitName::InUse, subjectOf(BagId{bag}), BagId{bag}, 1000, {from}};
    };
    day.at("2026-03-05T06:00:00Z", ShiftOpened{"Europe/Amsterdam", {}})
        .at("2026-03-05T06:01:00Z", BagStarted{{"B1"}, {400000}, {"D7"}, std::nullopt})
        .at("2026-03-05T07:30:00Z", over("B1", 2))
        .at("2026-03-05T08:00:00Z", ShiftClosed{})
        .at("2026-03-05T09:00:00Z", ShiftOpened{"Europe/Amsterdam", {}})
        .at("2026-03-05T09:01:00Z", DeviationReviewed{3, "other", "=1+1", "use-with-note"})
        .at("2026-03-05T09:01:00Z", RecordSigned{Meaning::Reviewed, {3}, {}})
        .at("2026-03-05T09:02:00Z", BagStarted{{"B1"}, {400000}, {"D8"}, std::nullopt})
        .at("2026-03-05T09:10:00Z", over("B1", 8))
        .at("2026-03-05T10:00:00Z", ShiftClosed{});
    const auto exported = day.events;
    day.at("2026-03-06T01:00:00Z", FactCorrected{8, "lot", "D9", "read again"});
    const std::vector<Entry> later{day.entries[5], day.entries[6], day.entries[10]};
    Sheets sheets = sheetsOf(exported, later);
    const auto bags = rowsOf(sheets.bags), deviations = rowsOf(sheets.deviations);
    ASSERT_EQ(bags.size(), 2U);
    EXPECT_TRUE(has(bags[0], ",D7,")) << bags[0];
    EXPECT_TRUE(has(bags[1], ",D9,")) << bags[1];
    ASSERT_EQ(deviations.size(), 2U);
    EXPECT_TRUE(
        deviations[0].ends_with(",yes,2026-03-05T09:01:00.000Z,AB,other,'=1+1,use-with-note,yes"))
        << deviations[0];
    EXPECT_TRUE(deviations[1].ends_with(",yes,,,,,,no")) << deviations[1];
}

TEST(SheetFoldTest, aDurationAcrossARestartIsUncertain)
{
    test::DayScript day;
    day.at("2026-03-05T06:00:00Z", ShiftOpened{"Europe/Amsterdam", {}})
        .at("2026-03-05T06:01:00Z", AmpouleOut{{1, 1}, {"serotype 3"}, {"K07"}})
        .at("2026-03-05T06:01:08Z", AmpouleInBath{{1, 1}, true});
    day.events.back().at.bootId[0] ^= 1;
    day.events.back().at.boot = std::chrono::seconds(3);
    Sheets sheets = sheetsOf(day.events);
    EXPECT_TRUE(has(rowsOf(sheets.ampoules).front(), ",8.000,,,yes,"));
}

TEST(SheetFoldTest, localTimeFollowsTheShiftsZone)
{
    const test::TableDays days;
    SheetFold fold(days, "UTC", {});
    const WallTime noon = fromRfc3339("2026-07-01T12:00:00Z").value();
    EXPECT_EQ(fold.local(noon).offset, std::chrono::hours(0));
    test::DayScript day;
    day.at("2026-03-05T06:00:00Z", ShiftOpened{"Europe/Amsterdam", {}});
    fold.take(day.events.front());
    EXPECT_EQ(fold.local(noon).offset, std::chrono::hours(2));
}

}  // namespace
}  // namespace bathside
