#include "ui/record/day_view.h"

#include <QPainter>
#include <QScrollBar>
#include <QStyledItemDelegate>
#include <algorithm>
#include <cmath>

#include "ui/controls/fitted_text.h"
#include "ui/controls/paint.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kTickMm = 8, kTimeMm = 21, kInsetMm = 2, kMostLines = 6;

const TextWish kWish{Metrics::kSmall, Metrics::kSmall, Weight::Regular,
                     static_cast<int>(kMostLines)};

QString sentenceAt(const QModelIndex& index)
{
    const auto mend = static_cast<DayRow::Mend>(index.data(DayModel::MendRole).toInt());
    const QString sentence = index.data(DayModel::SentenceRole).toString();
    switch (mend) {
        case DayRow::Mend::None:
            return sentence;
        case DayRow::Mend::Corrected:
            return DayView::tr("CORRECTED: %1").arg(sentence);
        case DayRow::Mend::TakenBack:
            return DayView::tr("TAKEN BACK: %1").arg(sentence);
    }
    Q_UNREACHABLE();
}

double sentenceWidth(double width)
{
    return width - theme().metrics().px(kTickMm + kTimeMm + kInsetMm);
}

FittedText sentenceFor(const QModelIndex& index, double width)
{
    const double high = heightOf(static_cast<int>(kMostLines), Metrics::kSmall, Weight::Regular);
    return fitted(sentenceAt(index), {sentenceWidth(width), high + 1}, kWish);
}

/// Day, time and initials, as many lines as they need in their column.
FittedText stampFor(const QModelIndex& index)
{
    const Metrics& metrics = theme().metrics();
    QString stamp = index.data(DayModel::TimeRole).toString();
    const QString person = index.data(DayModel::PersonRole).toString();
    if (!person.isEmpty())
        stamp += u' ' + person;
    const double high = heightOf(static_cast<int>(kMostLines), Metrics::kSmall, Weight::Regular);
    return fitted(stamp, {metrics.px(kTimeMm) - metrics.px(1), high + 1}, kWish);
}

class RowPainter final : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override
    {
        const auto* view = qobject_cast<const QListView*>(option.widget);
        const int wide = view ? view->viewport()->width() : option.rect.width();
        const auto lines = std::max<qsizetype>(
            {sentenceFor(index, wide).lines.size(), stampFor(index).lines.size(), 2});
        const double text = heightOf(static_cast<int>(lines), Metrics::kSmall, Weight::Regular);
        return {wide, static_cast<int>(std::ceil(text + theme().metrics().px(1.2)))};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override
    {
        const bool isPicked = option.state & QStyle::State_Selected;
        const Palette& palette = theme().palette();
        const Tone& picked = theme().tone(Role::Primary);
        const QRectF row(option.rect);
        painter->save();
        painter->fillRect(row, isPicked ? picked.fill : palette.panel());
        const QColor ink = isPicked ? picked.ink : palette.ink();
        paintTick(*painter, row, index, ink);
        paintWords(*painter, row, index, ink);
        painter->setPen(palette.rule());
        painter->drawLine(row.bottomLeft(), row.bottomRight());
        painter->restore();
    }

private:
    static void paintTick(QPainter& painter, const QRectF& row, const QModelIndex& index,
                          const QColor& ink)
    {
        const Metrics& metrics = theme().metrics();
        const auto mend = static_cast<DayRow::Mend>(index.data(DayModel::MendRole).toInt());
        const Mark mark = mend == DayRow::Mend::None        ? Mark::Tick
                          : mend == DayRow::Mend::TakenBack ? Mark::Back
                                                            : Mark::Arrow;
        const double side = metrics.px(5);
        drawMark(painter,
                 QRectF(row.left() + metrics.px(1.5), row.center().y() - side / 2, side, side),
                 mark, ink);
    }

    static void paintWords(QPainter& painter, const QRectF& row, const QModelIndex& index,
                           const QColor& ink)
    {
        const Metrics& metrics = theme().metrics();
        const auto left = Qt::AlignLeft | Qt::AlignVCenter;
        const QRectF time(row.left() + metrics.px(kTickMm), row.top(), metrics.px(kTimeMm),
                          row.height());
        painter.setPen(ink);
        drawFitted(painter, time, left, stampFor(index));
        const QRectF rest(time.right(), row.top(), sentenceWidth(row.width()), row.height());
        drawFitted(painter, rest, left, sentenceFor(index, row.width()));
    }
};

}  // namespace

DayView::DayView(DayFilter& rows, QWidget* parent) : QListView(parent), m_rows(rows)
{
    setObjectName(QStringLiteral("record.list"));
    setModel(&rows);
    setItemDelegate(new RowPainter(this));
    setFrameShape(QFrame::NoFrame);
    setEditTriggers(NoEditTriggers);
    setSelectionMode(SingleSelection);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(ScrollPerItem);
    setTabKeyNavigation(false);
    setAutoScroll(false);
    dress();
    connect(&theme(), &Theme::changed, this, [this] {
        dress();
        scheduleDelayedItemsLayout();
    });
    connect(&rows, &QAbstractItemModel::dataChanged, this,
            [this] { scheduleDelayedItemsLayout(); });
}

void DayView::goTo(int shownRow)
{
    const int last = m_rows.rowCount() - 1;
    if (last < 0)
        return;
    const QModelIndex to = m_rows.index(std::clamp(shownRow, 0, last), 0);
    setCurrentIndex(to);
    scrollTo(to);
}

void DayView::step(int rows)
{
    goTo(currentIndex().isValid() ? currentIndex().row() + rows : m_rows.rowCount() - 1);
}

// As far as what is in sight now: the first row out of sight comes to the other edge.
void DayView::page(int pages)
{
    const QModelIndex top = indexAt({0, 0});
    QModelIndex bottom = indexAt({0, viewport()->height() - 1});
    if (!bottom.isValid())
        bottom = m_rows.index(m_rows.rowCount() - 1, 0);
    const int to = pages < 0 ? top.row() : bottom.row();
    if (to < 0)
        return;
    const QModelIndex edge = m_rows.index(to, 0);
    setCurrentIndex(edge);
    scrollTo(edge, pages < 0 ? PositionAtBottom : PositionAtTop);
}

bool DayView::showsFirst() const { return indexAt({0, 0}).row() <= 0; }

bool DayView::showsLast() const
{
    return m_rows.rowCount() == 0 ||
           viewport()->rect().contains(visualRect(m_rows.index(m_rows.rowCount() - 1, 0)));
}

bool DayView::fits() const
{
    for (int row = 0; row < m_rows.rowCount(); ++row) {
        const QModelIndex index = m_rows.index(row, 0);
        const bool isHigh =
            visualRect(index).height() >= heightOf(static_cast<int>(stampFor(index).lines.size()),
                                                   Metrics::kSmall, Weight::Regular);
        if (!isHigh || !sentenceFor(index, viewport()->width()).whole)
            return false;
    }
    return true;
}

void DayView::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    QListView::currentChanged(current, previous);
    emit picked();
}

void DayView::dress()
{
    QPalette palette = viewport()->palette();
    palette.setColor(QPalette::Base, theme().palette().panel());
    viewport()->setPalette(palette);
}

// The keyboard's focus, around the list: its present row is filled.
void DayView::paintEvent(QPaintEvent* event)
{
    QListView::paintEvent(event);
    if (!hasFocus())
        return;
    QPainter painter(viewport());
    const double thick = theme().metrics().px(Metrics::kFocusEdge / 2);
    painter.setPen(QPen(theme().palette().focus(), thick));
    painter.drawRect(QRectF(viewport()->rect()).adjusted(thick / 2, thick / 2, -thick, -thick));
}

void DayView::resizeEvent(QResizeEvent* event)
{
    QListView::resizeEvent(event);
    scheduleDelayedItemsLayout();
}

}  // namespace bathside::ui
