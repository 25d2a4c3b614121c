// What the set-up page shows and where it stands.

#include <QEvent>
#include <algorithm>

#include "ui/controls/banner.h"
#include "ui/controls/grid.h"
#include "ui/setup/card_gauge.h"
#include "ui/setup/cautions.h"
#include "ui/setup/setup_page.h"
#include "ui/text/copies.h"
#include "ui/text/subjects.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;

constexpr double kTileWide = 64, kTileHigh = 23, kAfterMm = 1.5;
constexpr auto kRefusalShown = 6s;

}  // namespace

void SetUpPage::resizeEvent(QResizeEvent*) { place(); }

void SetUpPage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange) {
        m_cautions->retranslate();
        m_gauge->retranslate();
        closeAll();
    }
    Page::changeEvent(event);
}

// Top: the cautions, whatever else shows; only letters, which need the whole page, lie over them.
void SetUpPage::place()
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx(), bar = metrics.ceilPx(Metrics::kMinimum);
    const int cautions = m_cautions->heightFor(width());
    m_cautions->setGeometry(0, 0, width(), cautions);
    const int top = cautions + metrics.ceilPx(kAfterMm);
    const QRect room(0, top, width(), height() - top);
    m_ask->setGeometry(m_ask->room() == AskPane::Room::Page ? rect() : room);
    m_gauge->setGeometry(room);
    placeTiles(room.adjusted(0, 0, 0, -(bar + gap)));
    QList<TapButton*> targets{m_bench, m_more, m_other, m_sound, m_reading, m_duty, m_screen};
    if (pages() == 1)
        targets.removeOne(m_more);
    const QRect low(0, height() - bar, width(), bar);
    for (int i = 0; i < targets.size(); ++i)
        targets.at(i)->setGeometry(cellOf(low, {static_cast<int>(targets.size()), 1}, i));
    m_refusal->setGeometry(0, height() - bar - gap - metrics.ceilPx(11), width(),
                           metrics.ceilPx(11));
}

void SetUpPage::placeTiles(const QRect& room)
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx();
    const auto fit = [gap](int space, int size) {
        return std::max(1, (space + gap) / (size + gap));
    };
    m_columns = fit(room.width(), metrics.ceilPx(kTileWide));
    m_rows = std::min(fit(room.height(), metrics.ceilPx(kTileHigh)),
                      (static_cast<int>(checks().size()) + m_columns - 1) / m_columns);
    m_rows = std::max(m_rows, 1);
    makeTiles();
    for (std::size_t i = 0; i < m_tiles.size(); ++i)
        m_tiles[i]->setGeometry(cellOf(room, {m_columns, m_rows}, static_cast<int>(i)));
}

void SetUpPage::makeTiles()
{
    const auto count = static_cast<std::size_t>(m_columns * m_rows);
    while (m_tiles.size() > count) {
        m_tiles.back()->deleteLater();
        m_tiles.pop_back();
    }
    while (m_tiles.size() < count) {
        auto* tile = new CheckTile(QString(), this);
        const std::size_t index = m_tiles.size();
        connect(tile, &TapButton::pressed, this,
                [this, index](const TapStamp& stamp) { pressTile(index, stamp); });
        tile->hide();
        tile->stackUnder(m_refusal);
        m_tiles.push_back(tile);
    }
    m_page = std::min(m_page, pages() - 1);
}

std::vector<Check> SetUpPage::checks() const
{
    std::vector<Check> all;
    if (const auto& card = m_model.bench().card) {
        std::ranges::copy_if(card->content().checks, std::back_inserter(all),
                             [](const Check& check) { return check.id != kAlarmHeard; });
    }
    return all;
}

bool SetUpPage::hasSoundCheck() const
{
    const auto& card = m_model.bench().card;
    return card && std::ranges::any_of(card->content().checks,
                                       [](const Check& check) { return check.id == kAlarmHeard; });
}

int SetUpPage::pages() const
{
    const auto many = static_cast<int>(checks().size()),
               each = std::max(1, static_cast<int>(m_tiles.size()));
    return std::max(1, (many + each - 1) / each);
}

QString SetUpPage::wordsOf(const CheckId& check) const
{
    if (const auto& card = m_model.bench().card) {
        for (const Check& each : card->content().checks) {
            if (each.id == check)
                return fromCore(each.words.in(m_parts.language.cardCode()));
        }
    }
    return idText(check);
}

void SetUpPage::render()
{
    if (m_refusedAt && elapsed(*m_refusedAt, m_model.now()).time > kRefusalShown)
        m_refusedAt.reset();
    if (!m_refusedAt)
        m_refusal->say(Role::Neutral, {}, {});
    m_cautions->retranslate();
    renderTiles();
    renderBar();
}

void SetUpPage::renderTiles()
{
    const auto all = checks();
    const bool covered = m_ask->isOpen() || m_gauge->isVisibleTo(this);
    const std::size_t first = static_cast<std::size_t>(m_page) * m_tiles.size();
    for (std::size_t i = 0; i < m_tiles.size(); ++i) {
        CheckTile* tile = m_tiles[i];
        const bool there = first + i < all.size();
        tile->setVisible(there && !covered);
        if (!there)
            continue;
        const Check& check = all[first + i];
        tile->setPlace(QStringLiteral("setup.check.") + idText(check.id));
        tile->setCheck(wordsOf(check.id), standingOf(m_model.bench(), check.id), check.blocking);
        tile->setChosen(m_asksOutcome);
    }
}

void SetUpPage::renderBar()
{
    const Bench& bench = m_model.bench();
    const bool covered = m_ask->isOpen() || m_gauge->isVisibleTo(this);
    for (TapButton* each : {m_bench, m_more, m_other, m_sound, m_reading, m_duty, m_screen})
        each->setVisible(!covered);
    m_bench->setWord(tr("bench"));
    m_bench->setMark(Mark::Back);
    m_more->setWord(tr("more …", "more checks"));
    m_more->setLine(tr("%1 of %2", "which page of how many").arg(m_page + 1).arg(pages()));
    m_more->setVisible(!covered && pages() > 1);
    m_other->setWord(m_asksOutcome ? tr("which one?") : tr("not ok …"));
    m_other->setChosen(m_asksOutcome);

    const CheckStanding heard = standingOf(bench, kAlarmHeard);
    const bool proven = bench.soundProven && heard == CheckStanding::Ok;
    m_sound->setWord(tr("alarm"));
    m_sound->setLine(proven ? tr("heard") : standingText(heard, hasSoundCheck()));
    m_sound->setRole(proven ? Role::Good : ui::roleOf(heard, true));
    m_reading->setWord(tr("bath reading"));
    const bool isOpen = bench.shiftIsOpen() && bench.onDuty;
    m_duty->setWord(isOpen ? idText(bench.onDuty->id) : tr("who?"));
    m_duty->setLine(tr("on duty"));
    m_duty->setRole(isOpen ? Role::Neutral : Role::Primary);
    m_screen->setWord(tr("station …"));
    renderCopies();
}

// Only what somebody has to see to.
void SetUpPage::renderCopies()
{
    if (!m_parts.copies)
        return;
    const CopyNews news = m_parts.copies->news();
    const Role role = roleOf(news);
    m_screen->setRole(role);
    QString line;
    if (role != Role::Neutral)
        line = news.wrong == CopyNews::Wrong::Nothing ? tr("copy is old") : tr("copy failed");
    m_screen->setLine(line);
}

}  // namespace bathside::ui
