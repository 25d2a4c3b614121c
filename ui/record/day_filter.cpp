#include "ui/record/day_filter.h"

namespace bathside::ui {

DayFilter::DayFilter(DayModel& day, QObject* parent) : QSortFilterProxyModel(parent), m_day(day)
{
    setSourceModel(&day);
}

void DayFilter::wish(const DayWish& wish)
{
    if (wish == m_wish)
        return;
    m_wish = wish;
    invalidateFilter();
}

const DayRow* DayFilter::at(const QModelIndex& shown) const
{
    if (!shown.isValid())
        return nullptr;
    return &m_day.rows()[static_cast<std::size_t>(mapToSource(shown).row())];
}

bool DayFilter::filterAcceptsRow(int row, const QModelIndex&) const
{
    const DayRow& one = m_day.rows()[static_cast<std::size_t>(row)];
    switch (m_wish.by) {
        case DayWish::By::Group:
            if (m_wish.group == Group::Deviations && one.mend != DayRow::Mend::None)
                return true;
            return m_wish.group == Group::All || one.group == m_wish.group;
        case DayWish::By::Person:
            return one.about.persons.contains(m_wish.id);
        case DayWish::By::Bag:
            return m_day.isAboutBag(one, m_wish.id);
        case DayWish::By::Lot:
            return m_day.isAboutLot(one, m_wish.id);
    }
    Q_UNREACHABLE();
}

}  // namespace bathside::ui
