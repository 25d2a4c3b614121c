// What the command line does with copies, archives and what continues a damaged trail; and what it
// says of a record that was tampered with, by SQLite's own interface as anybody would.

#include <fstream>
#include <sstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "app/cli/archive.h"
#include "app/cli/export.h"
#include "app/cli/restore.h"
#include "app/cli/verify.h"
#include "app/system/key_file.h"
#include "core/trail/seal.h"
#include "core/trail/store/check.h"
#include "tests/app/cli/spoken.h"
#include "tests/core/trail/store/support.h"
#include "tests/support/file_bytes.h"
#include "tests/support/temp_folder.h"
#include "tests/support/trail_days.h"

namespace bathside::cli {
namespace {

using store::contentOf;
using store::Mode;
using store::opened;
using store::tamper;
using store::written;
using test::TempFolder;
using test::TrailDays;
using testing::HasSubstr;

template <typename Order>
Spoken ran(Exit (*verb)(const Order&, Terminal&), const Order& order)
{
    return spoken({}, [&](Terminal& terminal) { return verb(order, terminal); });
}

Exit plainExport(const ExportCall& order, Terminal& terminal)
{
    return exportVerb(order, terminal);
}

Spoken verify(const std::filesystem::path& file, const std::string& continues = {},
              const std::string& head = {}, const std::string& key = {})
{
    return ran<VerifyOrder>(verifyVerb, {file.string(), head, {}, key, continues, false});
}

Spoken restore(const std::filesystem::path& copy, const std::filesystem::path& to)
{
    return ran<RestoreOrder>(restoreVerb, {copy.string(), to.string(), false});
}

Spoken archive(const std::filesystem::path& trail, int year, const std::filesystem::path& to,
               const std::filesystem::path& key = {})
{
    return ran<ArchiveOrder>(archiveVerb, {trail.string(), year, to.string(), key.string(), false});
}

std::string headText(const Head& head) { return std::to_string(head.seq) + ":" + toHex(head.hash); }

// --- restore ------------------------------------------------------------------------------------

class RestoreTest : public testing::Test {
protected:
    RestoreTest()
    {
        const auto day = m_days.day(200);
        written(m_folder / "trail.db", day);
        EXPECT_TRUE(opened(m_folder / "trail.db")->copyTo(m_folder / "copy.db"));
        std::filesystem::remove(m_folder / "trail.db");
        std::ofstream(m_folder / "seal.key") << "the key";
        std::ofstream(m_folder / "trail.pins") << "the PINs";
    }

    TempFolder m_folder;
    TrailDays m_days;
};

TEST_F(RestoreTest, putsASoundCopyInPlaceAndTouchesNothingElse)
{
    const Spoken said = restore(m_folder / "copy.db", m_folder / "trail.db");
    ASSERT_EQ(said.exit, Exit::Done) << said.err;
    EXPECT_THAT(said.out, HasSubstr(headText(m_days.head())));
    EXPECT_THAT(said.out, Not(HasSubstr("beside it")));
    EXPECT_EQ(test::bytesOf(m_folder / "seal.key"), "the key");
    EXPECT_EQ(test::bytesOf(m_folder / "trail.pins"), "the PINs");
    const auto trail = opened(m_folder / "trail.db");
    EXPECT_EQ(contentOf(*trail), contentOf(*opened(m_folder / "copy.db", Mode::ReadOnly)));
    EXPECT_TRUE(trail->append(std::vector{m_days.entry(NoteMade{"and it goes on"})}));
    EXPECT_TRUE(store::check(*trail).isSound());
}

TEST_F(RestoreTest, overwritesNothing)
{
    for (const char* name : {"trail.db", "trail.db-wal", "trail.part-2.db"}) {
        std::ofstream(m_folder / name) << "here already";
        const Spoken said = restore(m_folder / "copy.db", m_folder / "trail.db");
        EXPECT_EQ(said.exit, Exit::Unusable) << name;
        EXPECT_THAT(said.err, HasSubstr("rename the old trail"));
        EXPECT_THAT(said.err, HasSubstr(name));
        EXPECT_EQ(test::bytesOf(m_folder / name), "here already");
        std::filesystem::remove(m_folder / name);
    }
    EXPECT_FALSE(std::filesystem::exists(m_folder / "trail.db"));
}

TEST_F(RestoreTest, refusesACopyThatIsNotSound)
{
    ASSERT_EQ(tamper(m_folder / "copy.db", "UPDATE event SET person = 'ZZ' WHERE seq = 20").first,
              0);
    const Spoken said = restore(m_folder / "copy.db", m_folder / "trail.db");
    EXPECT_NE(said.exit, Exit::Done);
    EXPECT_FALSE(std::filesystem::exists(m_folder / "trail.db"));
}

// Beyond the entries that opening looks at.
TEST_F(RestoreTest, saysWhatIsWrongWithTheCopy)
{
    TrailDays days;
    written(m_folder / "long.db", days.day(1000));
    ASSERT_EQ(tamper(m_folder / "long.db", "UPDATE event SET person = 'ZZ' WHERE seq = 20").first,
              0);
    const Spoken said = restore(m_folder / "long.db", m_folder / "trail.db");
    EXPECT_EQ(said.exit, Exit::No);
    EXPECT_THAT(said.err, HasSubstr("seq 20, bad hash: it was changed after it was written"));
    EXPECT_FALSE(std::filesystem::exists(m_folder / "trail.db"));
}

TEST_F(RestoreTest, saysWhatIsMissingBesideIt)
{
    std::filesystem::remove(m_folder / "seal.key");
    std::filesystem::remove(m_folder / "trail.pins");
    const Spoken said = restore(m_folder / "copy.db", m_folder / "trail.db");
    EXPECT_EQ(said.exit, Exit::Done);
    EXPECT_THAT(said.out, HasSubstr("No trail.pins"));
    EXPECT_THAT(said.out, HasSubstr("No seal.key"));
}

TEST_F(RestoreTest, saysThatThereIsNoSuchFile)
{
    const std::string none = (m_folder / "none.db").string();
    EXPECT_THAT(restore(none, m_folder / "trail.db").err, HasSubstr("found no such file"));
    const Spoken said = ran<ExportCall>(plainExport, {.trail = none,
                                                      .day = "2026-03-05",
                                                      .until = {},
                                                      .folder = (m_folder / "out").string(),
                                                      .key = {}});
    EXPECT_EQ(said.exit, Exit::Unusable);
    EXPECT_THAT(said.err, HasSubstr(none));
    EXPECT_THAT(said.err, HasSubstr("found no such file, expected a trail that is there"));
    EXPECT_FALSE(std::filesystem::exists(none));
}

TEST_F(RestoreTest, refusesWhatIsNoCopyAndAFolderThatIsNotThere)
{
    std::ofstream(m_folder / "text.db")
        << "no trail at all, but long enough for a header to be read";
    EXPECT_EQ(restore(m_folder / "text.db", m_folder / "trail.db").exit, Exit::Unusable);
    EXPECT_EQ(restore(m_folder / "copy.db", m_folder / "nowhere" / "trail.db").exit,
              Exit::Unusable);
    EXPECT_EQ(restore(m_folder / "none.db", m_folder / "trail.db").exit, Exit::Unusable);
}

// --- archive ------------------------------------------------------------------------------------

// Some days of 2026, 2027 and 2028, the last and the first of each year among them, counted from
// 2026-03-05.
class ArchiveTest : public testing::Test {
protected:
    ArchiveTest()
    {
        int next = 0;
        for (const int day : {0, 1, 2, 300, 301, 302, 303, 500, 666, 667, 668}) {
            m_days.pass(std::chrono::hours(24) * (day - next));
            next = day + 1;
            const auto entries = m_days.day(30);
            m_all.insert(m_all.end(), entries.begin(), entries.end());
        }
        m_file = written(m_folder / "trail.db", m_all);
    }

    /// The year of 2026 by the calendar of Amsterdam, UTC+1 in winter.
    [[nodiscard]] Seq lastOf2026() const
    {
        const WallTime newYear{Millis(1'798'758'000'000)};  // 2026-12-31T23:00:00Z
        Seq last = 0;
        for (const Entry& entry : m_all) {
            if (entry.at < newYear)
                last = entry.seq;
        }
        return last;
    }

    TempFolder m_folder;
    TrailDays m_days;
    std::vector<Entry> m_all;
    std::filesystem::path m_file;
};

TEST_F(ArchiveTest, holdsTheYearAndVerifiesByItself)
{
    const Spoken said = archive(m_file, 2026, m_folder / "2026.db");
    ASSERT_EQ(said.exit, Exit::Done) << said.err;
    const Seq last = lastOf2026();
    ASSERT_LT(last, static_cast<Seq>(m_all.size()));
    const auto year = contentOf(*opened(m_folder / "2026.db", Mode::ReadOnly));
    ASSERT_EQ(year.size(), static_cast<std::size_t>(last));
    EXPECT_TRUE(std::equal(year.begin(), year.end(), m_all.begin()));
    EXPECT_THAT(said.out, HasSubstr("Head " + headText({last, year.back().hash})));
    EXPECT_EQ(verify(m_folder / "2026.db").exit, Exit::Done);
    EXPECT_EQ(contentOf(*opened(m_file, Mode::ReadOnly)), m_all) << "the trail keeps everything";
}

TEST_F(ArchiveTest, aLaterYearBeginsWhereTheOneBeforeEnded)
{
    const Spoken said = archive(m_file, 2027, m_folder / "2027.db");
    ASSERT_EQ(said.exit, Exit::Done) << said.err;
    const auto year = opened(m_folder / "2027.db", Mode::ReadOnly);
    const Seq last = lastOf2026();
    EXPECT_EQ(year->origin().after, (Head{last, m_all[static_cast<std::size_t>(last - 1)].hash}));
    EXPECT_EQ(contentOf(*year).front().seq, last + 1);
    EXPECT_EQ(verify(m_folder / "2027.db").exit, Exit::Done);
}

TEST_F(ArchiveTest, aYearThatIsNotOverOrNotThereIsNotArchived)
{
    const Spoken open = archive(m_file, 2028, m_folder / "no.db");
    EXPECT_EQ(open.exit, Exit::No);
    EXPECT_THAT(open.err, HasSubstr("once it is over"));
    const Spoken none = archive(m_file, 2025, m_folder / "no.db");
    EXPECT_EQ(none.exit, Exit::No);
    EXPECT_THAT(none.err, HasSubstr("has no record of 2025"));
    EXPECT_FALSE(std::filesystem::exists(m_folder / "no.db"));
}

TEST_F(ArchiveTest, canStillBeExported)
{
    ASSERT_EQ(archive(m_file, 2026, m_folder / "2026.db").exit, Exit::Done);
    const Spoken said = ran<ExportCall>(plainExport, {.trail = (m_folder / "2026.db").string(),
                                                      .day = "2026-03-06",
                                                      .until = {},
                                                      .folder = (m_folder / "out").string(),
                                                      .as = "jsonl",
                                                      .key = {},
                                                      .json = false});
    ASSERT_EQ(said.exit, Exit::Done) << said.err;
    EXPECT_EQ(verify(m_folder / "out" / "events.jsonl").exit, Exit::Done);
}

TEST_F(ArchiveTest, anExportSaysThatAnEntryCannotBeRead)
{
    const auto exported = [&] {
        return ran<ExportCall>(plainExport, {.trail = m_file.string(),
                                             .day = "2026-03-06",
                                             .until = {},
                                             .folder = (m_folder / "out").string(),
                                             .as = "csv",
                                             .key = {},
                                             .json = false});
    };
    EXPECT_EQ(exported().err.find("cannot be read"), std::string::npos);
    ASSERT_EQ(tamper(m_file,
                     "UPDATE event SET payload = '{}' WHERE seq = (SELECT min(seq) FROM "
                     "event WHERE kind = 'shift.opened' AND at > '2026-03-06')")
                  .first,
              0);
    EXPECT_THAT(exported().err, HasSubstr("1 entry cannot be read, the first is "));
}

// A sheet's code says the trail's head, which lies beyond the last entry of its day's export.
TEST_F(ArchiveTest, aDaysExportIsHeldAgainstTheHeadOfItsSheet)
{
    const auto out = m_folder / "day";
    const Spoken said = ran<ExportCall>(plainExport, {.trail = m_file.string(),
                                                      .day = "2026-03-06",
                                                      .until = {},
                                                      .folder = out.string(),
                                                      .as = "csv,jsonl",
                                                      .key = {},
                                                      .json = false});
    ASSERT_EQ(said.exit, Exit::Done) << said.err;
    Head head{m_all.back().seq, m_all.back().hash};
    EXPECT_EQ(verify(out, {}, headText(head)).exit, Exit::Done);
    head.hash[0] ^= 1;
    const Spoken differs = verify(out, {}, headText(head));
    EXPECT_EQ(differs.exit, Exit::No);
    EXPECT_THAT(differs.out, HasSubstr("is not the one kept elsewhere"));
    ++head.seq;
    EXPECT_THAT(verify(out, {}, headText(head)).out, HasSubstr("verify the trail itself"));
}

TEST_F(ArchiveTest, isSealedByTheStationsKeyAndItsSealIsChecked)
{
    const auto key = app::keyAt(m_folder / "seal.key");
    ASSERT_TRUE(key);
    const auto file = m_folder / "2026.db";
    ASSERT_EQ(archive(m_file, 2026, file, m_folder / "seal.key").exit, Exit::Done);
    const Spoken good = verify(file);
    EXPECT_EQ(good.exit, Exit::Done) << good.err;
    EXPECT_THAT(good.out, HasSubstr("Sealed as a whole by key " + key->publicKey()));
    EXPECT_EQ(verify(file, {}, {}, key->publicKey()).exit, Exit::Done);
    EXPECT_EQ(verify(file, {}, {}, SealKey::fresh().publicKey()).exit, Exit::No);

    std::filesystem::permissions(file, std::filesystem::perms::owner_all);
    ASSERT_EQ(tamper(file, "DELETE FROM event WHERE seq = (SELECT max(seq) FROM event)").first, 0);
    EXPECT_THAT(verify(file).out, HasSubstr("its end was cut off"));
}

TEST_F(ArchiveTest, makesNoKeyAndOverwritesNothing)
{
    EXPECT_EQ(archive(m_file, 2026, m_folder / "2026.db", m_folder / "no.key").exit,
              Exit::Unusable);
    EXPECT_FALSE(std::filesystem::exists(m_folder / "no.key"));
    EXPECT_FALSE(std::filesystem::exists(m_folder / "2026.db"));
    std::ofstream(m_folder / "2026.db") << "here already";
    EXPECT_EQ(archive(m_file, 2026, m_folder / "2026.db").exit, Exit::Unusable);
    EXPECT_EQ(test::bytesOf(m_folder / "2026.db"), "here already");
}

TEST_F(ArchiveTest, nothingUnsoundIsArchived)
{
    ASSERT_EQ(tamper(m_file, "UPDATE event SET person = 'ZZ' WHERE seq = 20").first, 0);
    const Spoken said = archive(m_file, 2026, m_folder / "2026.db");
    EXPECT_EQ(said.exit, Exit::No);
    EXPECT_THAT(said.err, HasSubstr("seq 20"));
    EXPECT_FALSE(std::filesystem::exists(m_folder / "2026.db"));
}

// Who was listed, and that it is a rehearsal, was said in the year before.
TEST_F(ArchiveTest, isExportedWithWhatTheYearBeforeSaid)
{
    TrailDays days;
    std::vector<Entry> log{days.entry(StationStarted{"0.1.0", std::string(64, '0'), true}),
                           days.entry(PersonListed{{"LS"}, "L. Somebody", Role::ShiftLead, false})};
    const auto shift = [&] {
        for (const Fact& fact :
             {Fact(ShiftOpened{"Europe/Amsterdam", {}}), Fact(NoteMade{"x"}), Fact(ShiftClosed{})})
            log.push_back(days.entry(fact));
    };
    shift();
    for (int year = 0; year < 2; ++year) {
        days.pass(std::chrono::hours(24 * 365));
        shift();
    }
    const auto file = written(m_folder / "long.db", log);
    const auto first = m_folder / "first.db", second = m_folder / "second.db";
    ASSERT_EQ(archive(file, 2026, first).exit, Exit::Done);
    ASSERT_EQ(archive(file, 2027, second).exit, Exit::Done);
    DaySheet drawn;
    const SheetDrawing drawing{
        .draw = [&](const DaySheet& sheet, const SheetWish&) -> Result<std::string, Unusable> {
            drawn = sheet;
            return std::string("%PDF");
        },
        .handOver = {}};
    const auto exported = [&](const std::vector<std::string>& continues, const char* to) {
        ExportCall call;
        call.trail = second.string();
        call.day = "2027-03-05";
        call.folder = (m_folder / to).string();
        call.as = "jsonl,csv,pdf";
        call.continues = continues;
        return spoken("", [&](Terminal& terminal) { return exportVerb(call, terminal, drawing); });
    };
    const Spoken alone = exported({}, "alone");
    EXPECT_EQ(alone.exit, Exit::Done) << alone.err;
    EXPECT_THAT(alone.err, HasSubstr("goes on from an earlier file"));
    EXPECT_FALSE(drawn.rehearsal);
    const Spoken whole = exported({first.string()}, "whole");
    ASSERT_EQ(whole.exit, Exit::Done) << whole.err;
    EXPECT_EQ(whole.err, "");
    EXPECT_TRUE(drawn.rehearsal);
    EXPECT_TRUE(drawn.people.find(PersonId{"LS"}));
    EXPECT_EQ(drawn.shifts.size(), 1U);
    EXPECT_EQ(test::bytesOf(m_folder / "whole" / "events.jsonl"),
              test::bytesOf(m_folder / "alone" / "events.jsonl"));
    const Spoken wrong = exported({m_file.string()}, "wrong");
    EXPECT_EQ(wrong.exit, Exit::Unusable);
    EXPECT_THAT(wrong.err, HasSubstr("goes on from"));
}

// --- what continues a damaged trail -------------------------------------------------------------

class ContinuedTest : public testing::Test {
protected:
    ContinuedTest()
    {
        m_all = m_days.day(1000);
        m_damaged = written(m_folder / "trail.db", m_all);
        EXPECT_EQ(tamper(m_damaged, "UPDATE event SET person = 'ZZ' WHERE seq = 700").first, 0);
    }

    [[nodiscard]] Head headAt(Seq seq) const
    {
        return {seq, m_all[static_cast<std::size_t>(seq - 1)].hash};
    }

    std::filesystem::path continued(const Head& after, const Head& said)
    {
        const auto file = m_folder / "trail.part-2.db";
        auto trail = store::TrailDb::open(
            file, Mode::New, {.role = store::Role::Trail, .after = after, .continues = "trail.db"});
        EXPECT_TRUE(trail);
        TrailDays days(after);
        EXPECT_TRUE((*trail)->append(
            std::vector{days.entry(TrailContinued{said.seq, toHex(said.hash), "trail.db"}),
                        days.entry(NoteMade{"on"})}));
        return file;
    }

    TempFolder m_folder;
    TrailDays m_days;
    std::vector<Entry> m_all;
    std::filesystem::path m_damaged;
};

TEST_F(ContinuedTest, isSoundAndSaysWhatItGoesOnFrom)
{
    const auto file = continued(headAt(699), headAt(699));
    const Spoken alone = verify(file);
    EXPECT_EQ(alone.exit, Exit::Done) << alone.out;
    EXPECT_THAT(alone.out,
                HasSubstr("It goes on from trail.db, which was damaged after event 699."));
    const Spoken both = verify(file, m_damaged.string());
    EXPECT_EQ(both.exit, Exit::Done) << both.out;
}

TEST_F(ContinuedTest, anotherHeadThanTheDamagedFilesIsFound)
{
    Head other = headAt(699);
    other.hash[3] ^= 1;
    const auto file = continued(other, other);
    EXPECT_EQ(verify(file).exit, Exit::Done) << "nothing in it says so";
    const Spoken both = verify(file, m_damaged.string());
    EXPECT_EQ(both.exit, Exit::No);
    EXPECT_THAT(both.out, HasSubstr("it goes on from another event 699 than that of"));
}

TEST_F(ContinuedTest, soundEventsThatWereLeftOutAreFound)
{
    const auto file = continued(headAt(500), headAt(500));
    const Spoken both = verify(file, m_damaged.string());
    EXPECT_EQ(both.exit, Exit::No);
    EXPECT_THAT(both.out,
                HasSubstr("is sound up to event 699: the events after 500 were left out"));
}

TEST_F(ContinuedTest, moreThanTheDamagedFileCanShowIsFound)
{
    const auto file = continued(headAt(800), headAt(800));
    EXPECT_THAT(verify(file, m_damaged.string()).out, HasSubstr("sound up to event 699 only"));
}

TEST_F(ContinuedTest, whatSaysAnotherHeadThanItFollowsIsNotSound)
{
    const auto file = continued(headAt(699), headAt(698));
    const Spoken said = verify(file);
    EXPECT_EQ(said.exit, Exit::No);
    EXPECT_THAT(said.out, HasSubstr("seq 700"));
    EXPECT_THAT(said.out, HasSubstr("it does not go on from what it says"));
}

TEST_F(ContinuedTest, aWholeTrailContinuesNothing)
{
    TrailDays days;
    const auto file = written(m_folder / "other.db", days.day(40));
    EXPECT_THAT(verify(file, m_damaged.string()).out,
                HasSubstr("does not go on from another file"));
}

// --- what is said to a layman -------------------------------------------------------------------

TEST(TamperedWordsTest, aChangedEntry)
{
    const TempFolder folder;
    TrailDays days;
    const auto file = written(folder / "trail.db", days.day(60));
    ASSERT_EQ(tamper(file, "UPDATE event SET at = '2026-03-05T05:00:00.000Z' WHERE seq = 30").first,
              0);
    const Spoken said = verify(file);
    EXPECT_EQ(said.exit, Exit::No);
    EXPECT_THAT(said.out, HasSubstr("NOT sound; first bad event: seq 30, bad hash: it was changed "
                                    "after it was written, or the one before it was."));
}

TEST(TamperedWordsTest, aTailCutOff)
{
    const TempFolder folder;
    TrailDays days;
    const auto entries = days.day(60);
    const auto file = written(folder / "trail.db", entries);
    ASSERT_EQ(tamper(file,
                     "DELETE FROM event WHERE seq > 40; DELETE FROM subject_index WHERE seq > "
                     "40; DELETE FROM loose WHERE seq > 40; UPDATE shift SET closed_seq = "
                     "NULL, closed_at = NULL")
                  .first,
              0);
    EXPECT_EQ(verify(file).exit, Exit::Done) << "nothing inside it can tell";
    const Spoken said = verify(file, {}, headText(days.head()));
    EXPECT_EQ(said.exit, Exit::No);
    EXPECT_THAT(said.out, HasSubstr("seq 41, truncated: the trail ends before it: its end was cut "
                                    "off, or this is an older copy."));
}

TEST(TamperedWordsTest, aReplacedKey)
{
    const TempFolder folder;
    TrailDays days;
    std::vector<Entry> entries = days.day(20);
    for (const SealKey& key : {SealKey::fresh(), SealKey::fresh()}) {
        const Head head = days.head();
        entries.push_back(days.entry(sealOf(head, key)));
    }
    const Spoken said = verify(written(folder / "trail.db", entries));
    EXPECT_EQ(said.exit, Exit::No);
    EXPECT_THAT(said.out, HasSubstr("the seal at seq " + std::to_string(days.head().seq) +
                                    " is by another key than it should be: the key was replaced, "
                                    "or somebody else sealed it."));
}

TEST(TamperedWordsTest, aClockThatWasSetBack)
{
    const TempFolder folder;
    TrailDays days;
    std::vector<Entry> entries = days.day(20);
    entries.push_back(days.entry(ClockStepped{Millis(5000)}));
    entries.push_back(days.entry(ClockStepped{Millis(-3'600'000)}));
    const Spoken said = verify(written(folder / "trail.db", entries));
    EXPECT_EQ(said.exit, Exit::Done) << said.out;
    EXPECT_THAT(said.out, HasSubstr("The computer's clock was set back once at seq " +
                                    std::to_string(days.head().seq) +
                                    "; the order of the events is not touched by it."));
}

}  // namespace
}  // namespace bathside::cli
