#pragma once

// The rows of the day that are wanted. Rows come and go; nothing is reset. UI thread.

#include <QSortFilterProxyModel>

#include "ui/record/day_model.h"

namespace bathside::ui {

/// All that is set must hold; the default shows everything.
struct DayWish {
    Group group = Group::All;
    std::string person, bag, lot;  // empty: any
    friend bool operator==(const DayWish&, const DayWish&) = default;
};

/// The same, as the source is asked for it.
[[nodiscard]] EntryWish entryWishOf(const DayWish& wish);

class DayFilter final : public QSortFilterProxyModel {
    Q_OBJECT

public:
    explicit DayFilter(DayModel& day, QObject* parent = nullptr);

    void wish(const DayWish& wish);
    /// Looks again: what an entry belongs to may only show later.
    void look() { invalidateFilter(); }
    [[nodiscard]] const DayWish& wished() const noexcept { return m_wish; }
    /// The row shown there.
    [[nodiscard]] const DayRow* at(const QModelIndex& shown) const;

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

private:
    [[nodiscard]] bool isOfGroup(const DayRow& row) const;

    DayModel& m_day;
    DayWish m_wish;
};

}  // namespace bathside::ui
