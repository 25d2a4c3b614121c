#pragma once

// What can hurt at the bench, in one strip that is always in sight at set-up. As high as its words
// need. No target. (Spec: the job, section 5. Usual cautions; the label and local rules win.)

#include "ui/controls/control.h"

namespace bathside::ui {

class Cautions final : public Control {
    Q_OBJECT

public:
    using Control::Control;

    [[nodiscard]] int heightFor(int width) const;
    [[nodiscard]] QSize sizeHint() const override { return sizeOfMm(150, 26); }
    void retranslate();

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QRectF room(double width, double height) const;
};

}  // namespace bathside::ui
