// What the plan page shows and where it stands.

#include <QEvent>
#include <algorithm>

#include "ui/controls/banner.h"
#include "ui/controls/grid.h"
#include "ui/controls/tap_button.h"
#include "ui/plan/bag_table.h"
#include "ui/plan/day_words.h"
#include "ui/plan/plan_page.h"
#include "ui/plan/timeline_view.h"
#include "ui/record/field_sheet.h"
#include "ui/text/subjects.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;

constexpr double kNoticeMm = 11, kAfterMm = 1.5;
constexpr auto kRefusalShown = 6s;

}  // namespace

void PlanPage::resizeEvent(QResizeEvent*)
{
    place();
    render();
}

void PlanPage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        put(View::Timeline);
    Page::changeEvent(event);
}

PlanClock PlanPage::clock() const
{
    return {day() ? day()->midnight : WallTime{}, m_context.zoneNow()};
}

int PlanPage::pages() const
{
    switch (m_view) {
        case View::Timeline:
            return m_timeline->sheets();
        case View::List:
            return m_bags->sheets();
        case View::Words:
        case View::Printed:
            return m_sheet->sheets();
    }
    Q_UNREACHABLE();
}

int PlanPage::pageNow() const
{
    switch (m_view) {
        case View::Timeline:
            return m_timeline->sheet();
        case View::List:
            return m_bags->sheet();
        case View::Words:
        case View::Printed:
            return m_sheet->sheet();
    }
    Q_UNREACHABLE();
}

// --- where it stands -----------------------------------------------------------------------------

// Top: the notice. Bottom: the bar. Between them timeline, list or words; over all of it what is
// asked.
void PlanPage::place()
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx(), bar = metrics.ceilPx(Metrics::kMinimum);
    const int notice = metrics.ceilPx(kNoticeMm), top = notice + metrics.ceilPx(kAfterMm);
    m_notice->setGeometry(0, 0, width(), notice);
    const QRect room(0, top, width(), height() - top);
    m_ask->setGeometry(m_ask->room() == AskPane::Room::Page ? rect() : room);
    const QRect middle = room.adjusted(0, 0, 0, -(bar + gap));
    m_timeline->setGeometry(middle);
    m_bags->setGeometry(middle);
    m_sheet->setGeometry(middle);
}

void PlanPage::placeBar()
{
    const int bar = theme().metrics().ceilPx(Metrics::kMinimum);
    const QRect low(0, height() - bar, width(), bar);
    QList<TapButton*> targets{m_bench};
    if (pages() > 1)
        targets.append(m_more);
    targets.append(m_lines);
    if (day())
        targets += QList<TapButton*>{m_list, m_words, m_print};
    const GridShape shape{static_cast<int>(targets.size()), 1};
    for (int i = 0; i < targets.size(); ++i)
        targets.at(i)->setGeometry(cellOf(low, shape, i));
}

// --- what is shown -------------------------------------------------------------------------------

void PlanPage::render()
{
    if (m_refusedAt && elapsed(*m_refusedAt, m_model.now()).time > kRefusalShown)
        m_refusedAt.reset();
    renderView();
    renderNotice();
    renderBar();
}

void PlanPage::renderView()
{
    const bool shown = day() && !m_ask->isOpen();
    m_timeline->setVisible(shown && m_view == View::Timeline);
    m_bags->setVisible(shown && m_view == View::List);
    m_sheet->setVisible(shown && (m_view == View::Words || m_view == View::Printed));
    if (!day())
        return;
    m_timeline->show(*day(), clock());
    m_bags->show(bagRowsOf(*day(), clock()));
    if (m_view == View::Words)
        showWords(sheetOf(*day(), clock()));
}

/// Shown anew only where it says something else, so that a turned sheet stays.
void PlanPage::showWords(const Sheet& sheet)
{
    const auto same = [](const Field& a, const Field& b) {
        return a.name == b.name && a.value == b.value;
    };
    if (sheet.title != m_sheet->title() ||
        !std::ranges::equal(sheet.fields, m_sheet->fields(), same))
        m_sheet->show(sheet.role, sheet.title, sheet.fields);
    renderBar();
}

/// A refusal for as long as it stands; else the gravest thing to say.
void PlanPage::renderNotice()
{
    if (m_refusedAt)
        return m_notice->say(Role::Limit, {}, m_refusal);
    if (!m_model.bench().shiftIsOpen())
        return m_notice->say(Role::Neutral, tr("NO SHIFT"),
                             tr("Open the shift at the bench, then plan its lines."));
    if (!day())
        return m_notice->say(Role::Neutral, tr("NOTHING PLANNED"),
                             tr("Say birds, birds an hour and start of each line."));
    const Sheet words = sheetOf(*day(), clock());
    if (troublesOf(*day()) == 0)
        return m_notice->say(Role::Good, tr("IN ORDER"), words.title);
    m_notice->say(words.role, tr("LOOK"), words.fields.first().value);
}

void PlanPage::renderBar()
{
    placeBar();
    const bool shown = !m_ask->isOpen();
    m_bench->setVisible(shown);
    m_lines->setVisible(shown);
    m_more->setVisible(shown && pages() > 1);
    for (TapButton* each : {m_list, m_words, m_print})
        each->setVisible(shown && day());
    m_bench->setWord(tr("bench"));
    m_bench->setMark(Mark::Back);
    m_more->setWord(tr("more …", "more of the plan"));
    m_more->setLine(tr("%1 of %2", "which page of how many").arg(pageNow() + 1).arg(pages()));
    m_lines->setWord(tr("lines …"));
    m_lines->setRole(day() ? Role::Neutral : Role::Primary);
    m_list->setWord(tr("list"));
    m_list->setChosen(m_view == View::List);
    m_words->setWord(tr("words", "the plan told in words"));
    m_words->setLine(day() ? QString::number(troublesOf(*day())) : QString());
    m_words->setChosen(m_view == View::Words);
    m_print->setWord(tr("print"));
    m_print->setMark(Mark::Sheet);
    m_print->setChosen(m_view == View::Printed);
}

}  // namespace bathside::ui
