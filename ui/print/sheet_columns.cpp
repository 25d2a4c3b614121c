// Columns of times on a sheet.

#include <algorithm>

#include "ui/print/sheet_writer.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kChart = 28, kAxis = 16, kSlot = 4.6, kWideSlot = 8, kBar = 1.2;  // mm
constexpr double kMostShare = 1.5;  // shown of a time, at most

double px(double mm) { return theme().metrics().px(mm); }
double lineOf(double capMm) { return heightOf(1, capMm, Weight::Regular); }

}  // namespace

void SheetWriter::columns(const SheetColumns& columns)
{
    double slot = px(kSlot);
    for (const auto& each : columns.each)
        slot = std::max(slot, widthOf(each.label, kSmallCaps, Weight::Strong) + px(0.8));
    const double wide = m_rows.left().width() - px(kAxis);
    const auto all = static_cast<double>(std::max<std::size_t>(1, columns.each.size()));
    slot = std::max(slot, std::min(wide / all, px(kWideSlot)));
    need(px(kChart) + 5 * lineOf(kCaps));  // the caption stays with its chart
    paragraph(columns.caption);
    const auto most = std::max<std::size_t>(1, static_cast<std::size_t>(wide / slot));
    for (std::size_t from = 0; from < columns.each.size(); from += most)
        slotsOf(columns, from, std::min(most, columns.each.size() - from), slot);
}

void SheetWriter::slotsOf(const SheetColumns& columns, std::size_t from, std::size_t count,
                          double slotPx)
{
    const double labels = lineOf(kSmallCaps);
    need(px(kChart) + 3 * labels);
    const QRectF above = take(labels);
    const QRectF all = take(px(kChart));
    take(labels / 4);
    const QRectF under = take(labels);
    PaperPage& page = m_pages.back();
    const auto height = [&](double share) {
        return all.bottom() - std::min(share, kMostShare) / kMostShare * all.height();
    };
    for (const double share : {0.0, 0.5, 1.0, kMostShare}) {
        const QLineF line(all.left() + px(kAxis), height(share), all.right(), height(share));
        (share == 1.0 ? page.rules : page.hairs).append(line);
        text({all.left(), height(share) - labels / 2, px(kAxis - kBetween), labels},
             share == 1.0 ? columns.limit : QStringLiteral("%1\u00a0%").arg(qRound(100 * share)),
             kSmallCaps, Weight::Regular, Qt::AlignRight | Qt::AlignVCenter);
    }
    for (std::size_t i = 0; i < count; ++i) {
        const auto& one = columns.each[from + i];
        const double left = all.left() + px(kAxis) + static_cast<double>(i) * slotPx;
        const double middle = left + slotPx / 2, wide = px(kBar);
        if (one.solid)
            bar({middle - wide - px(0.1), all.top(), wide, all.height()}, *one.solid, true);
        if (one.open)
            bar({middle + px(0.1), all.top(), wide, all.height()}, *one.open, false);
        text({left, under.top(), slotPx, under.height()}, one.label, kSmallCaps,
             one.isOver ? Weight::Strong : Weight::Regular, Qt::AlignCenter);
        if (one.isOver)
            text({left, above.top(), slotPx, labels}, QStringLiteral("!"), kSmallCaps,
                 Weight::Strong, Qt::AlignCenter);
    }
    take(labels / 2);
}

void SheetWriter::bar(const QRectF& room, double share, bool isSolid)
{
    QRectF filled = room;
    filled.setTop(room.bottom() - std::min(share, kMostShare) / kMostShare * room.height());
    PaperPage& page = m_pages.back();
    if (isSolid) {
        page.bars.append(filled);
        return;
    }
    page.hairs.append(QLineF(filled.bottomLeft(), filled.topLeft()));
    page.hairs.append(QLineF(filled.topLeft(), filled.topRight()));
    page.hairs.append(QLineF(filled.topRight(), filled.bottomRight()));
}

}  // namespace bathside::ui
