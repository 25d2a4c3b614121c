#pragma once

// The plan page beside the others, with the day planned as it goes.

#include "tests/support/local_days.h"
#include "tests/ui/setup/page_stand.h"

namespace bathside::test {

/// Of a site in Europe/Amsterdam, whose zone the table has.
class PlanStand {
public:
    PlanStand(const Panel& panel, const QString& language);

    [[nodiscard]] Stand& stand() { return m_pages.stand(); }
    [[nodiscard]] const DayPlan* day();
    void show();

private:
    TableDays m_days;
    PageStand m_pages;
};

/// 07:10: two lines that one preparer can serve; a break in the first.
void planTwoLines(Stand& stand);
/// Two more: more than one preparer can do.
void planTooManyLines(Stand& stand);
/// Twenty-six lines.
void planALineForEveryLetter(Stand& stand);

/// Until 08:20 or so: a bag hangs on A, birds are counted, another bag is mixed.
void runForAnHour(Stand& stand);

}  // namespace bathside::test
