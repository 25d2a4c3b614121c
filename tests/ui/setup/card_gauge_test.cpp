// The screen's true size, measured with a bank card: ISO/IEC 7810:2019, ID-1: 85.60 × 53.98 mm
// (both from memory, as in the spec).

#include "ui/setup/card_gauge.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

#include "ui/controls/tap_button.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

void press(CardGauge& gauge, const char* place, int times = 1)
{
    auto* target = gauge.findChild<TapButton*>(QString::fromLatin1(place));
    ASSERT_TRUE(target) << place;
    for (int i = 0; i < times; ++i)
        target->press({});
}

class Gauge : public testing::Test {
protected:
    void SetUp() override
    {
        theme().setMetrics({5.0, QSizeF(256, 160)});
        m_gauge.resize(900, 420);
    }
    Preferences m_preferences{
        Preference{.language = {}, .dark = false, .pitchCorrection = 1.1, .soundDevice = {}}};
    CardGauge m_gauge{m_preferences, nullptr};
};

TEST_F(Gauge, theOutlineIsACardsByThePitchInForce)
{
    EXPECT_NEAR(m_gauge.outline().width(), 85.60 * 5, 0.01);
    EXPECT_NEAR(m_gauge.outline().height(), 53.98 * 5, 0.01);
}

TEST_F(Gauge, nothingChangesBeforeItFits)
{
    press(m_gauge, "setup.wider", 3);
    EXPECT_EQ(m_preferences.now().pitchCorrection, 1.1);
    press(m_gauge, "setup.gauge-close");
    EXPECT_EQ(m_preferences.now().pitchCorrection, 1.1);
}

// A card covers 85.60 mm whatever the screen believes. Where the outline had to be drawn a tenth
// wider than believed, a millimetre has a tenth more pixels than believed.
TEST_F(Gauge, theCorrectionIsWhatMakesACardACard)
{
    const QSignalSpy closed(&m_gauge, &CardGauge::closed);
    press(m_gauge, "setup.wider", 10);
    const double pixels = m_gauge.outline().width();
    press(m_gauge, "setup.fits");
    EXPECT_EQ(closed.count(), 1);
    const double uncorrected = 5.0 / 1.1;  // px per mm as the screen describes itself
    EXPECT_NEAR(uncorrected * m_preferences.now().pitchCorrection, pixels / 85.60, 1e-9);
}

TEST_F(Gauge, theOutlineStaysOnTheScreen)
{
    press(m_gauge, "setup.wider", 200);
    EXPECT_LT(m_gauge.outline().right(), m_gauge.width());
    press(m_gauge, "setup.narrower", 400);
    EXPECT_GT(m_gauge.outline().width(), 100);
}

}  // namespace
}  // namespace bathside::ui
