// From the button at the bench to the paper: what is printed, where a PDF goes when no printer
// takes it, and what is said then. The papers are read by poppler and ZXing, not by what made them.
//
// Doses: 2,000 an ampoule on the default card. In use for 60 min on that card.

#include "app/station/paper_desk.h"

#include <QFile>
#include <QFileInfo>
#include <QPrinter>
#include <QProcess>
#include <QSignalSpy>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "app/system/paths.h"
#include "core/scan/scanned_code.h"
#include "tests/ui/bench/stand.h"
#include "tests/ui/print/papers.h"
#include "tests/ui/print/read_barcode.h"
#include "ui/bench/bench_page.h"
#include "ui/controls/banner.h"
#include "ui/print/press.h"

namespace bathside::app {
namespace {

using namespace std::chrono_literals;
using Of = ui::PrintOutcome::Of;

const QString kPrinter = QStringLiteral("label printer");

QString answerOf(const QString& program, const QStringList& arguments)
{
    QProcess asked;
    asked.start(program, arguments);
    EXPECT_TRUE(asked.waitForFinished());
    return QString::fromUtf8(asked.readAllStandardOutput());
}

QString textOf(const QString& pdf)
{
    return answerOf(QStringLiteral("pdftotext"), {pdf, QStringLiteral("-")});
}

/// The code on the first page at a label printer's 203 dpi; drawn by poppler, read by ZXing.
std::string codeOn(const QString& pdf)
{
    const QTemporaryDir folder;
    const QString base = folder.filePath(QStringLiteral("page"));
    answerOf(QStringLiteral("pdftoppm"), {QStringLiteral("-gray"), QStringLiteral("-singlefile"),
                                          QStringLiteral("-r"), QStringLiteral("203"), pdf, base});
    return test::scannedFrom(QImage(base + QStringLiteral(".pgm")));
}

class PaperDeskTest : public testing::Test {
protected:
    ~PaperDeskTest() override
    {
        for (const QString& file : m_made)
            EXPECT_TRUE(QFile::remove(file)) << qPrintable(file);
    }

    /// A printer of that name is set for both.
    void setPrinter(const QString& name)
    {
        ui::Preference next = preferences.now();
        next.print.labelPrinter = next.print.sheetPrinter = name;
        preferences.set(next);
    }
    /// How the job ended that this starts.
    ui::PrintOutcome after(ui::Printing& desk, const std::function<void()>& start)
    {
        ui::PrintOutcome outcome;
        QSignalSpy ended(&desk, &ui::Printing::ended);
        const auto kept = QObject::connect(&desk, &ui::Printing::ended,
                                           [&](const ui::PrintOutcome& told) { outcome = told; });
        start();
        EXPECT_TRUE(!ended.isEmpty() || ended.wait(60'000));
        QObject::disconnect(kept);
        EXPECT_EQ(ended.size(), 1);
        if (!outcome.file.isEmpty())
            m_made.append(outcome.file);
        return outcome;
    }

    ui::Preferences preferences{ui::Preference{}};

private:
    QStringList m_made;
};

Printers noPrinters()
{
    return {[] { return QStringList(); },
            [](const ui::SetPages&, const QString&) -> Result<void, ui::PrintFault> {
                ADD_FAILURE() << "no printer is set";
                return {};
            }};
}

Printers refusing()
{
    return {[] { return QStringList{kPrinter}; },
            [](const ui::SetPages&, const QString&) -> Result<void, ui::PrintFault> {
                return failure(ui::PrintFault::PrinterRefused);
            }};
}

/// Qt's own way to a printer, into a file.
Printers printingInto(const QString& file)
{
    return {[] { return QStringList{kPrinter}; },
            [file](const ui::SetPages& pages, const QString& name) {
                EXPECT_EQ(name, kPrinter);
                QPrinter printer(QPrinter::HighResolution);
                printer.setOutputFormat(QPrinter::PdfFormat);
                printer.setOutputFileName(file);
                return ui::print(pages, printer);
            }};
}

// --- the desk ------------------------------------------------------------------------------------

TEST_F(PaperDeskTest, savesALabelInTheDataFolderWhereNoPrinterIsSet)
{
    PaperDesk desk(preferences, noPrinters());
    const auto first = after(desk, [&] { desk.printLabel(test::usualLabel()); });
    EXPECT_EQ(first.of, Of::Label);
    EXPECT_FALSE(first.fault);
    const QFileInfo file(first.file);
    EXPECT_EQ(file.path().toStdString(), (folderFor(Keeps::Data) / "labels").string());
    EXPECT_TRUE(file.fileName().startsWith(QStringLiteral("2026-03-05-B4")));
    EXPECT_TRUE(textOf(first.file).contains(QStringLiteral("lot K07")));

    const auto second = after(desk, [&] { desk.printLabel(test::usualLabel()); });
    EXPECT_NE(second.file, first.file);  // no file replaces another
}

TEST_F(PaperDeskTest, savesWhatThePrinterRefuses)
{
    setPrinter(kPrinter);
    PaperDesk desk(preferences, refusing());
    const auto label = after(desk, [&] { desk.printLabel(test::usualLabel()); });
    EXPECT_EQ(label.fault, ui::PrintFault::PrinterRefused);
    EXPECT_EQ(label.printer, kPrinter);
    EXPECT_TRUE(textOf(label.file).contains(QStringLiteral("Bag B4")));
    const auto sheet = after(desk, [&] { desk.printSheet(test::usualSheet()); });
    EXPECT_EQ(sheet.of, Of::Sheet);
    EXPECT_EQ(sheet.fault, ui::PrintFault::PrinterRefused);
    EXPECT_TRUE(QFileInfo(sheet.file).fileName().startsWith(QStringLiteral("plan-2026-03-05")));
    EXPECT_TRUE(textOf(sheet.file).contains(QStringLiteral("Hatchery by the mill")));
}

TEST_F(PaperDeskTest, savesADaySheetBesideTheExports)
{
    DaySheet day;
    day.first = day.last = std::chrono::year(2026) / 3 / 5;
    PaperDesk desk(preferences, noPrinters());
    const auto sheet = after(desk, [&] { desk.printDay(day); });
    EXPECT_EQ(sheet.of, Of::DaySheet);
    EXPECT_FALSE(sheet.fault);
    EXPECT_TRUE(
        QFileInfo(sheet.file).fileName().startsWith(QStringLiteral("day-sheet-2026-03-05")));
    EXPECT_TRUE(textOf(sheet.file).contains(QStringLiteral("No shift was opened")));
}

// The real way: a printer of that name is in no system that runs this.
TEST_F(PaperDeskTest, aPrinterThatIsNotInstalledRefuses)
{
    setPrinter(QStringLiteral("no such printer, 5d1f"));
    PaperDesk desk(preferences);
    const auto label = after(desk, [&] { desk.printLabel(test::usualLabel()); });
    EXPECT_EQ(label.fault, ui::PrintFault::PrinterRefused);
    EXPECT_FALSE(label.file.isEmpty());
}

TEST_F(PaperDeskTest, whatThePrinterTakesIsNotSaved)
{
    const QTemporaryDir folder;
    const QString printed = folder.filePath(QStringLiteral("printed.pdf"));
    setPrinter(kPrinter);
    PaperDesk desk(preferences, printingInto(printed));
    const auto label = after(desk, [&] { desk.printLabel(test::usualLabel()); });
    EXPECT_FALSE(label.fault);
    EXPECT_TRUE(label.file.isEmpty());
    EXPECT_EQ(codeOn(printed), "]d1BSB.20260305.B4.D");
}

TEST_F(PaperDeskTest, usesThePaperThatIsSet)
{
    ui::Preference set = preferences.now();
    set.print.labelPaper = ui::Paper::Roll;
    set.print.sheetPaper = ui::Paper::Letter;
    preferences.set(set);
    PaperDesk desk(preferences, noPrinters());
    const auto label = after(desk, [&] { desk.printLabel(test::usualLabel()); });
    const auto sheet = after(desk, [&] { desk.printSheet(test::usualSheet()); });
    const auto sizeOf = [](const QString& pdf) {
        return answerOf(QStringLiteral("pdfinfo"), {pdf});
    };
    // 62 mm and 215.9 mm in points of 1/72 inch, whole as Qt keeps them.
    EXPECT_TRUE(sizeOf(label.file).contains(QStringLiteral("176 x ")));
    EXPECT_TRUE(sizeOf(sheet.file).contains(QStringLiteral("612 x 792 pts")));
}

TEST_F(PaperDeskTest, aBagsNameMakesNoFolder)
{
    ui::BagLabel label = test::usualLabel();
    label.bag = {"../B/4"};
    PaperDesk desk(preferences, noPrinters());
    const auto saved = after(desk, [&] { desk.printLabel(label); });
    EXPECT_EQ(QFileInfo(saved.file).path().toStdString(),
              (folderFor(Keeps::Data) / "labels").string());
}

TEST_F(PaperDeskTest, tooMuchForAnyPaperIsAFaultAndNoFile)
{
    ui::BagLabel label = test::usualLabel();
    label.bag = {std::string(60, 'W')};
    PaperDesk desk(preferences, noPrinters());
    const auto lost = after(desk, [&] { desk.printLabel(label); });
    EXPECT_EQ(lost.fault, ui::PrintFault::DoesNotFit);
    EXPECT_TRUE(lost.isLost());
}

// --- through the bench ---------------------------------------------------------------------------

/// A bag of one ampoule of each component, mixed at 07:10 and some.
void mixedBag(test::Stand& stand)
{
    stand.say(OpenShift{"Europe/Madrid", {"MK"}});
    for (const Check& check : stand.bench().card->content().checks)
        stand.say(RecordCheck{check.id, true, {}});
    stand.say(TakeReading{{"hand"}, MilliCelsius{28'100}});
    stand.say(StartBag{{"B1"}, MicroLitres{400'000}, {"D-0417"}, MilliCelsius{22'500}});
    stand.say(InspectBag{});
    stand.say(DrawDiluent{{}, MicroLitres{5'000}});
    stand.say(TakeOut{{{0, {"serotype 3"}, {"K07-112"}}, {0, {"serotype 1"}, {"R22-019"}}}});
    stand.pass(4s);
    stand.say(MoveOn{Step::Bath, {}, {}});
    stand.pass(70s);
    for (const Step step : {Step::Opened, Step::Diluent, Step::Rinsed, Step::Bagged})
        stand.say(MoveOn{step, {}, {}});
    stand.pass(11s);
    stand.say(MixBag{});
}

class LabelAtTheBench : public PaperDeskTest {
protected:
    QString banner(const test::Stand& stand)
    {
        const auto* shown = qobject_cast<ui::Banner*>(stand.target(QStringLiteral("refusal")));
        return shown ? shown->text() : QString();
    }
};

TEST_F(LabelAtTheBench, theButtonGivesThePaper)
{
    PaperDesk desk(preferences, noPrinters());
    test::Stand stand(test::kTenInch, QStringLiteral("en"), test::Stand::As::Real, &desk);
    mixedBag(stand);
    const auto said = stand.kept().all.size();
    const auto saved = after(desk, [&] { stand.tap(QStringLiteral("side")); });
    EXPECT_EQ(stand.kept().all.size(), said);  // no fact
    EXPECT_FALSE(saved.fault);
    EXPECT_TRUE(banner(stand).endsWith(QFileInfo(saved.file).fileName()));

    const Bag& bag = *stand.bench().bag({"B1"});
    EXPECT_EQ(std::chrono::floor<std::chrono::minutes>(bag.firstDiluent->at.wall + 60min + 1h)
                      .time_since_epoch() %
                  24h,
              8h + 11min);  // of the clock in Madrid, an hour before UTC
    const QString text = textOf(saved.file);
    for (const char* part : {"Bag B1", "08:11", "2026-03-05", "serotype 3", "lot K07-112",
                             "lot R22-019", "2,000 doses", "by MK"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part << "\n" << qPrintable(text);
    EXPECT_FALSE(text.contains(QStringLiteral("REHEARSAL")));
    const auto read = scannedCodeFrom(codeOn(saved.file), std::chrono::year(2026));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->content, ScannedContent(BagCode{{"B1"}, std::chrono::year(2026) / 3 / 5}));
}

TEST_F(LabelAtTheBench, aRefusalIsASentenceAndAFile)
{
    setPrinter(kPrinter);
    PaperDesk desk(preferences, refusing());
    test::Stand stand(test::kTenInch, QStringLiteral("en"), test::Stand::As::Rehearsal, &desk);
    mixedBag(stand);
    const auto saved = after(desk, [&] { stand.tap(QStringLiteral("side")); });
    EXPECT_TRUE(stand.target(QStringLiteral("refusal"))
                    ->accessibleName()
                    .startsWith(QStringLiteral("PRINTER REFUSED")));
    EXPECT_TRUE(banner(stand).contains(QFileInfo(saved.file).fileName()));
    EXPECT_TRUE(textOf(saved.file).contains(QStringLiteral("REHEARSAL")));
    stand.say(HangBag{BagId{"B1"}, LineId{"A"}});
    EXPECT_FALSE(banner(stand).isEmpty());  // a tap does not wipe it away
    stand.pass(13s);
    EXPECT_TRUE(banner(stand).isEmpty());
}

}  // namespace
}  // namespace bathside::app
