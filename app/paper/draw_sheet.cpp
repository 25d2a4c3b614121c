#include "app/paper/draw_sheet.h"

#include <optional>

#include "ui/print/day_sheet_pages.h"
#include "ui/print/press.h"
#include "ui/text/language.h"

namespace bathside::cli {
namespace {

std::optional<ui::Paper> paperNamed(std::string_view name)
{
    if (name == "a4")
        return ui::Paper::A4;
    return name == "letter" ? std::optional(ui::Paper::Letter) : std::nullopt;
}

Unusable drawnNot(ui::PrintFault fault)
{
    return {"--as", "", "pdf",
            fault == ui::PrintFault::DoesNotFit ? "a day whose words fit the paper"
                                                : "room for the file"};
}

}  // namespace

Result<std::string, Unusable> drawSheet(const DaySheet& sheet, const SheetWish& wish)
{
    const auto paper = paperNamed(wish.paper);
    if (!paper)
        return failure(Unusable{"--paper", "", wish.paper, "a4 or letter"});
    ui::Language language;
    const QString code = QString::fromStdString(wish.language);
    if (!ui::Language::offered().contains(code))
        return failure(Unusable{"--language", "", wish.language, "en or es"});
    static_cast<void>(language.use(code));
    const auto pages = ui::setPages(ui::pagesOf(sheet, *paper, wish.language));
    if (!pages)
        return failure(drawnNot(pages.error()));
    auto bytes = ui::pdfOf(*pages);
    if (!bytes)
        return failure(drawnNot(bytes.error()));
    return std::move(*bytes);
}

}  // namespace bathside::cli
