#pragma once

// One lot in the stores as a target: how it stands (mark, word, colour), what it is, where, how
// many.

#include "core/stores/stores.h"
#include "ui/controls/tap_button.h"

namespace bathside::ui {

/// What a tile says of a lot besides its standing by the rules.
enum class LotLook : std::uint8_t {
    Fit,
    NearExpiry,
    Expired,
    Quarantined,
    Allowed,    // by a shift lead, for this shift
    Empty,      // none left
    Impossible  // fewer than none: more went than the record knows of
};

/// On that day; `nearDays` is the card's.
[[nodiscard]] LotLook lookOf(const Stores& stores, const StockLot& lot, std::chrono::sys_days day,
                             std::int64_t nearDays);
[[nodiscard]] QString lookText(LotLook look);
[[nodiscard]] Role roleOf(LotLook look);

class LotTile final : public TapButton {
    Q_OBJECT

public:
    using TapButton::TapButton;

    /// `next`: the next ampoules are of it.
    void setLot(const StockLot& lot, LotLook look, bool next);
    [[nodiscard]] LotLook look() const noexcept { return m_look; }
    [[nodiscard]] const Stock& lot() const noexcept { return m_of; }

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintMarks(QPainter& painter) const override;

private:
    struct Rooms;
    [[nodiscard]] Rooms rooms() const;

    Stock m_of;
    LotLook m_look = LotLook::Fit;
    QString m_standing, m_expiry, m_count;
};

}  // namespace bathside::ui
