#pragma once

// The plan's bags, row by row, in the order in which they are pulled: which, pull, size, lots ×
// ampoules, birds, first and last bird, margin. A small margin is said by mark, word and colour.
// No target; what does not fit goes on on the next sheet.

#include "ui/controls/control.h"
#include "ui/text/plan_clock.h"
#include "ui/theme/role.h"

namespace bathside::ui {

struct BagRow {
    Role role = Role::Neutral;
    QStringList cells;
};

/// Bags that are there already come first, then new ones by their pull.
[[nodiscard]] std::vector<BagRow> bagRowsOf(const DayPlan& day, const PlanClock& clock);

class BagTable final : public Control {
    Q_OBJECT

public:
    explicit BagTable(QWidget* parent = nullptr);

    void show(std::vector<BagRow> rows);
    [[nodiscard]] const std::vector<BagRow>& rows() const noexcept { return m_rows; }
    [[nodiscard]] int sheets() const;
    [[nodiscard]] int sheet() const noexcept { return m_sheet; }  // from 0
    /// To the next one, after the last to the first.
    void turn();

    [[nodiscard]] QSize sizeHint() const override { return sizeOfMm(120, 50); }

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] double rowMm() const;
    [[nodiscard]] int rowsEach() const;
    [[nodiscard]] std::span<const BagRow> shown() const;   // of this sheet
    [[nodiscard]] QRectF cell(int row, int column) const;  // row 0: the heads

    std::vector<BagRow> m_rows;
    int m_sheet = 0;
};

}  // namespace bathside::ui
