// Where everything on the thermometers page stands.

#include <algorithm>

#include "ui/charts/chart.h"
#include "ui/controls/banner.h"
#include "ui/controls/grid.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/theme/theme.h"
#include "ui/thermometers/thermometers_page.h"

namespace bathside::ui {
namespace {

constexpr double kNoticeMm = 11, kAfterMm = 1.5;
constexpr double kTileWide = 67, kTileHigh = 20;
constexpr double kTitleMm = 9, kWordsMm = 17, kReckonedMm = 17;

}  // namespace

void ThermometersPage::resizeEvent(QResizeEvent*)
{
    place();
    render();
}

// Top: the notice. Bottom: the bar. Between them the thermometers with the one that is looked at,
// or the two pictures of the bath; over all of it what is asked.
void ThermometersPage::place()
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx(), bar = metrics.ceilPx(Metrics::kMinimum);
    const int notice = metrics.ceilPx(kNoticeMm), top = notice + metrics.ceilPx(kAfterMm);
    m_notice->setGeometry(0, 0, width(), notice);
    const QRect room(0, top, width(), height() - top);
    m_ask->setGeometry(m_ask->room() == AskPane::Room::Page ? rect() : room);
    const QRect middle = room.adjusted(0, 0, 0, -(bar + gap));
    placeProbes(middle);
    placeForecast(middle);
    placeBar();
}

void ThermometersPage::placeProbes(const QRect& room)
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx(), left = metrics.ceilPx(kTileWide);
    const int rows = std::max(1, (room.height() + gap) / (metrics.ceilPx(kTileHigh) + gap));
    makeTiles(static_cast<std::size_t>(rows));
    const QRect column(room.left(), room.top(), left, room.height());
    for (int i = 0; i < rows; ++i)
        m_tiles[static_cast<std::size_t>(i)]->setGeometry(cellOf(column, {1, rows}, i));
    const int from = left + gap, wide = room.width() - from, title = metrics.ceilPx(kTitleMm),
              words = metrics.ceilPx(kWordsMm);
    m_title->setGeometry(from, room.top(), wide, title);
    m_words->setGeometry(from, room.top() + title, wide, words);
    m_trace->setGeometry(from, room.top() + title + words, wide, room.height() - title - words);
}

void ThermometersPage::placeForecast(const QRect& room)
{
    const Metrics& metrics = theme().metrics();
    const int words = metrics.ceilPx(kReckonedMm);
    m_reckoned->setGeometry(room.left(), room.top(), room.width(), words);
    const QRect pictures = room.adjusted(0, words, 0, 0);
    m_dip->setGeometry(cellOf(pictures, {2, 1}, 0));
    m_slush->setGeometry(cellOf(pictures, {2, 1}, 1));
}

void ThermometersPage::placeBar()
{
    const int bar = theme().metrics().ceilPx(Metrics::kMinimum);
    const QRect low(0, height() - bar, width(), bar);
    QList<TapButton*> all{m_back,      m_more,     m_add,   m_change,
                          m_calibrate, m_forecast, m_whole, m_save};
    if (pages() == 1)
        all.removeOne(m_more);
    for (int i = 0; i < all.size(); ++i)
        all.at(i)->setGeometry(cellOf(low, {static_cast<int>(all.size()), 1}, i));
}

void ThermometersPage::makeTiles(std::size_t count)
{
    while (m_tiles.size() > count) {
        m_tiles.back()->deleteLater();
        m_tiles.pop_back();
    }
    while (m_tiles.size() < count) {
        const std::size_t index = m_tiles.size();
        auto* tile = new TapButton(QStringLiteral("thermometers.probe"), this);
        tile->setCapMm(Metrics::kWords);
        connect(tile, &TapButton::pressed, this, [this, index] { pressTile(index); });
        tile->hide();
        tile->stackUnder(m_ask);
        m_tiles.push_back(tile);
    }
    m_page = std::min(m_page, pages() - 1);
}

}  // namespace bathside::ui
