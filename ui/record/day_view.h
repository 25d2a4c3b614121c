#pragma once

// The day's rows to look at: a list that is paged by targets, picked by a tap or the arrow keys,
// and never edited.
//
// A row: its tick, local time and initials, the sentence; what was corrected or taken back says so
// in words and with a mark. Rows are as high as their sentence needs.

#include <QListView>

#include "ui/record/day_filter.h"

namespace bathside::ui {

class DayView final : public QListView {
    Q_OBJECT

public:
    DayView(DayFilter& rows, QWidget* parent);

    void step(int rows);
    void page(int pages);
    void goTo(int shownRow);
    [[nodiscard]] bool showsFirst() const;
    [[nodiscard]] bool showsLast() const;
    /// Every row's words are whole at the present width.
    [[nodiscard]] bool fits() const;

signals:
    void picked();

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void dress();

    DayFilter& m_rows;
};

}  // namespace bathside::ui
