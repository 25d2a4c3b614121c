// What the stores page shows and where it stands.

#include <QEvent>
#include <QLocale>
#include <algorithm>

#include "core/bench/day_use.h"
#include "ui/controls/banner.h"
#include "ui/controls/grid.h"
#include "ui/record/field_sheet.h"
#include "ui/stores/intake_sheet.h"
#include "ui/stores/reckoning_view.h"
#include "ui/stores/stores_page.h"
#include "ui/text/numbers.h"
#include "ui/text/stores.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;

constexpr double kNoticeMm = 11, kAfterMm = 1.5, kTileWide = 95, kTileHigh = 21;
constexpr auto kRefusalShown = 6s;

/// Distinct for every lot.
QString placeOf(const Stock& of)
{
    return QStringLiteral("stores.lot.%1:%2:%3:%4")
        .arg(fromCore(std::string(nameOf(of.kind))), fromCore(of.item), idText(of.lot))
        .arg(of.volume ? of.volume->count : 0);
}

}  // namespace

void StoresPage::resizeEvent(QResizeEvent*)
{
    place();
    render();
}

void StoresPage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        put(View::Lots);
    Page::changeEvent(event);
}

std::chrono::sys_days StoresPage::day() const
{
    const Bench& bench = m_model.bench();
    return bench.shiftIsOpen() && bench.stores.day
               ? *bench.stores.day
               : localDay(m_model.now().wall, m_context.zoneNow());
}

std::int64_t StoresPage::nearDays() const
{
    const auto& card = m_model.bench().card;
    return card ? card->content().stores.nearExpiryDays : StoreRules{}.nearExpiryDays;
}

std::vector<StoreWarning> StoresPage::warnings() const
{
    const Bench& bench = m_model.bench();
    return bathside::warnings(bench.stores, demands(bench), day(), nearDays());
}

/// By what they are, the first to expire first; those that are used up last.
std::vector<const StockLot*> StoresPage::lots() const
{
    std::vector<const StockLot*> all;
    for (const auto& [of, lot] : m_model.bench().stores.lots)
        all.push_back(&lot);
    std::ranges::stable_sort(all, {}, [](const StockLot* lot) {
        const auto end = lot->expires.value_or(std::chrono::sys_days::max());
        return std::tuple(lot->balance() == 0, lot->of.kind, lot->of.item, end);
    });
    return all;
}

int StoresPage::pages() const
{
    if (m_view == View::Sums)
        return m_reckoning->sheets();
    if (m_view != View::Lots)
        return m_sheet->sheets();
    const auto many = static_cast<int>(m_model.bench().stores.lots.size()),
               each = std::max(1, static_cast<int>(m_tiles.size()));
    return std::max(1, (many + each - 1) / each);
}

int StoresPage::pageNow() const
{
    if (m_view == View::Sums)
        return m_reckoning->sheet();
    return m_view == View::Lots ? m_page : m_sheet->sheet();
}

bool StoresPage::takes() const
{
    return m_view == View::Delivery && !m_deliveryTaken && !m_delivery.taken.empty();
}

// --- where it stands -----------------------------------------------------------------------------

// Top: the notice. Bottom: the bar. Between them lots, a sheet or the reckoning; over all of it
// what is asked.
void StoresPage::place()
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx(), bar = metrics.ceilPx(Metrics::kMinimum);
    const int notice = metrics.ceilPx(kNoticeMm), top = notice + metrics.ceilPx(kAfterMm);
    m_notice->setGeometry(0, 0, width(), notice);
    const QRect room(0, top, width(), height() - top);
    m_ask->setGeometry(m_ask->room() == AskPane::Room::Page ? rect() : room);
    const QRect middle = room.adjusted(0, 0, 0, -(bar + gap));
    placeTiles(middle);
    m_sheet->setGeometry(middle);
    m_reckoning->setGeometry(middle);
}

void StoresPage::placeBar()
{
    const int bar = theme().metrics().ceilPx(Metrics::kMinimum);
    const QRect low(0, height() - bar, width(), bar);
    QList<TapButton*> targets{m_bench, m_more, m_receive, m_file, m_warnings, m_sums};
    if (pages() == 1)
        targets.removeOne(m_more);
    const GridShape shape{static_cast<int>(targets.size()), 1};
    for (int i = 0; i < targets.size(); ++i)
        targets.at(i)->setGeometry(cellOf(low, shape, i));
    m_take->setGeometry(m_receive->geometry());
}

void StoresPage::placeTiles(const QRect& room)
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx();
    const auto fit = [gap](int space, int size) {
        return std::max(1, (space + gap) / (size + gap));
    };
    m_columns = fit(room.width(), metrics.ceilPx(kTileWide));
    m_rows = fit(room.height(), metrics.ceilPx(kTileHigh));
    makeTiles();
    for (std::size_t i = 0; i < m_tiles.size(); ++i)
        m_tiles[i]->setGeometry(cellOf(room, {m_columns, m_rows}, static_cast<int>(i)));
}

void StoresPage::makeTiles()
{
    const auto count = static_cast<std::size_t>(m_columns * m_rows);
    while (m_tiles.size() > count) {
        m_tiles.back()->deleteLater();
        m_tiles.pop_back();
    }
    while (m_tiles.size() < count) {
        auto* tile = new LotTile(QString(), this);
        const std::size_t index = m_tiles.size();
        connect(tile, &TapButton::pressed, this,
                [this, index](const TapStamp& stamp) { pressTile(index, stamp); });
        tile->hide();
        tile->stackUnder(m_ask);
        m_tiles.push_back(tile);
    }
}

// --- what is shown -------------------------------------------------------------------------------

void StoresPage::render()
{
    if (m_refusedAt && elapsed(*m_refusedAt, m_model.now()).time > kRefusalShown)
        m_refusedAt.reset();
    if (m_view == View::Lots)
        m_page = std::min(m_page, pages() - 1);
    renderView();
    renderTiles();
    renderNotice();
    renderBar();
}

void StoresPage::renderView()
{
    const Bench& bench = m_model.bench();
    const bool covered = m_ask->isOpen();
    m_reckoning->setVisible(!covered && m_view == View::Sums);
    m_sheet->setVisible(!covered && (m_view == View::Warnings || m_view == View::Delivery));
    if (m_view == View::Sums && bench.card)
        m_reckoning->show(reconciled(bench.stores, dayUse(bench), bench.card->content()));
    if (m_view != View::Warnings)
        return;
    const Sheet sheet = sheetOf(warnings());
    if (sheet.title != m_sheet->title() || sheet.fields.size() != m_sheet->fields().size())
        m_sheet->show(sheet.role, sheet.title, sheet.fields);
}

void StoresPage::renderTiles()
{
    const auto all = lots();
    const Stores& stores = m_model.bench().stores;
    const bool covered = m_ask->isOpen() || m_view != View::Lots;
    const std::size_t first = static_cast<std::size_t>(m_page) * m_tiles.size();
    for (std::size_t i = 0; i < m_tiles.size(); ++i) {
        LotTile* tile = m_tiles[i];
        const bool there = first + i < all.size();
        tile->setVisible(there && !covered);
        if (!there)
            continue;
        const StockLot& lot = *all[first + i];
        const auto chosen = stores.chosen.find({lot.of.item});
        const bool next = lot.of.kind == StockKind::Ampoule && chosen != stores.chosen.end() &&
                          chosen->second.lot == lot.of.lot;
        tile->setPlace(placeOf(lot.of));
        tile->setLot(lot, lookOf(stores, lot, day(), nearDays()), next);
    }
}

/// A refusal for as long as it stands; else the gravest warning, or that there is none.
void StoresPage::renderNotice()
{
    if (m_refusedAt)
        return m_notice->say(Role::Limit, {}, m_refusal);
    const Bench& bench = m_model.bench();
    if (m_view == View::Sums) {
        if (!bench.card)
            return m_notice->say(Role::Neutral, {}, {});
        const auto sums = reconciled(bench.stores, dayUse(bench), bench.card->content());
        const QString dose = sums.meanDoseNl
                                 ? tr("Mean dose per bird: %1 µL.")
                                       .arg(scaledText(*sums.meanDoseNl, 3, 1, QLocale()))
                                 : tr("The mean dose is known once every bag is down.");
        return m_notice->say(sums.addsUp() ? Role::Good : Role::HeadsUp,
                             sums.addsUp() ? tr("ADDS UP") : tr("NOT YET"), dose);
    }
    if (bench.stores.lots.empty())
        return m_notice->say(Role::Neutral, tr("NO STORES KEPT"),
                             tr("Receive what is there, and lots, balances and places are kept."));
    const auto all = warnings();
    if (all.empty())
        return m_notice->say(Role::Good, tr("IN ORDER"),
                             tr("Nothing is short, apart, expired or near its expiry."));
    const bool grave = all.front().kind != StoreWarningKind::NearExpiry;
    m_notice->say(grave ? Role::Limit : Role::HeadsUp, tr("LOOK"), warningText(all.front()));
}

void StoresPage::renderBar()
{
    placeBar();
    const bool covered = m_ask->isOpen();
    for (TapButton* each : {m_bench, m_file, m_warnings, m_sums})
        each->setVisible(!covered);
    m_more->setVisible(!covered && pages() > 1);
    m_receive->setVisible(!covered && !takes());
    m_take->setVisible(!covered && takes());
    m_bench->setWord(tr("bench"));
    m_bench->setMark(Mark::Back);
    m_more->setWord(tr("more …", "more lots"));
    m_more->setLine(tr("%1 of %2", "which page of how many").arg(pageNow() + 1).arg(pages()));
    m_receive->setWord(tr("receive …"));
    m_receive->setRole(m_model.bench().stores.lots.empty() ? Role::Primary : Role::Neutral);
    m_file->setWord(tr("from a file …"));
    m_take->setWord(tr("take %n line(s)", nullptr, static_cast<int>(m_delivery.taken.size())));
    m_take->setRole(Role::Primary);
    m_warnings->setWord(tr("warnings"));
    m_warnings->setLine(QString::number(warnings().size()));
    m_warnings->setChosen(m_view == View::Warnings);
    m_sums->setWord(tr("reckoning"));
    m_sums->setChosen(m_view == View::Sums);
}

}  // namespace bathside::ui
