// What the page of charts shows and where it stands.

#include <QEvent>

#include "ui/charts/chart.h"
#include "ui/controls/banner.h"
#include "ui/controls/grid.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/record/field_sheet.h"
#include "ui/text/faults.h"
#include "ui/text/time.h"
#include "ui/theme/theme.h"
#include "ui/trends/trend_pictures.h"
#include "ui/trends/trends_page.h"

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;

constexpr double kNoticeMm = 11, kWordsMm = 10, kAfterMm = 1, kSideMm = 30, kValuesShare = 0.6;
constexpr auto kToldFor = 12s;

}  // namespace

void TrendsPage::resizeEvent(QResizeEvent*)
{
    place();
    render();
}

void TrendsPage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        put(View::Charts);
    Page::changeEvent(event);
}

std::string TrendsPage::zoneNow() const
{
    const auto& shift = m_model.bench().shift;
    return shift ? shift->zone : m_parts.zone;
}

TrendsPage::Day TrendsPage::today() const { return localDay(m_model.now().wall, zoneNow()); }

QString TrendsPage::daysText() const
{
    return m_first == m_last ? dayText(m_first)
                             : tr("%1 to %2", "days").arg(dayText(m_first), dayText(m_last));
}

// From the top: where the limits come from, the charts beside what picks a point, how it stands to
// the card, the bar; over all of it what is asked.
void TrendsPage::place()
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx(), bar = metrics.ceilPx(Metrics::kMinimum);
    const int notice = metrics.ceilPx(kNoticeMm), after = metrics.ceilPx(kAfterMm);
    m_notice->setGeometry(0, 0, width(), notice);
    const QRect room(0, notice + after, width(), height() - notice - after);
    m_ask->setGeometry(m_ask->room() == AskPane::Room::Page ? rect() : room);
    const QRect middle = room.adjusted(0, 0, 0, -(bar + gap));
    m_sheet->setGeometry(middle);
    const int side = metrics.ceilPx(kSideMm), words = metrics.ceilPx(kWordsMm);
    const QRect charts = middle.adjusted(0, 0, -(side + gap), -words);
    const int values = static_cast<int>(kValuesShare * charts.height());
    m_values->setGeometry(charts.left(), charts.top(), charts.width(), values);
    m_ranges->setGeometry(charts.adjusted(0, values, 0, 0));
    m_words->setGeometry(charts.left(), charts.bottom() + 1, charts.width(), words);
    const QRect beside(middle.right() + 1 - side, middle.top(), side, middle.height());
    const QList<TapButton*> column{m_open, m_before, m_after};
    for (int i = 0; i < column.size(); ++i)
        column.at(i)->setGeometry(cellOf(beside, {1, static_cast<int>(column.size())}, i));
}

void TrendsPage::render()
{
    renderCharts();
    renderTargets();
    renderNotice();
}

void TrendsPage::renderCharts()
{
    const bool isShown = m_view == View::Charts && !m_ask->isOpen();
    const QString title = QStringLiteral("%1 · %2").arg(wishText(m_wish, m_people), daysText());
    const TrendLook look{title, m_wish.series, m_people, zoneNow()};
    m_values->show(valuesContent(m_trend, look));
    m_ranges->show(rangesContent(m_trend, look));
    m_values->setVisible(isShown);
    m_ranges->setVisible(isShown);
    const QString broken = m_picked ? brokenText(m_trend, *m_picked) : QString();
    m_words->setText(broken.isEmpty() ? capabilityText(m_trend, m_wish.series) : broken);
    m_words->setVisible(isShown);
    m_sheet->setVisible(m_view == View::Story && !m_ask->isOpen());
}

void TrendsPage::renderTargets()
{
    m_back->setWord(tr("review"));
    m_back->setMark(Mark::Back);
    m_what->setWord(tr("what …", "is charted"));
    m_whose->setWord(tr("whose …", "points"));
    m_whose->setChosen(!m_wish.person.empty() || !m_wish.bench.empty() || !m_wish.lot.empty());
    m_days->setWord(tr("days …"));
    m_rules->setWord(tr("rules …"));
    m_limits->setWord(tr("limits …"));
    m_save->setWord(tr("save", "a picture of the chart"));
    const ChartPoint* point = picked();
    const bool isOfPull = !point || point->pull > 0;
    m_open->setWord(isOfPull ? tr("its pull …") : tr("its check …"));
    m_open->setRole(point ? Role::Primary : Role::Quiet);
    m_before->setWord(tr("point before"));
    m_after->setWord(tr("point after"));
    m_close->setWord(tr("charts"));
    m_close->setMark(Mark::Back);
    m_more->setWord(tr("more …", "of the sheet"));
    m_more->setLine(
        tr("%1 of %2", "which page of how many").arg(m_sheet->sheet() + 1).arg(m_sheet->sheets()));
    const bool isCovered = m_ask->isOpen(), isStory = m_view == View::Story;
    for (TapButton* each : {m_open, m_before, m_after})
        each->setVisible(!isCovered && !isStory);
    QList<TapButton*> shown;
    if (isStory)
        shown = {m_close};
    else
        shown = {m_back, m_what, m_whose, m_days, m_rules, m_limits, m_save};
    if (isStory && m_sheet->sheets() > 1)
        shown.append(m_more);
    for (TapButton* each :
         {m_back, m_what, m_whose, m_days, m_rules, m_limits, m_save, m_close, m_more})
        each->setVisible(!isCovered && shown.contains(each));
    renderBar(shown);
}

void TrendsPage::renderBar(const QList<TapButton*>& shown)
{
    constexpr int kPlaces = 7;
    const int bar = theme().metrics().ceilPx(Metrics::kMinimum);
    const QRect low(0, height() - bar, width(), bar);
    for (int i = 0; i < shown.size(); ++i)
        shown.at(i)->setGeometry(cellOf(low, {kPlaces, 1}, i));
}

void TrendsPage::renderNotice()
{
    if (m_toldAt && elapsed(*m_toldAt, m_model.now()).time > kToldFor)
        m_toldAt.reset();
    if (m_toldAt)
        return m_notice->say(m_toldAs, {}, m_told);
    if (m_isReading)
        return m_notice->say(Role::Neutral, tr("READING"), tr("The record is read …"));
    if (m_trouble)
        return m_notice->say(Role::Limit, {}, faultText(*m_trouble));
    const LimitsSaid said = limitsText(m_trend);
    m_notice->say(said.areGood ? Role::Good : Role::HeadsUp, said.word, said.text);
}

}  // namespace bathside::ui
