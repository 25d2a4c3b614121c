#include "ui/print/press.h"

#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>
#include <QSaveFile>
#include <algorithm>
#include <cassert>

namespace bathside::ui {
namespace {

constexpr int kPdfDpi = 1200;

bool fit(const PaperPages& pages)
{
    return std::ranges::all_of(pages, [](const PaperPage& page) { return allFit(page); });
}

QPageLayout layoutOf(const PaperPage& page)
{
    QPageLayout layout(pageSizeOf(page), QPageLayout::Portrait, {});
    layout.setMode(QPageLayout::FullPageMode);
    return layout;
}

Result<void, PrintFault> paintAll(const PaperPages& pages, QPagedPaintDevice& device,
                                  PrintFault ifRefused)
{
    QPainter painter;
    if (!device.setPageLayout(layoutOf(pages.front())) || !painter.begin(&device))
        return failure(ifRefused);
    bool begun = true;
    for (const PaperPage& page : pages) {
        begun = (&page == &pages.front() || device.newPage()) && begun;
        paint(painter, page);
    }
    if (!painter.end() || !begun)
        return failure(ifRefused);
    return {};
}

}  // namespace

Result<void, PrintFault> print(const PaperPages& pages, QPrinter& printer)
{
    assert(!pages.empty());
    if (!fit(pages))
        return failure(PrintFault::DoesNotFit);
    return paintAll(pages, printer, PrintFault::PrinterRefused);
}

Result<void, PrintFault> savePdf(const PaperPages& pages, const QString& path)
{
    assert(!pages.empty());
    if (!fit(pages))
        return failure(PrintFault::DoesNotFit);
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return failure(PrintFault::CannotWrite);
    QPdfWriter writer(&file);
    writer.setResolution(kPdfDpi);
    writer.setCreator(QStringLiteral("Bathside"));
    const auto painted = paintAll(pages, writer, PrintFault::CannotWrite);
    if (painted && !file.commit())
        return failure(PrintFault::CannotWrite);
    return painted;
}

}  // namespace bathside::ui
