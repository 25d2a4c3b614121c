#include "ui/theme/theme.h"

#include <QApplication>
#include <QPalette>
#include <QSignalSpy>

#include <gtest/gtest.h>

#include "ui/theme/contrast.h"

namespace bathside::ui {
namespace {

TEST(ThemeTest, tellsEachChangeOnce)
{
    QSignalSpy changes(&theme(), &Theme::changed);
    theme().setScheme(Scheme::Dark);
    theme().setScheme(Scheme::Dark);
    theme().setMetrics(Metrics(7, {217, 136}));
    EXPECT_EQ(changes.count(), 2);
    EXPECT_EQ(theme().tone(Role::Good).fill, Palette::of(Scheme::Dark).tone(Role::Good).fill);
    theme().setMetrics(Metrics());
    theme().setScheme(Scheme::Light);
}

TEST(ThemeTest, dressesWhatIsNotOursNowAndAtEachChange)
{
    theme().dress(*qobject_cast<QApplication*>(QCoreApplication::instance()));
    for (const Scheme scheme : {Scheme::Dark, Scheme::Light}) {
        theme().setScheme(scheme);
        const QPalette palette = QApplication::palette();
        EXPECT_EQ(palette.color(QPalette::Window), theme().palette().ground());
        EXPECT_GE(contrastRatio(palette.color(QPalette::Text), palette.color(QPalette::Base)),
                  kTextContrast);
        EXPECT_GE(contrastRatio(palette.color(QPalette::HighlightedText),
                                palette.color(QPalette::Highlight)),
                  kTextContrast);
    }
}

}  // namespace
}  // namespace bathside::ui
