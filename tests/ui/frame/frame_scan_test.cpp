// Scans through the real frame and its pages: on every one, with nothing in focus; what is typed is
// typed; what is wrong is said loudly; within the window nothing is asked.
// Codes: GS1 General Specifications, 3; the GTIN is for demonstrations (prefix 952).

#include <QApplication>
#include <QTest>

#include <gtest/gtest.h>

#include "core/base/day.h"
#include "core/scan/own_code.h"
#include "tests/ui/stores/stores_stand.h"
#include "ui/bench/bench_page.h"
#include "ui/controls/letter_pad.h"
#include "ui/frame/scan_notice.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

const QString kK07 = QStringLiteral("]d2010952123450001817270131") + QStringLiteral("10K07-112");

class FrameScan : public testing::Test {
protected:
    FrameScan()
    {
        fill(stand());
        for (const Check& check : bench().card->content().checks)
            stand().say(RecordCheck{check.id, true, {}});
        stand().frame().activateWindow();
        QApplication::processEvents();
    }

    Stand& stand() { return pages.stand(); }
    const Bench& bench() { return stand().bench(); }
    ui::ScanNotice* notice()
    {
        return stand().frame().findChild<ui::ScanNotice*>(QStringLiteral("scan-notice"));
    }
    std::size_t scans()
    {
        std::size_t count = 0;
        for (const Event& event : stand().kept().all)
            count += std::holds_alternative<CodeScanned>(event.fact) ? 1U : 0U;
        return count;
    }
    ui::LetterPad* pad()
    {
        for (auto* each : stand().frame().findChildren<ui::LetterPad*>()) {
            if (each->isVisible())
                return each;
        }
        return nullptr;
    }
    /// On a real keyboard, as fast as a person.
    void spell(const char* text)
    {
        ASSERT_TRUE(pad());
        pad()->setFocus();
        for (const char* letter = text; *letter; ++letter)
            stand().key(*letter, QString(QLatin1Char(*letter)), 120);
        EXPECT_TRUE(QTest::qWaitFor([&] { return pad()->typed() == QString::fromLatin1(text); }));
    }
    const ui::PullDraft& draft()
    {
        return stand().frame().findChild<ui::BenchPage*>(QStringLiteral("bench"))->draft();
    }
    void drawn(const char* bag)
    {
        stand().say(StartBag{{bag}, {400'000}, {"D-0417"}, MilliCelsius{22'500}});
        stand().say(InspectBag{});
        stand().say(DrawDiluent{{}, MicroLitres{5'000}});
    }
    static QString person(const char* initials)
    {
        return QString::fromStdString(textOf(PersonCode{{initials}}));
    }

    StoresStand pages{kTenInch, QStringLiteral("en")};
};

TEST_F(FrameScan, worksOnEveryPageWithoutAFocus)
{
    int turn = 0;
    for (const char* page : {ui::Frame::kBench, ui::Frame::kSetUp, ui::Frame::kStores}) {
        ASSERT_TRUE(stand().frame().showPage(QString::fromLatin1(page))) << page;
        if (QWidget* focused = QApplication::focusWidget())
            focused->clearFocus();
        const std::string initials = "P" + std::to_string(++turn);
        stand().scan(person(initials.c_str()));
        EXPECT_EQ(bench().onDuty->id.text, initials) << page;
    }
}

TEST_F(FrameScan, typingIsNotSwallowed)
{
    stand().frame().showPage(QString::fromLatin1(ui::Frame::kBench));
    stand().taps({"more", "ask.note"});
    spell("NOTE");
    EXPECT_EQ(scans(), 0U);
    stand().scan(person("ZZ"));  // and a scan types nothing into it
    EXPECT_EQ(pad()->typed(), QStringLiteral("NOTE"));
    EXPECT_EQ(scans(), 1U);
}

TEST_F(FrameScan, aWrongLotIsLoudUntilTheNextTap)
{
    stand().frame().showPage(QString::fromLatin1(ui::Frame::kBench));
    drawn("B1");
    const int before = stand().heard().refusals;
    stand().scan(QStringLiteral("(10)K05-031"));
    EXPECT_EQ(stand().heard().refusals, before + 1);
    ASSERT_TRUE(notice()->isVisible());
    EXPECT_EQ(notice()->words().title, QStringLiteral("WRONG LOT"));
    EXPECT_TRUE(notice()->words().scanned.contains(QStringLiteral("K05-031")));
    EXPECT_TRUE(notice()->words().expected.contains(QStringLiteral("K07-112")));
    EXPECT_EQ(bench().stores.chosen.at({"serotype 3"}).lot.text, "K07-112");

    stand().pass(60s);
    EXPECT_TRUE(notice()->isVisible());
    stand().tap(QStringLiteral("more"));
    EXPECT_FALSE(notice()->isVisible());
    EXPECT_TRUE(stand().target(QStringLiteral("ask.note")));  // and the tap did what it does
}

TEST_F(FrameScan, theNextScanTakesTheNoticeAway)
{
    stand().frame().showPage(QString::fromLatin1(ui::Frame::kBench));
    stand().scan(QStringLiteral("(10)K02-008"));
    EXPECT_EQ(notice()->words().title, QStringLiteral("LOT EXPIRED"));
    EXPECT_TRUE(notice()->isVisible());
    stand().scan(kK07);
    EXPECT_FALSE(notice()->isVisible());
}

TEST_F(FrameScan, aTapOnTheNoticeTapsNothingUnderIt)
{
    stand().frame().showPage(QString::fromLatin1(ui::Frame::kBench));
    stand().scan(QStringLiteral("(10)X1"));
    const std::size_t before = stand().kept().all.size();
    stand().tap(QStringLiteral("scan-notice"));
    EXPECT_FALSE(notice()->isVisible());
    EXPECT_EQ(stand().kept().all.size(), before);
}

TEST_F(FrameScan, aChosenLotReachesThePlannedPull)
{
    drawn("B1");
    ASSERT_TRUE(draft().has({"serotype 3"}, {"K07-112"}));
    stand().say(ChooseLot{{"serotype 3"}, {"K05-031"}, {}});
    EXPECT_TRUE(draft().has({"serotype 3"}, {"K05-031"}));
    EXPECT_FALSE(draft().has({"serotype 3"}, {"K07-112"}));
}

TEST_F(FrameScan, whatAPersonHasPlannedOnTheScreenIsExpectedToo)
{
    stand().frame().showPage(QString::fromLatin1(ui::Frame::kBench));
    drawn("B1");
    stand().taps({"lane.1.end", "lane.1.end.lot"});
    spell("K05-031");
    stand().tap(QStringLiteral("letters.set"));
    ASSERT_TRUE(draft().has({"serotype 3"}, {"K05-031"}));
    stand().scan(QStringLiteral("(10)K05-031"));
    EXPECT_FALSE(notice()->isVisible());
    EXPECT_EQ(bench().stores.chosen.at({"serotype 3"}).lot.text, "K05-031");
    stand().scan(kK07);
    EXPECT_TRUE(notice()->isVisible());
    EXPECT_TRUE(draft().has({"serotype 3"}, {"K05-031"}));
}

TEST_F(FrameScan, withinTheWindowItIsOnlyWrittenDownAndAskedAfter)
{
    stand().frame().showPage(QString::fromLatin1(ui::Frame::kBench));
    drawn("B1");
    stand().say(TakeOut{{{0, {"serotype 3"}, {"K07-112"}}}});
    stand().say(MoveOn{Step::Bath, {}, {}});
    stand().scan(QStringLiteral("(10)K05-031"));
    EXPECT_FALSE(notice()->isVisible());
    EXPECT_EQ(scans(), 1U);
    EXPECT_FALSE(stand().target(QStringLiteral("ask.1")));
    stand().pass(60s);
    stand().say(MoveOn{Step::Diluent, {}, {}});
    stand().say(MoveOn{Step::Bagged, {}, {}});
    EXPECT_FALSE(stand().target(QStringLiteral("ask.1")));
    stand().pass(11s);
    stand().tap(QStringLiteral("ask.1"));
    EXPECT_EQ(bench().ampoule({1, 1})->lot.text, "K05-031");
    EXPECT_TRUE(bench().bag({"B1"})->held());
}

TEST_F(FrameScan, aBagsLabelOpensItsPane)
{
    stand().frame().showPage(QString::fromLatin1(ui::Frame::kBench));
    drawn("B1");
    using namespace std::chrono;
    stand().scan(QString::fromStdString(textOf(BagCode{{"B1"}, 2026y / March / 4})));
    EXPECT_FALSE(stand().target(QStringLiteral("ask.held")));  // yesterday's
    stand().scan(QString::fromStdString(textOf(BagCode{{"B1"}, 2026y / March / 5})));
    EXPECT_TRUE(stand().target(QStringLiteral("ask.held")));
    EXPECT_EQ(scans(), 1U);
}

TEST_F(FrameScan, onTheStoresPageALabelOpensItsLot)
{
    pages.show();
    stand().scan(QStringLiteral("(10)K05-031"));
    EXPECT_FALSE(notice()->isVisible());
    EXPECT_TRUE(stand().target(QStringLiteral("ask.count")));
}

TEST_F(FrameScan, onTheStoresPageANewLotIsReceivedWithWhatTheLabelSays)
{
    pages.show();
    stand().scan(QStringLiteral("(01)09521234500018(17)270831(10)K11"));
    const auto type = [this](const char* digits) {
        for (const char* digit = digits; *digit; ++digit)
            stand().tap(QStringLiteral("pad.") + QLatin1Char(*digit));
        stand().tap(QStringLiteral("pad.set"));
    };
    stand().tap(QStringLiteral("ask.ampoule:serotype 3"));
    type("2000");  // doses
    type("0");     // titre: none given
    stand().tap(QStringLiteral("ask.at:vessel 1 / canister 2 / cane 5"));
    type("30");
    const StockLot* lot = pages.stores().lot(ampoulesOf({"serotype 3"}, {"K11"}));
    ASSERT_TRUE(lot);
    EXPECT_EQ(lot->expires, dayFrom("2027-08-31"));
    EXPECT_EQ(lot->balance(), 30);
}

}  // namespace
}  // namespace bathside::test
