#include "ui/models/wedge.h"

#include <random>

#include <gtest/gtest.h>

namespace bathside::ui {
namespace {

using Answer = Wedge::Answer;
using Sort = Wedge::Key::Sort;

constexpr quint64 kStart = 1'000'000;

Wedge::Key sign(char c, quint64 ms) { return {Sort::Sign, QLatin1Char(c), ms}; }
Wedge::Key end(quint64 ms) { return {Sort::End, {}, ms}; }
Wedge::Key other(quint64 ms) { return {Sort::Other, {}, ms}; }

/// Types `text` with that gap; the time after its last sign.
quint64 type(Wedge& wedge, const char* text, quint64 gap, quint64 at = kStart)
{
    for (; *text != 0; ++text, at += gap)
        static_cast<void>(wedge.press(sign(*text, at)));
    return at;
}

TEST(WedgeTest, takesQuickSignsWithAnEnd)
{
    for (const quint64 gap : {0U, 1U, 8U, 20U, 35U}) {
        Wedge wedge;
        EXPECT_EQ(wedge.press(end(type(wedge, "]d20109521", gap))), Answer::Scanned) << gap;
        EXPECT_EQ(wedge.text(), QStringLiteral("]d20109521"));
        EXPECT_FALSE(wedge.isHolding());
    }
}

TEST(WedgeTest, leavesSlowSignsToThePerson)
{
    Wedge wedge;
    EXPECT_EQ(wedge.press(sign('K', kStart)), Answer::Hold);
    EXPECT_EQ(wedge.press(sign('0', kStart + 36)), Answer::ReleaseAndHold);
    EXPECT_EQ(wedge.press(sign('7', kStart + 72)), Answer::ReleaseAndHold);
    EXPECT_EQ(wedge.press(end(kStart + 80)), Answer::ReleaseAndPass);
    EXPECT_FALSE(wedge.isHolding());
}

TEST(WedgeTest, wantsFourSignsAndAQuickEnd)
{
    Wedge three;
    EXPECT_EQ(three.press(end(type(three, "K07", 10))), Answer::ReleaseAndPass);
    Wedge slowEnd;
    EXPECT_EQ(slowEnd.press(end(type(slowEnd, "K078", 10) + 26)), Answer::ReleaseAndPass);
    Wedge four;
    EXPECT_EQ(four.press(end(type(four, "K078", 10))), Answer::Scanned);
}

TEST(WedgeTest, aCodeBeginsAfterAPause)
{
    Wedge wedge;
    static_cast<void>(wedge.press(sign('x', kStart)));
    const auto at = type(wedge, "K078", 10, kStart + 100);
    EXPECT_EQ(wedge.press(end(at)), Answer::Scanned);
    EXPECT_EQ(wedge.text(), QStringLiteral("K078"));
}

TEST(WedgeTest, neverHoldsWhatMakesNoSign)
{
    Wedge wedge;
    EXPECT_EQ(wedge.press(other(kStart)), Answer::ReleaseAndPass);
    EXPECT_EQ(wedge.press(sign(' ', kStart + 50)), Answer::ReleaseAndPass);
    EXPECT_EQ(wedge.press(end(kStart + 100)), Answer::ReleaseAndPass);
    static_cast<void>(type(wedge, "K078", 10, kStart + 200));
    EXPECT_EQ(wedge.press(other(kStart + 240)), Answer::ReleaseAndPass);
    EXPECT_FALSE(wedge.isHolding());
}

TEST(WedgeTest, aBlankWithinACodeBelongsToIt)
{
    Wedge wedge;
    EXPECT_EQ(wedge.press(end(type(wedge, "LOT 7", 10))), Answer::Scanned);
    EXPECT_EQ(wedge.text(), QStringLiteral("LOT 7"));
}

TEST(WedgeTest, swallowsASecondEnd)
{
    Wedge wedge;
    const auto at = type(wedge, "K078", 10);
    EXPECT_EQ(wedge.press(end(at)), Answer::Scanned);
    EXPECT_EQ(wedge.press(end(at + 10)), Answer::Swallow);
    EXPECT_EQ(wedge.press(end(at + 200)), Answer::ReleaseAndPass);
    Wedge late;
    EXPECT_EQ(late.press(end(type(late, "K078", 10))), Answer::Scanned);
    EXPECT_EQ(late.press(end(kStart + 500)), Answer::ReleaseAndPass);
}

TEST(WedgeTest, isNoKeyHeldDownAndNoKeyWithoutTime)
{
    Wedge wedge;
    for (quint64 at = kStart; at < kStart + 300; at += 30)
        EXPECT_EQ(wedge.press({Sort::Sign, u'a', at, true}), Answer::ReleaseAndPass);
    for (const char c : {'K', '0', '7', '8'})
        EXPECT_EQ(wedge.press(sign(c, 0)), Answer::ReleaseAndPass);
    EXPECT_EQ(wedge.press(end(0)), Answer::ReleaseAndPass);
}

TEST(WedgeTest, timeGoingBackIsNoSpeed)
{
    Wedge wedge;
    EXPECT_EQ(wedge.press(sign('K', kStart)), Answer::Hold);
    EXPECT_EQ(wedge.press(sign('0', kStart - 1)), Answer::ReleaseAndHold);
}

TEST(WedgeTest, hasABound)
{
    Wedge wedge;
    int released = 0;
    for (quint64 at = kStart; at < kStart + 20'000; ++at)
        released += wedge.press(sign('x', at)) == Answer::Hold ? 0 : 1;
    EXPECT_EQ(released, 2);
}

// Fast fingers: gaps about a log-normal median of 110 ms (90 words a minute and more are typed like
// that), rolled pairs and triplets of keys far below the scanner's gap, and Enter after some words.
TEST(WedgeTest, takesNoPersonForAScanner)
{
    std::mt19937_64 random(1);
    std::lognormal_distribution<double> gap(4.7, 0.45);
    int scans = 0;
    Wedge wedge;
    quint64 at = kStart;
    for (int key = 0; key < 200'000; ++key) {
        const bool rolled = key % 7 == 1 || key % 7 == 2;
        at += rolled ? 5 + random() % 30 : static_cast<quint64>(gap(random)) + 20;
        const bool ends = key % 7 == 6;
        scans += wedge.press(ends ? end(at) : sign('k', at)) == Answer::Scanned ? 1 : 0;
    }
    EXPECT_EQ(scans, 0);
}

}  // namespace
}  // namespace bathside::ui
