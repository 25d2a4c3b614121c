// A day with five deviations, reviewed, sealed by the station and put on paper: what an inspector
// gets. The counts are those of expected.json, written by hand from the script.

#include <QProcess>
#include <fstream>

#include <gmock/gmock.h>

#include "core/replay/player.h"
#include "core/trail/store/direct_recorder.h"
#include "core/trail/store/disk_files.h"
#include "tests/app/station/session_stand.h"

namespace bathside::app {
namespace {

using testing::HasSubstr;

constexpr auto kDay = "2026-03-18";

struct Ran {
    int code = -1;
    std::string text;
};

Ran ran(const char* program, const QStringList& arguments)
{
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(QString::fromUtf8(program), arguments);
    if (!process.waitForFinished(120'000))
        return {};
    return {process.exitCode(), process.readAll().toStdString()};
}

class SealedDay : public testing::Test {
protected:
    SealedDay()
    {
        play();
        stand.open();
        SessionStand::waitFor([this] { return stand.bench().sealed.has_value(); });
        EXPECT_TRUE(stand.session->store().flush(std::chrono::seconds(60)));
        stand.session.reset();
    }

    /// As this station's own day, so that it is the one to seal it.
    void play()
    {
        const auto script = scriptFrom(wholeOf(BATHSIDE_REVIEWED_DAY));
        ASSERT_TRUE(script);
        store::DiskFiles files({.trail = stand.trail(), .spoolFolders = {}}, store::Mode::New);
        store::DirectRecorder recorder(files, StationId{"bench"});
        ASSERT_TRUE(recorder.start());
        Player player(*script, wholeOf(BATHSIDE_DEFAULT_CARD), recorder, "test");
        ASSERT_FALSE(player.play());
    }

    static std::string wholeOf(const char* name)
    {
        std::ifstream file(name, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }

    [[nodiscard]] QString path(const char* name) const
    {
        return QString::fromStdString((stand.folder / name).string());
    }

    Ran exported()
    {
        return ran(BATHSIDE_CLI,
                   {QStringLiteral("export"), QStringLiteral("--trail"), path("trail.db"),
                    QStringLiteral("--day"), QString::fromUtf8(kDay), QStringLiteral("--to"),
                    path("out"), QStringLiteral("--as"), QStringLiteral("pdf,jsonl")});
    }

    std::string textOfSheet()
    {
        return ran("pdftotext",
                   {QStringLiteral("-raw"), path("out/day-sheet.pdf"), QStringLiteral("-")})
            .text;
    }

    SessionStand stand{"2026-03-18T07:30:00.000+01:00"};
};

TEST_F(SealedDay, itsSheetHasEachDeviationWithWhatBecameOfItAndTheSeal)
{
    const Ran done = exported();
    ASSERT_EQ(done.code, 0) << done.text;
    EXPECT_THAT(done.text, HasSubstr("The manifest is signed by "));
    std::string text = textOfSheet();
    std::ranges::replace(text, '\n', ' ');
    // Four stand; the fifth, of ampoule 1/2, was taken away by a correction, which the sheet says.
    for (const char* part :
         {"ampoule 1 of pull 1, bag M1", "bag M2", "ampoule 1 of pull 2, bag M3", "bag M1",
          "cane 5 iced up", "called away", "use with a note", "discard", "plan changed",
          "LS, Lena Sanz, signed", "as a correction has shown"})
        EXPECT_THAT(text, HasSubstr(part));
    const std::string key = done.text.substr(done.text.find("signed by ") + 10, 64);
    EXPECT_THAT(text, HasSubstr(key.substr(0, 16)));
}

TEST_F(SealedDay, verifiesFromTheExportAloneAndFromTheTrail)
{
    const Ran done = exported();
    ASSERT_EQ(done.code, 0) << done.text;
    const QString key =
        QString::fromStdString(done.text.substr(done.text.find("signed by ") + 10, 64));
    for (const char* what : {"out", "trail.db"}) {
        const Ran found =
            ran(BATHSIDE_CLI, {QStringLiteral("verify"), path(what), QStringLiteral("--key"), key});
        EXPECT_EQ(found.code, 0) << found.text;
        EXPECT_THAT(found.text, HasSubstr("1 seals"));
    }
}

TEST_F(SealedDay, anotherKeyIsFound)
{
    const Ran found = ran(BATHSIDE_CLI, {QStringLiteral("verify"), path("trail.db"),
                                         QStringLiteral("--key"), QString(64, QLatin1Char('a'))});
    EXPECT_EQ(found.code, 1) << found.text;
    EXPECT_THAT(found.text, HasSubstr("another key"));
}

}  // namespace
}  // namespace bathside::app
