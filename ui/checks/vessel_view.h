#pragma once

// The cryogen vessel: described once, dipped as often as the site asks; level, loss, next fill,
// vacuum and the air of its room follow.

#include "ui/checks/ask_vessel.h"

namespace bathside::ui {

class VesselView final : public CheckView {
public:
    explicit VesselView(CheckContext& context);

    [[nodiscard]] CheckSheet sheet() const override;
    [[nodiscard]] QList<CheckAction> actions() override;
    /// Null without a vessel that is described.
    [[nodiscard]] const VesselLog* log() const;

private:
    void askWhich(std::size_t from);
    void askNew();
    void askDip();
    void askFilled(std::int64_t millimetres);
    void describe();
    [[nodiscard]] VesselId vesselNow() const;

    VesselId m_vessel;  // chosen; empty: none yet
    VesselDraft m_draft;
};

}  // namespace bathside::ui
