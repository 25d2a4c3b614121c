#pragma once

// What the tables of a day sheet share: a sign for nothing, times, counts.

#include <QLocale>
#include <optional>

#include "ui/print/day_sheet_tables.h"
#include "ui/text/numbers.h"
#include "ui/text/time.h"

namespace bathside::ui {

inline const QString kNone = QStringLiteral("–");

inline QString timeText(const std::optional<WallTime>& at, const std::string& zone)
{
    return at ? localTimeText(*at, zone) : kNone;
}

inline QString timeText(const std::optional<Moment>& moment, const std::string& zone)
{
    return moment ? localTimeText(moment->at.wall, zone) : kNone;
}

inline QString countOf(std::int64_t count) { return countText(count, QLocale()); }

}  // namespace bathside::ui
