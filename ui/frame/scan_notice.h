#pragma once

// Says loudly that what was scanned is not right: WRONG LOT, what it was, what is expected, what to
// do; or, in another role, what it came to. Over the top of any page, so that the step's button
// stays free; no dialog. Gone with the next tap anywhere, which does what it does besides; with the
// next scan; with the next thing taken.

#include "ui/controls/control.h"
#include "ui/theme/role.h"

namespace bathside::ui {

class ScanNotice final : public Control {
    Q_OBJECT

public:
    static constexpr double kHighMm = 40;

    struct Words {
        QString title;                // in capitals
        QString scanned, expected{};  // empty: not shown
        QString why;
        Role role = Role::Overrun;
    };

    explicit ScanNotice(QWidget* parent);

    void say(const Words& words);
    [[nodiscard]] const Words& words() const noexcept { return m_words; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QRectF markRoom() const;

    Words m_words;
};

}  // namespace bathside::ui
