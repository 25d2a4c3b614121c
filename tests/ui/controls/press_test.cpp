// What counts as a press, and what does not.

#include <QAccessible>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

#include "ui/controls/accessible.h"
#include "ui/controls/lane_view.h"
#include "ui/controls/letter_pad.h"
#include "ui/controls/number_pad.h"
#include "ui/controls/pedal.h"
#include "ui/controls/step_button.h"
#include "ui/text/language.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

class Press : public testing::Test {
protected:
    static void SetUpTestSuite() { installAccessibility(); }
    void SetUp() override
    {
        layout.addWidget(&step);
        layout.addWidget(&other);
        step.setWord(QStringLiteral("OPENED"));
        window.show();
        window.activateWindow();
        step.setFocus();
        QCoreApplication::processEvents();
    }

    QWidget window;
    QVBoxLayout layout{&window};
    StepButton step{QStringLiteral("step")};
    TapButton other{QStringLiteral("other")};
    QSignalSpy presses{&step, &TapButton::pressed};
    QSignalSpy others{&other, &TapButton::pressed};
};

TEST_F(Press, countsWhenTheFingerComesDown)
{
    QTest::mousePress(&step, Qt::LeftButton);
    EXPECT_EQ(presses.count(), 1);
    EXPECT_TRUE(step.isDown());
    QTest::mouseRelease(&step, Qt::LeftButton);
    EXPECT_EQ(presses.count(), 1);
}

TEST_F(Press, countsWhenTheFingerRollsOff)
{
    QTest::mousePress(&step, Qt::LeftButton, {}, step.rect().center());
    QTest::mouseMove(&step, QPoint(-50, -50));
    QTest::mouseRelease(&step, Qt::LeftButton, {}, QPoint(-50, -50));
    EXPECT_EQ(presses.count(), 1);
}

TEST_F(Press, doesNotCountWhenTheFingerRollsOn)
{
    QTest::mousePress(&window, Qt::LeftButton, {}, QPoint(1, 1));
    QTest::mouseMove(&step, step.rect().center());
    QTest::mouseRelease(&step, Qt::LeftButton);
    EXPECT_EQ(presses.count(), 0);
}

TEST_F(Press, secondOfADoubleClickCountsToo)
{
    QTest::mouseClick(&step, Qt::LeftButton);
    QTest::mouseDClick(&step, Qt::LeftButton);
    EXPECT_EQ(presses.count(), 2);
}

TEST_F(Press, carriesTheInputsOwnTime)
{
    QMouseEvent event(QEvent::MouseButtonPress, QPointF(5, 5), step.mapToGlobal(QPointF(5, 5)),
                      Qt::LeftButton, Qt::LeftButton, {});
    event.setTimestamp(123456);
    QCoreApplication::sendEvent(&step, &event);
    ASSERT_EQ(presses.count(), 1);
    EXPECT_EQ(presses.first().first().value<TapStamp>().inputMs, 123456u);
}

TEST_F(Press, touchCountsAtItsBeginningOnly)
{
    auto* panel = QTest::createTouchDevice();
    QTest::touchEvent(&window, panel).press(1, step.geometry().center(), &window);
    EXPECT_EQ(presses.count(), 1);
    QTest::touchEvent(&window, panel).move(1, QPoint(2, 2), &window);
    QTest::touchEvent(&window, panel).release(1, QPoint(2, 2), &window);
    EXPECT_EQ(presses.count(), 1);
}

TEST_F(Press, twoFingersOnTwoTargetsAreTwoPresses)
{
    auto* panel = QTest::createTouchDevice();
    QTest::touchEvent(&window, panel).press(1, step.geometry().center(), &window);
    QTest::touchEvent(&window, panel).stationary(1).press(2, other.geometry().center(), &window);
    EXPECT_EQ(presses.count(), 1);
    EXPECT_EQ(others.count(), 1);
    QTest::touchEvent(&window, panel)
        .release(1, step.geometry().center(), &window)
        .release(2, other.geometry().center(), &window);
}

TEST_F(Press, otherButtonsOfTheMouseDoNot)
{
    QTest::mousePress(&step, Qt::RightButton);
    QTest::mousePress(&step, Qt::MiddleButton);
    EXPECT_EQ(presses.count(), 0);
}

TEST_F(Press, enterNeverDoes)
{
    Pedal pedal(&window);
    pedal.setTarget(&step);
    for (TapButton* focused : {static_cast<TapButton*>(&step), &other}) {
        focused->setFocus();
        QTest::keyClick(focused, Qt::Key_Return);
        QTest::keyClick(focused, Qt::Key_Enter);
    }
    pedal.setKey(Qt::Key_Return);  // not even when asked to
    QTest::keyClick(&step, Qt::Key_Return);
    EXPECT_EQ(presses.count() + others.count(), 0);
}

TEST_F(Press, spaceDoesOnceHoweverLongItIsHeld)
{
    QTest::keyPress(&step, Qt::Key_Space);
    QKeyEvent again(QEvent::KeyPress, Qt::Key_Space, {}, QStringLiteral(" "), true);
    QCoreApplication::sendEvent(&step, &again);
    QTest::keyRelease(&step, Qt::Key_Space);
    EXPECT_EQ(presses.count(), 1);
}

TEST_F(Press, fingersDoNotMoveTheFocus)
{
    QTest::mouseClick(&other, Qt::LeftButton);
    EXPECT_TRUE(step.hasFocus());
    EXPECT_FALSE(other.hasFocus());
}

TEST_F(Press, unavailableIsToldAndDeafIsNot)
{
    step.setReason(QStringLiteral("No ampoule is out of the cryogen yet."));
    QTest::mouseClick(&step, Qt::LeftButton);
    EXPECT_EQ(presses.count(), 1);
    step.setEnabled(false);
    QTest::mouseClick(&step, Qt::LeftButton);
    QTest::keyClick(&step, Qt::Key_Space);
    EXPECT_EQ(presses.count(), 1);
}

TEST_F(Press, isSeenForAMomentAndNotForEver)
{
    QTest::mouseClick(&step, Qt::LeftButton);
    EXPECT_TRUE(step.isDown());
    EXPECT_TRUE(QTest::qWaitFor([this] { return !step.isDown(); }));
}

TEST_F(Press, whatIsHiddenUnderTheFingerIsNotDownWhenItShowsAgain)
{
    QObject::connect(&other, &TapButton::pressed, &other, [this] { other.hide(); });
    QTest::mousePress(&other, Qt::LeftButton);
    ASSERT_FALSE(other.isVisible());
    other.show();
    EXPECT_FALSE(other.isDown());
}

TEST_F(Press, pedalIsTheBigButtonWhereverTheFocusIs)
{
    Pedal pedal(&window);
    pedal.setTarget(&step);
    other.setFocus();
    QTest::keyClick(&other, Qt::Key_F13);
    EXPECT_EQ(presses.count(), 1);
    pedal.setKey(Qt::Key_B);
    QTest::keyClick(&other, Qt::Key_B);
    EXPECT_EQ(presses.count(), 2);
    EXPECT_EQ(others.count(), 0);
}

TEST_F(Press, spaceIsTheBigButtonUnlessTheFocusWasMoved)
{
    Pedal pedal(&window);
    pedal.setTarget(&step);
    QTest::keyClick(&step, Qt::Key_Space);
    EXPECT_EQ(presses.count(), 1);
    other.setFocus();
    QTest::keyClick(&other, Qt::Key_Space);
    EXPECT_EQ(presses.count(), 1);
    EXPECT_EQ(others.count(), 1);
    QTest::keyClick(&other, Qt::Key_Escape);
    EXPECT_TRUE(step.hasFocus());
}

TEST_F(Press, assistiveTechnologySeesAButtonAndCanPressIt)
{
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(&step);
    ASSERT_NE(seen, nullptr);
    EXPECT_EQ(seen->role(), QAccessible::Button);
    EXPECT_EQ(seen->text(QAccessible::Name), QStringLiteral("OPENED"));
    seen->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_EQ(presses.count(), 1);
}

// --- what is made of targets
// ---------------------------------------------------------------------------

TEST(LaneViewTest, endsInTwoTapsWithinTheLane)
{
    LaneView lane(QStringLiteral("lane.1"));
    lane.setEnds({{.id = QStringLiteral("broken"), .word = QStringLiteral("broken")}},
                 QStringLiteral("lost"), QStringLiteral("keep"));
    lane.setState({.number = 1, .state = QStringLiteral("in bath")});
    lane.resize(sizeOfMm(120, 20));
    lane.show();
    QSignalSpy advanced(&lane, &LaneView::advanced), ended(&lane, &LaneView::ended);

    QTest::mousePress(lane.findChild<TapButton*>(QStringLiteral("lane.1")), Qt::LeftButton);
    EXPECT_EQ(advanced.count(), 1);
    QTest::mousePress(lane.findChild<TapButton*>(QStringLiteral("lane.1.end")), Qt::LeftButton);
    EXPECT_TRUE(lane.endsAreOpen());
    EXPECT_EQ(ended.count(), 0);
    QTest::mousePress(lane.findChild<TapButton*>(QStringLiteral("lane.1.end.broken")),
                      Qt::LeftButton);
    ASSERT_EQ(ended.count(), 1);
    EXPECT_EQ(ended.first().first().toString(), QStringLiteral("broken"));
    EXPECT_FALSE(lane.endsAreOpen());
    EXPECT_EQ(advanced.count(), 1);
}

TEST(LaneViewTest, targetsAreTwentyMillimetresAndMore)
{
    LaneView lane(QStringLiteral("lane.1"));
    lane.setEnds({{.id = QStringLiteral("a"), .word = QStringLiteral("a")},
                  {.id = QStringLiteral("b"), .word = QStringLiteral("b")},
                  {.id = QStringLiteral("c"), .word = QStringLiteral("c")}},
                 QStringLiteral("lost"), QStringLiteral("keep"));
    lane.setState({.number = 1});
    lane.resize(lane.sizeHint());
    lane.show();
    const int least = theme().metrics().ceilPx(Metrics::kMinimum);
    for (int turn = 0; turn < 2; ++turn) {
        for (const auto* target : lane.findChildren<TapButton*>()) {
            if (!target->isVisible())
                continue;
            EXPECT_GE(target->width(), least) << qPrintable(target->place());
            EXPECT_GE(target->height(), least) << qPrintable(target->place());
        }
        lane.findChild<TapButton*>(QStringLiteral("lane.1.end"))->press({});
    }
}

class Pads : public testing::Test {
protected:
    void TearDown() override { language.use(QStringLiteral("en")); }

    static void tap(QWidget& pad, const QString& id)
    {
        auto* key = pad.findChild<TapButton*>(pad.objectName() + u'.' + id);
        ASSERT_NE(key, nullptr) << qPrintable(id);
        key->press({});
    }

    Language language;
};

NumberQuestion bath()
{
    return {.title = QStringLiteral("Bath"),
            .unit = QStringLiteral("°C"),
            .lowest = 1000,
            .highest = 60000,
            .decimals = 3,
            .typedDecimals = 1};
}

TEST_F(Pads, numberIsToldInTheSmallestUnit)
{
    NumberPad pad(QStringLiteral("bath"));
    QSignalSpy accepted(&pad, &NumberPad::accepted);
    pad.ask(bath());
    for (const char* key : {"2", "8", "sign", "1", "5", "set"})  // the second decimal is not taken
        tap(pad, QString::fromLatin1(key));
    ASSERT_EQ(accepted.count(), 1);
    EXPECT_EQ(accepted.first().first().toLongLong(), 28100);
}

TEST_F(Pads, numberTakesPointAndTheLocalesSignFromAKeyboard)
{
    ASSERT_TRUE(language.use(QStringLiteral("es")));
    for (const char* typed : {"28.1", "28,1"}) {
        NumberPad pad(QStringLiteral("bath"));
        pad.ask(bath());
        QTest::keyClicks(&pad, QString::fromLatin1(typed));
        EXPECT_EQ(pad.typed(), QStringLiteral("28,1"));
        EXPECT_EQ(pad.value(), 28100);
    }
}

TEST_F(Pads, numberOutOfRangeIsRefusedInPlaceAndNotTold)
{
    NumberPad pad(QStringLiteral("bath"));
    QSignalSpy accepted(&pad, &NumberPad::accepted), refused(&pad, &NumberPad::refused);
    pad.ask(bath());
    tap(pad, QStringLiteral("set"));  // nothing typed
    tap(pad, QStringLiteral("9"));
    tap(pad, QStringLiteral("9"));
    tap(pad, QStringLiteral("set"));
    EXPECT_EQ(refused.count(), 2);
    EXPECT_EQ(accepted.count(), 0);
    EXPECT_EQ(pad.typed(), QStringLiteral("99"));
}

TEST_F(Pads, neitherPadIsSetByEnter)
{
    NumberPad number(QStringLiteral("n"));
    LetterPad letter(QStringLiteral("l"));
    QSignalSpy numbers(&number, &NumberPad::accepted), letters(&letter, &LetterPad::accepted);
    number.ask(bath());
    letter.ask({.title = QStringLiteral("Initials")});
    QTest::keyClicks(&number, QStringLiteral("28"));
    QTest::keyClicks(&letter, QStringLiteral("mk"));
    for (QWidget* pad : {static_cast<QWidget*>(&number), static_cast<QWidget*>(&letter)})
        QTest::keyClick(pad, Qt::Key_Return);
    EXPECT_EQ(numbers.count() + letters.count(), 0);
    EXPECT_EQ(letter.typed(), QStringLiteral("MK"));
    tap(letter, QStringLiteral("set"));
    ASSERT_EQ(letters.count(), 1);
    EXPECT_EQ(letters.first().first().toString(), QStringLiteral("MK"));
}

TEST_F(Pads, letterPadRefusesTooShortAndStopsAtTheLongest)
{
    LetterPad pad(QStringLiteral("l"));
    QSignalSpy accepted(&pad, &LetterPad::accepted), refused(&pad, &LetterPad::refused);
    pad.ask({.title = QStringLiteral("Lot"), .shortest = 2, .longest = 3});
    tap(pad, QStringLiteral("A"));
    tap(pad, QStringLiteral("set"));
    EXPECT_EQ(refused.count(), 1);
    for (int i = 0; i < 5; ++i)
        tap(pad, QStringLiteral("B"));
    EXPECT_EQ(pad.typed(), QStringLiteral("ABB"));
}

}  // namespace
}  // namespace bathside::ui

Q_DECLARE_METATYPE(bathside::ui::TapStamp)
