#pragma once

// The shift reckoned up, row by row: whether it adds up (mark, word, colour), what, expected,
// counted, difference, and what it may differ by. What does not add up comes first. No target; what
// does not fit goes on on the next sheet.

#include "core/stores/reconcile.h"
#include "ui/controls/control.h"

namespace bathside::ui {

class ReckoningView final : public Control {
    Q_OBJECT

public:
    explicit ReckoningView(QWidget* parent = nullptr);

    void show(const Reconciliation& sums);
    [[nodiscard]] int sheets() const;
    [[nodiscard]] int sheet() const noexcept { return m_sheet; }  // from 0
    /// To the next one, after the last to the first.
    void turn();

    [[nodiscard]] QSize sizeHint() const override { return sizeOfMm(120, 60); }

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] int rowsEach() const;
    [[nodiscard]] std::vector<Reckoning> shown() const;  // of this sheet
    [[nodiscard]] QRectF rowRoom(int row) const;         // 0: the heads
    [[nodiscard]] QRectF cell(int row, int column) const;

    Reconciliation m_sums;
    int m_sheet = 0;
};

}  // namespace bathside::ui
