#include "ui/plan/bag_table.h"

#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <array>

#include "ui/controls/paint.h"
#include "ui/plan/stacked.h"
#include "ui/text/numbers.h"
#include "ui/text/plan_words.h"
#include "ui/text/subjects.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kHeadMm = 12, kRowMm = 12, kLineMm = 5.5;
// Bag, pull at, size, lots, birds, first, last, margin: shares of the width.
constexpr std::array<double, 8> kShares{0.08, 0.12, 0.1, 0.27, 0.1, 0.09, 0.09, 0.15};
constexpr int kLots = 3, kMargin = 7;

QStringList heads()
{
    return {BagTable::tr("bag", "column of the plan"),
            BagTable::tr("pull at", "column of the plan"),
            BagTable::tr("size", "column of the plan"),
            BagTable::tr("lots × ampoules", "column of the plan"),
            BagTable::tr("birds", "column of the plan"),
            BagTable::tr("first bird", "column of the plan"),
            BagTable::tr("last bird", "column of the plan"),
            BagTable::tr("margin", "column of the plan")};
}

QString lotsText(const plan::DayInput& input, const plan::PlannedBag& bag)
{
    QStringList lots;
    for (const plan::Draw& draw : bag.draws) {
        const plan::Component& component = input.recipe[draw.component];
        const QString lot = fromCore(component.lots[draw.lot].name);
        lots.append(QStringLiteral("%1 ×\u00a0%2")
                        .arg(lot.isEmpty() ? fromCore(component.name)
                                           : fromCore(component.name) + u' ' + lot)
                        .arg(draw.ampoules));
    }
    return lots.join(u'\n');
}

QString pullText(const plan::PlannedBag& bag, const PlanClock& clock)
{
    switch (bag.made) {
        case plan::PlannedBag::Made::New:
            return clock.text(bag.pullStart);
        case plan::PlannedBag::Made::Mixed:
            return BagTable::tr("mixed", "a bag");
        case plan::PlannedBag::Made::Open:
            return BagTable::tr("hangs", "a bag");
    }
    Q_UNREACHABLE();
}

bool isSmall(const plan::Plan& plan, const plan::BagPlace& place)
{
    return std::ranges::any_of(plan.warnings, [&place](const plan::Warning& warning) {
        const auto* small = std::get_if<plan::SmallMargin>(&warning);
        return small && small->bag == place;
    });
}

BagRow rowOf(const DayPlan& day, const plan::BagPlace& place, const PlanClock& clock)
{
    const plan::DayInput& input = day.today.input;
    const plan::PlannedBag& bag = day.plan.lines[place.line]->bags[place.bag];
    const bool small = isSmall(day.plan, place);
    const QString margin = small ? BagTable::tr("only %1", "margin").arg(marginText(bag.margin))
                                 : marginText(bag.margin);
    return {small ? Role::HeadsUp : Role::Neutral,
            {bagText(day, place), pullText(bag, clock), volumeText(bag.volume),
             lotsText(input, bag), countText(bag.turn.birds, QLocale()),
             clock.text(bag.turn.firstBird), clock.text(bag.turn.lastBird), margin}};
}

}  // namespace

std::vector<BagRow> bagRowsOf(const DayPlan& day, const PlanClock& clock)
{
    std::vector<plan::BagPlace> places;
    for (std::size_t line = 0; line < day.plan.lines.size(); ++line) {
        const auto& planned = day.plan.lines[line];
        for (std::size_t bag = 0; planned && bag < planned->bags.size(); ++bag)
            places.push_back({line, bag});
    }
    std::ranges::stable_sort(places, {}, [&day](const plan::BagPlace& place) {
        const plan::PlannedBag& bag = day.plan.lines[place.line]->bags[place.bag];
        const bool isNew = bag.made == plan::PlannedBag::Made::New;
        return std::pair(isNew, isNew ? bag.pullStart : bag.turn.firstBird);
    });
    std::vector<BagRow> rows;
    for (const plan::BagPlace& place : places)
        rows.push_back(rowOf(day, place, clock));
    return rows;
}

BagTable::BagTable(QWidget* parent) : Control(parent)
{
    setObjectName(QStringLiteral("plan.bags"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void BagTable::show(std::vector<BagRow> rows)
{
    m_rows = std::move(rows);
    m_sheet = std::min(m_sheet, sheets() - 1);
    QString all;
    for (const BagRow& row : m_rows)
        all += row.cells.join(QStringLiteral(", ")).replace(u'\n', u' ') + u'\n';
    suggestAccessibleName(all);
    update();
}

/// High enough for the lots of every bag.
double BagTable::rowMm() const
{
    double high = kRowMm;
    for (const BagRow& row : m_rows)
        high = std::max(high,
                        kLineMm * (static_cast<double>(row.cells.at(kLots).count(u'\n')) + 1) + 1);
    return high;
}

int BagTable::rowsEach() const
{
    const Metrics& metrics = theme().metrics();
    return std::max(1, static_cast<int>((height() - metrics.px(kHeadMm)) / metrics.px(rowMm())));
}

int BagTable::sheets() const
{
    const auto count = static_cast<int>(m_rows.size()), each = rowsEach();
    return std::max(1, (count + each - 1) / each);
}

void BagTable::turn()
{
    m_sheet = (m_sheet + 1) % sheets();
    update();
}

std::span<const BagRow> BagTable::shown() const
{
    const auto each = static_cast<std::size_t>(rowsEach());
    const std::size_t first = std::min(m_rows.size(), static_cast<std::size_t>(m_sheet) * each);
    return std::span(m_rows).subspan(first, std::min(each, m_rows.size() - first));
}

QRectF BagTable::cell(int row, int column) const
{
    const Metrics& metrics = theme().metrics();
    double left = 0;
    for (int i = 0; i < column; ++i)
        left += kShares.at(static_cast<std::size_t>(i)) * width();
    const double wide = kShares.at(static_cast<std::size_t>(column)) * width();
    const double top = row == 0 ? 0 : metrics.px(kHeadMm + (row - 1) * rowMm());
    const double high = metrics.px(row == 0 ? kHeadMm : rowMm()), by = metrics.px(0.8);
    return QRectF(left, top, wide, high).adjusted(by, by / 2, -by, -by / 2);
}

QList<PlacedText> BagTable::texts() const
{
    const Palette& palette = theme().palette();
    const TextWish wish{Metrics::kSmall, Metrics::kSmall, Weight::Regular, 2};
    const TextWish strong{4, Metrics::kSmall, Weight::Strong, 1};
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    QList<PlacedText> texts;
    const QStringList titles = heads();
    for (int column = 0; column < titles.size(); ++column)
        texts.append({titles.at(column), cell(0, column), left, wish, palette.softInk()});
    int row = 1;
    for (const BagRow& each : shown()) {
        for (int column = 0; column < each.cells.size(); ++column) {
            QRectF room = cell(row, column);
            if (column == kMargin && each.role != Role::Neutral)
                room.adjust(theme().metrics().px(6), 0, 0, 0);
            const QColor ink = column == kMargin ? theme().tone(each.role).ink : palette.ink();
            if (column == kLots)
                texts += stacked(each.cells.at(column).split(u'\n'), room, Qt::AlignLeft, ink);
            else
                texts.append({each.cells.at(column), room, left, column < 2 ? strong : wish, ink});
        }
        ++row;
    }
    return texts;
}

void BagTable::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Metrics& metrics = theme().metrics();
    painter.fillRect(rect(), theme().palette().panel());
    int row = 0;
    for (const BagRow& each : shown()) {
        const QRectF room = cell(++row, kMargin);
        if (each.role != Role::Neutral) {
            const double side = metrics.px(4.5);
            drawPlate(painter, room, theme().tone(each.role));
            drawMark(painter,
                     QRectF(room.left() + metrics.px(1), room.center().y() - side / 2, side, side),
                     markOf(each.role), theme().tone(each.role).ink);
        }
        painter.setPen(theme().palette().rule());
        const double low = cell(row, kLots).bottom() + metrics.px(0.4);
        painter.drawLine(QPointF(0, low), QPointF(width(), low));
    }
    drawAll(painter, texts());
}

}  // namespace bathside::ui
