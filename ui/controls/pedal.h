#pragma once

// One plain key is the big button, wherever the focus is, so that a foot pedal works from the first
// day.
//
// The pedal's own key (F13 unless set otherwise) always presses the target. Space does too, unless
// the keyboard's focus is on something else that takes keys (Tab, or a pad that asks); Escape
// brings it back. Key repeats count once; Enter and Return do nothing. Watches the window it is
// given; the target must be visible and enabled.

#include <QObject>
#include <QPointer>

#include "ui/controls/step_button.h"

namespace bathside::ui {

class Pedal final : public QObject {
    Q_OBJECT

public:
    /// Watches everything in `window`. The target may change with the page: none switches the pedal
    /// off.
    explicit Pedal(QWidget* window);

    void setTarget(TapButton* target);
    void setKey(int key);  // a Qt::Key; Return, Enter and Escape are refused

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] bool isFor(int key) const;

    QWidget* m_window;
    QPointer<TapButton> m_target;
    int m_key;
};

}  // namespace bathside::ui
