#pragma once

// The true size of the screen, measured with a bank card: an outline is made wider or narrower
// until a card held against it fits; that gives the correction of the pixel pitch.
//
// The outline is ISO/IEC 7810 ID-1, 85.60 × 53.98 mm. Nothing else on the screen changes size until
// it is said to fit. Where the outline is higher than its room only its sides are drawn whole.
// Places: setup.wider, .narrower, .fits, .gauge-close.

#include "ui/controls/control.h"
#include "ui/models/preferences.h"

namespace bathside::ui {

class Label;
class TapButton;

class CardGauge final : public Control {
    Q_OBJECT

public:
    static constexpr double kStep = 1.01;  // a tap's change

    CardGauge(Preferences& preferences, QWidget* parent);

    void begin();
    /// The outline's width by the pitch in force, mm.
    [[nodiscard]] double drawnMm() const noexcept { return m_drawnMm; }
    [[nodiscard]] QRectF outline() const;
    [[nodiscard]] QSize sizeHint() const override { return sizeOfMm(150, 85); }
    void retranslate();

signals:
    void closed();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void themeChanged() override { place(); }

private:
    void place();
    void scale(double by);
    void take();

    Preferences& m_preferences;
    Label* m_hint;
    TapButton *m_narrower, *m_wider, *m_fits, *m_close;
    double m_drawnMm = 0;
};

}  // namespace bathside::ui
