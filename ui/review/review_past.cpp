// A case from a shift before: what that shift knew of it, read from the record when it is looked
// at.

#include "core/record/shift_fold.h"
#include "ui/review/review_page.h"
#include "ui/text/review.h"

namespace bathside::ui {

void ReviewPage::connectPast()
{
    connect(&m_parts.past, &ShiftSource::entriesRead, this,
            [this](Seq of, const std::vector<Entry>& entries) {
                if (of == m_past.asked)
                    m_past.entries.insert(m_past.entries.end(), entries.begin(), entries.end());
            });
    connect(
        &m_parts.past, &ShiftSource::shiftRead, this, [this](Seq of, const AroundShift& around) {
            if (of != m_past.asked)
                return;
            m_past.state = around.trouble ? std::nullopt
                                          : shiftOf(around.context, m_past.entries, around.later);
            m_past.of = std::exchange(m_past.asked, 0);
            m_past.entries.clear();
            place();
            render();
        });
}

void ReviewPage::askPast(const ReviewCase& one)
{
    m_past = {};
    if (!one.isCarried)
        return;
    m_past.asked = one.seq();
    m_parts.past.readShift(one.seq());
}

/// As the shift knew it in which it came up; as it stands today where that is not known.
ReviewPage::Told ReviewPage::told(const ReviewCase& one) const
{
    if (!one.isCarried || m_past.of != one.seq() || !m_past.state)
        return {m_model.state(), one};
    for (const ReviewCase& then : reviewCases(m_past.state->bench)) {
        if (then.seq() == one.seq())
            return {*m_past.state, then};
    }
    return {m_model.state(), one};
}

/// Which day and entry it is from, and what is known of that shift.
QString ReviewPage::fromText(const ReviewCase& one) const
{
    const QString from = earlierText(one, zoneNow());
    if (m_past.asked == one.seq())
        return tr("a shift before, %1; it is being read …", "day, entry").arg(from);
    if (&told(one).state == &m_model.state())
        return tr("a shift before, %1; its bag and steps are on the record page", "day, entry")
            .arg(from);
    return tr("a shift before, %1", "day, entry").arg(from);
}

}  // namespace bathside::ui
