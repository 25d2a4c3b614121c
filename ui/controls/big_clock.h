#pragma once

// Time left of the most urgent: the second biggest thing on the screen. Past the limit it counts
// up.
//
// Digits as high as the theme says for the panel (30 mm on 10 inch, 60 mm on 15.6 inch), the same
// width each, so that nothing dances. Under them what it is until, and the level by mark, word and
// colour.

#include "ui/controls/control.h"
#include "ui/theme/role.h"

namespace bathside::ui {

struct BigClockState {
    QString time{};   // "0:23", "+0:12", "41 min"
    QString unit{};   // after the digits, smaller: "min"
    QString label{};  // "until in diluent"
    QString level{};  // the level's word when it is not good
    Role role = Role::Good;
    friend bool operator==(const BigClockState&, const BigClockState&) = default;
};

class BigClock final : public Control {
    Q_OBJECT

public:
    explicit BigClock(QWidget* parent = nullptr);

    void setState(const BigClockState& state);
    [[nodiscard]] const BigClockState& state() const noexcept { return m_state; }

    [[nodiscard]] QSize sizeHint() const override;
    /// Height of the digits as they would be drawn now, mm.
    [[nodiscard]] double shownDigitsMm() const;

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    struct Rooms;
    [[nodiscard]] Rooms rooms() const;
    [[nodiscard]] QList<PlacedText> digits(const QRectF& room, const QColor& ink) const;

    BigClockState m_state;
};

}  // namespace bathside::ui
