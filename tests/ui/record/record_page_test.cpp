// The record page by real taps: the day, its filter, what an entry says exactly, what is asked of
// the record and what is answered. How it looks, in every state, as tests/ui/bench/walk_test.cpp.

#include <QApplication>
#include <QKeyEvent>

#include "core/facts/codec.h"
#include "core/scan/own_code.h"
#include "tests/ui/record/record_stand.h"
#include "ui/controls/tap_button.h"

namespace bathside::test {
namespace {

TEST_F(Record, showsTheDayAndPicksItsLast)
{
    begin();
    EXPECT_EQ(page().day().rowCount(), static_cast<int>(kept().size()));
    EXPECT_EQ(picked(), kept().back().seq);
}

TEST_F(Record, followsWhatIsRecordedWhileItShows)
{
    begin();
    stand().say(MakeNote{"later"});
    RecordState state = stand().model().record();
    state.recorded = kept().back().seq;
    stand().recorded(state);
    ASSERT_EQ(trail().asked.size(), 1U);
    EXPECT_EQ(trail().asked.front().after, page().day().lastSeq());
    trail().answer();
    EXPECT_EQ(page().day().lastSeq(), kept().back().seq);
}

TEST_F(Record, asksOneQuestionAtATime)
{
    begin();
    stand().tap(QStringLiteral("record.before"));
    stand().tap(QStringLiteral("record.before"));
    EXPECT_EQ(trail().asked.size(), 1U);
    trail().answer();
    ASSERT_EQ(trail().asked.size(), 1U);
    EXPECT_EQ(trail().asked.front().days, oneDay(-2));
    trail().answer();
    EXPECT_EQ(page().day().rowCount(), 0);
}

TEST_F(Record, theDayAfterTheLastIsNotThere)
{
    begin();
    const auto before = page().days();
    stand().tap(QStringLiteral("record.after"));
    EXPECT_EQ(page().days(), before);
    stand().tap(QStringLiteral("record.before"));
    trail().answer();
    stand().tap(QStringLiteral("record.after"));
    EXPECT_EQ(page().days(), before);
}

// MK did it all; bag B1 and the lots are of the morning in page_stand.cpp.
TEST_F(Record, filtersCombineAreSaidAndClearedByOneTap)
{
    begin();
    EXPECT_FALSE(title().contains(QStringLiteral("only")));
    stand().taps({"record.filter", "record.ask.bag", "record.ask.id:B1"});
    const int ofBag = list().model()->rowCount();
    stand().taps({"record.filter", "record.ask.lot", "record.ask.id:K07-112"});
    const int ofBoth = list().model()->rowCount();
    EXPECT_LT(ofBoth, ofBag);
    stand().taps({"record.filter", "record.ask.group:1"});
    EXPECT_LE(list().model()->rowCount(), ofBoth);
    EXPECT_GT(list().model()->rowCount(), 0);
    EXPECT_TRUE(title().contains(QStringLiteral("only ampoules, bag B1, lot K07-112")))
        << title().toStdString();
    EXPECT_TRUE(title().contains(
        QStringLiteral("%1 of %2 entries").arg(list().model()->rowCount()).arg(kept().size())));
    stand().tap(QStringLiteral("record.clear"));
    EXPECT_EQ(list().model()->rowCount(), page().day().rowCount());
    EXPECT_FALSE(title().contains(QStringLiteral("only")));
}

TEST_F(Record, saysWhoHowSureAndByBothClocks)
{
    begin();
    const QString about = page().findChild<ui::Label*>(QStringLiteral("record.about"))->text();
    EXPECT_TRUE(about.contains(QStringLiteral("MK, claimed"))) << about.toStdString();
    EXPECT_TRUE(about.contains(QStringLiteral("boot clock"))) << about.toStdString();
    EXPECT_TRUE(about.contains(QStringLiteral("Local time")));
}

TEST_F(Record, aLinkToAnotherDayLeadsThere)
{
    begin();
    const Entry first = trail().entries().front();
    stand().tap(QStringLiteral("record.before"));
    trail().answer();
    Entry review = trail().entries().back();
    review.kind = "deviation.reviewed";
    review.payload =
        payloadOf(DeviationReviewed{.of = first.seq, .cause = "other", .words = {}, .action = {}});
    emit trail().entriesRead(page().days(), {review});
    emit trail().dayRead(page().days(), std::nullopt);
    stand().tap(QStringLiteral("record.linked"));
    ASSERT_EQ(trail().sought, std::vector<Seq>{first.seq});
    emit trail().dayFound(first.seq, trail().today);
    trail().answer();
    EXPECT_EQ(page().days(), oneDay(0));
    EXPECT_EQ(picked(), first.seq);
}

// What a later day says of an entry marks it and leads there.
TEST_F(Record, anEntryKnowsWhatLaterDaysMadeOfIt)
{
    begin();
    const Seq note = page().day().rows().front().entry.seq;
    list().goTo(0);
    ASSERT_EQ(page().day().rows().front().mend, ui::DayRow::Mend::None);
    Entry later = trail().entries().back();
    later.seq += 700;
    later.kind = "fact.corrected";
    later.payload = payloadOf(FactCorrected{note, "words", "other", "misread"});
    stand().tap(QStringLiteral("record.before"));
    trail().answer();
    stand().tap(QStringLiteral("record.after"));
    trail().answer();
    emit trail().laterRead(page().days(), {later});
    emit trail().dayRead(page().days(), std::nullopt);
    EXPECT_EQ(page().day().rows().front().mend, ui::DayRow::Mend::Corrected);
    EXPECT_EQ(page().day().rowOf(later.seq), -1);
    list().goTo(0);
    stand().tap(QStringLiteral("record.linked"));
    EXPECT_EQ(trail().sought, std::vector<Seq>{later.seq});
}

TEST_F(Record, filtersAndLeadsToWhatIsLinked)
{
    begin();
    stand().taps({"record.filter", "record.ask.group:7"});
    EXPECT_LT(list().model()->rowCount(), page().day().rowCount());
    const auto corrected = std::ranges::find_if(kept(), [](const Event& event) {
        return std::holds_alternative<FactCorrected>(event.fact);
    });
    ASSERT_NE(corrected, kept().end());
    const Seq said = std::get<FactCorrected>(corrected->fact).seq;
    for (int i = 0; i < 20 && picked() != corrected->seq; ++i)
        stand().tap(QStringLiteral("record.up"));
    ASSERT_EQ(picked(), corrected->seq);
    stand().tap(QStringLiteral("record.linked"));
    EXPECT_EQ(picked(), said);
    stand().tap(QStringLiteral("record.linked"));
    EXPECT_EQ(picked(), corrected->seq);
}

TEST_F(Record, theExactContentIsWhatIsHashed)
{
    begin();
    stand().tap(QStringLiteral("record.exact"));
    const Entry last = trail().entries().back();
    EXPECT_EQ(valueOf("exact text").toStdString(), canonicalText(last));
    EXPECT_EQ(valueOf("hash").toStdString(), toHex(last.hash));
    EXPECT_EQ(valueOf("kind").toStdString(), last.kind);
    EXPECT_TRUE(valueOf("boot clock").contains(QString::number(last.boot.count())));
    stand().tap(QStringLiteral("record.close"));
    EXPECT_FALSE(sheet().isVisible());
}

TEST_F(Record, pagesReachEveryRow)
{
    begin();
    for (int i = 0; i < 200 && list().currentIndex().row() > 0; ++i)
        stand().tap(QStringLiteral("record.page-up"));
    EXPECT_EQ(list().currentIndex().row(), 0);
    for (int i = 0; i < 200 && picked() != kept().back().seq; ++i)
        stand().tap(QStringLiteral("record.page-down"));
    EXPECT_EQ(picked(), kept().back().seq);
}

TEST_F(Record, verifyAnswersInWords)
{
    begin();
    stand().taps({"record.verify", "record.verify"});
    EXPECT_EQ(trail().verifications, 1);
    emit trail().verified({{.count = 12, .first = 1, .head = {12, {}}, .flaw = {}}, true, {}});
    EXPECT_TRUE(sheet().isVisible());
    EXPECT_TRUE(sheet().title().contains(QStringLiteral("is sound")));
    EXPECT_EQ(valueOf("entries"), QStringLiteral("12"));
    stand().tap(QStringLiteral("record.verify"));
    emit trail().verified(
        {{.count = 12, .first = 1, .head = {6, {}}, .flaw = Flaw{7, FlawKind::BadHash, 7, {}}},
         true,
         {}});
    EXPECT_TRUE(sheet().title().contains(QStringLiteral("NOT sound")));
    EXPECT_TRUE(sheet().title().contains(QStringLiteral("entry 7")));
}

TEST_F(Record, aBadSealIsSaidWithItsEntry)
{
    begin();
    Verification found{.count = 12, .first = 1, .head = {12, {}}, .flaw = {}, .seals = 2};
    emit trail().verified({found, true, {}});
    EXPECT_TRUE(sheet().title().contains(QStringLiteral("is sound")));
    EXPECT_EQ(valueOf("seals"), QStringLiteral("2"));
    for (std::size_t flaw = 0; flaw < Names<SealFlaw>::all.size(); ++flaw) {
        found.badSeal = BadSeal{11, static_cast<SealFlaw>(flaw)};
        const ui::VerifyAnswer answer{found, true, {}};
        EXPECT_FALSE(answer.isSound());
        emit trail().verified(answer);
        EXPECT_TRUE(sheet().title().contains(QStringLiteral("seal at entry 11 is NOT good")));
        emit trail().copied({QStringLiteral("/x/trail.db"), answer, {}});
        EXPECT_TRUE(sheet().title().contains(QStringLiteral("not good")));
    }
}

TEST_F(Record, exportsTheDayThatIsShownToAChosenPlace)
{
    begin();
    stand().taps({"record.export", "record.ask./media/stick/bathside"});
    ASSERT_EQ(trail().exports.size(), 1U);
    EXPECT_EQ(trail().exports.front().folder, QStringLiteral("/media/stick/bathside"));
    EXPECT_EQ(trail().exports.front().days, oneDay(0));
    EXPECT_EQ(trail().exports.front().sign, '.');
    emit trail().exported(
        {oneDay(0),
         QStringLiteral("/media/stick/bathside/2026-03-05"),
         {},
         ExportFault{ExportFault::Kind::Sink, 0, {}, {"events.csv", 28}}});  // ENOSPC
    EXPECT_TRUE(sheet().title().contains(QStringLiteral("Not exported")));
    EXPECT_TRUE(sheet().title().contains(QStringLiteral("space")));
}

TEST_F(Record, printsTheDaySheet)
{
    begin();
    stand().taps({"record.export", "record.ask.paper"});
    ASSERT_EQ(trail().sheets, std::vector<ui::Date>{trail().today});
    EXPECT_TRUE(trail().exports.empty());
    const auto day = std::make_shared<DaySheet>();
    day->entries = 12;
    emit trail().sheetRead({trail().today, day, {}});
    ASSERT_EQ(stand().papers().days.size(), 1U);
    EXPECT_EQ(stand().papers().days.front().entries, 12);
    EXPECT_TRUE(sheet().title().contains(QStringLiteral("/documents/printed.pdf")));
    emit trail().sheetRead({trail().today, {}, {}});
    EXPECT_TRUE(sheet().title().contains(QStringLiteral("no day sheet")));
    emit trail().sheetRead({trail().today, {}, ExportFault{ExportFault::Kind::Trail, 0, {}, {}}});
    EXPECT_TRUE(sheet().title().contains(QStringLiteral("was not made")));
    EXPECT_EQ(stand().papers().days.size(), 1U);
}

TEST_F(Record, saysWhereOnlyTheDaySheetIsMissing)
{
    begin();
    stand().taps({"record.export", "record.ask./media/stick/bathside"});
    Manifest manifest;
    manifest.count = 3;
    emit trail().exported({{trail().today, trail().today},
                           QStringLiteral("/media/stick/bathside/2026-03-05"),
                           manifest,
                           {},
                           ui::PrintFault::DoesNotFit});
    EXPECT_TRUE(sheet().title().contains(QStringLiteral("3 entries")));
    EXPECT_EQ(sheet().role(), ui::Role::HeadsUp);
}

TEST_F(Record, copiesBetweenPullsOnly)
{
    begin();
    stand().say(StartBag{{"B9"}, MicroLitres{400'000}, {"D-0417"}, MilliCelsius{22'500}});
    stand().say(InspectBag{});
    stand().say(DrawDiluent{{}, MicroLitres{5'000}});
    stand().taps({"record.copy", "record.ask./documents/bathside"});
    EXPECT_EQ(trail().copies, std::vector<QString>{QStringLiteral("/documents/bathside")});
    emit trail().copied({QStringLiteral("/documents/bathside/trail.db"),
                         {},
                         StoreTrouble{StoreFault::NoSpace, 28}});
    EXPECT_TRUE(sheet().title().contains(QStringLiteral("Not copied")));
    stand().say(TakeOut{{{0, {"serotype 3"}, {"K07-112"}}}});
    EXPECT_FALSE(stand().frame().showPage(QString::fromLatin1(ui::Frame::kRecord)));
}

// For reading only, and Enter, as a scanner sends it, does nothing.
TEST_F(Record, nothingOfTheRecordCanBeChangedHere)
{
    begin();
    const auto before = kept().size();
    EXPECT_EQ(list().editTriggers(), QAbstractItemView::NoEditTriggers);
    for (QWidget* each : page().findChildren<QWidget*>()) {
        if (!each->isVisible())
            continue;
        QKeyEvent enter(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier);
        QApplication::sendEvent(each, &enter);
    }
    EXPECT_EQ(trail().verifications, 0);
    for (const char* place : {"record.up", "record.down", "record.page-up", "record.page-down",
                              "record.before", "record.after", "record.filter", "record.close",
                              "record.exact", "record.close", "record.verify", "record.linked"}) {
        if (stand().target(QString::fromLatin1(place)))
            stand().tap(QString::fromLatin1(place));
    }
    EXPECT_EQ(kept().size(), before);
}

TEST_F(Record, arrowKeysMoveInTheList)
{
    begin();
    const Seq last = picked();
    QKeyEvent up(QEvent::KeyPress, Qt::Key_Up, Qt::NoModifier);
    QApplication::sendEvent(&list(), &up);
    EXPECT_EQ(picked(), last - 1);
}

// --- a shift lead's comment ---------------------------------------------------------------------

class Comment : public Record {
protected:
    /// Whoever is on duty says a note; then people are listed, and LS leads with the PIN 4071.
    Seq noted(const PersonId& onDuty, Role role)
    {
        Stand& on = stand();
        const auto list = [&](const PersonId& id, Role as, std::optional<PersonId> by) {
            on.say(ListPerson{{.person = id, .name = id.text, .role = as, .departed = false}, by});
        };
        on.say(OpenShift{"Europe/Madrid", onDuty});
        on.say(MakeNote{"two canes were swapped"});
        const Seq note = kept().back().seq;
        list({"LS"}, Role::ShiftLead, {});
        EXPECT_TRUE(m_pages.pins().keep({"LS"}, "4071"));
        on.say(SetPin{{"LS"}});
        list(onDuty, role, PersonId{"LS"});
        m_pages.show(ui::Frame::kRecord);
        goTo(note);
        return note;
    }
    void write(const char* letters)
    {
        for (const char* letter = letters; *letter; ++letter)
            stand().tap(QStringLiteral("letters.") + QLatin1Char(*letter));
        stand().tap(QStringLiteral("letters.set"));
    }
};

TEST_F(Comment, isSignedAndLinkedWithItsNoteBothWays)
{
    const Seq note = noted({"MK"}, Role::Vaccinator);
    stand().taps({"record.exact", "record.comment"});
    write("SEEN");
    digits("9999");
    EXPECT_TRUE(std::holds_alternative<PinRefused>(kept().back().fact));
    digits("4071");
    const auto* comment = std::get_if<NoteCommented>(&kept().back().fact);
    ASSERT_TRUE(comment);
    EXPECT_EQ(comment->of, note);
    EXPECT_EQ(comment->text, "SEEN");
    ASSERT_TRUE(kept().back().person);
    EXPECT_EQ(kept().back().person->id, PersonId{"LS"});
    EXPECT_EQ(kept().back().person->proof, Proof::Proven);
    EXPECT_TRUE(sheet().title().contains(QStringLiteral("signed by LS")));
    const Seq said = kept().back().seq;
    trail().answer();
    stand().tap(QStringLiteral("record.close"));
    RecordState state = stand().model().record();
    state.recorded = said;
    stand().recorded(state);
    trail().answer();
    stand().tap(QStringLiteral("record.linked"));
    EXPECT_EQ(picked(), said);
    stand().tap(QStringLiteral("record.linked"));
    EXPECT_EQ(picked(), note);
}

TEST_F(Comment, isOfferedForNotesOnly)
{
    const Seq note = noted({"MK"}, Role::Vaccinator);
    stand().tap(QStringLiteral("record.exact"));
    EXPECT_TRUE(stand().target(QStringLiteral("record.comment")));
    stand().taps({"record.close", "record.up", "record.exact"});
    ASSERT_LT(picked(), note);
    EXPECT_FALSE(stand().target(QStringLiteral("record.comment")));
}

TEST_F(Comment, isOfferedForANoteOfAnEarlierShift)
{
    const Seq note = noted({"MK"}, Role::Vaccinator);
    stand().say(CloseShift{});
    stand().pass(std::chrono::hours(2));
    stand().say(OpenShift{"Europe/Madrid", {"MK"}});
    stand().taps({"record.exact", "record.comment"});
    write("SEEN");
    digits("4071");
    const auto* comment = std::get_if<NoteCommented>(&kept().back().fact);
    ASSERT_TRUE(comment);
    EXPECT_EQ(comment->of, note);
}

TEST_F(Comment, isSignedByWhoeverOfSeveralLeadsScansTheirCode)
{
    noted({"MK"}, Role::Vaccinator);
    stand().say(
        ListPerson{{.person = {"EF"}, .name = "EF", .role = Role::ShiftLead, .departed = false},
                   PersonId{"LS"}});
    EXPECT_TRUE(m_pages.pins().keep({"EF"}, "5180"));
    stand().say(SetPin{{"EF"}, PersonId{"LS"}});
    stand().taps({"record.exact", "record.comment"});
    write("SEEN");
    stand().scan(QString::fromStdString(textOf(PersonCode{{"EF"}})));
    digits("5180");
    EXPECT_TRUE(std::holds_alternative<NoteCommented>(kept().back().fact));
    EXPECT_EQ(kept().back().person, (Person{{"EF"}, Proof::Proven}));
    EXPECT_EQ(stand().bench().onDuty->id, PersonId{"MK"});
}

TEST_F(Comment, isNotOfferedWhereNobodyCanSign)
{
    begin();
    stand().say(MakeNote{"nobody is listed"});
    m_pages.show(ui::Frame::kBench);
    m_pages.show(ui::Frame::kRecord);
    EXPECT_EQ(picked(), kept().back().seq);
    stand().tap(QStringLiteral("record.exact"));
    EXPECT_FALSE(stand().target(QStringLiteral("record.comment")));
}

// --- how it looks -------------------------------------------------------------------------------

struct Sight {
    const char* name;
    std::vector<const char*> taps;
};

struct Look {
    Sight sight;
    Panel panel;
    const char* language;
};

std::vector<Look> looks()
{
    const std::vector<Sight> sights{
        {"day", {}},
        {"filter", {"record.filter"}},
        {"bags", {"record.filter", "record.ask.bag"}},
        {"other_day", {"record.filter", "record.ask.day"}},
        {"week", {"record.filter", "record.ask.day", "record.ask.last:7"}},
        {"first_date", {"record.filter", "record.ask.day", "record.ask.dates"}},
        {"combined",
         {"record.filter", "record.ask.group:1", "record.filter", "record.ask.bag",
          "record.ask.id:B1", "record.filter", "record.ask.lot", "record.ask.id:K07-112",
          "record.filter", "record.ask.person", "record.ask.id:MK"}},
        {"mended", {"record.filter", "record.ask.group:7"}},
        {"exact", {"record.up", "record.exact"}},
        {"places", {"record.export"}},
        {"nothing", {"record.before"}},
        {"working", {"record.verify"}},
    };
    std::vector<Look> all;
    for (const Sight& sight : sights) {
        for (const char* language : {"en", "es"}) {
            all.push_back({sight, kTenInch, language});
            all.push_back({sight, kFifteenInch, language});
        }
    }
    return all;
}

std::string nameOfLook(const testing::TestParamInfo<Look>& test)
{
    return std::string(test.param.sight.name) + "_" + test.param.language + "_" +
           test.param.panel.name;
}

class RecordLook : public testing::TestWithParam<Look> {};

TEST_P(RecordLook, everyTargetIsLargeApartAndWhole)
{
    PageStand pages(GetParam().panel, QString::fromLatin1(GetParam().language));
    liveThroughAMorning(pages.stand());
    pages.show(ui::Frame::kRecord);
    pages.stand().taps(GetParam().sight.taps);
    pages.trail().answer();
    QApplication::processEvents();
    expectTargetsAsTheyMustBe(pages.stand().frame());
    EXPECT_TRUE(pages.stand().frame().findChild<ui::DayView*>()->fits());
}

// What is answered, at its longest.
TEST_P(RecordLook, everyAnswerIsWhole)
{
    PageStand pages(GetParam().panel, QString::fromLatin1(GetParam().language));
    pages.show(ui::Frame::kRecord);
    const auto& frame = pages.stand().frame();
    const auto look = [&] { expectTargetsAsTheyMustBe(pages.stand().frame()); };
    const Verification sound{.count = 1'234'567, .first = 1, .head = {1'234'567, {}}, .flaw = {}};
    Verification bad = sound;
    emit pages.trail().verified({sound, true, {}});
    look();
    for (int kind = 0; kind < static_cast<int>(Names<FlawKind>::all.size()); ++kind) {
        bad.flaw = Flaw{1'000'000, static_cast<FlawKind>(kind), 7, {}};
        emit pages.trail().verified({bad, true, {}});
        look();
        emit pages.trail().copied(
            {QStringLiteral("/media/stick/bathside/trail-2026-03-05.db"), {bad, true, {}}, {}});
        look();
    }
    bad.flaw.reset();
    bad.seals = 365;
    for (int flaw = 0; flaw < static_cast<int>(Names<SealFlaw>::all.size()); ++flaw) {
        bad.badSeal = BadSeal{1'000'000, static_cast<SealFlaw>(flaw)};
        emit pages.trail().verified({bad, true, {}});
        look();
    }
    Manifest manifest;
    manifest.key = std::string(64, '4');
    manifest.count = 1234;
    for (const char* name : {"events.jsonl", "events.csv", "ampoules.csv", "bags.csv",
                             "deviations.csv", "events-sheet.csv", "ampoules-sheet.csv"})
        manifest.files.push_back({name, 1, {}});
    const QString folder = QStringLiteral("/media/stick/bathside/2026-02-05_2026-03-05");
    const ui::DayRange days{ui::daysAfter(pages.trail().today, -30), pages.trail().today};
    emit pages.trail().exported({days, folder, manifest, {}});
    look();
    emit pages.trail().exported({days, folder, {}, {}});
    look();
    for (const StoreFault fault :
         {StoreFault::NoSpace, StoreFault::InUse, StoreFault::Unconfirmed}) {
        emit pages.trail().exported(
            {days, folder, {}, ExportFault{ExportFault::Kind::Trail, 0, {fault, 5}, {}}});
        look();
    }
    EXPECT_TRUE(frame.isVisible());
}

INSTANTIATE_TEST_SUITE_P(Record, RecordLook, testing::ValuesIn(looks()), nameOfLook);

}  // namespace
}  // namespace bathside::test
