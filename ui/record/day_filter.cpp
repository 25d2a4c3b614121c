#include "ui/record/day_filter.h"

namespace bathside::ui {

EntryWish entryWishOf(const DayWish& wish)
{
    EntryWish entries{.orMended = wish.group == Group::Deviations,
                      .person = wish.person,
                      .bag = wish.bag,
                      .lot = wish.lot};
    if (wish.group != Group::All)
        entries.isOfKind = [group = wish.group](std::string_view kind) {
            return groupOf(kind) == group;
        };
    return entries;
}

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

bool DayFilter::isOfGroup(const DayRow& row) const
{
    if (m_wish.group == Group::All || row.group == m_wish.group)
        return true;
    return m_wish.group == Group::Deviations && row.mend != DayRow::Mend::None;
}

bool DayFilter::filterAcceptsRow(int row, const QModelIndex&) const
{
    const DayRow& one = m_day.rows()[static_cast<std::size_t>(row)];
    return isOfGroup(one) && (m_wish.person.empty() || one.about.persons.contains(m_wish.person)) &&
           (m_wish.bag.empty() || m_day.isAboutBag(one, m_wish.bag)) &&
           (m_wish.lot.empty() || m_day.isAboutLot(one, m_wish.lot));
}

}  // namespace bathside::ui
