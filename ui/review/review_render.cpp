// What the review shows and where it stands.

#include <QEvent>
#include <algorithm>

#include "core/bench/card_in_force.h"
#include "ui/controls/banner.h"
#include "ui/controls/grid.h"
#include "ui/record/field_sheet.h"
#include "ui/review/course_picture.h"
#include "ui/review/review_page.h"
#include "ui/text/subjects.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;

constexpr double kNoticeMm = 11, kGapMm = 1.5, kTileWide = 95, kTileHigh = 21, kCourseMm = 32,
                 kBathStripMm = 9;
constexpr auto kToldFor = 12s;

QString placeOf(const ReviewCase& one)
{
    return one.hold && one.bag ? QStringLiteral("review.held.%1").arg(idText(*one.bag))
                               : QStringLiteral("review.case.%1").arg(one.seq());
}

}  // namespace

void ReviewPage::resizeEvent(QResizeEvent*)
{
    place();
    render();
}

void ReviewPage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        put(View::List);
    Page::changeEvent(event);
}

std::string ReviewPage::zoneNow() const
{
    const auto& shift = m_model.bench().shift;
    return shift ? shift->zone : m_parts.zone;
}

std::vector<ReviewCase> ReviewPage::cases() const { return reviewCases(m_model.bench()); }

std::optional<ReviewCase> ReviewPage::current() const
{
    const auto all = cases();
    const auto found = std::ranges::find(all, m_seq, &ReviewCase::seq);
    return found == all.end() ? std::nullopt : std::optional(*found);
}

int ReviewPage::pages() const
{
    if (m_view != View::List)
        return m_sheet->sheets();
    const auto many = static_cast<int>(cases().size()),
               each = std::max(1, static_cast<int>(m_tiles.size()));
    return std::max(1, (many + each - 1) / each);
}

// --- where it stands -----------------------------------------------------------------------------

void ReviewPage::place()
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx(), bar = metrics.ceilPx(Metrics::kMinimum);
    const int notice = metrics.ceilPx(kNoticeMm), after = metrics.ceilPx(kGapMm);
    m_notice->setGeometry(0, 0, width(), notice);
    const QRect room(0, notice + after, width(), height() - notice - after);
    m_ask->setGeometry(m_ask->room() == AskPane::Room::Page ? rect() : room);
    const QRect middle = room.adjusted(0, 0, 0, -(bar + gap));
    const auto fit = [gap](int space, int size) {
        return std::max(1, (space + gap) / (size + gap));
    };
    m_columns = fit(middle.width(), metrics.ceilPx(kTileWide));
    m_rows = fit(middle.height(), metrics.ceilPx(kTileHigh));
    makeTiles();
    for (std::size_t i = 0; i < m_tiles.size(); ++i)
        m_tiles[i]->setGeometry(cellOf(middle, {m_columns, m_rows}, static_cast<int>(i)));
    const auto one = m_view == View::Case ? current() : std::nullopt;
    const bool hasCourse = one && one->deviation;
    const auto hasReadings = [](const Told& then) {
        return !courseOf(then.state, *then.one.deviation).readings.empty();
    };
    const bool hasBath = hasCourse && hasReadings(told(*one));
    const int course = hasCourse ? metrics.ceilPx(kCourseMm + (hasBath ? kBathStripMm : 0)) : 0;
    m_course->setGeometry(middle.x(), middle.y(), middle.width(), course);
    m_sheet->setGeometry(middle.adjusted(0, hasCourse ? course + after : 0, 0, 0));
}

void ReviewPage::makeTiles()
{
    const auto count = static_cast<std::size_t>(m_columns * m_rows);
    while (m_tiles.size() > count) {
        m_tiles.back()->deleteLater();
        m_tiles.pop_back();
    }
    while (m_tiles.size() < count) {
        auto* tile = new CaseTile(QString(), this);
        const std::size_t index = m_tiles.size();
        connect(tile, &TapButton::pressed, this, [this, index] { pressTile(index); });
        tile->hide();
        tile->stackUnder(m_ask);
        m_tiles.push_back(tile);
    }
}

// --- what is shown -------------------------------------------------------------------------------

void ReviewPage::render()
{
    if (m_toldAt && elapsed(*m_toldAt, m_model.now()).time > kToldFor)
        m_toldAt.reset();
    if (m_view == View::Case && !current()) {  // judged away, or decided on
        m_view = View::List;
        place();
    }
    if (m_view == View::Card && !unapproved(m_model.bench()))
        m_view = View::List;
    m_page = std::min(m_page, std::max(0, pages() - 1));
    const bool covered = m_ask->isOpen();
    const auto looked = m_view == View::Case ? current() : std::nullopt;
    m_course->setVisible(!covered && looked && looked->deviation);
    m_sheet->setVisible(!covered && m_view != View::List);
    renderTiles();
    if (m_view == View::Case)
        renderCase();
    if (m_view == View::Card)
        renderCard();
    renderBar();
    renderNotice();
}

void ReviewPage::renderTiles()
{
    const auto all = cases();
    const bool covered = m_ask->isOpen() || m_view != View::List;
    const std::size_t first = static_cast<std::size_t>(m_page) * m_tiles.size();
    for (std::size_t i = 0; i < m_tiles.size(); ++i) {
        const bool there = first + i < all.size();
        m_tiles[i]->setVisible(there && !covered);
        if (!there)
            continue;
        const ReviewCase& one = all[first + i];
        m_tiles[i]->setPlace(placeOf(one));
        m_tiles[i]->setCase(
            one,
            one.deviation ? std::optional(courseOf(m_model.state(), *one.deviation)) : std::nullopt,
            zoneNow());
    }
}

void ReviewPage::renderBar()
{
    const bool covered = m_ask->isOpen(), isList = m_view == View::List;
    const auto one = m_view == View::Case ? current() : std::nullopt;
    const bool isNew = one && one->isOpen;
    m_bench->setWord(tr("bench"));
    m_bench->setMark(Mark::Back);
    m_back->setWord(tr("all cases"));
    m_back->setMark(Mark::Back);
    m_more->setWord(tr("more …", "more of the list or sheet"));
    m_more->setLine(tr("%1 of %2", "which page of how many")
                        .arg((isList ? m_page : m_sheet->sheet()) + 1)
                        .arg(pages()));
    m_judge->setWord(!one || one->deviation ? (isNew ? tr("review …") : tr("review again …"))
                                            : tr("decide on the bag …"));
    m_judge->setRole(isNew ? Role::Primary : Role::Neutral);
    m_card->setWord(tr("new card …"));
    m_card->setLine(tr("to be approved"));
    m_card->setRole(Role::HeadsUp);
    m_approve->setWord(tr("approve …"));
    m_approve->setRole(Role::Primary);
    m_charts->setWord(tr("charts over time"));
    QList<TapButton*> shown{isList ? m_bench : m_back};
    if (pages() > 1)
        shown.append(m_more);
    if (isList && unapproved(m_model.bench()))
        shown.append(m_card);
    if (isList)
        shown.append(m_charts);
    if (m_view == View::Case)
        shown.append(m_judge);
    if (m_view == View::Card)
        shown.append(m_approve);
    const int bar = theme().metrics().ceilPx(Metrics::kMinimum);
    const QRect low(0, height() - bar, width(), bar);
    constexpr int kPlaces = 4;  // so that one target alone is no beam across the page
    for (TapButton* each : {m_bench, m_back, m_more, m_judge, m_card, m_approve, m_charts})
        each->setVisible(!covered && shown.contains(each));
    for (int i = 0; i < shown.size(); ++i)
        shown.at(i)->setGeometry(cellOf(low, {kPlaces, 1}, i));
}

void ReviewPage::renderNotice()
{
    if (m_toldAt)
        return m_notice->say(Role::HeadsUp, {}, m_told);
    const auto all = cases();
    const auto open = std::ranges::count_if(all, &ReviewCase::isOpen);
    if (open == 0)
        return m_notice->say(Role::Good, tr("ALL REVIEWED"),
                             all.empty() ? tr("No limit was passed, and no bag is on hold.")
                                         : tr("Nothing waits for a shift lead."));
    if (!m_model.bench().people.areListed())
        return m_notice->say(Role::HeadsUp, tr("NOBODY CAN SIGN"),
                             tr("List a shift lead first: set-up, people."));
    m_notice->say(
        Role::Limit, tr("TO REVIEW"),
        tr("%n case(s) wait for a shift lead, the worst first.", nullptr, static_cast<int>(open)));
}

}  // namespace bathside::ui
