// What the record page shows and where it stands.

#include <QEvent>
#include <QLocale>

#include "ui/bench/ask_pane.h"
#include "ui/controls/choice_grid.h"
#include "ui/controls/grid.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/record/day_view.h"
#include "ui/record/entry_text.h"
#include "ui/record/record_page.h"
#include "ui/text/faults.h"
#include "ui/text/numbers.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kTitleMm = 8, kDetailShare = 0.29;

}  // namespace

void RecordPage::resizeEvent(QResizeEvent*) { place(); }

void RecordPage::showEvent(QShowEvent* event)
{
    Page::showEvent(event);
    const Date today = m_source.currentDay();
    showDays({today, today});
}

void RecordPage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange) {
        close();
        m_day.retranslate();
        render();
    }
    Page::changeEvent(event);
}

// Bottom: the bar. Above it the list, what pages it, and what is said of the entry picked; or, over
// all of these, what is asked or answered.
void RecordPage::place()
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx(), bar = metrics.ceilPx(Metrics::kPrimary);
    const QRect page = rect();
    placeBar({0, page.height() - bar, page.width(), bar});
    const QRect room(0, 0, page.width(), page.height() - bar - gap);

    const int narrow = metrics.ceilPx(Metrics::kMinimum), primary = bar;
    const QRect side(room.right() + 1 - primary, room.top(), primary, room.height());
    const int beside = m_comment->isVisibleTo(this) ? 3 : 2;
    m_turn->setGeometry(cellOf(side, {1, beside}, 0));
    m_comment->setGeometry(cellOf(side, {1, beside}, 1));
    m_close->setGeometry(cellOf(side, {1, beside}, beside - 1));
    const QRect over = room.adjusted(0, 0, -(primary + gap), 0);
    m_choices->setGeometry(over);
    const bool coversAll = m_ask->room() == AskPane::Room::Page;
    m_ask->setGeometry(coversAll ? page : room);  // its pads have a way out of their own
    m_close->setVisible(m_over == Over::Choices || m_over == Over::Answer);
    for (TapButton* each : {m_bench, m_before, m_after, m_filterButton, m_verify, m_export, m_copy})
        each->setVisible(!coversAll);
    m_sheet->setGeometry(over);

    const int title = metrics.ceilPx(kTitleMm);
    m_title->setGeometry(0, 0, page.width(), title);
    const QRect below = room.adjusted(0, title, 0, 0);
    const int detail = std::max(qRound(kDetailShare * page.width()), 2 * primary + gap);
    const int list = page.width() - detail - narrow - 2 * gap;
    m_list->setGeometry(0, below.top(), list, below.height());
    m_empty->setGeometry(m_list->geometry());
    const QRect column(list + gap, below.top(), narrow, below.height());
    const int cells = m_clear->isVisibleTo(this) ? 3 : 2;
    m_pageUp->setGeometry(cellOf(column, {1, cells}, 0));
    m_clear->setGeometry(cellOf(column, {1, cells}, 1));
    m_pageDown->setGeometry(cellOf(column, {1, cells}, cells - 1));
    placeDetail({page.width() - detail, below.top(), detail, below.height()});
}

void RecordPage::placeBar(const QRect& bar)
{
    const QList<TapButton*> targets{m_bench,  m_before, m_after, m_filterButton,
                                    m_verify, m_export, m_copy};
    const GridShape shape{static_cast<int>(targets.size()), 1};
    for (int i = 0; i < targets.size(); ++i)
        targets.at(i)->setGeometry(cellOf(bar, shape, i));
}

void RecordPage::placeDetail(const QRect& room)
{
    const int gap = theme().metrics().gapPx(), high = theme().metrics().ceilPx(Metrics::kMinimum);
    const QRect targets(room.left(), room.bottom() + 1 - 2 * high - gap, room.width(),
                        2 * high + gap);
    m_about->setGeometry(room.left(), room.top(), room.width(),
                         room.height() - targets.height() - gap / 2);
    const QList<TapButton*> pairs{m_up, m_down, m_exact, m_linked};
    for (int i = 0; i < pairs.size(); ++i)
        pairs.at(i)->setGeometry(cellOf(targets, {2, 2}, i));
}

void RecordPage::render()
{
    renderBar();
    renderTitle();
    renderDetail();
    m_pageUp->setWord(tr("up"));
    m_pageUp->setLine(m_wish == DayWish{} ? tr("a page") : QString());
    m_pageDown->setWord(tr("down"));
    m_pageDown->setLine(m_wish == DayWish{} ? tr("a page") : QString());
    m_up->setWord(tr("one up"));
    m_down->setWord(tr("one down"));
    m_exact->setWord(tr("exact content"));
    m_comment->setWord(tr("comment …"));
    m_comment->setLine(tr("shift lead, by PIN"));
    m_close->setWord(tr("close"));
    m_close->setMark(Mark::Cross);
    const bool turns = m_over == Over::Answer && m_sheet->sheets() > 1;
    m_turn->setVisible(turns);
    m_turn->setWord(tr("more …"));
    m_turn->setLine(
        tr("%1 of %2", "which sheet of how many").arg(m_sheet->sheet() + 1).arg(m_sheet->sheets()));
}

void RecordPage::renderBar()
{
    const QString working = tr("working …");
    m_bench->setWord(tr("bench"));
    m_bench->setMark(Mark::Back);
    const bool isOneDay = m_days.count() == 1;
    m_before->setWord(isOneDay ? tr("day before") : tr("days before"));
    m_after->setWord(isOneDay ? tr("day after") : tr("days after"));
    m_after->setEnabled(m_days.last < m_source.currentDay());
    m_filterButton->setWord(tr("show …"));
    const bool isFiltered = m_wish != DayWish{};
    m_filterButton->setChosen(isFiltered);
    m_clear->setWord(tr("show all"));
    m_verify->setWord(m_verifying ? working : tr("verify"));
    m_verify->setEnabled(!m_verifying);
    m_export->setWord(m_exporting ? working : tr("export"));
    m_export->setEnabled(!m_exporting);
    m_copy->setWord(m_copying ? working : tr("copy"));
    m_copy->setEnabled(!m_copying);
}

void RecordPage::renderTitle()
{
    const auto shown = m_filter.rowCount();
    const auto waiting = static_cast<int>(m_model.record().waiting);
    const QString wish = wishText(m_wish);
    QStringList parts{daysText(m_days)};
    if (!wish.isEmpty() && isLong())
        parts << wish;
    if (wish.isEmpty() || isLong())
        parts.append(tr("%n entries", nullptr, shown));
    else
        parts << wish << tr("%1 of %n entries", nullptr, m_day.rowCount()).arg(shown);
    if (waiting > 0)
        parts.append(tr("%n more waiting to be recorded", nullptr, waiting));
    if (m_hasEarlier)
        parts.append(tr("earlier ones: up"));
    else if (isLong() && !m_reading && m_source.beginsAfter() > 0)
        parts.append(tr("entries up to %1 are in an earlier file: show their days by date")
                         .arg(m_source.beginsAfter()));
    if (isLong() && (!m_befores.empty() || m_model.record().recorded > m_recorded))
        parts.append(tr("later ones: down"));
    m_title->setText(parts.join(QStringLiteral(" · ")));
    QString empty;
    if (m_trouble)
        empty = faultText(*m_trouble);
    else if (shown == 0)
        empty = m_reading             ? tr("Reading …")
                : m_days.count() == 1 ? tr("There is nothing of this on this day.")
                                      : tr("There is nothing of this on these days.");
    m_empty->setText(empty);
    m_empty->setVisible(m_over == Over::Nothing && !empty.isEmpty());
    m_empty->raise();
}

QString RecordPage::bondTo(const DayRow& row, Seq seq) const
{
    const int at = m_day.rowOf(seq);
    return bondText(row, at < 0 ? nullptr : &m_day.rows()[static_cast<std::size_t>(at)]);
}

const DayRow* RecordPage::picked() const { return m_filter.at(m_list->currentIndex()); }

void RecordPage::renderDetail()
{
    const DayRow* row = picked();
    m_exact->setEnabled(row);
    const bool linked = row && !row->links.empty();
    const bool isOne = linked && row->links.size() == 1;
    m_linked->setWord(isOne ? tr("entry %1").arg(*row->links.begin()) : tr("linked entries"));
    m_linked->setEnabled(linked);
    QString about = row ? aboutText(*row, m_day.zone()) : QString();
    if (isOne)
        about += u' ' + tr("Entry %1: %2.", "number, what it is to this one")
                            .arg(*row->links.begin())
                            .arg(bondTo(*row, *row->links.begin()));
    m_about->setText(about);
}

}  // namespace bathside::ui
