// Copies of a session's record, each judged by the file that is there afterwards; and the way back
// from one.

#include "app/station/copy_desk.h"

#include <fstream>
#include <sstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "app/cli/restore.h"
#include "app/station/damage.h"
#include "core/trail/store/check.h"
#include "core/trail/store/restore.h"
#include "tests/app/station/session_stand.h"
#include "tests/core/trail/store/support.h"
#include "tests/support/file_bytes.h"
#include "ui/text/copies.h"

namespace bathside::app {
namespace {

using namespace std::chrono_literals;
using Doing = ui::CopyNews::Doing;
using Wrong = ui::CopyNews::Wrong;

class CopyDeskTest : public testing::Test {
protected:
    void open(const ui::CopyChoice& choice = {})
    {
        stand.open();
        ui::Preference preference;
        preference.copies = choice;
        if (preference.copies.folder.isEmpty())
            preference.copies.folder = QString::fromStdString(copies().string());
        m_preferences = std::make_unique<ui::Preferences>(preference);
        m_desk = std::make_unique<CopyDesk>(*stand.session, *m_preferences);
    }

    void close()
    {
        m_desk.reset();
        stand.session.reset();
    }

    void waitForCopy()
    {
        SessionStand::waitFor([this] { return m_desk->news().doing == Doing::Nothing; });
    }

    [[nodiscard]] std::filesystem::path copies() const { return stand.folder / "stick"; }

    [[nodiscard]] std::vector<std::filesystem::path> files() const
    {
        std::vector<std::filesystem::path> found;
        std::error_code none;
        for (const auto& file : std::filesystem::directory_iterator(copies(), none))
            found.push_back(file.path());
        std::ranges::sort(found);
        return found;
    }

    [[nodiscard]] QString words() const
    {
        return ui::copyText(m_desk->news(), stand.session->station().now());
    }

    void readyBag()
    {
        stand.say(StartBag{{"B1"}, MicroLitres{400'000}, {"D-0417"}, MilliCelsius{22'500}});
        stand.say(InspectBag{});
        stand.say(DrawDiluent{{}, MicroLitres{5'000}});
    }

    void openShift()
    {
        stand.say(OpenShift{"Europe/Madrid", {"MK"}});
        for (const Check& check : stand.bench().card->content().checks)
            stand.say(RecordCheck{check.id, true, {}});
    }

    SessionStand stand;
    std::unique_ptr<ui::Preferences> m_preferences;
    std::unique_ptr<CopyDesk> m_desk;
};

TEST_F(CopyDeskTest, aTapMakesOneThatIsSoundAndOnRecord)
{
    open();
    openShift();
    EXPECT_THAT(words().toStdString(), testing::HasSubstr("There is no copy"));
    m_desk->copyNow();
    EXPECT_EQ(m_desk->news().doing, Doing::Copying);
    waitForCopy();
    ASSERT_EQ(m_desk->news().wrong, Wrong::Nothing) << words().toStdString();
    ASSERT_EQ(files().size(), 1U);
    EXPECT_EQ(files()[0].filename(), "bench-trail-2026-03-05-0700.db");
    const auto copy = store::opened(files()[0], store::Mode::ReadOnly);
    const auto sound = store::check(*copy);
    EXPECT_TRUE(sound.isSound());
    ASSERT_TRUE(stand.bench().backedUp);
    EXPECT_EQ(stand.bench().backedUp->seq, sound.chain.head.seq + 1) << "noted after it";
    stand.pass(3h);
    EXPECT_THAT(words().toStdString(), testing::HasSubstr("3 h ago"));
    EXPECT_FALSE(m_desk->news().isLate) << "nothing is set";
}

TEST_F(CopyDeskTest, theSecondIsBesideTheFirst)
{
    open();
    for (int i = 0; i < 2; ++i) {
        m_desk->copyNow();
        waitForCopy();
    }
    ASSERT_EQ(files().size(), 2U);
    EXPECT_EQ(files()[0].filename(), "bench-trail-2026-03-05-0600-2.db");
}

TEST_F(CopyDeskTest, theClockMakesOneEverySoManyHours)
{
    open({.folder = {}, .everyHours = 4, .atShiftEnd = false});
    stand.pass(1s);
    waitForCopy();
    EXPECT_EQ(files().size(), 1U);
    stand.pass(3h);
    waitForCopy();
    EXPECT_EQ(files().size(), 1U);
    stand.pass(1h);
    waitForCopy();
    EXPECT_EQ(files().size(), 2U);
}

TEST_F(CopyDeskTest, aClosedShiftIsCopiedWithItsSeal)
{
    open({.folder = {}, .everyHours = 0, .atShiftEnd = true});
    openShift();
    stand.say(CloseShift{});
    SessionStand::waitFor([this] { return stand.bench().sealed.has_value(); });
    stand.pass(1s);
    waitForCopy();
    ASSERT_EQ(files().size(), 1U);
    EXPECT_EQ(store::check(*store::opened(files()[0], store::Mode::ReadOnly)).chain.seals, 1);
}

TEST_F(CopyDeskTest, aPullPutsItOff)
{
    open({.folder = {}, .everyHours = 4, .atShiftEnd = false});
    openShift();
    waitForCopy();
    const auto before = files().size();
    readyBag();
    stand.say(TakeOut{{{0, {"serotype 3"}, {"K07"}}}});
    m_desk->copyNow();
    EXPECT_EQ(m_desk->news().doing, Doing::Waiting);
    EXPECT_THAT(words().toStdString(), testing::HasSubstr("as soon as the pull is done"));
    stand.say(MoveOn{Step::Bath, {}, {}});
    stand.pass(60s);
    for (const Step step : {Step::Opened, Step::Diluent, Step::Rinsed, Step::Bagged})
        stand.say(MoveOn{step, {}, {}});
    EXPECT_EQ(m_desk->news().doing, Doing::Waiting) << "the end of the critical window";
    EXPECT_EQ(files().size(), before);
    stand.pass(20s);
    waitForCopy();
    EXPECT_EQ(files().size(), before + 1);
}

TEST_F(CopyDeskTest, aMissingStickIsToldAndNothingIsWrittenInItsPlace)
{
    open({.folder = QStringLiteral("/media/nobody/no-such-stick/bathside"),
          .everyHours = 4,
          .atShiftEnd = false});
    stand.pass(1s);
    EXPECT_EQ(m_desk->news().wrong, Wrong::NotThere);
    EXPECT_THAT(words().toStdString(), testing::HasSubstr("the stick for copies is not in"));
    EXPECT_FALSE(std::filesystem::exists("/media/nobody"));
    stand.say(OpenShift{"Europe/Madrid", {"MK"}});
    EXPECT_TRUE(stand.session->store().flush(60s)) << "the record goes on";
}

TEST_F(CopyDeskTest, whatFailedIsTriedAgainLaterAndByATapAtOnce)
{
    std::ofstream(copies()) << "a file where the folder should be";
    open({.folder = {}, .everyHours = 4, .atShiftEnd = false});
    stand.pass(1s);
    waitForCopy();
    EXPECT_EQ(m_desk->news().wrong, Wrong::NotWritten);
    EXPECT_THAT(words().toStdString(), testing::StartsWith("Not copied. "));
    EXPECT_FALSE(stand.bench().backedUp);
    std::filesystem::remove(copies());
    stand.pass(1min);
    EXPECT_EQ(m_desk->news().doing, Doing::Nothing);
    EXPECT_TRUE(files().empty());
    stand.pass(10min);
    waitForCopy();
    EXPECT_EQ(files().size(), 1U);
    EXPECT_EQ(m_desk->news().wrong, Wrong::Nothing);
}

TEST_F(CopyDeskTest, oneThatIsOlderThanSetIsSaid)
{
    std::ofstream(copies()) << "a file where the folder should be";
    open({.folder = {}, .everyHours = 4, .atShiftEnd = false});
    stand.pass(1s);
    waitForCopy();
    EXPECT_TRUE(m_desk->news().isLate);
    EXPECT_EQ(ui::roleOf(m_desk->news()), ui::Role::HeadsUp);
}

// Beyond the entries that opening looks at: the copy's check is what finds it.
TEST_F(CopyDeskTest, aRecordThatWasTamperedWithIsFoundByItsCopy)
{
    open();
    openShift();
    for (int i = 0; i < 300; ++i)
        stand.say(MakeNote{"note"});
    const Seq last = stand.bench().lastSeq;
    close();
    ASSERT_EQ(store::tamper(stand.trail(), "UPDATE event SET person = 'ZZ' WHERE seq = " +
                                               std::to_string(last - 290))
                  .first,
              0);
    open({.folder = {}, .everyHours = 1, .atShiftEnd = false});
    stand.pass(1s);
    waitForCopy();
    EXPECT_EQ(m_desk->news().wrong, Wrong::NotSound);
    EXPECT_THAT(words().toStdString(),
                testing::HasSubstr("NOT sound at entry " + std::to_string(last - 290)));
    EXPECT_FALSE(stand.bench().backedUp) << "what is not sound is no copy";
    stand.pass(24h);
    waitForCopy();
    EXPECT_EQ(files().size(), 1U) << "the stick is not filled with them";
}

// The copy alone does not have what was on record before the damage.
TEST_F(CopyDeskTest, aTrailThatGoesOnAfterDamageIsCopiedWithTheDamagedFile)
{
    open();
    openShift();
    const Seq last = stand.bench().lastSeq;
    close();
    ASSERT_EQ(store::tamper(stand.trail(),
                            "UPDATE event SET person = 'ZZ' WHERE seq = " + std::to_string(last))
                  .first,
              0);
    ASSERT_TRUE(goOnAfterDamage(stand.trail(), stand.clock, {"bench"}));
    for (int i = 0; i < 2; ++i) {
        open();
        m_desk->copyNow();
        waitForCopy();
        ASSERT_EQ(m_desk->news().wrong, Wrong::Nothing) << words().toStdString();
        close();
    }
    ASSERT_EQ(files().size(), 3U);
    EXPECT_EQ(files()[2], copies() / "trail.db");
    EXPECT_EQ(test::bytesOf(files()[2]), test::bytesOf(stand.trail()));

    const test::TempFolder other;
    std::filesystem::copy_file(files()[2], other / "trail.db");
    std::istringstream in;
    std::ostringstream out, err;
    cli::Terminal terminal{in, out, err};
    ASSERT_EQ(cli::restoreVerb({files()[0].string(), (other / "trail.part-2.db").string(), false},
                               terminal),
              cli::Exit::Done)
        << err.str();
    const auto parts = store::partsOf(other / "trail.db");
    ASSERT_EQ(parts.size(), 2U);
    const auto trail = store::opened(parts[1], store::Mode::ReadOnly);
    const auto state = store::stateOf(*trail, store::soundParts(parts, trail->origin()));
    ASSERT_TRUE(state);
    EXPECT_TRUE(state->bench.shiftIsOpen());
}

// As on a stick that another station's damaged record went to before.
TEST_F(CopyDeskTest, anotherFileOfThatNameIsNotTakenForTheDamagedOne)
{
    open();
    openShift();
    const Seq last = stand.bench().lastSeq;
    close();
    ASSERT_EQ(store::tamper(stand.trail(),
                            "UPDATE event SET person = 'ZZ' WHERE seq = " + std::to_string(last))
                  .first,
              0);
    ASSERT_TRUE(goOnAfterDamage(stand.trail(), stand.clock, {"bench"}));
    std::filesystem::create_directories(copies());
    std::ofstream(copies() / "trail.db") << "another station's";
    for (int i = 0; i < 2; ++i) {
        open();
        m_desk->copyNow();
        waitForCopy();
        ASSERT_EQ(m_desk->news().wrong, Wrong::Nothing) << words().toStdString();
        EXPECT_THAT(words().toStdString(), testing::HasSubstr("lies there as trail-2.db"));
        close();
    }
    ASSERT_EQ(files().size(), 4U) << "two copies, the other's file, one of the damaged one";
    EXPECT_EQ(test::bytesOf(copies() / "trail.db"), "another station's");
    EXPECT_EQ(test::bytesOf(copies() / "trail-2.db"), test::bytesOf(stand.trail()));
}

TEST_F(CopyDeskTest, whoseCopyItIsStandsInItsName)
{
    open();
    stand.session->call({"Bench 2/b"});
    m_desk->copyNow();
    waitForCopy();
    ASSERT_EQ(files().size(), 1U);
    EXPECT_THAT(files()[0].filename().string(), testing::StartsWith("Bench-2-b-trail-"));
}

TEST_F(CopyDeskTest, theWayBackFromACopy)
{
    open();
    openShift();
    readyBag();
    m_desk->copyNow();
    waitForCopy();
    ASSERT_EQ(files().size(), 1U);
    const Seq copied = stand.bench().backedUp->seq - 1;
    stand.say(MakeNote{"after the copy"});
    ASSERT_TRUE(stand.session->store().flush(60s));
    close();
    for (const char* ending : {"", "-wal"})  // the disk is lost, the key is not
        std::filesystem::remove(stand.trail().string() + ending);

    std::istringstream in;
    std::ostringstream out, err;
    cli::Terminal terminal{in, out, err};
    ASSERT_EQ(cli::restoreVerb({files()[0].string(), stand.trail().string(), false}, terminal),
              cli::Exit::Done)
        << err.str();
    open();
    EXPECT_GT(stand.bench().lastSeq, copied);
    EXPECT_TRUE(stand.bench().shiftIsOpen());
    ASSERT_NE(stand.bench().bag({"B1"}), nullptr);
    stand.say(TakeOut{{{0, {"serotype 3"}, {"K07"}}}});
    ASSERT_TRUE(stand.session->store().flush(60s));
    close();
    const auto trail = store::opened(stand.trail(), store::Mode::ReadOnly);
    EXPECT_TRUE(
        store::check(*trail,
                     {{copied, store::opened(files()[0], store::Mode::ReadOnly)->head().hash}})
            .isSound());
}

}  // namespace
}  // namespace bathside::app
