// Sizes against ISO/IEC 7810 ID-1 (85.60 × 53.98 mm; read in secondary pages) and its pixels at 96,
// 100 and 157 dpi (computed: mm / 25.4 × dpi), and against the bench's own figures for 10 and 15.6
// inch.

#include "ui/theme/metrics.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QGuiApplication>
#include <QScreen>

#include <gtest/gtest.h>

namespace bathside::ui {
namespace {

Metrics atDpi(double dpi) { return {dpi / 25.4, {217, 136}}; }

TEST(MetricsTest, cardIsAsManyPixelsAsItShould)
{
    struct Row {
        double dpi, width, height;
    };
    for (const Row& row :
         {Row{96, 323.53, 204.02}, Row{100, 337.01, 212.52}, Row{157, 529.10, 333.66}}) {
        EXPECT_NEAR(atDpi(row.dpi).px(Metrics::kCardWidth), row.width, 0.005);
        EXPECT_NEAR(atDpi(row.dpi).px(Metrics::kCardHeight), row.height, 0.005);
    }
}

TEST(MetricsTest, pixelsAreNeverFewerThanTheMillimetres)
{
    for (const Metrics& metrics : {Metrics(), atDpi(150), atDpi(96)}) {
        for (const double mm : {Metrics::kMinimum, Metrics::kPrimary, Metrics::kGap,
                                Metrics::kStepWidth, Metrics::kSmall}) {
            EXPECT_GE(metrics.ceilPx(mm) + 1e-6, metrics.px(mm));
            EXPECT_LT(metrics.ceilPx(mm), metrics.px(mm) + 1);
        }
    }
    EXPECT_EQ(Metrics().ceilPx(20), 118);
    EXPECT_EQ(atDpi(150).ceilPx(20), 119);
}

TEST(MetricsTest, digitsGrowWithThePanel)
{
    const auto digits = [](double width, double height) {
        return Metrics(5.9, {width, height}).digitsMm();
    };
    EXPECT_NEAR(digits(217, 136), 30, 0.5);      // 10 inch, 1280 × 800
    EXPECT_NEAR(digits(345.4, 194.3), 60, 0.5);  // 15.6 inch, 1920 × 1080
    EXPECT_GT(digits(280, 170), digits(217, 136));
    EXPECT_GE(digits(100, 60), 10);
}

TEST(MetricsTest, capitalsAreAsHighAsAskedFor)
{
    for (const Metrics& metrics : {Metrics(), atDpi(150)}) {
        for (const double mm : {Metrics::kSmall, Metrics::kWords, Metrics::kCaps, 30.0}) {
            for (const Weight weight : {Weight::Regular, Weight::Strong}) {
                const double cap = QFontMetricsF(metrics.font(mm, weight)).capHeight();
                EXPECT_GE(cap + 0.05, metrics.px(mm));
                EXPECT_LT(cap, metrics.px(mm) + 1.5);
            }
        }
    }
}

TEST(MetricsTest, digitsAreTabular)
{
    for (const Weight weight : {Weight::Regular, Weight::Strong}) {
        const QFontMetricsF metrics(Metrics().font(30, weight));
        const double zero = metrics.horizontalAdvance(u'0');
        for (char16_t digit = u'1'; digit <= u'9'; ++digit)
            EXPECT_NEAR(metrics.horizontalAdvance(QChar(digit)), zero, 0.01);
        EXPECT_NEAR(metrics.horizontalAdvance(QStringLiteral("0000")), 4 * zero, 0.05);
    }
}

TEST(MetricsTest, fontIsTheOneThatIsInstalledWithTheProgram)
{
    EXPECT_EQ(QFontInfo(Metrics().font(5)).family(), QStringLiteral("Open Sans"));
}

TEST(MetricsTest, correctionMakesTheDrawnCardReal)
{
    // Set-up draws the card at 5.9 px/mm; held against it, a real one covers 90 mm of the drawing.
    const double correction = Metrics::correctionFor(90);
    EXPECT_NEAR(correction, 90 / 85.60, 1e-12);
    EXPECT_EQ(Metrics::correctionFor(10), 1);
    EXPECT_EQ(Metrics::correctionFor(1000), 1);
}

TEST(MetricsTest, screenThatLiesIsNotBelieved)
{
    const QScreen& screen = *QGuiApplication::primaryScreen();
    for (const double correction : {0.001, 1.0, 1000.0}) {
        const Metrics metrics = Metrics::of(screen, correction);
        EXPECT_GE(metrics.pxPerMm(), 2);
        EXPECT_LE(metrics.pxPerMm(), 16);
        EXPECT_NEAR(metrics.px(metrics.panelMm().width()), screen.geometry().width(), 0.01);
    }
}

}  // namespace
}  // namespace bathside::ui
