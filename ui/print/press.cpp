#include "ui/print/press.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>
#include <QSaveFile>
#include <cassert>

namespace bathside::ui {
namespace {

constexpr int kPdfDpi = 1200;

QPageLayout layoutOf(const SetPage& page)
{
    QPageLayout layout(pageSizeOf(page), QPageLayout::Portrait, {});
    layout.setMode(QPageLayout::FullPageMode);
    return layout;
}

Result<void, PrintFault> paintAll(const SetPages& pages, QPagedPaintDevice& device,
                                  PrintFault ifRefused)
{
    QPainter painter;
    if (!device.setPageLayout(layoutOf(pages.front())) || !painter.begin(&device))
        return failure(ifRefused);
    bool begun = true;
    for (const SetPage& page : pages) {
        begun = (&page == &pages.front() || device.newPage()) && begun;
        paint(painter, page);
    }
    if (!painter.end() || !begun)
        return failure(ifRefused);
    return {};
}

Result<void, PrintFault> paintPdf(const SetPages& pages, QIODevice& to)
{
    QPdfWriter writer(&to);
    writer.setResolution(kPdfDpi);
    writer.setCreator(QStringLiteral("Bathside"));
    writer.setTitle(pages.front().title);
    return paintAll(pages, writer, PrintFault::CannotWrite);
}

}  // namespace

Result<SetPages, PrintFault> setPages(const PaperPages& pages)
{
    assert(!pages.empty());
    SetPages set;
    for (const PaperPage& page : pages) {
        if (!allFit(page))
            return failure(PrintFault::DoesNotFit);
        set.push_back(setPage(page));
    }
    return set;
}

Result<void, PrintFault> print(const SetPages& pages, QPrinter& printer)
{
    return paintAll(pages, printer, PrintFault::PrinterRefused);
}

Result<void, PrintFault> savePdf(const SetPages& pages, const QString& path)
{
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return failure(PrintFault::CannotWrite);
    const auto painted = paintPdf(pages, file);
    if (painted && !file.commit())
        return failure(PrintFault::CannotWrite);
    return painted;
}

Result<std::string, PrintFault> pdfOf(const SetPages& pages)
{
    QBuffer buffer;
    if (!buffer.open(QIODevice::WriteOnly))
        return failure(PrintFault::CannotWrite);
    if (const auto painted = paintPdf(pages, buffer); !painted)
        return failure(painted.error());
    return buffer.data().toStdString();
}

Result<void, PrintFault> print(const PaperPages& pages, QPrinter& printer)
{
    const auto set = setPages(pages);
    return set ? print(*set, printer) : failure(set.error());
}

Result<void, PrintFault> savePdf(const PaperPages& pages, const QString& path)
{
    const auto set = setPages(pages);
    return set ? savePdf(*set, path) : failure(set.error());
}

}  // namespace bathside::ui
