#pragma once

// A bag in use: which, on which line, how old against its limit, what is due next. A target.

#include "ui/controls/tap_button.h"

namespace bathside::ui {

struct BagState {
    QString name{};   // "bag 4"
    QString line{};   // "line A"; empty: not hung
    QString left{};   // "41 min left", "+2 min over", "on hold: leak"
    QString next{};   // "swirl in 2 min"
    QString level{};  // the level's word when it is not good
    Role role = Role::Good;
    double used = -1;  // share of its life that is over, 1 at the limit; below zero: not running
    double headsUp = -1;
    friend bool operator==(const BagState&, const BagState&) = default;
};

class BagTile final : public TapButton {
    Q_OBJECT

public:
    explicit BagTile(const QString& place, QWidget* parent = nullptr);

    void setState(const BagState& state);
    [[nodiscard]] const BagState& state() const noexcept { return m_state; }

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintMarks(QPainter& painter) const override;
    void describe() override;

private:
    struct Rooms;
    [[nodiscard]] Rooms rooms() const;

    BagState m_state;
};

}  // namespace bathside::ui
