#include "app/station/plan_file.h"

#include <QDir>

#include "app/station/record_places.h"
#include "core/base/day.h"
#include "ui/print/press.h"
#include "ui/text/subjects.h"

namespace bathside::app {

Result<QString, ui::PrintFault> savePlanSheet(const ui::PlanSheet& sheet)
{
    const QString folder = recordPlaces().front().folder;
    if (!QDir().mkpath(folder))
        return failure(ui::PrintFault::CannotWrite);
    const QString day = ui::fromCore(toText(std::chrono::sys_days(sheet.day)));
    const QString path = freeName(folder, QStringLiteral("plan-") + day, QStringLiteral(".pdf"));
    const auto saved = ui::savePdf(ui::pagesOf(sheet, ui::Paper::A4), path);
    if (!saved)
        return failure(saved.error());
    return path;
}

}  // namespace bathside::app
