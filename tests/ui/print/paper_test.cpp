// Labels and sheets: what they say, that all of it fits, and that the paper can be read back.

#include <QFile>
#include <QPrinter>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "core/scan/scanned_code.h"
#include "tests/support/shift.h"
#include "tests/ui/print/papers.h"
#include "tests/ui/print/read_barcode.h"
#include "ui/print/press.h"
#include "ui/text/language.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;

constexpr double kPoint = 25.4 / 72;  // mm: Qt keeps a paper's size in whole points

// A case in each language.
class OnPaper : public testing::TestWithParam<const char*> {
protected:
    void SetUp() override { ASSERT_TRUE(language.use(QString::fromLatin1(GetParam()))); }
    void TearDown() override { language.use(QStringLiteral("en")); }

    Language language;
};

TEST_P(OnPaper, everythingFits)
{
    for (const test::PaperCase& each : test::paperCases())
        for (const PaperPage& page : each.pages) {
            EXPECT_TRUE(allFit(page)) << each.name;
            for (qsizetype i = 0; i < page.texts.size(); ++i)
                for (qsizetype k = 0; k < i; ++k)
                    EXPECT_FALSE(page.texts[i]
                                     .room.adjusted(0.5, 0.5, -0.5, -0.5)
                                     .intersects(page.texts[k].room.adjusted(0.5, 0.5, -0.5, -0.5)))
                        << each.name << ": " << qPrintable(page.texts[i].text) << " on "
                        << qPrintable(page.texts[k].text);
        }
}

QString answerOf(const QString& program, const QStringList& arguments)
{
    QProcess asked;
    asked.start(program, arguments);
    EXPECT_TRUE(asked.waitForFinished());
    return QString::fromUtf8(asked.readAllStandardOutput());
}

/// What a scanner sees that is aimed at the first page's code: it and 2 mm around, in pixels.
QRect aimedAt(const PaperPage& page, int dpi)
{
    const double pxPerMm = dpi / 25.4, around = 2 * pxPerMm;
    const double scale = page.scale * pxPerMm / theme().metrics().pxPerMm();
    const QRectF room = page.barcodes.front().room;
    const QRectF seen(room.topLeft() * scale + page.offsetMm * pxPerMm, room.size() * scale);
    return seen.adjusted(-around, -around, around, around).toRect();
}

/// That part of the PDF's first page; poppler draws it, not Qt.
QImage pictureOf(const QString& pdf, int dpi, const QRect& part)
{
    QStringList arguments{QStringLiteral("-gray"), QStringLiteral("-singlefile")};
    const std::initializer_list<std::pair<const char*, int>> numbers{{"-r", dpi},
                                                                     {"-x", part.x()},
                                                                     {"-y", part.y()},
                                                                     {"-W", part.width()},
                                                                     {"-H", part.height()}};
    for (const auto& [name, number] : numbers)
        arguments << QString::fromLatin1(name) << QString::number(number);
    const QString base = pdf.chopped(4);
    answerOf(QStringLiteral("pdftoppm"), arguments << pdf << base);
    return QImage(base + QStringLiteral(".pgm"));
}

QString textOfPdf(const QString& pdf)
{
    return answerOf(QStringLiteral("pdftotext"), {pdf, QStringLiteral("-")});
}

/// Of its first page, mm; poppler says it in points of 1/72 inch.
QSizeF sizeOf(const QString& pdf)
{
    static const QRegularExpression kSize(QStringLiteral("Page size: +([0-9.]+) x ([0-9.]+) pts"));
    const auto found = kSize.match(answerOf(QStringLiteral("pdfinfo"), {pdf}));
    return QSizeF(found.captured(1).toDouble(), found.captured(2).toDouble()) * 25.4 / 72;
}

TEST_P(OnPaper, theLabelsCodeIsReadFromThePaper)
{
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("label.pdf"));
    for (const BagLabel& label : {test::usualLabel(), test::fullLabel()})
        for (const Paper paper : {Paper::Label, Paper::Roll, Paper::A4, Paper::Letter}) {
            const PaperPages pages = pagesOf(label, paper);
            ASSERT_TRUE(savePdf(pages, pdf));
            for (const int dpi : {203, 300}) {  // what label printers have
                const QImage seen = pictureOf(pdf, dpi, aimedAt(pages.front(), dpi));
                const auto read = scannedCodeFrom(test::scannedFrom(seen), 2026y);
                ASSERT_TRUE(read) << static_cast<int>(paper) << " at " << dpi;
                EXPECT_EQ(read->content, ScannedContent(BagCode{label.bag, 2026y / 3 / 5}));
            }
        }
}

TEST_P(OnPaper, thePaperHasItsSize)
{
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("page.pdf"));
    for (const test::PaperCase& each : test::paperCases()) {
        ASSERT_TRUE(savePdf(each.pages, pdf));
        const QSizeF size = sizeOf(pdf);
        EXPECT_NEAR(size.width(), each.pages.front().mm.width(), kPoint) << each.name;
        EXPECT_NEAR(size.height(), each.pages.front().mm.height(), kPoint) << each.name;
    }
}

INSTANTIATE_TEST_SUITE_P(Languages, OnPaper, testing::Values("en", "es"),
                         [](const auto& row) { return std::string(row.param); });

TEST(PaperTest, thePdfSaysWhatTheLabelSays)
{
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("label.pdf"));
    ASSERT_TRUE(savePdf(pagesOf(test::usualLabel(), Paper::Label), pdf));
    const QString text = textOfPdf(pdf);
    for (const char* part : {"Bag B4", "use by", "08:11", "2026-03-05", "serotype 3", "lot K07",
                             "lot R112", "4,000 doses", "mixed 07:12 by MK", "BSB.20260305.B4.D"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part << "\n" << qPrintable(text);
    EXPECT_FALSE(text.contains(QStringLiteral("REHEARSAL")));
}

TEST(PaperTest, everyPageOfAPlanNamesItsLine)
{
    const PaperPages pages = pagesOf(test::longSheet(), Paper::A4);
    ASSERT_GT(pages.size(), 3U);
    int bags = 0;
    for (const PaperPage& page : pages) {
        int lines = 0;
        for (const PlacedText& text : page.texts) {
            lines += text.text.startsWith(QStringLiteral("Line ")) ? 1 : 0;
            bags += text.text.endsWith(QStringLiteral("mL")) ? 1 : 0;
        }
        EXPECT_GE(lines, 1);
    }
    EXPECT_EQ(bags, 5 * 14);
}

TEST(PaperTest, whatDoesNotFitIsNotPrinted)
{
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("label.pdf"));
    BagLabel label = test::usualLabel();
    label.bag = {std::string(60, 'W')};
    EXPECT_EQ(savePdf(pagesOf(label, Paper::Label), pdf).error(), PrintFault::DoesNotFit);
    EXPECT_FALSE(QFile::exists(pdf));
}

TEST(PaperTest, aFileThatCannotBeWrittenIsAFault)
{
    const QTemporaryDir folder;
    EXPECT_EQ(savePdf(pagesOf(test::usualLabel(), Paper::Roll),
                      folder.filePath(QStringLiteral("none/label.pdf")))
                  .error(),
              PrintFault::CannotWrite);
}

// Qt's printer writing into a file takes the same way as one that is there.
TEST(PaperTest, goesToAPrinter)
{
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("printed.pdf"));
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(pdf);
    const PaperPages pages = pagesOf(test::usualLabel(), Paper::Label);
    ASSERT_TRUE(print(pages, printer));
    EXPECT_NEAR(sizeOf(pdf).width(), 100, kPoint);
    EXPECT_EQ(test::scannedFrom(pictureOf(pdf, 203, aimedAt(pages.front(), 203))),
              "]d1BSB.20260305.B4.D");
}

TEST(PaperTest, aPrinterThatRefusesIsAFault)
{
    const QTemporaryDir folder;
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath(QStringLiteral("none/printed.pdf")));
    EXPECT_EQ(print(pagesOf(test::usualLabel(), Paper::Label), printer).error(),
              PrintFault::PrinterRefused);
}

// The shift starts at 06:00 UTC, 07:00 in Amsterdam; times by hand from `madeUp`: ampoules in
// diluent 87 s after its start, mixed 115 s after; in use for 60 min on the default card.
TEST(BagLabelTest, isMadeFromTheBench)
{
    test::BenchShift shift;
    shift.open().madeUp("B1", 600);
    const auto doses = [](const ComponentId&, const LotId& lot) {
        return std::optional<std::int64_t>(lot.text == "K1" ? 2000 : 1000);
    };
    const auto label = bagLabel(shift.station.state(), BagId{"B1"}, doses);
    ASSERT_TRUE(label);
    EXPECT_EQ(label->bag, BagId{"B1"});
    EXPECT_EQ(label->volume, MicroLitres{400'000});
    const std::vector<BagLabel::Component> expected{{{"serotype 3"}, {{"K1"}}, 1, 2000},
                                                    {{"serotype 1"}, {{"R1"}}, 1, 1000}};
    EXPECT_EQ(label->components, expected);
    EXPECT_EQ(label->doses, 1000);
    EXPECT_EQ(label->mixed, shift.bench().bag({"B1"})->started.at.wall + 115s);
    EXPECT_EQ(label->useBy, shift.bench().bag({"B1"})->started.at.wall + 87s + 60min);
    EXPECT_EQ(label->preparer, PersonId{"AB"});
    EXPECT_EQ(label->zone, "Europe/Amsterdam");
    EXPECT_FALSE(label->rehearsal);
}

TEST(BagLabelTest, namesWhoMixedItWhoeverIsOnDutyNow)
{
    test::BenchShift shift;
    shift.open().madeUp("B1", 600);
    shift.say(TakeDuty{{"CD"}});
    const auto none = [](const ComponentId&, const LotId&) {
        return std::optional<std::int64_t>();
    };
    const auto label = bagLabel(shift.station.state(), BagId{"B1"}, none);
    ASSERT_TRUE(label);
    EXPECT_EQ(label->preparer, PersonId{"AB"});
    EXPECT_EQ(label->doses, std::nullopt);
}

TEST(BagLabelTest, isOfMixedBagsOnly)
{
    test::BenchShift shift;
    shift.open().readyBag("B1");
    const auto none = [](const ComponentId&, const LotId&) {
        return std::optional<std::int64_t>();
    };
    EXPECT_FALSE(bagLabel(shift.station.state(), BagId{"B1"}, none));
    EXPECT_FALSE(bagLabel(shift.station.state(), BagId{"B9"}, none));
}

// 23:30 UTC is the next day in Madrid.
TEST(BagLabelTest, itsCodeHasTheLocalDay)
{
    BagLabel label = test::usualLabel();
    label.mixed = std::chrono::sys_days(2026y / 3 / 5) + 23h + 30min;
    EXPECT_EQ(codeOf(label), textOf(BagCode{BagId{"B4"}, 2026y / 3 / 6}));
}

}  // namespace
}  // namespace bathside::ui
