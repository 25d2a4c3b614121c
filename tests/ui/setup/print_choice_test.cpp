// Labels in set-up, by real taps: printers, papers, the test label.

#include <gtest/gtest.h>

#include "tests/ui/setup/page_stand.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"

namespace bathside::test {
namespace {

class PrintChosen : public testing::Test {
protected:
    void begin(const QStringList& printers)
    {
        stand().papers().installed = printers;
        pages.show(ui::Frame::kSetUp);
        stand().taps({"setup.screen", "ask.labels"});
    }
    [[nodiscard]] Stand& stand() { return pages.stand(); }
    [[nodiscard]] const ui::PrintChoice& now() { return pages.preferences().now().print; }
    [[nodiscard]] QString lineOf(const char* place)
    {
        const auto* button =
            qobject_cast<ui::TapButton*>(stand().target(QString::fromLatin1(place)));
        return button ? button->line() : QStringLiteral("no such target");
    }
    [[nodiscard]] bool says(const QString& words)
    {
        const auto labels = stand().frame().current()->findChildren<ui::Label*>();
        return std::ranges::any_of(labels, [&](const ui::Label* each) {
            return each->isVisible() && each->text().contains(words);
        });
    }

    PageStand pages{kTenInch, QStringLiteral("en")};
};

TEST_F(PrintChosen, withoutAPrinterPdfsAreSaved)
{
    begin({});
    EXPECT_TRUE(says(QStringLiteral("No printer is installed: PDFs are saved.")));
    EXPECT_EQ(lineOf("ask.label-printer"), QStringLiteral("none: PDF"));
    EXPECT_EQ(lineOf("ask.label-paper"), QStringLiteral("100 × 50 mm"));
    EXPECT_EQ(lineOf("ask.sheet-paper"), QStringLiteral("A4"));
}

TEST_F(PrintChosen, aPrinterForLabelsAndAnotherForSheets)
{
    begin({QStringLiteral("labels"), QStringLiteral("office")});
    stand().taps(
        {"ask.label-printer", "ask.printer:labels", "ask.sheet-printer", "ask.printer:office"});
    EXPECT_EQ(now().labelPrinter, QStringLiteral("labels"));
    EXPECT_EQ(now().sheetPrinter, QStringLiteral("office"));
    EXPECT_EQ(lineOf("ask.label-printer"), QStringLiteral("labels"));
    stand().taps({"ask.label-printer", "ask.no-printer"});
    EXPECT_TRUE(now().labelPrinter.isEmpty());
    EXPECT_EQ(now().sheetPrinter, QStringLiteral("office"));
}

TEST_F(PrintChosen, everyPaper)
{
    begin({});
    const ui::Paper papers[] = {ui::Paper::Label, ui::Paper::Roll, ui::Paper::A4,
                                ui::Paper::Letter};
    for (const ui::Paper paper : papers) {
        stand().tap(QStringLiteral("ask.label-paper"));
        stand().tap(QStringLiteral("ask.paper:%1").arg(static_cast<int>(paper)));
        EXPECT_EQ(now().labelPaper, paper);
    }
    stand().taps({"ask.sheet-paper", "ask.paper:1"});
    EXPECT_EQ(now().sheetPaper, ui::Paper::Letter);
    stand().taps({"ask.sheet-paper", "ask.paper:0"});
    EXPECT_EQ(now().sheetPaper, ui::Paper::A4);
}

TEST_F(PrintChosen, oneThatIsGoneIsSaidToBe)
{
    begin({QStringLiteral("labels"), QStringLiteral("office")});
    stand().taps({"ask.label-printer", "ask.printer:labels"});
    stand().papers().installed = {QStringLiteral("office")};
    stand().tap(QStringLiteral("ask.label-printer"));
    EXPECT_EQ(lineOf("ask.printer:labels"), QStringLiteral("not there now"));
}

TEST_F(PrintChosen, manyPrintersComePageByPage)
{
    QStringList many;
    for (int i = 1; i <= 12; ++i)
        many.append(QStringLiteral("printer %1").arg(i));
    begin(many);
    stand().tap(QStringLiteral("ask.label-printer"));
    QStringList seen;
    for (int page = 0; page < 3; ++page) {
        for (const QString& name : many) {
            if (stand().target(QStringLiteral("ask.printer:") + name))
                seen.append(name);
        }
        stand().tap(QStringLiteral("ask.more"));
    }
    EXPECT_EQ(seen, many);
    EXPECT_TRUE(stand().target(QStringLiteral("ask.printer:printer 1")));
}

TEST_F(PrintChosen, aTestLabelIsOfNoBagAndNotForBirds)
{
    begin({});
    stand().tap(QStringLiteral("ask.test-label"));
    ASSERT_EQ(stand().papers().testLabels.size(), 1U);
    EXPECT_TRUE(stand().papers().labels.empty());
    EXPECT_TRUE(stand().papers().testLabels.front().rehearsal);
    EXPECT_TRUE(says(QStringLiteral("/documents/printed.pdf")));
}

TEST_F(PrintChosen, nothingOfItIsAFact)
{
    begin({QStringLiteral("labels")});
    const auto before = stand().kept().all.size();
    stand().taps({"ask.label-printer", "ask.printer:labels", "ask.test-label", "ask.back"});
    EXPECT_EQ(stand().kept().all.size(), before);
}

}  // namespace
}  // namespace bathside::test
