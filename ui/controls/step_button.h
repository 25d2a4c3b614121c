#pragma once

// The next step: the biggest thing on the screen, at least 60 × 40 mm.
//
// Its word says what has just been DONE ("OPENED"), its line for how many ("2 ampoules"). Role
// Primary by default; Quiet with a reason where nothing can go.

#include "ui/controls/tap_button.h"

namespace bathside::ui {

class StepButton final : public TapButton {
    Q_OBJECT

public:
    explicit StepButton(const QString& place, QWidget* parent = nullptr);

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
};

}  // namespace bathside::ui
