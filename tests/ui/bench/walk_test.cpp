// Every visible target of the bench in every scene, language and panel: large enough, far enough
// apart, nothing clipped; and nothing in the critical window that leads away or asks.
//
// Sizes: Colle & Hiszem, Ergonomics 47(13), 2004, and Duff et al., HFES 2010 (both quoted second
// hand): 20 mm; 25 mm for what is used in gloves, 60 × 40 mm for the next step (common practice).
// Letters: ISO 9241-3, quoted second hand.

#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QTextEdit>

#include <gtest/gtest.h>

#include "tests/ui/bench/stand.h"
#include "ui/controls/big_clock.h"
#include "ui/controls/tap_button.h"
#include "ui/theme/theme.h"

namespace bathside::test {
namespace {

constexpr double kHairMm = 0.02;  // a rounded half pixel

struct Case {
    Scene scene;
    Panel panel;
    const char* language;
};

std::vector<Case> cases()
{
    std::vector<Case> all;
    for (const Scene& scene : scenes()) {
        for (const char* language : {"en", "es"}) {
            all.push_back({scene, kTenInch, language});
            all.push_back({scene, kFifteenInch, language});
        }
    }
    return all;
}

std::string nameOfCase(const testing::TestParamInfo<Case>& test)
{
    std::string name = std::string(test.param.scene.name) + " " + test.param.language + " " +
                       test.param.panel.name;
    for (char& c : name)
        c = std::isalnum(static_cast<unsigned char>(c)) ? c : '_';
    return name;
}

QRectF inFrame(const QWidget& widget, const QWidget& frame)
{
    return {widget.mapTo(&frame, QPoint(0, 0)), QSizeF(widget.size())};
}

double gapBetween(const QRectF& a, const QRectF& b)
{
    const double across = std::max({a.left() - b.right(), b.left() - a.right(), 0.0});
    const double down = std::max({a.top() - b.bottom(), b.top() - a.bottom(), 0.0});
    return std::hypot(across, down);
}

class BenchWalk : public testing::TestWithParam<Case> {
protected:
    void SetUp() override
    {
        m_stand =
            std::make_unique<Stand>(GetParam().panel, QString::fromLatin1(GetParam().language));
        GetParam().scene.set(*m_stand);
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }

    [[nodiscard]] std::vector<ui::TapButton*> targets() const
    {
        std::vector<ui::TapButton*> found;
        for (auto* each : m_stand->frame().findChildren<ui::TapButton*>()) {
            if (each->isVisible())
                found.push_back(each);
        }
        return found;
    }

    std::unique_ptr<Stand> m_stand;
};

TEST_P(BenchWalk, targetsAreLargeEnough)
{
    const ui::Metrics& metrics = ui::theme().metrics();
    ASSERT_FALSE(targets().empty());
    for (const ui::TapButton* each : targets()) {
        const QString place = each->place();
        const double wide = metrics.mm(each->width()), high = metrics.mm(each->height());
        const bool daily = place == u"take-back" || place == u"heard" || place == u"more" ||
                           place.startsWith(u"bag.");
        const double least = daily ? 25 : 20;
        EXPECT_GE(wide, least - kHairMm) << place.toStdString();
        EXPECT_GE(high, least - kHairMm) << place.toStdString();
        if (place == u"step") {
            EXPECT_GE(wide, 60 - kHairMm);
            EXPECT_GE(high, 40 - kHairMm);
        }
    }
}

TEST_P(BenchWalk, targetsAreApartAndOnThePanel)
{
    const ui::Metrics& metrics = ui::theme().metrics();
    const auto all = targets();
    for (std::size_t i = 0; i < all.size(); ++i) {
        const QRectF here = inFrame(*all[i], m_stand->frame());
        EXPECT_TRUE(QRectF(m_stand->frame().rect()).contains(here))
            << all[i]->place().toStdString();
        for (std::size_t j = i + 1; j < all.size(); ++j) {
            const double gap = gapBetween(here, inFrame(*all[j], m_stand->frame()));
            EXPECT_GE(metrics.mm(gap), 5 - kHairMm)
                << all[i]->place().toStdString() << " and " << all[j]->place().toStdString();
        }
    }
}

TEST_P(BenchWalk, noWordIsClipped)
{
    for (const auto* each : m_stand->frame().findChildren<ui::Control*>()) {
        EXPECT_TRUE(!each->isVisible() || each->fits())
            << each->objectName().toStdString() << ": " << each->clipped().toStdString();
    }
}

TEST_P(BenchWalk, digitsAreAsHighAsThePanelWants)
{
    const auto* clock = m_stand->frame().findChild<ui::BigClock*>();
    ASSERT_TRUE(clock);
    if (!clock->isVisible())
        return;
    EXPECT_GE(clock->shownDigitsMm(), ui::theme().metrics().digitsMm() - kHairMm)
        << clock->state().time.toStdString() << " in " << clock->width() << " x "
        << clock->height();
}

TEST_P(BenchWalk, everyTargetHasANameOfItsOwn)
{
    QSet<QString> seen;
    for (const ui::TapButton* each : targets()) {
        EXPECT_FALSE(each->place().isEmpty());
        EXPECT_FALSE(seen.contains(each->place())) << each->place().toStdString();
        EXPECT_FALSE(each->accessibleName().isEmpty()) << each->place().toStdString();
        seen.insert(each->place());
    }
}

TEST_P(BenchWalk, nothingAsksOrLeadsAwayInTheWindow)
{
    if (!m_stand->model().isInCriticalWindow())
        return;
    for (const QWidget* each : m_stand->frame().findChildren<QWidget*>()) {
        const bool types =
            qobject_cast<const QLineEdit*>(each) || qobject_cast<const QTextEdit*>(each) ||
            qobject_cast<const QAbstractSpinBox*>(each) || qobject_cast<const QComboBox*>(each);
        EXPECT_FALSE(types && each->isVisible()) << each->objectName().toStdString();
    }
    for (const char* asks : {"ask-pane", "pad", "letters"})
        EXPECT_FALSE(m_stand->target(QString::fromLatin1(asks))) << asks;
    EXPECT_FALSE(m_stand->frame().showPage(QString::fromLatin1(ui::Frame::kRecord)));
    EXPECT_EQ(m_stand->frame().current(),
              m_stand->frame().page(QString::fromLatin1(ui::Frame::kBench)));
    // Every target tapped once: it may be refused, but the window shows nothing but the bench.
    for (const ui::TapButton* each : targets()) {
        if (!m_stand->model().isInCriticalWindow())
            return;
        if (each->isVisible() && each->isEnabled())
            m_stand->tap(each->place());
        EXPECT_FALSE(m_stand->target(QStringLiteral("ask-pane"))) << each->place().toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(Bench, BenchWalk, testing::ValuesIn(cases()), nameOfCase);

}  // namespace
}  // namespace bathside::test
