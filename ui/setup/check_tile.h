#pragma once

// One check of the card as a target: its words, and beside them how it stands by shape, word and
// colour.

#include "core/bench/bench.h"
#include "ui/controls/tap_button.h"

namespace bathside::ui {

enum class CheckStanding : std::uint8_t { Open, Ok, NotOk, Overridden };

[[nodiscard]] CheckStanding standingOf(const Bench& bench, const CheckId& check);
/// "open", "needed", "ok", "not ok", "waived".
[[nodiscard]] QString standingText(CheckStanding standing, bool blocking);
[[nodiscard]] Role roleOf(CheckStanding standing, bool blocking);
[[nodiscard]] Mark markOf(CheckStanding standing);

class CheckTile final : public TapButton {
    Q_OBJECT

public:
    using TapButton::TapButton;

    void setCheck(const QString& words, CheckStanding standing, bool blocking);
    [[nodiscard]] CheckStanding standing() const noexcept { return m_standing; }

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintMarks(QPainter& painter) const override;

private:
    struct Rooms;
    [[nodiscard]] Rooms rooms() const;

    CheckStanding m_standing = CheckStanding::Open;
};

}  // namespace bathside::ui
