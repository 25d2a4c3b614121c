// The scanner as a keyboard, against real widgets: what is scanned reaches none of them, what is
// typed reaches them all.

#include "ui/frame/scan_listener.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>
#include <QWindow>
#include <random>

#include <gtest/gtest.h>

#include "ui/controls/pedal.h"
#include "ui/controls/step_button.h"

namespace bathside::ui {
namespace {

/// Keeps the keys that come to it.
class Field final : public QLineEdit {
public:
    std::vector<quint64> stamps;

protected:
    void keyPressEvent(QKeyEvent* event) override
    {
        stamps.push_back(event->timestamp());
        QLineEdit::keyPressEvent(event);
    }
};

class Listening : public testing::Test {
protected:
    void SetUp() override
    {
        for (QWidget* each : std::initializer_list<QWidget*>{&field, &button, &step})
            layout.addWidget(each);
        button.setAutoDefault(true);
        pedal.setTarget(&step);
        window.show();
        window.activateWindow();
        field.setFocus();
        QCoreApplication::processEvents();
        ASSERT_TRUE(field.hasFocus());
    }

    /// One key as the window system brings it: to the window, with its time.
    void key(QEvent::Type type, int code, const QString& text, Qt::KeyboardModifiers modifiers = {})
    {
        QKeyEvent event(type, code, modifiers, text);
        event.setTimestamp(now);
        QCoreApplication::sendEvent(window.windowHandle(), &event);
    }
    void stroke(int code, const QString& text, Qt::KeyboardModifiers modifiers = {})
    {
        key(QEvent::KeyPress, code, text, modifiers);
        key(QEvent::KeyRelease, code, text, modifiers);
    }
    void sign(QChar c) { stroke(c.toUpper().unicode(), QString(c)); }
    void enter() { stroke(Qt::Key_Return, QStringLiteral("\r")); }
    void type(const QString& text, quint64 gap)
    {
        for (const QChar c : text) {
            sign(c);
            now += gap;
        }
    }
    void scan(const QString& text)
    {
        type(text, 8);
        enter();
    }
    bool fieldHas(const QString& text)
    {
        return QTest::qWaitFor([&] { return field.text() == text; });
    }

    QWidget window;
    QVBoxLayout layout{&window};
    Field field;
    QPushButton button;
    StepButton step{QStringLiteral("step")};
    Pedal pedal{&window};
    ScanListener listener{&window};
    QSignalSpy scans{&listener, &ScanListener::scanned};
    QSignalSpy clicks{&button, &QPushButton::clicked};
    QSignalSpy presses{&step, &TapButton::pressed};
    QSignalSpy returns{&field, &QLineEdit::returnPressed};
    quint64 now = 5'000;
};

TEST_F(Listening, aScanReachesNoWidget)
{
    scan(QStringLiteral("]d20109521234500018"));
    ASSERT_EQ(scans.count(), 1);
    EXPECT_EQ(scans.first().first().toString(), QStringLiteral("]d20109521234500018"));
    EXPECT_EQ(scans.first().last().value<TapStamp>().inputMs, now);
    EXPECT_TRUE(field.text().isEmpty());
    EXPECT_TRUE(field.stamps.empty());
    EXPECT_EQ(returns.count(), 0);
}

TEST_F(Listening, itsEnterPressesNoButton)
{
    button.setFocus();
    scan(QStringLiteral("K0789"));
    now += 10;
    enter();  // some send two
    EXPECT_EQ(scans.count(), 1);
    EXPECT_EQ(clicks.count(), 0);
    step.setFocus();
    now += 500;
    scan(QStringLiteral("K 789"));
    EXPECT_EQ(scans.count(), 2);
    EXPECT_EQ(presses.count(), 0);
    now += 500;
    button.setFocus();
    enter();  // a person's
    EXPECT_EQ(clicks.count(), 1);
}

TEST_F(Listening, worksWithoutAnyFocus)
{
    field.clearFocus();
    scan(QStringLiteral("BSP.MK.S"));
    EXPECT_EQ(scans.count(), 1);
}

TEST_F(Listening, typingArrivesWholeAndWithItsTimes)
{
    type(QStringLiteral("lot K07"), 120);
    EXPECT_TRUE(fieldHas(QStringLiteral("lot K07")));
    EXPECT_EQ(field.stamps, (std::vector<quint64>{5000, 5120, 5240, 5360, 5480, 5600, 5720}));
    enter();
    EXPECT_EQ(returns.count(), 1);
    EXPECT_EQ(scans.count(), 0);
}

TEST_F(Listening, aFastWordWithoutAnEndIsTyped)
{
    type(QStringLiteral("abcdefgh"), 10);
    EXPECT_TRUE(field.text().isEmpty());
    EXPECT_TRUE(fieldHas(QStringLiteral("abcdefgh")));
    EXPECT_EQ(scans.count(), 0);
}

TEST_F(Listening, typingStaysBeforeTheKeyThatEndsIt)
{
    type(QStringLiteral("ab"), 10);
    stroke(Qt::Key_Home, {});
    now += 100;
    type(QStringLiteral("c"), 100);
    EXPECT_TRUE(fieldHas(QStringLiteral("cab")));
}

TEST_F(Listening, thePedalIsNotHeldUp)
{
    step.setFocus();
    stroke(Qt::Key_F13, {});
    stroke(Qt::Key_Space, QStringLiteral(" "));
    EXPECT_EQ(presses.count(), 2);
}

TEST_F(Listening, keepsWhatWasTypedBeforeAScan)
{
    type(QStringLiteral("ab"), 120);
    scan(QStringLiteral("K0789"));
    EXPECT_EQ(scans.first().first().toString(), QStringLiteral("K0789"));
    EXPECT_EQ(field.text(), QStringLiteral("ab"));
}

TEST_F(Listening, takesFnc1AndCapitals)
{
    type(QStringLiteral("10K07"), 5);
    key(QEvent::KeyPress, Qt::Key_Control, {});
    stroke(Qt::Key_BracketRight, QStringLiteral("\x1d"), Qt::ControlModifier);
    key(QEvent::KeyRelease, Qt::Key_Control, {});
    type(QStringLiteral("21"), 5);
    key(QEvent::KeyPress, Qt::Key_Shift, {}, Qt::ShiftModifier);
    stroke(Qt::Key_S, QStringLiteral("S"), Qt::ShiftModifier);
    key(QEvent::KeyRelease, Qt::Key_Shift, {});
    stroke(Qt::Key_Tab, QStringLiteral("\t"));
    ASSERT_EQ(scans.count(), 1);
    EXPECT_EQ(scans.first().first().toString(), QStringLiteral("10K07\x1d"
                                                               "21S"));
    EXPECT_TRUE(field.hasFocus());
}

TEST_F(Listening, takesALineFeedAsTheEnd)
{
    type(QStringLiteral("K0789"), 5);
    stroke('\n', QStringLiteral("\n"));
    now += 500;
    type(QStringLiteral("K0780"), 5);
    stroke(Qt::Key_J, QStringLiteral("\n"), Qt::ControlModifier);
    EXPECT_EQ(scans.count(), 2);
    EXPECT_TRUE(field.text().isEmpty());
}

TEST_F(Listening, leavesOtherWindowsAlone)
{
    QWidget elsewhere;
    QLineEdit there(&elsewhere);
    elsewhere.show();
    for (const char c : {'a', 'b', 'c', 'd'}) {
        QKeyEvent event(QEvent::KeyPress, c, {}, QString(QLatin1Char(c)));
        event.setTimestamp(++now);
        QCoreApplication::sendEvent(&there, &event);
    }
    EXPECT_EQ(there.text(), QStringLiteral("abcd"));
}

TEST_F(Listening, survivesTheReceiversEnd)
{
    auto* gone = new QLineEdit(&window);
    QKeyEvent event(QEvent::KeyPress, Qt::Key_A, {}, QStringLiteral("a"));
    event.setTimestamp(now);
    QCoreApplication::sendEvent(gone, &event);
    delete gone;
    now += 500;
    type(QStringLiteral("b"), 10);
    EXPECT_TRUE(fieldHas(QStringLiteral("b")));
}

// Any mixture of a person and a scanner: each sign is typed or scanned, once and in order.
TEST_F(Listening, losesNoKey)
{
    std::mt19937_64 random(3);
    QString typed, scannedText, expectedScans;
    for (int word = 0; word < 300; ++word) {
        now += 100;
        QString text;
        for (auto left = 4 + random() % 8; left > 0; --left)
            text += QChar(static_cast<char16_t>(u'a' + random() % 26));
        if (random() % 2 == 0) {
            scan(text);
            expectedScans += text;
        } else {
            for (const QChar c : text) {
                sign(c);
                now += random() % 3 == 0 ? 10 : 40 + random() % 200;
            }
            typed += text;
        }
    }
    EXPECT_TRUE(fieldHas(typed));
    for (const auto& each : scans)
        scannedText += each.first().toString();
    EXPECT_EQ(scannedText, expectedScans);
}

}  // namespace
}  // namespace bathside::ui
