// A damaged trail at the start: kept byte for byte, and the record goes on beside it with all that
// was sound. Damage is done to the file itself, past the store.

#include "app/station/damage.h"

#include <fstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sqlite3.h>

#include "app/station/trail_charts.h"
#include "app/station/trail_record.h"
#include "core/record/verify_export.h"
#include "core/trail/event_form.h"
#include "core/trail/store/check.h"
#include "core/trail/store/disk_files.h"
#include "tests/app/station/session_stand.h"
#include "tests/core/trail/store/support.h"
#include "tests/support/file_bytes.h"

namespace bathside::app {
namespace {

using namespace std::chrono_literals;

constexpr ui::Date kDay{std::chrono::year(2026), std::chrono::March, std::chrono::day(5)};

class DamageTest : public testing::Test {
protected:
    void aMorning()
    {
        stand.open();
        stand.say(OpenShift{"Europe/Madrid", {"MK"}});
        for (const char* note : {"one", "two", "three", "four", "five"})
            stand.say(MakeNote{note});
        ASSERT_TRUE(stand.session->store().flush(60s));
        m_before = stand.bench();
        stand.session.reset();
    }

    [[nodiscard]] Seq seqOf(const std::string& note) const
    {
        const auto trail = store::opened(stand.trail(), store::Mode::Salvage);
        Seq seq = 0;
        EXPECT_TRUE(trail->read(1, store::kAll, [&](const Entry& entry) {
            if (entry.payload.find("\"" + note + "\"") != std::string::npos)
                seq = entry.seq;
            return true;
        }));
        EXPECT_GT(seq, 0);
        return seq;
    }

    void change(Seq seq)
    {
        ASSERT_EQ(store::tamper(stand.trail(),
                                "UPDATE event SET person = 'ZZ' WHERE seq = " + std::to_string(seq))
                      .first,
                  0);
    }

    [[nodiscard]] std::filesystem::path second() const { return stand.folder / "trail.part-2.db"; }

    Damage goOn()
    {
        EXPECT_FALSE(stand.tryToOpen());
        const auto damage = goOnAfterDamage(stand.trail(), stand.clock, {"bench"});
        EXPECT_TRUE(damage);
        return damage.value_or(Damage{});
    }

    /// Asks, and waits for the one answer.
    template <typename Answer, typename Ask>
    static Answer answerTo(TrailRecord& record, void (ui::RecordSource::*signal)(const Answer&),
                           Ask ask)
    {
        std::optional<Answer> answer;
        const auto heard = QObject::connect(&record, signal, &record,
                                            [&](const Answer& given) { answer = given; });
        ask();
        SessionStand::waitFor([&] { return answer.has_value(); });
        QObject::disconnect(heard);
        return answer.value_or(Answer{});
    }
    static ui::SheetAnswer sheetOf(TrailRecord& record, ui::Date date)
    {
        return answerTo(record, &ui::RecordSource::sheetRead, [&] { record.askSheet(date); });
    }

    SessionStand stand;
    Bench m_before;
};

TEST_F(DamageTest, aSoundTrailIsLeftAlone)
{
    aMorning();
    EXPECT_FALSE(goOnAfterDamage(stand.trail(), stand.clock, {"bench"}));
    EXPECT_FALSE(goOnAfterDamage(stand.folder / "none.db", stand.clock, {"bench"}));
    EXPECT_FALSE(std::filesystem::exists(second()));
}

TEST_F(DamageTest, theDamagedFileIsKeptAndTheRecordGoesOnBesideIt)
{
    aMorning();
    const Seq bad = seqOf("four");
    change(bad);
    const std::string kept = test::bytesOf(stand.trail());
    const Damage damage = goOn();
    EXPECT_TRUE(damage.goesOn);
    EXPECT_THAT(damage.sentence.toStdString(),
                testing::HasSubstr("The record in trail.db is damaged after entry " +
                                   std::to_string(bad - 1)));
    EXPECT_THAT(damage.sentence.toStdString(), testing::HasSubstr("goes on in trail.part-2.db"));
    EXPECT_EQ(test::bytesOf(stand.trail()), kept);

    stand.open();
    EXPECT_EQ(stand.session->earlier().size(), 1U);
    ASSERT_TRUE(stand.bench().shift);
    EXPECT_TRUE(stand.bench().shiftIsOpen()) << "the shift was opened in the damaged file";
    EXPECT_EQ(stand.bench().shift->opened.seq, m_before.shift->opened.seq);
    EXPECT_EQ(stand.bench().card->hash(), m_before.card->hash());
    stand.say(MakeNote{"on"});
    ASSERT_TRUE(stand.session->store().flush(60s));
    stand.session.reset();
    EXPECT_EQ(test::bytesOf(stand.trail()), kept);

    const auto next = store::opened(second(), store::Mode::ReadOnly);
    const auto entries = store::contentOf(*next);
    ASSERT_FALSE(entries.empty());
    EXPECT_EQ(entries.front().kind, "trail.continued");
    EXPECT_EQ(entries.front().seq, bad);
    const auto sound = store::check(*next);
    EXPECT_TRUE(sound.isSound());
    ASSERT_TRUE(sound.chain.continues);
    EXPECT_EQ(sound.chain.continues->head,
              store::soundHead(*store::opened(stand.trail(), store::Mode::Salvage)));
    EXPECT_EQ(sound.chain.continues->file, "trail.db");
}

TEST_F(DamageTest, whatWasOnRecordInBothFilesIsThereAtEveryLaterStart)
{
    aMorning();
    change(seqOf("five"));
    ASSERT_TRUE(goOn().goesOn);
    stand.open();
    stand.say(CloseShift{});
    stand.say(OpenShift{"Europe/Madrid", {"AB"}});
    ASSERT_TRUE(stand.session->store().flush(60s));
    const Bench before = stand.bench();
    stand.session.reset();
    stand.open();
    EXPECT_EQ(stand.bench().shift->opened.seq, before.shift->opened.seq);
    ASSERT_TRUE(stand.bench().card) << "adopted in the damaged file";
    EXPECT_EQ(stand.bench().card->hash(), before.card->hash());
}

TEST_F(DamageTest, theSoundPartIsShownOnTheRecordPage)
{
    aMorning();
    const Seq bad = seqOf("four");
    change(bad);
    ASSERT_TRUE(goOn().goesOn);
    stand.open();
    stand.say(MakeNote{"on"});
    ASSERT_TRUE(stand.session->store().flush(60s));
    TrailRecord record(*stand.session);
    std::vector<Entry> shown;
    bool isDone = false;
    QObject::connect(&record, &ui::RecordSource::entriesRead, &record,
                     [&](const ui::DayRange&, const std::vector<Entry>& entries) {
                         shown.insert(shown.end(), entries.begin(), entries.end());
                     });
    QObject::connect(&record, &ui::RecordSource::dayRead, &record,
                     [&](const ui::DayRange&, const std::optional<StoreTrouble>& trouble) {
                         EXPECT_FALSE(trouble);
                         isDone = true;
                     });
    record.readDays({kDay, kDay}, 0);
    SessionStand::waitFor([&] { return isDone; });
    ASSERT_FALSE(shown.empty());
    for (std::size_t i = 0; i < shown.size(); ++i)
        EXPECT_EQ(shown[i].seq, static_cast<Seq>(i) + 1);
    EXPECT_EQ(shown.at(static_cast<std::size_t>(bad - 1)).kind, "trail.continued");
    EXPECT_THAT(shown.back().payload, testing::HasSubstr("\"on\""));
}

// A sheet that was printed before the damage is held against the sound part of the file of then.
TEST_F(DamageTest, aSheetFromBeforeTheDamageIsStillChecked)
{
    using Found = ui::WitnessAnswer::Found;
    aMorning();
    const std::vector<Entry> before = store::contentOf(*store::opened(stand.trail()));
    const Seq bad = seqOf("four");
    change(bad);
    ASSERT_TRUE(goOn().goesOn);
    stand.open();
    TrailRecord record(*stand.session);
    const auto found = [&](Seq seq, const Hash& hash) {
        return answerTo(record, &ui::RecordSource::witnessed,
                        [&] {
                            record.witness(SealCode{seq, toHex(hash)});
                        })
            .found;
    };
    const auto at = [&](Seq seq) { return before.at(static_cast<std::size_t>(seq - 1)).hash; };
    EXPECT_EQ(found(bad - 2, at(bad - 2)), Found::Agrees);
    EXPECT_EQ(found(bad - 1, at(bad - 1)), Found::Agrees) << "where the next file goes on";
    EXPECT_EQ(found(bad - 2, at(bad - 1)), Found::Differs);
    EXPECT_EQ(found(bad, at(bad)), Found::Differs) << "it is no longer that entry";
}

// The day of the damage lies in two files, and is one record: exported with its card, its chain
// unbroken, and found by each of its entries.
TEST_F(DamageTest, theDayOfTheDamageIsExportedWhole)
{
    aMorning();
    const Seq bad = seqOf("four");
    change(bad);
    ASSERT_TRUE(goOn().goesOn);
    stand.open();
    stand.say(MakeNote{"on"});
    stand.say(CloseShift{});
    ASSERT_TRUE(stand.session->store().flush(60s));
    TrailRecord record(*stand.session);
    const auto answer = answerTo(record, &ui::RecordSource::exported, [&] {
        record.exportDays({kDay, kDay}, QString::fromStdString((stand.folder / "out").string()),
                          '.');
    });
    ASSERT_FALSE(answer.fault);
    ASSERT_EQ(answer.manifest.runs.size(), 1U);
    EXPECT_EQ(answer.manifest.runs[0].first, 1);
    EXPECT_GT(answer.manifest.runs[0].last, bad);
    const std::filesystem::path folder = answer.folder.toStdString();
    ExportVerifier verifier(answer.manifest);
    verifier.add(test::bytesOf(folder / kEventsFile));
    EXPECT_TRUE(verifier.finish().isSound());
    const auto sheet = sheetOf(record, kDay);
    ASSERT_TRUE(sheet.sheet);
    ASSERT_EQ(sheet.sheet->shifts.size(), 1U);
    EXPECT_TRUE(sheet.sheet->shifts[0].card) << "adopted in the damaged file";
    EXPECT_EQ(sheet.sheet->shifts[0].notes.back().text, "on");
    EXPECT_GT(sheet.sheet->shifts[0].notes.size(), 1U);
    std::optional<ui::Date> day;
    QObject::connect(&record, &ui::RecordSource::dayFound, &record,
                     [&](Seq, const std::optional<ui::Date>& found) { day = found; });
    for (const Seq seq : {bad - 1, bad + 1}) {
        day.reset();
        record.findDay(seq);
        SessionStand::waitFor([&] { return day.has_value(); });
        EXPECT_EQ(day, kDay);
    }
}

// A day that lies wholly in the damaged file, and one after it whose card was adopted there.
TEST_F(DamageTest, daysBeforeAndAfterTheDamageAreExported)
{
    aMorning();
    stand.open();
    stand.say(CloseShift{});
    stand.clock.runTo(stand.clock.now().boot + 24h);
    stand.say(OpenShift{"Europe/Madrid", {"MK"}});
    stand.say(MakeNote{"of the second day"});
    ASSERT_TRUE(stand.session->store().flush(60s));
    stand.session.reset();
    change(seqOf("of the second day"));
    ASSERT_TRUE(goOn().goesOn);
    stand.open();
    stand.say(CloseShift{});
    stand.clock.runTo(stand.clock.now().boot + 24h);
    stand.say(OpenShift{"Europe/Madrid", {"MK"}});
    ASSERT_TRUE(stand.session->store().flush(60s));
    TrailRecord record(*stand.session);
    for (const int later : {0, 1, 2}) {
        const auto sheet = sheetOf(record, ui::daysAfter(kDay, later));
        ASSERT_FALSE(sheet.fault) << later;
        ASSERT_TRUE(sheet.sheet) << later;
        ASSERT_EQ(sheet.sheet->shifts.size(), 1U) << later;
        EXPECT_TRUE(sheet.sheet->shifts[0].card) << later;
        EXPECT_EQ(sheet.sheet->zone, "Europe/Madrid");
        EXPECT_EQ(sheet.sheet->shifts[0].closed.has_value(), later < 2);
    }
}

// The page with the last entries is overwritten, as a failing disk does.
TEST_F(DamageTest, damagedPagesAreGotOverToo)
{
    stand.open();
    stand.say(OpenShift{"Europe/Madrid", {"MK"}});
    for (int i = 0; i < 400; ++i)
        stand.say(MakeNote{"note number " + std::to_string(i) + std::string(200, '.')});
    ASSERT_TRUE(stand.session->store().flush(60s));
    stand.session.reset();
    const std::string whole = test::bytesOf(stand.trail());
    const auto at = whole.rfind("note number 300");
    ASSERT_NE(at, std::string::npos);
    {
        std::fstream raw(stand.trail(), std::ios::in | std::ios::out | std::ios::binary);
        raw.seekp(static_cast<std::streamoff>(at / 4096 * 4096));
        raw << std::string(4096, '\x5a');
    }
    const std::string kept = test::bytesOf(stand.trail());
    const Damage damage = goOn();
    EXPECT_TRUE(damage.goesOn) << damage.sentence.toStdString();
    EXPECT_EQ(test::bytesOf(stand.trail()), kept);
    stand.open();
    EXPECT_TRUE(stand.bench().shiftIsOpen());
    EXPECT_GT(stand.session->earlier().front().last, 200);
}

// A station that does not start is no help to an ampoule that is out of the cryogen.
TEST_F(DamageTest, whereNothingCanBeReadARecordBeginsAnew)
{
    aMorning();
    {
        std::fstream raw(stand.trail(), std::ios::in | std::ios::out | std::ios::binary);
        raw << std::string(200, '\x5a');  // SQLite's header and what follows it
    }
    const std::string kept = test::bytesOf(stand.trail());
    const Damage damage = goOn();
    EXPECT_TRUE(damage.goesOn);
    EXPECT_TRUE(damage.sentence.contains(QStringLiteral("begins anew in trail.part-2.db")))
        << damage.sentence.toStdString();
    EXPECT_EQ(test::bytesOf(stand.trail()), kept);

    for (int start = 0; start < 2; ++start) {
        stand.open();
        EXPECT_EQ(stand.bench().shiftIsOpen(), start > 0);
        EXPECT_TRUE(stand.session->earlier().empty());
        if (start == 0)
            stand.say(OpenShift{"Europe/Madrid", {"MK"}});
        ASSERT_TRUE(stand.session->store().flush(60s));
        stand.session.reset();
    }
    EXPECT_EQ(test::bytesOf(stand.trail()), kept);
    const auto next = store::opened(second(), store::Mode::ReadOnly);
    const auto first = store::entriesFrom(*next, 1);
    ASSERT_TRUE(first);
    EXPECT_EQ(first->front().kind, TrailContinued::kKind);
}

// Somebody else's file is neither begun beside nor touched.
TEST_F(DamageTest, aFileThatWasNeverATrailIsNoRuin)
{
    const auto letter = stand.folder / "letter.txt", other = stand.folder / "other.db";
    std::ofstream(letter) << "To whom it may concern, about the bath of Thursday";
    sqlite3* made = nullptr;
    ASSERT_EQ(sqlite3_open(other.c_str(), &made), SQLITE_OK);
    EXPECT_EQ(sqlite3_exec(made, "CREATE TABLE bird (name TEXT)", nullptr, nullptr, nullptr),
              SQLITE_OK);
    sqlite3_close(made);
    for (const auto& file : {letter, other}) {
        EXPECT_FALSE(goOnAfterDamage(file, stand.clock, {"bench"}));
        EXPECT_FALSE(std::filesystem::exists(store::nextPart(file)));
    }
}

TEST_F(DamageTest, damageToTheSecondFileIsGotOverAsWell)
{
    aMorning();
    change(seqOf("five"));
    ASSERT_TRUE(goOn().goesOn);
    stand.open();
    stand.say(MakeNote{"six"});
    ASSERT_TRUE(stand.session->store().flush(60s));
    stand.session.reset();
    ASSERT_EQ(store::tamper(second(),
                            "UPDATE event SET person = 'ZZ' WHERE seq = (SELECT max(seq) "
                            "FROM event)")
                  .first,
              0);
    const Damage damage = goOn();
    EXPECT_THAT(damage.sentence.toStdString(), testing::HasSubstr("goes on in trail.part-3.db"));
    stand.open();
    EXPECT_EQ(stand.session->earlier().size(), 2U);
    EXPECT_TRUE(stand.bench().shiftIsOpen());
}

TEST_F(DamageTest, aMakingThatWasBrokenOffIsDoneAgain)
{
    aMorning();
    const Seq bad = seqOf("four");
    change(bad);
    {
        const auto file = store::opened(stand.trail(), store::Mode::Salvage);
        ASSERT_TRUE(store::TrailDb::open(second(), store::Mode::New,
                                         {.role = store::Role::Trail,
                                          .after = store::soundHead(*file),
                                          .continues = "trail.db"}));
    }
    EXPECT_TRUE(goOn().goesOn);
    stand.open();
    stand.session.reset();
    EXPECT_EQ(store::contentOf(*store::opened(second(), store::Mode::ReadOnly)).front().kind,
              "trail.continued");
}

// What a spool kept when the trail failed is brought into the file that goes on.
TEST_F(DamageTest, whatWaitsInASpoolIsBroughtIn)
{
    aMorning();
    change(seqOf("five"));
    const Head head = store::soundHead(*store::opened(stand.trail(), store::Mode::Salvage));
    {
        auto spool = store::TrailDb::open(
            stand.folder / "trail.db.spool-1", store::Mode::New,
            {.role = store::Role::Spool, .after = head, .continues = "trail.db"});
        ASSERT_TRUE(spool);
        Entry entry = store::contentOf(*store::opened(stand.trail(), store::Mode::Salvage))
                          .at(static_cast<std::size_t>(head.seq - 1));
        entry.seq = head.seq + 1;
        entry.payload = R"({"text":"kept aside"})";
        entry.tap = {"another"};
        chain(entry, head.hash);
        ASSERT_TRUE((*spool)->append(std::vector{entry}));
    }
    ASSERT_TRUE(goOn().goesOn);
    stand.open();
    stand.session.reset();
    const auto entries = store::contentOf(*store::opened(second(), store::Mode::ReadOnly));
    EXPECT_EQ(entries.front().kind, "trail.continued");
    EXPECT_TRUE(std::ranges::any_of(entries, [](const Entry& entry) {
        return entry.payload.find("kept aside") != std::string::npos && entry.spool;
    }));
    EXPECT_TRUE(std::filesystem::exists(stand.folder / "trail.db.spool-1.merged"));
}

TEST_F(DamageTest, whereNoSecondFileCanBeMadeItIsSaid)
{
    aMorning();
    change(seqOf("four"));
    std::filesystem::create_directory(stand.folder / "trail.part-2.db-wal");
    const auto damage = goOnAfterDamage(stand.trail(), stand.clock, {"bench"});
    ASSERT_TRUE(damage);
    EXPECT_FALSE(damage->goesOn);
    EXPECT_THAT(damage->sentence.toStdString(), testing::HasSubstr("restore a copy"));
}

// --- charts over time -----------------------------------------------------------------------

class ChartsAfterDamage : public DamageTest {
protected:
    /// One ampoule, so many seconds out of the cryogen.
    void pull(const std::string& bag, std::chrono::seconds outside)
    {
        stand.say(StartBag{{bag}, MicroLitres{400'000}, {"D-0417"}, MilliCelsius{22'500}});
        stand.say(InspectBag{BagId{bag}, true});
        stand.say(DrawDiluent{BagId{bag}, MicroLitres{5'000}});
        stand.say(TakeOut{{{0, {"serotype 3"}, {"K07-112"}}}});
        stand.pass(outside - 1s);
        for (const Step step : {Step::Bath, Step::Opened, Step::Diluent, Step::Bagged})
            stand.say(MoveOn{step, {}, {}});
        stand.pass(12s);
        stand.say(MixBag{BagId{bag}});
    }

    /// A pull in the damaged file, its shift going on in the next, where there is another.
    void twoPulls()
    {
        stand.open();
        stand.say(OpenShift{"Europe/Madrid", {"MK"}});
        m_opened = stand.bench().shift->opened.seq;
        for (const Check& check : stand.bench().card->content().checks)
            stand.say(RecordCheck{check.id, true, {}});
        pull("B1", 4s);
        m_first = stand.bench().lastSeq;
        stand.say(MakeNote{"four"});
        ASSERT_TRUE(stand.session->store().flush(60s));
        stand.session.reset();
        change(seqOf("four"));
        ASSERT_TRUE(goOn().goesOn);
        stand.open();
        pull("B2", 6s);
        m_second = stand.bench().lastSeq;
        ASSERT_TRUE(stand.session->store().flush(60s));
        m_charts = std::make_unique<TrailCharts>(*stand.session);
    }

    std::vector<double> outToBath(ui::Date day, std::vector<SeqRange> baselines = {})
    {
        std::optional<ui::PointsAnswer> answer;
        const auto heard = QObject::connect(m_charts.get(), &ui::ChartSource::pointsRead,
                                            [&](const ui::PointsAnswer& given) { answer = given; });
        m_charts->readPoints({day, day, std::move(baselines), 1});
        SessionStand::waitFor([&] { return answer.has_value(); });
        QObject::disconnect(heard);
        EXPECT_FALSE(answer->trouble);
        m_days = answer->points.days;
        std::vector<double> values;
        for (const ChartPoint& point : answer->points.all) {
            if (point.series == ChartSeries::OutToBath)
                values.push_back(point.value.value_or(0));
        }
        return values;
    }

    std::vector<Seq> shiftOf(Seq seq)
    {
        std::vector<Seq> seqs;
        bool isDone = false;
        QObject here;
        QObject::connect(m_charts.get(), &ui::ChartSource::entriesRead, &here,
                         [&](Seq, const std::vector<Entry>& entries) {
                             for (const Entry& entry : entries)
                                 seqs.push_back(entry.seq);
                         });
        QObject::connect(m_charts.get(), &ui::ChartSource::shiftRead, &here,
                         [&](Seq of, const ui::AroundShift& around) {
                             EXPECT_EQ(of, seq);
                             EXPECT_FALSE(around.trouble);
                             isDone = true;
                         });
        m_charts->readShift(seq);
        SessionStand::waitFor([&] { return isDone; });
        return seqs;
    }

    Seq m_opened = 0, m_first = 0, m_second = 0;
    std::vector<SeqRange> m_days;
    std::unique_ptr<TrailCharts> m_charts;
};

TEST_F(ChartsAfterDamage, haveThePointsOfBothFiles)
{
    twoPulls();
    EXPECT_EQ(outToBath(kDay), (std::vector{4.0, 6.0}));
    EXPECT_TRUE(contain(m_days, m_first) && contain(m_days, m_second));
    const ui::Date other{std::chrono::year(2026), std::chrono::April, std::chrono::day(1)};
    EXPECT_TRUE(outToBath(other).empty());
    EXPECT_EQ(outToBath(other, {{m_first, m_first}}), (std::vector{4.0, 6.0}))
        << "the shift of a baseline goes on, too";
    EXPECT_FALSE(contain(m_days, m_first) || contain(m_days, m_second));
}

TEST_F(ChartsAfterDamage, openAPullOfEitherFile)
{
    twoPulls();
    std::vector<Seq> all;
    for (Seq seq = m_opened; seq <= m_second; ++seq)
        all.push_back(seq);
    EXPECT_EQ(shiftOf(m_first), all);
    EXPECT_EQ(shiftOf(m_second), all);
    EXPECT_TRUE(shiftOf(1).empty()) << "outside any shift";
}

}  // namespace
}  // namespace bathside::app
