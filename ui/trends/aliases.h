#pragma once

// Whose a point is, for display: initials, or "person 2" where names are hidden, numbered as they
// first come. Hiding changes nothing in the record.

#include <QString>
#include <vector>

#include "core/record/chart_points.h"

namespace bathside::ui {

class Aliases {
public:
    /// After those that are known.
    void learn(const std::vector<ChartPoint>& points);
    void hide(bool hidden) { m_hidden = hidden; }
    [[nodiscard]] bool areHidden() const noexcept { return m_hidden; }
    [[nodiscard]] QString of(const PersonId& person) const;

private:
    std::vector<PersonId> m_known;
    bool m_hidden = false;
};

}  // namespace bathside::ui
