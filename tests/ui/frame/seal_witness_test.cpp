// A printed day sheet scanned on any page: looked up, written down, said; never in the critical
// window.

#include "ui/frame/seal_witness.h"

#include <QApplication>

#include <gtest/gtest.h>

#include "tests/ui/setup/page_stand.h"
#include "ui/frame/scan_notice.h"

namespace bathside::test {
namespace {

using Found = ui::WitnessAnswer::Found;

class SealScan : public testing::Test {
protected:
    SealScan()
    {
        new ui::SealWitness(stand().model(), pages.trail(), stand().frame());
        stand().frame().activateWindow();
        QApplication::processEvents();
    }

    Stand& stand() { return pages.stand(); }
    ui::ScanNotice* notice()
    {
        return stand().frame().findChild<ui::ScanNotice*>(QStringLiteral("scan-notice"));
    }
    QString title() { return notice()->isVisible() ? notice()->words().title : QString(); }
    void scan() { stand().scan(QString::fromStdString(textOf(code))); }
    void answer(Found found, std::optional<StoreTrouble> trouble = {})
    {
        emit pages.trail().witnessed({code, found, trouble});
    }
    std::vector<SealWitnessed> written()
    {
        std::vector<SealWitnessed> all;
        for (const Event& event : stand().kept().all) {
            if (const auto* seen = std::get_if<SealWitnessed>(&event.fact))
                all.push_back(*seen);
        }
        return all;
    }

    PageStand pages{kTenInch, QStringLiteral("en")};
    const SealCode code{12, std::string(64, 'a')};
};

TEST_F(SealScan, isLookedUpOnEveryPage)
{
    std::size_t asked = 0;
    for (const char* page : {ui::Frame::kBench, ui::Frame::kSetUp, ui::Frame::kRecord}) {
        ASSERT_TRUE(stand().frame().showPage(QString::fromLatin1(page))) << page;
        scan();
        ASSERT_EQ(pages.trail().seals.size(), ++asked) << page;
        EXPECT_EQ(pages.trail().seals.back(), code);
    }
    EXPECT_TRUE(written().empty());  // nothing is said before it was looked up
}

TEST_F(SealScan, thatAgreesIsWrittenDownAndSaid)
{
    scan();
    answer(Found::Agrees);
    ASSERT_EQ(written().size(), 1U);
    EXPECT_EQ(written()[0].count, 12);
    EXPECT_EQ(written()[0].head, code.head);
    EXPECT_TRUE(written()[0].agrees);
    EXPECT_EQ(title(), QStringLiteral("RECORD AGREES"));
    EXPECT_EQ(notice()->words().role, ui::Role::Good);
}

TEST_F(SealScan, thatDoesNotIsLoud)
{
    for (const auto& [found, word] : {std::pair(Found::Differs, "RECORD DIFFERS"),
                                      std::pair(Found::NotReached, "RECORD IS SHORTER")}) {
        scan();
        answer(found);
        EXPECT_EQ(title(), QString::fromLatin1(word));
        EXPECT_EQ(notice()->words().role, ui::Role::Overrun);
        EXPECT_FALSE(written().back().agrees);
    }
    EXPECT_EQ(written().size(), 2U);
}

TEST_F(SealScan, thatCannotBeLookedUpIsNotWrittenDown)
{
    scan();
    answer(Found::Before);
    EXPECT_EQ(title(), QStringLiteral("NOT CHECKED"));
    scan();
    answer(Found::Differs, StoreTrouble{StoreFault::Damaged, 0});
    EXPECT_EQ(title(), QStringLiteral("NOT CHECKED"));
    EXPECT_TRUE(written().empty());
}

TEST_F(SealScan, anAnswerNobodyAskedForSaysNothing)
{
    answer(Found::Differs);
    EXPECT_EQ(title(), QString());
    EXPECT_TRUE(written().empty());
}

TEST_F(SealScan, inTheCriticalWindowIsForLater)
{
    liveThroughAMorning(stand());
    stand().say(StartBag{{"W1"}, {400'000}, {"D-1"}, MilliCelsius{22'500}});
    stand().say(InspectBag{});
    stand().say(DrawDiluent{{}, MicroLitres{5'000}});
    scan();  // asked before the window begins
    stand().say(TakeOut{{{0, {}, {"K-1"}}}});
    ASSERT_TRUE(stand().model().isInCriticalWindow());
    answer(Found::Agrees);
    EXPECT_EQ(title(), QStringLiteral("LATER"));
    const std::size_t asked = pages.trail().seals.size();
    scan();
    EXPECT_EQ(title(), QStringLiteral("LATER"));
    EXPECT_EQ(pages.trail().seals.size(), asked);
    EXPECT_TRUE(written().empty());
}

}  // namespace
}  // namespace bathside::test
