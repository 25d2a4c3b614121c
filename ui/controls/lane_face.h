#pragma once

// The lane itself: what is drawn and tapped, without its end piece. Made and owned by LaneView.

#include "ui/controls/tap_button.h"
#include "ui/theme/metrics.h"

namespace bathside::ui {

struct LaneState {
    int number = 0;
    QString what{};   // component and lot, e.g. "serotype 3 · L-204"
    QString state{};  // where it stands, e.g. "in bath", "lost: broken"
    QString time{};   // left or over, e.g. "1:07", "+0:12"; empty: nothing runs
    QString level{};  // the level's word when it is not good, e.g. "heads-up"
    Role role = Role::Good;
    double used = -1;     // share of the limit that has burnt, 1 at the limit; below zero: no bar
    double headsUp = -1;  // where the heads-up stands on the bar; below zero: nowhere
    QString uncertain{};  // not empty: reckoned by wall time; the words that say so
    bool open =
        true;  // can still be moved on or ended; a closed lane fades back and has no end piece
    friend bool operator==(const LaneState&, const LaneState&) = default;
};

class LaneFace final : public TapButton {
    Q_OBJECT

public:
    explicit LaneFace(const QString& place, QWidget* parent = nullptr);

    [[nodiscard]] const LaneState& state() const noexcept { return m_state; }
    void setState(const LaneState& state);

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintMarks(QPainter& painter) const override;
    void describe() override;

private:
    struct Rooms;
    [[nodiscard]] Rooms rooms() const;
    [[nodiscard]] Rooms compactRooms() const;
    [[nodiscard]] bool isCompact() const;

    LaneState m_state;
};

}  // namespace bathside::ui
