// The record page's answers from a real trail: the day, verify, export and copy, each checked by
// what is on disk afterwards.

#include "app/station/trail_record.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QFile>
#include <QTimer>
#include <algorithm>
#include <fstream>
#include <functional>
#include <sstream>

#include <gtest/gtest.h>

#include "app/station/bench_day.h"
#include "app/station/delivery_files.h"
#include "app/station/paper_desk.h"
#include "core/base/rfc3339.h"
#include "core/base/simulated_clock.h"
#include "core/record/manifest_seal.h"
#include "core/record/verify_export.h"
#include "core/trail/store/check.h"
#include "tests/core/trail/store/support.h"
#include "tests/support/temp_folder.h"
#include "tests/support/trail_days.h"
#include "ui/record/record_page.h"

namespace bathside::app {
namespace {

using namespace std::chrono_literals;

class Quiet final : public ui::Feedback {
public:
    void taken() override {}
    void refused() override {}
};

std::string wholeOf(const std::filesystem::path& file)
{
    std::ifstream in(file, std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

std::string defaultCard() { return wholeOf(BATHSIDE_DEFAULT_CARD); }

class TrailRecordTest : public testing::Test {
protected:
    void open()
    {
        auto session = Session::open(
            {.trail = m_folder / "trail.db",
             .spoolFolder = m_folder.path(),
             .card = {},
             .defaultCard = defaultCard(),
             .rehearsal = false,
             .sealKey = m_folder / "seal.key",
             .clockSynchronised = true,
             .clockOffset = {}},
            {.clock = m_clock,
             .feedback = m_feedback,
             .inputTime = [this](std::uint64_t) { return ui::InputTime{.at = m_clock.now()}; },
             .ticking = ui::StationModel::Ticking::ByHand});
        ASSERT_TRUE(session) << session.error().toStdString();
        m_session = std::move(*session);
        m_record = std::make_unique<TrailRecord>(*m_session);
    }

    /// A shift with a note in it, durable.
    void openShift()
    {
        say(OpenShift{"Europe/Madrid", {"MK"}});
        say(MakeNote{"=1+1"});
        ASSERT_TRUE(m_session->store().flush(60s));
    }

    void say(const Intent& intent)
    {
        m_clock.runTo(m_clock.now().boot + 1s);
        ASSERT_TRUE(m_session->model().say(intent, 0, QStringLiteral("test")));
    }

    /// Asks, and waits for the one answer.
    template <typename Answer, typename Ask>
    Answer answerTo(void (ui::RecordSource::*signal)(const Answer&), Ask ask)
    {
        std::optional<Answer> answer;
        QEventLoop loop;
        QTimer::singleShot(60s, &loop, &QEventLoop::quit);
        const auto heard =
            QObject::connect(m_record.get(), signal, &loop, [&](const Answer& given) {
                answer = given;
                loop.quit();
            });
        ask();
        loop.exec();
        QObject::disconnect(heard);
        EXPECT_TRUE(answer);
        return answer.value_or(Answer{});
    }

    struct Read {
        std::vector<Entry> entries, later;
    };
    /// All that is told until the question that `ask` puts is answered.
    Read readBy(const std::function<void()>& ask)
    {
        Read read;
        QEventLoop loop;
        QTimer::singleShot(60s, &loop, &QEventLoop::quit);
        QObject::connect(m_record.get(), &ui::RecordSource::entriesRead, &loop,
                         [&](const ui::DayRange&, const std::vector<Entry>& entries) {
                             read.entries.insert(read.entries.end(), entries.begin(),
                                                 entries.end());
                         });
        QObject::connect(
            m_record.get(), &ui::RecordSource::laterRead, &loop,
            [&](const ui::DayRange&, const std::vector<Entry>& later) { read.later = later; });
        bool isDone = false;
        QObject::connect(m_record.get(), &ui::RecordSource::dayRead, &loop,
                         [&](const ui::DayRange&, const std::optional<StoreTrouble>& trouble) {
                             EXPECT_FALSE(trouble);
                             isDone = true;
                             loop.quit();
                         });
        ask();
        loop.exec();
        EXPECT_TRUE(isDone);
        return read;
    }
    std::vector<Entry> entriesOf(ui::Date date, Seq after)
    {
        return readBy([&] { m_record->readDays({date, date}, after); }).entries;
    }
    Read stretchOf(const ui::DayRange& days, const ui::EntryWish& wish,
                   Seq before = ui::RecordSource::kNewest)
    {
        return readBy([&] { m_record->readStretch(days, wish, before); });
    }

    std::optional<ui::Date> dayOf(Seq seq)
    {
        std::optional<ui::Date> found;
        QEventLoop loop;
        QTimer::singleShot(60s, &loop, &QEventLoop::quit);
        QObject::connect(m_record.get(), &ui::RecordSource::dayFound, &loop,
                         [&](Seq of, const std::optional<ui::Date>& day) {
                             EXPECT_EQ(of, seq);
                             found = day;
                             loop.quit();
                         });
        m_record->findDay(seq);
        loop.exec();
        return found;
    }

    ui::VerifyAnswer verified()
    {
        return answerTo(&ui::RecordSource::verified, [this] { m_record->verify(); });
    }
    ui::ExportAnswer exported(ui::Date date, const std::filesystem::path& folder)
    {
        return answerTo(&ui::RecordSource::exported, [&] {
            m_record->exportDays({date, date}, QString::fromStdString(folder.string()), ',');
        });
    }
    ui::CopyAnswer copied(const std::filesystem::path& folder)
    {
        return answerTo(&ui::RecordSource::copied,
                        [&] { m_record->copyTrail(QString::fromStdString(folder.string())); });
    }

    static constexpr ui::Date kDay{std::chrono::year(2026), std::chrono::March,
                                   std::chrono::day(5)};

    test::TempFolder m_folder;
    SimulatedClock m_clock{*fromRfc3339("2026-03-05T23:10:00.000+01:00")};
    Quiet m_feedback;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<TrailRecord> m_record;
};

TEST_F(TrailRecordTest, readsTheDayAndThenOnlyWhatIsNew)
{
    open();
    openShift();
    EXPECT_EQ(m_record->currentDay(), kDay);
    const auto all = entriesOf(kDay, 0);
    ASSERT_GE(all.size(), 5U);
    EXPECT_EQ(all.back().kind, "note.made");
    say(MakeNote{"later"});
    ASSERT_TRUE(m_session->store().flush(60s));
    const auto rest = entriesOf(kDay, all.back().seq);
    ASSERT_EQ(rest.size(), 1U);
    EXPECT_EQ(rest.front().seq, all.back().seq + 1);
}

// What was signed of a day two days later is read with it, and stands on its sheet.
TEST_F(TrailRecordTest, aDayIsReadWithWhatLaterOnesSayOfIt)
{
    test::TrailDays days({}, "bench");
    std::vector<Entry> log = days.day(40);
    const Seq last = log.back().seq;
    for (const int events : {20, 20}) {
        const auto more = days.day(events);
        log.insert(log.end(), more.begin(), more.end());
    }
    log.push_back(days.entry(RecordSigned{Meaning::Reviewed, {10, log.back().seq}, "all seen"}));
    store::written(m_folder / "trail.db", log);
    m_clock.runTo(m_clock.now().boot + 96h);
    open();
    std::vector<Entry> later;
    QObject::connect(
        m_record.get(), &ui::RecordSource::laterRead, m_record.get(),
        [&](const ui::DayRange&, const std::vector<Entry>& entries) { later = entries; });
    EXPECT_EQ(entriesOf(kDay, 0).back().seq, last);
    EXPECT_EQ(later, std::vector<Entry>{log.back()});
    EXPECT_TRUE(entriesOf(kDay, last).empty()) << "nothing of its own is new";
    EXPECT_EQ(later, std::vector<Entry>{log.back()});
    entriesOf(ui::daysAfter(kDay, 1), 0);
    EXPECT_TRUE(later.empty());
    const auto sheet = answerTo(&ui::RecordSource::sheetRead, [&] { m_record->askSheet(kDay); });
    ASSERT_TRUE(sheet.sheet);
    ASSERT_EQ(sheet.sheet->signatures.size(), 1U);
    EXPECT_EQ(sheet.sheet->signatures[0].words, "all seen");
}

// A shift over midnight belongs to the day it was opened on (the spec's trail, local days).
TEST_F(TrailRecordTest, aShiftOverMidnightStaysWithItsDay)
{
    open();
    openShift();
    m_clock.runTo(m_clock.now().boot + 2h);
    say(MakeNote{"after midnight"});
    ASSERT_TRUE(m_session->store().flush(60s));
    EXPECT_EQ(m_record->currentDay(), kDay);
    const auto all = entriesOf(kDay, 0);
    EXPECT_TRUE(std::ranges::any_of(all, [](const Entry& entry) {
        return entry.payload.find("after midnight") != std::string::npos;
    }));
    EXPECT_TRUE(entriesOf(ui::Date{std::chrono::sys_days(kDay) + std::chrono::days(1)}, 0).empty());
}

TEST_F(TrailRecordTest, verifyFindsASoundTrailSound)
{
    open();
    openShift();
    const ui::VerifyAnswer answer = verified();
    EXPECT_TRUE(answer.isSound());
    EXPECT_EQ(answer.chain.count, m_session->store().state().recorded);
    EXPECT_EQ(answer.chain.head.seq, answer.chain.count);
}

// Beyond the last entries that opening looks at, so that only verify can tell.
TEST_F(TrailRecordTest, verifyNamesTheEntryThatWasChanged)
{
    test::TrailDays days({}, "bench");
    const auto file = store::written(m_folder / "trail.db", days.day(1200));
    ASSERT_EQ(store::tamper(file, "UPDATE event SET person = 'ZZ' WHERE seq = 700").first, 0);
    open();
    const ui::VerifyAnswer answer = verified();
    ASSERT_TRUE(answer.chain.flaw);
    EXPECT_EQ(answer.chain.flaw->seq, 700);
    EXPECT_EQ(answer.chain.head.seq, 699);
    EXPECT_FALSE(answer.isSound());
}

TEST_F(TrailRecordTest, anExportIsWholeAndVerifiesByItself)
{
    open();
    openShift();
    const ui::ExportAnswer answer = exported(kDay, m_folder / "out");
    ASSERT_FALSE(answer.fault);
    const std::filesystem::path folder = answer.folder.toStdString();
    EXPECT_EQ(folder, m_folder.path() / "out" / "2026-03-05");
    const std::string lines = wholeOf(folder / kEventsFile);
    const auto manifest = manifestFrom(wholeOf(folder / kManifestFile));
    ASSERT_TRUE(manifest);
    EXPECT_EQ(*manifest, answer.manifest);
    ExportVerifier verifier(*manifest);
    verifier.add(lines);
    const ExportVerification found = verifier.finish();
    EXPECT_TRUE(found.isSound());
    EXPECT_EQ(found.chain.count, manifest->count);
    for (const Manifest::File& each : manifest->files)
        EXPECT_FALSE(contradicts(*manifest, each.name,
                                 static_cast<std::int64_t>(wholeOf(folder / each.name).size()),
                                 sha256(wholeOf(folder / each.name))))
            << each.name;
    EXPECT_TRUE(wholeOf(folder / "events-sheet.csv").starts_with("\xEF\xBB\xBF"));
    EXPECT_FALSE(wholeOf(folder / "events.csv").starts_with("\xEF\xBB\xBF"));
    EXPECT_TRUE(wholeOf(folder / kBookFile).starts_with("PK"));
    EXPECT_EQ(signatureFlaw(*manifest, wholeOf(folder / kManifestFile),
                            {wholeOf(folder / kSignatureFile), wholeOf(folder / kKeyFile)},
                            m_session->sealKey()->publicKey()),
              std::nullopt);
}

TEST_F(TrailRecordTest, severalDaysAreReadAndExportedTogether)
{
    open();
    openShift();
    say(CloseShift{});
    const Seq first = m_session->station().bench().lastSeq;
    m_clock.runTo(m_clock.now().boot + 24h);
    openShift();
    const ui::Date next = ui::daysAfter(kDay, 1);
    const auto all = answerTo(&ui::RecordSource::exported, [&] {
        m_record->exportDays({kDay, next}, QString::fromStdString((m_folder / "out").string()),
                             '.');
    });
    ASSERT_FALSE(all.fault);
    EXPECT_TRUE(all.folder.endsWith(QStringLiteral("2026-03-05_2026-03-06")));
    EXPECT_GT(all.manifest.last.seq, first);
    EXPECT_EQ(all.manifest.runs.front().first, 1);
    const auto second = exported(next, m_folder / "out");
    ASSERT_FALSE(second.fault) << "one that is not the trail's first";
    EXPECT_EQ(second.manifest.runs.front().first, first + 1);
    EXPECT_EQ(dayOf(first), kDay);
    EXPECT_EQ(dayOf(all.manifest.last.seq), next);
    EXPECT_EQ(dayOf(4711), std::nullopt);
}

// Of many days the index finds what a filter over a whole day finds.
TEST_F(TrailRecordTest, aStretchHasWhatTheDaysFilterShows)
{
    test::TrailDays days({}, "bench");
    std::vector<Entry> log = days.day(60);
    for (int i = 0; i < 20; ++i) {
        const auto more = days.day(60);
        log.insert(log.end(), more.begin(), more.end());
    }
    const auto misread = std::ranges::find(log, "ampoule.out", &Entry::kind)->seq;
    log.push_back(days.entry(FactCorrected{misread, "lot", "K99", "misread"}));
    store::written(m_folder / "trail.db", log);
    m_clock.runTo(m_clock.now().boot + 24h * 40);
    open();
    const ui::DayRange all{kDay, ui::daysAfter(kDay, 30)};
    ui::DayModel model;
    ui::DayFilter filter(model);
    for (const ui::DayWish& wish : std::vector<ui::DayWish>{
             {.group = ui::Group::Bags, .person = {}, .bag = {}, .lot = {}},
             {.group = ui::Group::Deviations, .person = {}, .bag = {}, .lot = {}},
             {.group = ui::Group::Deviations, .person = {}, .bag = {}, .lot = "K99"},
             {.group = ui::Group::All, .person = "AB", .bag = "B2", .lot = {}},
             {.group = ui::Group::Ampoules, .person = {}, .bag = "B1", .lot = "K07"},
             {.group = ui::Group::All, .person = {}, .bag = {}, .lot = "K99"},
             {.group = ui::Group::All, .person = {}, .bag = {}, .lot = "none"}}) {
        std::vector<Seq> shown;
        model.begin("Europe/Madrid", all);
        model.append(log);
        filter.wish(wish);
        for (int row = 0; row < filter.rowCount(); ++row)
            shown.push_back(filter.at(filter.index(row, 0))->entry.seq);
        std::vector<Seq> found;
        for (const Entry& entry : stretchOf(all, entryWishOf(wish)).entries)
            found.push_back(entry.seq);
        EXPECT_EQ(found, shown) << wish.bag << ' ' << wish.lot;
    }
    const auto newest = stretchOf(all, {});
    ASSERT_EQ(newest.entries.size(), static_cast<std::size_t>(ui::RecordSource::kStretch));
    EXPECT_EQ(newest.entries.back().seq, log.back().seq);
    const auto before = stretchOf(all, {}, newest.entries.front().seq);
    EXPECT_EQ(before.entries.back().seq, newest.entries.front().seq - 1);
    EXPECT_EQ(before.entries.front().seq, 1);
    EXPECT_EQ(before.later, std::vector<Entry>{log.back()}) << "what corrects one of them";
}

// Months are written as they are read, and have no day sheets.
TEST_F(TrailRecordTest, monthsAreExportedWithoutDaySheets)
{
    test::TrailDays days({}, "bench");
    std::vector<Entry> log;
    for (int i = 0; i < 40; ++i) {
        const auto more = days.day(40);
        log.insert(log.end(), more.begin(), more.end());
    }
    store::written(m_folder / "trail.db", log);
    open();
    const auto months = [&](int last) {
        return answerTo(&ui::RecordSource::exported, [&] {
            m_record->exportDays({kDay, ui::daysAfter(kDay, last)},
                                 QString::fromStdString((m_folder / "out").string()), '.');
        });
    };
    const auto hasSheet = [](const ui::ExportAnswer& answer) {
        return std::ranges::any_of(answer.manifest.files,
                                   [](const auto& file) { return file.name == kSheetFile; });
    };
    const ui::ExportAnswer all = months(60);
    ASSERT_FALSE(all.fault);
    EXPECT_GE(all.manifest.count, std::ssize(log));
    EXPECT_EQ(all.manifest.runs.front().first, 1);
    EXPECT_FALSE(hasSheet(all));
    EXPECT_TRUE(hasSheet(months(2)));
}

TEST_F(TrailRecordTest, aSecondExportTakesAFolderOfItsOwn)
{
    open();
    openShift();
    ASSERT_FALSE(exported(kDay, m_folder / "out").fault);
    const ui::ExportAnswer second = exported(kDay, m_folder / "out");
    EXPECT_TRUE(second.folder.endsWith(QStringLiteral("2026-03-05-2")));
    EXPECT_TRUE(std::filesystem::exists(second.folder.toStdString() + "/manifest.json"));
}

TEST_F(TrailRecordTest, aDayWithoutARecordWritesNothing)
{
    open();
    openShift();
    const ui::ExportAnswer answer =
        exported(ui::Date{std::chrono::sys_days(kDay) - std::chrono::days(30)}, m_folder / "out");
    EXPECT_FALSE(answer.fault);
    EXPECT_EQ(answer.manifest.count, 0);
    EXPECT_FALSE(std::filesystem::exists(m_folder / "out"));
}

TEST_F(TrailRecordTest, aPlaceThatCannotBeWrittenIsTold)
{
    open();
    openShift();
    std::ofstream(m_folder / "file") << "not a folder";
    const ui::ExportAnswer answer = exported(kDay, m_folder / "file");
    ASSERT_TRUE(answer.fault);
    EXPECT_EQ(answer.fault->kind, ExportFault::Kind::Sink);
    EXPECT_NE(answer.fault->sink.errorNumber, 0);
    EXPECT_TRUE(copied(m_folder / "file").trouble);
}

TEST_F(TrailRecordTest, aCopyIsTheTrailAndSound)
{
    open();
    openShift();
    const ui::CopyAnswer answer = copied(m_folder / "copies");
    ASSERT_FALSE(answer.trouble);
    EXPECT_TRUE(answer.check.isSound());
    const Head head = answer.check.chain.head;
    m_record.reset();
    m_session.reset();
    const auto copy = store::opened(answer.file.toStdString(), store::Mode::ReadOnly);
    EXPECT_EQ(copy->head(), head);
    const auto trail = store::opened(m_folder / "trail.db", store::Mode::ReadOnly);
    std::vector<Entry> entries = store::contentOf(*trail);
    entries.resize(static_cast<std::size_t>(head.seq));  // ending noted the stop after the copy
    EXPECT_EQ(store::contentOf(*copy), entries);
}

TEST_F(TrailRecordTest, anExportHasTheDaySheetOfTheSameEntries)
{
    open();
    openShift();
    const ui::ExportAnswer answer = exported(kDay, m_folder / "out");
    EXPECT_FALSE(answer.sheetFault);
    const std::string pdf = wholeOf(answer.folder.toStdString() + "/day-sheet.pdf");
    EXPECT_TRUE(pdf.starts_with("%PDF-"));
    const auto listed = std::ranges::find(answer.manifest.files, kSheetFile, &Manifest::File::name);
    ASSERT_NE(listed, answer.manifest.files.end());
    EXPECT_EQ(listed->sha256, sha256(pdf));
    const auto read = answerTo(&ui::RecordSource::sheetRead, [this] { m_record->askSheet(kDay); });
    ASSERT_TRUE(read.sheet);
    EXPECT_EQ(read.sheet->entries, answer.manifest.count);
    EXPECT_EQ(read.sheet->head, answer.manifest.head);
    const ui::Date before{std::chrono::sys_days(kDay) - std::chrono::days(30)};
    const auto none = answerTo(&ui::RecordSource::sheetRead, [&] { m_record->askSheet(before); });
    EXPECT_FALSE(none.sheet);
    EXPECT_FALSE(none.fault);
}

TEST_F(TrailRecordTest, holdsAPrintedHeadAgainstTheChain)
{
    using Found = ui::WitnessAnswer::Found;
    open();
    openShift();
    const auto found = [this](std::int64_t count, const std::string& head) {
        const auto answer = answerTo(&ui::RecordSource::witnessed, [&] {
            m_record->witness(SealCode{count, head});
        });
        EXPECT_FALSE(answer.trouble);
        EXPECT_EQ(answer.code, (SealCode{count, head}));
        return answer.found;
    };
    const std::vector<Entry> entries = entriesOf(kDay, 0);
    ASSERT_GT(entries.size(), 2U);
    for (const Entry& entry : entries)
        EXPECT_EQ(found(entry.seq, toHex(entry.hash)), Found::Agrees);
    EXPECT_EQ(found(entries[0].seq, toHex(entries[1].hash)), Found::Differs);
    EXPECT_EQ(found(entries.back().seq + 100, toHex(entries[1].hash)), Found::NotReached);
}

class Mute final : public ui::SoundTest {
public:
    void play() override {}
    [[nodiscard]] QString device() const override { return {}; }
    [[nodiscard]] std::vector<ui::Loudspeaker> devices() const override { return {}; }
    void use(const QString&) override {}
    void heard() override {}
};

TEST_F(TrailRecordTest, theStationsFrameHasBothPages)
{
    open();
    openShift();
    ui::Language language;
    ui::Preferences preferences{ui::Preference{}};
    Mute sound;
    const DeliveryFiles deliveries;
    PaperDesk printing(preferences);
    const std::unique_ptr<ui::Frame> frame(frameFor(*m_session, {.language = language,
                                                                 .preferences = preferences,
                                                                 .sound = sound,
                                                                 .deliveries = deliveries,
                                                                 .printing = printing}));
    frame->resize(1280, 800);
    frame->show();
    EXPECT_TRUE(frame->showPage(QString::fromLatin1(ui::Frame::kSetUp)));
    ASSERT_TRUE(frame->showPage(QString::fromLatin1(ui::Frame::kRecord)));
    auto* page = qobject_cast<ui::RecordPage*>(frame->current());
    ASSERT_TRUE(page);
    QEventLoop loop;
    QTimer::singleShot(60s, &loop, &QEventLoop::quit);
    QObject::connect(&page->day(), &QAbstractItemModel::rowsInserted, &loop, &QEventLoop::quit);
    if (page->day().rowCount() == 0)
        loop.exec();
    EXPECT_GE(page->day().rowCount(), 5);
}

TEST_F(TrailRecordTest, whatIsAnsweredTooLateIsDropped)
{
    open();
    openShift();
    m_record->verify();
    m_record->exportDays({kDay, kDay}, QString::fromStdString((m_folder / "out").string()), '.');
    m_record->copyTrail(QString::fromStdString((m_folder / "copies").string()));
    m_record.reset();
    m_session.reset();
    QCoreApplication::processEvents();
    SUCCEED();
}

}  // namespace
}  // namespace bathside::app
