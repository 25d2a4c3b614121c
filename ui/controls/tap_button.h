#pragma once

// A target: something that is tapped.
//
// Acts on the PRESS (mouse or touch; a finger that rolls off still counts; the second press of a
// double click is a press), on Space when it has the keyboard's focus, never on Enter or Return,
// which a scanner sends. Repeats are the core's business: nothing is swallowed here. Fingers never
// move the focus. At least 20 × 20 mm by its size hint.
//
// `place` names the spot on the screen for the trail and the same-place lock; it is also the
// objectName. An unavailable button looks faded and shows the reason, yet tells its press, so that
// the core refuses it and notes it. setEnabled(false) makes it deaf: for what must not be told at
// all.

#include <QString>

#include "ui/controls/control.h"
#include "ui/controls/tap_stamp.h"
#include "ui/theme/palette.h"

namespace bathside::ui {

class TapButton : public Control {
    Q_OBJECT

public:
    explicit TapButton(const QString& place, QWidget* parent = nullptr);

    [[nodiscard]] QString place() const { return objectName(); }
    [[nodiscard]] const QString& word() const noexcept { return m_word; }
    [[nodiscard]] const QString& line() const noexcept { return m_line; }
    [[nodiscard]] Role role() const noexcept { return m_role; }
    [[nodiscard]] bool isAvailable() const noexcept { return m_reason.isEmpty(); }
    [[nodiscard]] const QString& reason() const noexcept { return m_reason; }
    [[nodiscard]] bool isDown() const noexcept { return m_down; }
    [[nodiscard]] bool isChosen() const noexcept { return m_chosen; }

    void setPlace(const QString& place) { setObjectName(place); }
    void setWord(const QString& word);  // the main word
    void setLine(const QString& line);  // a smaller line under it
    void setMark(Mark mark);            // before or above the word
    void setRole(Role role);
    void setChosen(bool chosen);         // one of several, and this one holds
    void setReason(const QString& why);  // not empty: unavailable, and why
    /// Condensed letters, where a word has to fit a target of the least width.
    void setWeight(Weight weight);
    void setCapMm(double want);  // height of the word's capitals; shrinks to kSmall
    void setSizeMm(double width, double height);  // size hint; default kPrimary × kPrimary

    [[nodiscard]] QSize sizeHint() const override { return sizeOfMm(m_widthMm, m_heightMm); }

    /// As if pressed: for the pedal and for assistive technology.
    void press(TapStamp stamp);

signals:
    void pressed(const bathside::ui::TapStamp& stamp);

protected:
    bool event(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

    [[nodiscard]] QList<PlacedText> texts() const override;
    /// Marks and bars between the ground and the words.
    virtual void paintMarks(QPainter& painter) const;
    /// Inside the edge.
    [[nodiscard]] QRectF inner() const;
    /// The role's tone as it looks now: Quiet when unavailable, ink and fill swapped while pressed.
    [[nodiscard]] Tone shownTone() const;
    /// A second line's words: the reason when unavailable.
    [[nodiscard]] const QString& shownLine() const { return isAvailable() ? m_line : m_reason; }
    [[nodiscard]] Mark mark() const noexcept { return m_mark; }
    [[nodiscard]] double capMm() const noexcept { return m_capMm; }
    virtual void describe();  // sets the accessible name from the texts

private:
    struct Rooms;
    [[nodiscard]] Rooms rooms() const;
    void takeDown();
    void letGo();
    void see();
    [[nodiscard]] bool handleTouch(QEvent* event);

    QString m_word, m_line, m_reason;
    Role m_role = Role::Neutral;
    Mark m_mark = Mark::None;
    Weight m_weight = Weight::Strong;
    double m_capMm = 5, m_widthMm = 25, m_heightMm = 25;
    bool m_down = false;
    bool m_held = false;   // a finger or key is still on it
    bool m_shown = false;  // it has looked pressed long enough
    bool m_chosen = false;
};

}  // namespace bathside::ui
