#pragma once

// A hand for playing a day: presses the real widgets of the window by their places and types on its
// pads.
//
// Every press is an event as the input system would send it, with a time stamp of its own that runs
// on by a second a press. What cannot be pressed (no such place, hidden, switched off) is
// remembered as the first thing that went wrong, and nothing is pressed from then on. UI thread.

#include <QString>
#include <QWidget>

namespace bathside::ui {
class TapButton;
}

namespace bathside::app {

class Hand {
public:
    explicit Hand(QWidget& window) : m_window(window) {}

    /// The visible target of that place; null when there is none.
    [[nodiscard]] ui::TapButton* find(const QString& place) const;
    [[nodiscard]] bool sees(const QString& place) const { return find(place); }

    void press(const QString& place);
    /// Digits and the decimal sign on the number pad, then its set key.
    void enterNumber(qint64 value, int decimals);
    /// On the letter pad, whose suggestion is deleted first; by key where the pad has no such sign.
    void enterText(const QString& text);

    void fail(const QString& why);
    [[nodiscard]] bool failed() const { return !m_wrong.isEmpty(); }
    [[nodiscard]] const QString& wrong() const { return m_wrong; }

private:
    void typeKey(QWidget& pad, QChar sign);

    QWidget& m_window;
    QString m_wrong;
    quint64 m_inputMs = 1'000'000;
};

}  // namespace bathside::app
