// The day sheet on paper: all of it fits whatever the day brought, tables go on over pages, and its
// code is read back. What it says of whole days: tests/journeys/day_sheet.py.

#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "core/scan/scanned_code.h"
#include "tests/core/record/sample_day.h"
#include "tests/support/cards.h"
#include "tests/support/memory_trail.h"
#include "tests/ui/print/read_barcode.h"
#include "ui/print/day_sheet_pages.h"
#include "ui/print/press.h"
#include "ui/print/sheet_writer.h"
#include "ui/text/language.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;

DaySheet sampleSheet()
{
    const test::MemoryTrail trail(test::sampleDay().entries);
    ExportOrder order;
    order.zone = "Europe/Amsterdam";
    order.firstDay = order.lastDay = 2026y / 3 / 5;
    order.version = "0.1.0";
    Event adopted;
    adopted.fact = CardAdopted{{test::defaultCard()->document()}};
    order.context.push_back(entryOf(adopted, {"bench 1"}));
    order.runs = {{1, trail.head().seq}};
    return daySheetOf(trail, order).value();
}

/// One of its deviations was reviewed, at that time.
DaySheet reviewedSheet(const char* at)
{
    DaySheet sheet = sampleSheet();
    DeviationOnRecord& deviation = *sheet.shifts.front().cases.back().deviation;
    deviation.reviewed = Reviewed{.cause = {},
                                  .words = {},
                                  .action = {},
                                  .by = {"LD"},
                                  .at = {.wall = fromRfc3339(at).value()},
                                  .isSigned = true};
    return sheet;
}

/// A day of 150 ampoules, with what people write when they are angry.
DaySheet longSheet()
{
    DaySheet sheet = sampleSheet();
    SheetShift& shift = sheet.shifts.front();
    const SheetAmpoule ampoule = shift.ampoules.front();
    for (int pull = 2; pull <= 50; ++pull) {
        for (int no = 1; no <= 3; ++no) {
            shift.ampoules.push_back(ampoule);
            shift.ampoules.back().ref = {pull, no};
        }
    }
    std::string words;
    for (int i = 0; i < 800; ++i)
        words += "again and ";
    shift.notes.push_back(
        {{}, PersonId{"AB"}, words, {NoteComment{{}, PersonId{"LS"}, std::string(5000, 'x')}}});
    shift.notes.push_back({{}, {}, std::string(500, 'W'), {}});
    shift.bags.front().bag.id = {std::string(80, 'B')};
    return sheet;
}

class OnSheet : public testing::TestWithParam<std::tuple<const char*, Paper>> {
protected:
    void SetUp() override { ASSERT_TRUE(language.use(QString::fromStdString(code()))); }
    void TearDown() override { language.use(QStringLiteral("en")); }
    static std::string code() { return std::get<0>(GetParam()); }
    static Paper paper() { return std::get<1>(GetParam()); }
    static PaperPages pages(const DaySheet& sheet) { return pagesOf(sheet, paper(), code()); }

    Language language;
};

TEST_P(OnSheet, everythingFitsAndLiesOnNothingElse)
{
    for (const DaySheet& sheet :
         {sampleSheet(), longSheet(), reviewedSheet("2026-03-07T09:00:00Z")}) {
        for (const PaperPage& page : pages(sheet)) {
            EXPECT_TRUE(allFit(page));
            for (qsizetype i = 0; i < page.texts.size(); ++i)
                for (qsizetype k = 0; k < i; ++k)
                    EXPECT_FALSE(page.texts[i]
                                     .room.adjusted(0.5, 0.5, -0.5, -0.5)
                                     .intersects(page.texts[k].room.adjusted(0.5, 0.5, -0.5, -0.5)))
                        << qPrintable(page.texts[i].text) << " on "
                        << qPrintable(page.texts[k].text);
        }
    }
}

// A bag that is still on hold waits on the sheet as it does on the review page.
TEST_P(OnSheet, aHoldOfAShiftBeforeStandsAmongWhatIsOpen)
{
    DaySheet sheet = sampleSheet();
    const auto says = [&](const QString& words) {
        const PaperPages all = pages(sheet);
        return std::ranges::any_of(all, [&](const PaperPage& page) {
            return std::ranges::any_of(
                page.texts, [&](const auto& placed) { return placed.text.contains(words); });
        });
    };
    ASSERT_FALSE(says(QStringLiteral("M77")));
    ReviewCase held;
    held.hold = HoldOnRecord{.seq = 31, .at = {}, .fact = {BagId{"M77"}, HoldReason::Leak, {}}};
    held.isCarried = true;
    sheet.shifts.front().carried.push_back(held);
    EXPECT_TRUE(says(QStringLiteral("M77")));
}

TEST_P(OnSheet, theFileIsTitledAsTheSheetIs)
{
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("sheet.pdf"));
    const PaperPages laid = pages(sampleSheet());
    ASSERT_TRUE(savePdf(laid, pdf));
    QProcess info;
    info.start(QStringLiteral("pdfinfo"), {pdf});
    ASSERT_TRUE(info.waitForFinished());
    const QString said = QString::fromUtf8(info.readAllStandardOutput());
    const QString title = code() == "es" ? QStringLiteral("Hoja del día: jue 5 marzo 2026")
                                         : QStringLiteral("Day sheet: Thu 5 March 2026");
    EXPECT_TRUE(said.contains(QStringLiteral("Title:           ") + title + u'\n'))
        << said.toStdString();
}

TEST_P(OnSheet, itsCodeIsReadFromThePaper)
{
    const DaySheet sheet = sampleSheet();
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("sheet.pdf"));
    const PaperPages laid = pages(sheet);
    ASSERT_TRUE(savePdf(laid, pdf));
    constexpr int kDpi = 200;  // an office scanner
    const double pxPerMm = kDpi / 25.4;
    const QRectF room = laid.front().barcodes.front().room;
    const double scale = pxPerMm / theme().metrics().pxPerMm();
    const QRect seen =
        QRectF(room.topLeft() * scale, room.size() * scale).adjusted(-10, -10, 10, 10).toRect();
    const QString base = folder.filePath(QStringLiteral("sheet"));
    QProcess::execute(QStringLiteral("pdftoppm"),
                      {QStringLiteral("-gray"), QStringLiteral("-singlefile"), QStringLiteral("-r"),
                       QString::number(kDpi), QStringLiteral("-x"), QString::number(seen.x()),
                       QStringLiteral("-y"), QString::number(seen.y()), QStringLiteral("-W"),
                       QString::number(seen.width()), QStringLiteral("-H"),
                       QString::number(seen.height()), pdf, base});
    const std::string scanned = test::scannedFrom(QImage(base + QStringLiteral(".pgm")));
    const auto read = scannedCodeFrom(scanned, 2026y);
    ASSERT_TRUE(read) << scanned;
    EXPECT_EQ(read->content, ScannedContent(SealCode{sheet.head.seq, toHex(sheet.head.hash)}));
}

bool says(const PaperPage& page, const QString& text)
{
    return std::ranges::any_of(page.texts,
                               [&](const PlacedText& placed) { return placed.text == text; });
}

TEST_P(OnSheet, everyPageIsMarkedInARehearsal)
{
    DaySheet sheet = longSheet();
    const PaperPages rehearsed = pages(sheet);
    sheet.rehearsal = false;
    const PaperPages real = pages(sheet);
    ASSERT_GT(rehearsed.size(), 3U);
    const QString banner = rehearsed.front().texts.front().text;
    for (const PaperPage& page : rehearsed)
        EXPECT_TRUE(says(page, banner));
    for (const PaperPage& page : real)
        EXPECT_FALSE(says(page, banner));
}

INSTANTIATE_TEST_SUITE_P(Papers, OnSheet,
                         testing::Combine(testing::Values("en", "es"),
                                          testing::Values(Paper::A4, Paper::Letter)),
                         [](const auto& row) {
                             return std::string(std::get<0>(row.param)) +
                                    (std::get<1>(row.param) == Paper::A4 ? "A4" : "Letter");
                         });

QString wordsOf(const DaySheet& sheet)
{
    QString all;
    for (const PaperPage& page : pagesOf(sheet, Paper::A4, "en"))
        for (const PlacedText& text : page.texts)
            all += text.text + u' ';
    return all;
}

// 3 + 147 ampoules of the first shift; a column head on each page that has some of them.
TEST(DaySheetPagesTest, aTableThatGoesOverAPageSaysItsHeadsAgain)
{
    int rows = 0;
    for (const PaperPage& page : pagesOf(longSheet(), Paper::A4, "en")) {
        int here = 0;
        for (const PlacedText& text : page.texts)
            here += text.text == QLatin1String("serotype 3") ? 1 : 0;
        if (here > 0) {
            EXPECT_TRUE(says(page, QStringLiteral("component")));
        }
        rows += here;
    }
    EXPECT_EQ(rows, 2 + 147);
}

TEST(DaySheetPagesTest, whatIsOverSaysSoInWords)
{
    const QString all = wordsOf(sampleSheet());
    // In use for 60 min and 1.234 s, shown with one decimal.
    EXPECT_TRUE(all.contains(QStringLiteral("60 min 1.2 s OVER"))) << qPrintable(all);
    EXPECT_EQ(all.count(QStringLiteral("OVER ")), 1);
}

TEST(DaySheetPagesTest, aReviewOfALaterDaySaysWhen)
{
    const QString later = wordsOf(reviewedSheet("2026-03-07T09:00:00Z"));
    EXPECT_TRUE(later.contains(QStringLiteral("LD, signed, on 2026-03-07"))) << qPrintable(later);
    const QString same = wordsOf(reviewedSheet("2026-03-05T09:00:00Z"));
    EXPECT_TRUE(same.contains(QStringLiteral("LD, signed"))) << qPrintable(same);
    EXPECT_FALSE(same.contains(QStringLiteral(", on 2026")));
}

TEST(DaySheetPagesTest, aHoldSaysWhyAndHowItEnded)
{
    DaySheet sheet = sampleSheet();
    EXPECT_TRUE(wordsOf(sheet).contains(QStringLiteral("! NOT DECIDED")));
    BagHold& hold = sheet.shifts.front().bags.at(1).bag.holds.at(0);
    hold.words = "rosy";
    hold.released =
        HoldRelease{.moment = {.at = {.wall = fromRfc3339("2026-03-05T07:35:00Z").value()}},
                    .by = {"LD"},
                    .words = "use with note: line A"};
    const QString all = wordsOf(sheet);
    for (const char* part : {"colour", "rosy", "08:35:00", "LD", "use with a note: line A"})
        EXPECT_TRUE(all.contains(QString::fromLatin1(part))) << part << qPrintable(all);
    EXPECT_FALSE(all.contains(QStringLiteral("NOT DECIDED")));
    EXPECT_FALSE(all.contains(QStringLiteral("ON HOLD")));
}

TEST(DaySheetPagesTest, aDayWithoutAShiftSaysSo)
{
    DaySheet sheet;
    sheet.first = sheet.last = 2026y / 3 / 5;
    const PaperPages pages = pagesOf(sheet, Paper::Letter, "en");
    ASSERT_EQ(pages.size(), 1U);
    EXPECT_TRUE(says(pages.front(), QStringLiteral("No shift was opened on this day.")));
    EXPECT_TRUE(pages.front().barcodes.isEmpty());  // of an empty trail
}

TEST(SheetWriterTest, breaksAWordThatIsTooWide)
{
    const double width = 100;
    const QStringList lines =
        wrapped(QString(60, u'W') + QStringLiteral(" and\nso on"), width, 2, Weight::Regular);
    EXPECT_EQ(lines.join(QString()).count(u'W'), 60);
    EXPECT_TRUE(lines.last().endsWith(QStringLiteral("so on")));
    for (const QString& line : lines)
        EXPECT_LE(widthOf(line, 2, Weight::Regular), width);
    EXPECT_TRUE(wrapped({}, width, 2, Weight::Regular).isEmpty());
}

}  // namespace
}  // namespace bathside::ui
