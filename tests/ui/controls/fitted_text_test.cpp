#include "ui/controls/fitted_text.h"

#include <QFontMetricsF>

#include <gtest/gtest.h>

#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

QSizeF roomOfMm(double width, double height)
{
    return QSizeF(width, height) * theme().metrics().pxPerMm();
}
double capMmOf(const FittedText& text)
{
    return theme().metrics().mm(QFontMetricsF(text.font).capHeight());
}

const QString kSentence = QStringLiteral("Ampoule 3 is lost. It takes no more steps.");

TEST(FittedTextTest, isAsHighAsWantedWhereThereIsRoom)
{
    const FittedText text = fitted(QStringLiteral("OPENED"), roomOfMm(200, 50), {.capMm = 10});
    EXPECT_TRUE(text.whole);
    EXPECT_NEAR(capMmOf(text), 10, 0.3);
    EXPECT_EQ(text.lines.size(), 1);
}

TEST(FittedTextTest, shrinksAndThenWraps)
{
    const FittedText smaller = fitted(QStringLiteral("OPENED"), roomOfMm(30, 20), {.capMm = 10});
    EXPECT_TRUE(smaller.whole);
    EXPECT_LT(capMmOf(smaller), 10);
    const FittedText wrapped = fitted(kSentence, roomOfMm(40, 30), {.capMm = 5});
    EXPECT_TRUE(wrapped.whole);
    EXPECT_GT(wrapped.lines.size(), 1);
    EXPECT_EQ(wrapped.lines.join(u' '), kSentence);
}

TEST(FittedTextTest, saysWhenItCannotBeWholeAndNeverCuts)
{
    for (const QSizeF& room : {roomOfMm(8, 30), roomOfMm(40, 4), roomOfMm(10, 4)}) {
        const FittedText text = fitted(kSentence, room, {.capMm = 5});
        EXPECT_FALSE(text.whole);
        EXPECT_EQ(text.lines.join(u' '), kSentence);
    }
}

TEST(FittedTextTest, neverGoesBelowTheLeast)
{
    for (double width = 5; width < 120; width += 7) {
        const FittedText text =
            fitted(kSentence, roomOfMm(width, 12), {.capMm = 6, .leastMm = 3.2});
        EXPECT_GE(capMmOf(text) + 0.01, 3.2) << width;
    }
}

TEST(FittedTextTest, whatIsWholeIsInsideItsRoom)
{
    for (double width = 20; width < 120; width += 9) {
        const QSizeF room = roomOfMm(width, 20);
        const FittedText text = fitted(kSentence, room, {.capMm = 7});
        const QFontMetricsF metrics(text.font);
        for (const QString& line : text.lines)
            EXPECT_TRUE(!text.whole || metrics.horizontalAdvance(line) <= room.width() + 0.1)
                << width;
        EXPECT_TRUE(!text.whole || text.size.height() <= room.height() + 0.1) << width;
    }
}

TEST(FittedTextTest, noBreakSpacesHoldTogether)
{
    const FittedText text =
        fitted(QStringLiteral("28.1 ±\u00a00.2\u00a0°C"), roomOfMm(16, 20), {.capMm = 3.4});
    EXPECT_EQ(text.lines.last(), QStringLiteral("±\u00a00.2\u00a0°C"));
}

TEST(FittedTextTest, followsTheScale)
{
    const double before =
        QFontMetricsF(fitted(QStringLiteral("A"), {500, 500}, {.capMm = 5}).font).capHeight();
    theme().setMetrics(Metrics(2 * Metrics().pxPerMm(), {217, 136}));
    const double after =
        QFontMetricsF(fitted(QStringLiteral("A"), {500, 500}, {.capMm = 5}).font).capHeight();
    theme().setMetrics(Metrics());
    EXPECT_NEAR(after, 2 * before, 3);
}

}  // namespace
}  // namespace bathside::ui
