#include "ui/stores/reckoning_view.h"

#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <array>

#include "ui/controls/paint.h"
#include "ui/text/stores.h"
#include "ui/theme/mark.h"
#include "ui/theme/role.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kRowMm = 12;
// Outcome, what, expected, counted, difference, tolerance: shares of the width.
constexpr std::array<double, 6> kShares{0.24, 0.28, 0.12, 0.12, 0.12, 0.12};

Role roleOf(Outcome outcome)
{
    switch (outcome) {
        case Outcome::DoesNotAddUp:
            return Role::Limit;
        case Outcome::NotCounted:
            return Role::HeadsUp;
        case Outcome::AddsUp:
            return Role::Good;
    }
    Q_UNREACHABLE();
}

QStringList heads()
{
    return {QString(),
            QString(),
            ReckoningView::tr("expected"),
            ReckoningView::tr("counted"),
            ReckoningView::tr("difference"),
            ReckoningView::tr("tolerance")};
}

QStringList cellsOf(const Reckoning& row)
{
    const QString none = QStringLiteral("–");
    return {wordOf(row.outcome),
            whatText(row),
            figureText(row, row.expected),
            row.counted ? figureText(row, *row.counted) : none,
            row.counted ? differenceText(row) : none,
            figureText(row, row.tolerance)};
}

}  // namespace

ReckoningView::ReckoningView(QWidget* parent) : Control(parent)
{
    setObjectName(QStringLiteral("stores.sums"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void ReckoningView::show(const Reconciliation& sums)
{
    m_sums = sums;
    m_sheet = std::min(m_sheet, sheets() - 1);
    QString all;
    for (const Reckoning& row : sums.rows)
        all += cellsOf(row).join(QStringLiteral(", ")) + u'\n';
    suggestAccessibleName(all);
    update();
}

int ReckoningView::rowsEach() const
{
    return std::max(1, static_cast<int>(height() / theme().metrics().px(kRowMm)) - 1);
}

int ReckoningView::sheets() const
{
    const auto count = static_cast<int>(m_sums.rows.size()), each = rowsEach();
    return std::max(1, (count + each - 1) / each);
}

void ReckoningView::turn()
{
    m_sheet = (m_sheet + 1) % sheets();
    update();
}

std::vector<Reckoning> ReckoningView::shown() const
{
    const auto first = std::min(m_sums.rows.size(), static_cast<std::size_t>(m_sheet * rowsEach()));
    const auto last = std::min(m_sums.rows.size(), first + static_cast<std::size_t>(rowsEach()));
    const auto begin = m_sums.rows.begin();
    return {begin + static_cast<std::ptrdiff_t>(first), begin + static_cast<std::ptrdiff_t>(last)};
}

QRectF ReckoningView::rowRoom(int row) const
{
    const double high = theme().metrics().px(kRowMm);
    return {0, row * high, static_cast<double>(width()), high};
}

QRectF ReckoningView::cell(int row, int column) const
{
    double left = 0;
    for (int i = 0; i < column; ++i)
        left += kShares.at(static_cast<std::size_t>(i)) * width();
    const double wide = kShares.at(static_cast<std::size_t>(column)) * width();
    const double by = theme().metrics().px(1);
    const QRectF room = rowRoom(row);
    const double mark = column == 0 && row > 0 ? theme().metrics().px(8) : 0;
    return QRectF(left, room.top(), wide, room.height()).adjusted(by + mark, by / 2, -by, -by / 2);
}

QList<PlacedText> ReckoningView::texts() const
{
    const Palette& palette = theme().palette();
    const TextWish wish{Metrics::kSmall, Metrics::kSmall, Weight::Regular, 2};
    const auto alignment = [](int column) {
        return (column < 2 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter;
    };
    QList<PlacedText> texts;
    const QStringList titles = heads();
    for (int column = 0; column < titles.size(); ++column)
        texts.append(
            {titles.at(column), cell(0, column), alignment(column), wish, palette.softInk()});
    int row = 1;
    for (const Reckoning& each : shown()) {
        const QStringList cells = cellsOf(each);
        for (int column = 0; column < cells.size(); ++column) {
            const QColor ink = column == 0 ? theme().tone(roleOf(each.outcome)).ink : palette.ink();
            texts.append({cells.at(column), cell(row, column), alignment(column), wish, ink});
        }
        ++row;
    }
    return texts;
}

void ReckoningView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Palette& palette = theme().palette();
    const Metrics& metrics = theme().metrics();
    painter.fillRect(rect(), palette.panel());
    int row = 1;
    for (const Reckoning& each : shown()) {
        const QRectF room = rowRoom(row++);
        const Tone& tone = theme().tone(roleOf(each.outcome));
        const double by = metrics.px(0.6), side = metrics.px(5.5);
        const QRectF plate(room.left(), room.top() + by, kShares[0] * width(),
                           room.height() - 2 * by);
        drawPlate(painter, plate, tone);
        drawMark(painter, QRectF(metrics.px(1.8), room.center().y() - side / 2, side, side),
                 markOf(roleOf(each.outcome)), tone.ink);
        painter.setPen(palette.rule());
        painter.drawLine(room.bottomLeft(), room.bottomRight());
    }
    drawAll(painter, texts());
}

}  // namespace bathside::ui
