#include "core/record/export.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/record/days.h"
#include "core/record/event_table.h"
#include "core/trail/seal.h"
#include "tests/core/record/sample_day.h"
#include "tests/support/local_days.h"
#include "tests/support/memory_trail.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;

constexpr auto kThatDay = 2026y / std::chrono::March / 5;
constexpr auto kDayAfter = 2026y / std::chrono::March / 6;

std::string golden(const std::string& name)
{
    std::ifstream file(std::string(BATHSIDE_GOLDEN) + "/" + name, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

class ExportTest : public testing::Test {
protected:
    ExportOrder order(std::chrono::year_month_day first, std::chrono::year_month_day last) const
    {
        ExportOrder order{.zone = "Europe/Amsterdam",
                          .firstDay = first,
                          .lastDay = last,
                          .version = "0.1.0",
                          .runs = {},
                          .context = {},
                          .origin = {},
                          .lines = true,
                          .sheets = {CsvDialect::forPrograms(), CsvDialect::forSpreadsheets(',')}};
        DayFinder finder;
        for (const Entry& entry : trail.entries)
            finder.take(entry);
        const auto period = periodOf(days, order.zone, first, last);
        if (period)
            order.runs = finder.record(period->start, period->end);
        return order;
    }

    Result<Manifest, ExportFault> exported(const ExportOrder& what) { return exported(what, sink); }
    Result<Manifest, ExportFault> exported(const ExportOrder& what, Sink& into)
    {
        return exportRecord(trail, what, days, into);
    }

    test::TableDays days;
    test::MemoryTrail trail{test::sampleDay().entries};
    test::MemorySink sink;
};

// The files beside this test were read through by hand when they were added; none is ever edited.
TEST_F(ExportTest, ofADayIsAsItAlwaysWas)
{
    ASSERT_TRUE(exported(order(kThatDay, kThatDay)));
    std::size_t compared = 0;
    for (const auto& [name, bytes] : sink.files) {
        const std::string expected = golden(name);
        ASSERT_FALSE(expected.empty()) << name;
        EXPECT_EQ(bytes, expected) << name;
        ++compared;
    }
    EXPECT_EQ(compared, 10U);
}

TEST_F(ExportTest, describesEveryFileInTheManifest)
{
    const auto manifest = exported(order(kThatDay, kThatDay));
    ASSERT_TRUE(manifest);
    EXPECT_EQ(manifestFrom(sink.files.at("manifest.json")), *manifest);
    ASSERT_EQ(manifest->files.size() + 1, sink.files.size());
    for (const auto& file : manifest->files) {
        EXPECT_EQ(file.sha256, sha256(sink.files.at(file.name))) << file.name;
        EXPECT_EQ(static_cast<std::size_t>(file.bytes), sink.files.at(file.name).size());
    }
    EXPECT_EQ(sink.order.back(), "manifest.json");
}

TEST_F(ExportTest, takesAFileThatWasMadeElsewhere)
{
    ExportOrder what = order(kThatDay, kThatDay);
    what.also.push_back({"day-sheet.pdf", "%PDF-1.4"});
    const auto manifest = exported(what);
    ASSERT_TRUE(manifest);
    EXPECT_EQ(sink.files.at("day-sheet.pdf"), "%PDF-1.4");
    EXPECT_EQ(manifest->files.back().name, "day-sheet.pdf");
    EXPECT_EQ(manifest->files.back().sha256, sha256("%PDF-1.4"));
    EXPECT_EQ(sink.order.back(), "manifest.json");
}

TEST_F(ExportTest, saysWhichPartOfTheTrailItIs)
{
    const auto manifest = exported(order(kThatDay, kThatDay)).value();
    EXPECT_EQ(manifest.count, 36);
    EXPECT_EQ(manifest.runs, (std::vector<SeqRange>{{1, 36}}));
    EXPECT_EQ(manifest.head, trail.head());
    EXPECT_EQ(manifest.last, (Head{36, trail.entries[35].hash}));
    EXPECT_EQ(manifest.from, fromRfc3339("2026-03-04T23:00:00Z"));
    EXPECT_EQ(manifest.to, fromRfc3339("2026-03-05T23:00:00Z"));
    EXPECT_TRUE(manifest.rehearsal);
    EXPECT_EQ(manifest.station, "bench 1");
}

TEST_F(ExportTest, aWholeTrailFollowsNothing)
{
    ASSERT_TRUE(exported(order(kThatDay, kDayAfter)));
    EXPECT_EQ(sink.files.at("events.jsonl").find("\"previous\""), std::string::npos);
}

TEST_F(ExportTest, aDayInMidTrailSaysWhatItFollows)
{
    const auto manifest = exported(order(kDayAfter, kDayAfter)).value();
    EXPECT_EQ(manifest.runs, (std::vector<SeqRange>{{37, 37}}));
    EXPECT_NE(sink.files.at("events.jsonl")
                  .find("\"previous\":\"" + toHex(trail.entries[35].hash) + "\""),
              std::string::npos);
}

TEST_F(ExportTest, aRangeOfDaysIsOneExport)
{
    EXPECT_EQ(exported(order(kThatDay, kDayAfter)).value().count, 37);
}

TEST_F(ExportTest, aDayWithoutEventsIsAnEmptyRecord)
{
    const auto seventh = 2026y / std::chrono::March / 7;
    const auto manifest = exported(order(seventh, seventh)).value();
    EXPECT_EQ(manifest.count, 0);
    EXPECT_EQ(manifest.last, Head{});
    EXPECT_EQ(sink.files.at("events.jsonl"), "");
    EXPECT_TRUE(sink.files.at("events.csv").starts_with("seq,at_utc,"));
}

TEST_F(ExportTest, onlyWhatIsAskedFor)
{
    auto what = order(kThatDay, kThatDay);
    what.sheets.clear();
    ASSERT_TRUE(exported(what));
    EXPECT_EQ(sink.order, (std::vector<std::string>{"events.jsonl", "manifest.json"}));
}

// A trail that goes on from a damaged one's last good head, and is exported from its beginning.
TEST_F(ExportTest, aContinuedTrailSaysWhatItFollows)
{
    const Head before{36, trail.entries[35].hash};
    trail.entries.erase(trail.entries.begin(), trail.entries.begin() + 36);
    auto what = order(kDayAfter, kDayAfter);
    EXPECT_EQ(exported(what).error().kind, ExportFault::Kind::Incomplete);
    what.origin = before;
    ASSERT_TRUE(exported(what));
    EXPECT_NE(sink.files.at("events.jsonl").find("\"previous\""), std::string::npos);
}

TEST_F(ExportTest, judgesByTheContextThatWentBefore)
{
    auto what = order(kDayAfter, kDayAfter);
    EXPECT_FALSE(exported(what).value().rehearsal);
    what.context = {trail.entries.front()};
    EXPECT_TRUE(exported(what).value().rehearsal);
}

TEST_F(ExportTest, carriesKindsThatItDoesNotKnow)
{
    trail.entries.back().kind = "bag.flown";
    ASSERT_TRUE(exported(order(kDayAfter, kDayAfter)));
    EXPECT_NE(sink.files.at("events.jsonl").find("bag.flown"), std::string::npos);
    EXPECT_NE(sink.files.at("events.csv").find("bag.flown"), std::string::npos);
}

TEST_F(ExportTest, refusesZonesAndDaysThatAreNone)
{
    auto what = order(kThatDay, kThatDay);
    what.zone = "Europe/Nowhere";
    EXPECT_EQ(exported(what).error().kind, ExportFault::Kind::NoSuchZone);
    EXPECT_EQ(exported(order(kDayAfter, kThatDay)).error().kind, ExportFault::Kind::NoSuchDay);
    what = order(kThatDay, kThatDay);
    what.zone = "Pacific/Apia";
    what.firstDay = what.lastDay = 2011y / std::chrono::December / 30;
    EXPECT_EQ(exported(what).error().kind, ExportFault::Kind::NoSuchDay);
    EXPECT_TRUE(sink.order.empty());
}

TEST_F(ExportTest, saysWhenTheTrailWouldNot)
{
    trail.failsAt = 20;
    const auto fault = exported(order(kThatDay, kThatDay)).error();
    EXPECT_EQ(fault.kind, ExportFault::Kind::Trail);
    EXPECT_EQ(fault.seq, 20);
    EXPECT_EQ(fault.trouble.fault, StoreFault::Damaged);
    EXPECT_FALSE(sink.files.contains("manifest.json"));
}

TEST_F(ExportTest, saysWhichEntryIsNotThere)
{
    const auto what = order(kThatDay, kThatDay);
    trail.entries.erase(trail.entries.begin() + 19);
    const auto fault = exported(what).error();
    EXPECT_EQ(fault.kind, ExportFault::Kind::Incomplete);
    EXPECT_EQ(fault.seq, 20);
}

TEST_F(ExportTest, neverHasAManifestWhenAFileFailed)
{
    for (const char* name :
         {"events.jsonl", "events-sheet.csv", "deviations.csv", "manifest.json"}) {
        test::MemorySink refusing;
        refusing.refuses = name;
        const auto fault = exported(order(kThatDay, kThatDay), refusing).error();
        EXPECT_EQ(fault.kind, ExportFault::Kind::Sink);
        EXPECT_EQ(fault.sink, (SinkFault{name, 13}));
        EXPECT_FALSE(refusing.files.contains("manifest.json"));
    }
}

// A disk that is full after any number of bytes: the whole set, or a fault and no manifest.
TEST_F(ExportTest, isWholeOrNotAtAllOnAFullDisk)
{
    ASSERT_TRUE(exported(order(kThatDay, kThatDay)));
    std::size_t total = 0;
    for (const auto& [name, bytes] : sink.files)
        total += bytes.size();
    for (std::size_t room = 0; room < total; room += 97) {
        test::MemorySink full;
        full.room = room;
        const auto done = exported(order(kThatDay, kThatDay), full);
        ASSERT_EQ(done.has_value(), full.files.contains("manifest.json")) << room;
        ASSERT_FALSE(done) << room;
    }
    test::MemorySink justEnough;
    justEnough.room = total;
    EXPECT_TRUE(exported(order(kThatDay, kThatDay), justEnough));
}

/// A book that keeps its cells as text.
class KeptBook final : public Book {
public:
    Table& add(std::string_view name, std::span<const TableColumn> columns) override
    {
        tables.push_back(std::make_unique<CsvWriter>(CsvDialect::forPrograms(), columns));
        names.emplace_back(name);
        return *tables.back();
    }
    Result<std::string, std::int64_t> finish(WallTime at) override
    {
        made = at;
        if (fails)
            return failure(std::int64_t{28});
        std::string all;
        for (const auto& table : tables)
            all += table->take();
        return all;
    }

    std::vector<std::unique_ptr<CsvWriter>> tables;
    std::vector<std::string> names;
    WallTime made{};
    bool fails = false;
};

TEST_F(ExportTest, theBookHasTheSameTablesAsTheSheets)
{
    KeptBook book;
    auto what = order(kThatDay, kDayAfter);
    what.book = &book;
    const auto manifest = exported(what);
    ASSERT_TRUE(manifest);
    EXPECT_EQ(book.names, (std::vector<std::string>{"events", "ampoules", "bags", "deviations"}));
    const auto& files = sink.files;
    EXPECT_EQ(files.at("record.xlsx"), files.at("events.csv") + files.at("ampoules.csv") +
                                           files.at("bags.csv") + files.at("deviations.csv"));
    EXPECT_EQ(book.made, trail.entries.back().at);
    EXPECT_TRUE(std::ranges::any_of(manifest->files,
                                    [](const auto& file) { return file.name == "record.xlsx"; }));
}

TEST_F(ExportTest, aBookThatCannotBeMadeIsTold)
{
    KeptBook book;
    book.fails = true;
    auto what = order(kThatDay, kThatDay);
    what.book = &book;
    EXPECT_EQ(exported(what).error().sink, (SinkFault{"record.xlsx", 28}));
    EXPECT_FALSE(sink.files.contains("manifest.json"));
}

TEST_F(ExportTest, isSignedWhereThereIsAKey)
{
    auto what = order(kThatDay, kThatDay);
    what.key = std::make_shared<const SealKey>(SealKey::from({7}));
    const auto manifest = exported(what);
    ASSERT_TRUE(manifest);
    const std::string text = sink.files.at("manifest.json");
    EXPECT_EQ(manifestFrom(text), *manifest);
    EXPECT_EQ(manifest->key, what.key->publicKey());
    EXPECT_TRUE(isSignedByRaw(manifest->key, sink.files.at("manifest.sig"), text));
    EXPECT_EQ(sink.files.at("seal-key.pem"), pemOf(manifest->key));
    EXPECT_EQ(sink.order.back(), "manifest.json");
    EXPECT_EQ(manifest->files.size() + 3, sink.files.size());
}

TEST(EventTableTest, hasEveryColumnOfAnEntry)
{
    Entry entry = test::sampleDay().entries[1];
    entry.spool = SpoolOrigin{5, sha256("spool")};
    entry.byReceipt = true;
    CsvWriter csv = eventTable(CsvDialect::forPrograms());
    writeEvent(csv, entry, {entry.at, std::chrono::hours(1)});
    EXPECT_EQ(csv.take(),
              "seq,at_utc,offset,kind,person,proof,payload,station,tap,place,by_receipt,card,boot_"
              "us,boot_id,"
              "spool_seq,spool_hash,hash\r\n"
              "2,2026-03-05T06:00:00.000Z,+01:00,shift.opened,AB,claimed,"
              "\"{\"\"card\"\":\"\"\"\",\"\"zone\"\":\"\"Europe/Amsterdam\"\"}\",bench "
              "1,tap-2,,yes,,7200000000,"
              "3f2b901c-7d11-4e5a-9c40-010203040506,5," +
                  toHex(sha256("spool")) + "," + toHex(entry.hash) + "\r\n");
}

}  // namespace
}  // namespace bathside
