// A chart under fingers, and as a picture. Where a value stands on the screen is asked of Qt Charts
// itself (QChart::mapToPosition).

#include "ui/charts/chart.h"

#include <QApplication>
#include <QChart>
#include <QChartView>
#include <QLocale>
#include <QMouseEvent>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include <gtest/gtest.h>

#include "ui/controls/label.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

ChartContent content()
{
    ChartContent made;
    made.title = QStringLiteral("The last minutes");
    made.across = {.unit = QStringLiteral("min"), .low = -5, .high = 0, .decimals = 1};
    made.up = {.unit = QStringLiteral("°C"), .low = 26, .high = 30, .decimals = 2};
    made.bands = {{.words = {}, .low = 27, .high = 29, .role = Role::Good}};
    made.lines = {{.name = {}, .points = {{-5, 27.9}, {-4, 28}, {-3, 28.14}, {-2, 28.1}}}};
    return made;
}

class ChartTest : public testing::Test {
protected:
    ChartTest()
    {
        QLocale::setDefault(QLocale(QStringLiteral("en")));
        theme().setScheme(Scheme::Light);
        theme().setMetrics({5.9, QSizeF(217, 136)});
        chart.resize(900, 500);
        chart.show(content());
        chart.QWidget::show();
        QApplication::processEvents();
    }
    ~ChartTest() override { theme().setScheme(Scheme::Light); }

    [[nodiscard]] QChartView& view() { return *chart.findChild<QChartView*>(); }
    [[nodiscard]] QWidget& face() { return *view().viewport(); }
    [[nodiscard]] QPoint at(double x, double y)
    {
        return view().chart()->mapToPosition({x, y}).toPoint();
    }
    void press(const QPoint& where)
    {
        QMouseEvent event(QEvent::MouseButtonPress, where, face().mapToGlobal(where),
                          Qt::LeftButton, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(&face(), &event);
    }
    [[nodiscard]] QColor pixel(double x, double y)
    {
        return chart.picture().pixelColor(view().mapTo(&chart, at(x, y)));
    }

    Chart chart{QStringLiteral("chart")};
};

TEST_F(ChartTest, saysItsTitleUntilAFingerIsOnIt)
{
    EXPECT_EQ(chart.readOut(), QStringLiteral("The last minutes"));
    EXPECT_EQ(chart.findChild<Label*>()->text(), chart.readOut());
}

TEST_F(ChartTest, saysTheValueUnderTheFinger)
{
    press(at(-3.1, 27.2));
    EXPECT_EQ(chart.readOut(), QStringLiteral("-3.0 min: 28.14 °C"));
    EXPECT_EQ(chart.findChild<Label*>()->text(), chart.readOut());
}

TEST_F(ChartTest, saysNoValueWhereThereIsNone)
{
    press(at(-0.5, 28));
    EXPECT_EQ(chart.readOut(), QStringLiteral("The last minutes"));
}

TEST_F(ChartTest, namesItsLinesWhereThereAreSeveral)
{
    ChartContent two = content();
    two.lines = {{.name = QStringLiteral("1 ampoule:"), .points = {{-2, 28}}},
                 {.name = QStringLiteral("3 ampoules:"), .points = {{-2, 27.5}}}};
    chart.show(two);
    chart.lookAt(-2);
    EXPECT_EQ(chart.readOut(),
              QStringLiteral("-2.0 min: 1 ampoule: 28.00 °C · 3 ampoules: 27.50 °C"));
}

TEST_F(ChartTest, speaksTheLanguageOfTheScreen)
{
    QLocale::setDefault(QLocale(QStringLiteral("es")));
    chart.lookAt(-3);
    EXPECT_EQ(chart.readOut(), QStringLiteral("-3,0 min: 28,14 °C"));
    QLocale::setDefault(QLocale(QStringLiteral("en")));
}

TEST_F(ChartTest, oneFingerLooksAndTwoPinchAndMove)
{
    auto* device = QTest::createTouchDevice();
    QSignalSpy windows(&chart, &Chart::windowChanged);
    QTest::touchEvent(&face(), device).press(0, at(-3, 28), &face());
    QTest::touchEvent(&face(), device).release(0, at(-3, 28), &face());
    EXPECT_EQ(chart.readOut(), QStringLiteral("-3.0 min: 28.14 °C"));
    EXPECT_EQ(windows.count(), 0);

    const QPoint middle = at(-2.5, 28), wide(60, 0);
    QTest::touchEvent(&face(), device)
        .press(0, middle - wide, &face())
        .press(1, middle + wide, &face());
    QTest::touchEvent(&face(), device)
        .move(0, middle - 2 * wide, &face())
        .move(1, middle + 2 * wide, &face());
    EXPECT_NEAR(chart.window().shown().width(), 2.5, 0.01);
    EXPECT_NEAR(chart.window().shown().center().x(), -2.5, 0.02);

    // Both to the right by a tenth of what is shown: earlier times come in sight.
    const QPoint by = at(-2.25, 28) - at(-2.5, 28);
    QTest::touchEvent(&face(), device)
        .move(0, middle - 2 * wide + by, &face())
        .move(1, middle + 2 * wide + by, &face());
    EXPECT_NEAR(chart.window().shown().center().x(), -2.75, 0.02);
    QTest::touchEvent(&face(), device).release(0, middle, &face()).release(1, middle, &face());
    EXPECT_GT(windows.count(), 0);
    chart.showWhole();
    EXPECT_TRUE(chart.window().isWhole());
}

TEST_F(ChartTest, aWheelZoomsWhereItIs)
{
    const QPoint where = at(-4, 27);
    QWheelEvent event(where, face().mapToGlobal(where), {}, {0, 120}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(&face(), &event);
    EXPECT_FALSE(chart.window().isWhole());
    EXPECT_NEAR((at(-4, 27) - where).manhattanLength(), 0, 2);
}

TEST_F(ChartTest, isDrawnInTheThemesColoursLightAndDark)
{
    for (const Scheme scheme : {Scheme::Light, Scheme::Dark}) {
        theme().setScheme(scheme);
        QApplication::processEvents();
        EXPECT_EQ(pixel(-0.7, 28.6), theme().tone(Role::Good).fill);
        EXPECT_EQ(pixel(-0.7, 29.6), theme().palette().panel());
    }
}

TEST_F(ChartTest, theLineIsWhereItsValuesAre)
{
    const QColor ground = theme().tone(Role::Good).fill;
    EXPECT_LT(pixel(-4, 28).lightness(), ground.lightness() / 2);  // ink, but for its soft edge
    EXPECT_EQ(pixel(-4, 28.6), ground);
}

TEST_F(ChartTest, thePictureIsAllOfIt)
{
    chart.lookAt(-3);
    EXPECT_EQ(chart.picture().deviceIndependentSize().toSize(), chart.size());
}

}  // namespace
}  // namespace bathside::ui
