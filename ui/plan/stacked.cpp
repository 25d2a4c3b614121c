#include "ui/plan/stacked.h"

#include <algorithm>

namespace bathside::ui {

QList<PlacedText> stacked(const QStringList& lines, const QRectF& room, Qt::Alignment across,
                          const QColor& ink)
{
    const TextWish wish{Metrics::kSmall, Metrics::kSmall, Weight::Regular, 1};
    const auto count = static_cast<double>(std::max<qsizetype>(1, lines.size()));
    const double high =
        std::min(room.height() / count, 1.15 * heightOf(1, Metrics::kSmall, Weight::Regular));
    QRectF line(room.left(), room.center().y() - count * high / 2, room.width(), high);
    QList<PlacedText> texts;
    for (const QString& each : lines) {
        texts.append({each, line, across | Qt::AlignVCenter, wish, ink});
        line.translate(0, high);
    }
    return texts;
}

QStringList firstThatFits(const QList<QStringList>& wishes, const QRectF& room)
{
    for (const QStringList& each : wishes) {
        if (room.width() > 0 && allFit(stacked(each, room, Qt::AlignLeft, {})))
            return each;
    }
    return {};
}

}  // namespace bathside::ui
