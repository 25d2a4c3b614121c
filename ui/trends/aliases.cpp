#include "ui/trends/aliases.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct AliasText {
    Q_DECLARE_TR_FUNCTIONS(TrendText)
};

}  // namespace

void Aliases::learn(const std::vector<ChartPoint>& points)
{
    for (const ChartPoint& point : points) {
        if (!point.person.empty() && std::ranges::find(m_known, point.person) == m_known.end())
            m_known.push_back(point.person);
    }
}

QString Aliases::of(const PersonId& person) const
{
    if (!m_hidden || person.empty())
        return idText(person);
    const auto found = std::ranges::find(m_known, person);
    return found == m_known.end()
               ? AliasText::tr("another person")
               : AliasText::tr("person %1", "in place of a name").arg(found - m_known.begin() + 1);
}

}  // namespace bathside::ui
