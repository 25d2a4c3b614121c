// The part of a chart that is in sight, moved and zoomed: geometry by hand.

#include "ui/charts/chart_window.h"

#include <gtest/gtest.h>

namespace bathside::ui {
namespace {

ChartWindow window() { return ChartWindow(QRectF(-5, 26, 5, 4)); }

TEST(ChartWindow, zoomsAboutThePointUnderTheFingers)
{
    ChartWindow shown = window();
    shown.zoom(2, {-1, 27});
    EXPECT_EQ(shown.shown(), QRectF(-3, 26.5, 2.5, 2));
    shown.zoom(0.5, {-1, 27});
    EXPECT_TRUE(shown.isWhole());
}

TEST(ChartWindow, showsNoMoreThanThereIs)
{
    ChartWindow shown = window();
    shown.zoom(0.1, {-2, 28});
    EXPECT_TRUE(shown.isWhole());
    shown.move({3, 3});
    EXPECT_TRUE(shown.isWhole());
    shown.zoom(2, {-2.5, 28});
    shown.move({100, -100});
    EXPECT_EQ(shown.shown(), QRectF(-2.5, 26, 2.5, 2));
}

TEST(ChartWindow, zoomsNoDeeperThanItMay)
{
    ChartWindow shown = window();
    for (int i = 0; i < 50; ++i)
        shown.zoom(3, {-2, 28});
    EXPECT_NEAR(shown.shown().width(), 5 / ChartWindow::kDeepest, 1e-9);
    EXPECT_TRUE(shown.shown().contains(QPointF(-2, 28)));
}

TEST(ChartWindow, aPinchWithoutASizeChangesNothing)
{
    ChartWindow shown = window();
    shown.zoom(0, {-2, 28});
    shown.zoom(-1, {-2, 28});
    EXPECT_TRUE(shown.isWhole());
}

TEST(ChartWindow, whatIsLookedAtStaysWhenMoreComes)
{
    ChartWindow shown = window();
    shown.setWhole(QRectF(-10, 25, 10, 6));
    EXPECT_TRUE(shown.isWhole());
    shown.zoom(2, {0, 25});
    const QRectF before = shown.shown();
    shown.setWhole(QRectF(-12, 24, 12, 8));
    EXPECT_EQ(shown.shown(), before);
    shown.showWhole();
    EXPECT_TRUE(shown.isWhole());
}

}  // namespace
}  // namespace bathside::ui
