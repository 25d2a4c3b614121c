#pragma once

// The answers about the record in words: what is wrong with it and where, what was written and
// where, why not. As sheets to show.

#include "core/base/time.h"
#include "ui/models/record_source.h"
#include "ui/record/day_filter.h"
#include "ui/record/field_sheet.h"

namespace bathside::ui {

struct Sheet {
    Role role = Role::Neutral;
    QString title;
    QList<Field> fields;
};

[[nodiscard]] inline QString hexText(const Hash& hash)
{
    return QString::fromStdString(toHex(hash));
}

[[nodiscard]] QString wordOf(Group group);
/// "Thu 5 March 2026", "Thu 5 March 2026 to Sat 7 March 2026"
[[nodiscard]] QString daysText(const DayRange& days);
/// What is shown, in words; empty: everything.
[[nodiscard]] QString wishText(const DayWish& wish);
/// A sentence in plain words, without the number of the entry.
[[nodiscard]] QString flawText(const Flaw& flaw);
[[nodiscard]] QString sealFlawText(SealFlaw flaw);
[[nodiscard]] QString exportFaultText(const ExportFault& fault);
/// "this computer", or the stick's name.
[[nodiscard]] QString placeText(const RecordPlace& place);

[[nodiscard]] Sheet sheetOf(const VerifyAnswer& answer);
[[nodiscard]] Sheet sheetOf(const ExportAnswer& answer);
/// Why there is no day sheet.
[[nodiscard]] Sheet sheetOf(const SheetAnswer& answer);
[[nodiscard]] Sheet sheetOf(const CopyAnswer& answer);

}  // namespace bathside::ui
