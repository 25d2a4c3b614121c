#include "ui/people/people_page.h"

#include <QEvent>
#include <algorithm>

#include "ui/controls/banner.h"
#include "ui/controls/grid.h"
#include "ui/controls/tap_button.h"
#include "ui/frame/frame.h"
#include "ui/text/refusals.h"
#include "ui/text/review.h"
#include "ui/text/subjects.h"
#include "ui/text/words.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;

constexpr double kNoticeMm = 11, kAfterMm = 1.5, kTileWide = 64, kTileHigh = 21;
constexpr auto kToldFor = 12s;

QString standingOf(const Member& member, const PinDesk& pins)
{
    if (member.departed)
        return PeoplePage::tr("works here no more");
    if (!member.hasPin)
        return PeoplePage::tr("%1, no PIN", "role").arg(wordOf(member.role));
    return pins.knows(member.id)
               ? PeoplePage::tr("%1, has a PIN", "role").arg(wordOf(member.role))
               : PeoplePage::tr("%1, PIN lost: set a new one", "role").arg(wordOf(member.role));
}

}  // namespace

PeoplePage::PeoplePage(Parts parts, QWidget* parent)
    : Page(parent),
      m_parts(std::move(parts)),
      m_model(m_parts.model),
      m_bench(button(QStringLiteral("people.bench"))),
      m_setUp(button(QStringLiteral("people.setup"))),
      m_more(button(QStringLiteral("people.more"))),
      m_add(button(QStringLiteral("people.add"))),
      m_notice(new Banner(QStringLiteral("people.notice"), this)),
      m_ask(new AskPane(m_model, this)),
      m_signing{.model = m_model,
                .asker = *m_ask,
                .pins = m_parts.pins,
                .zone = m_parts.zone,
                .tell = [this](const QString& sentence) { tell(sentence); }}
{
    setObjectName(QStringLiteral("people"));
    connect(m_bench, &TapButton::pressed, this,
            [this] { emit asksFor(QString::fromLatin1(Frame::kBench)); });
    connect(m_setUp, &TapButton::pressed, this,
            [this] { emit asksFor(QString::fromLatin1(Frame::kSetUp)); });
    connect(m_more, &TapButton::pressed, this, [this] {
        m_page = (m_page + 1) % pages();
        render();
    });
    connect(m_add, &TapButton::pressed, this,
            [this](const TapStamp& stamp) { ask(stamp, [this] { askAdd(); }); });
    connect(m_ask, &AskPane::changed, this, [this] {
        place();
        render();
    });
    connect(&m_model, &StationModel::changed, this, whileShown([this] { render(); }));
    connect(&m_model, &StationModel::refused, this, [this](const Refusal& refusal) {
        if (isVisible())
            tell(refusalText(refusal, m_model.bench().card.get(), m_parts.language.cardCode()));
    });
    connect(&theme(), &Theme::changed, this, [this] {
        place();
        render();
    });
    place();
    render();
}

TapButton* PeoplePage::button(const QString& place)
{
    auto* made = new TapButton(place, this);
    made->setCapMm(4);
    return made;
}

void PeoplePage::ask(const TapStamp& stamp, const std::function<void()>& question)
{
    m_ask->opening(stamp.inputMs);
    question();
    if (m_model.isInCriticalWindow())
        m_ask->close();
}

void PeoplePage::pressTile(std::size_t index, const TapStamp& stamp)
{
    const auto all = members();
    const std::size_t at = static_cast<std::size_t>(m_page) * m_tiles.size() + index;
    if (at < all.size())
        ask(stamp, [this, id = all[at].id] { askPerson(id); });
}

void PeoplePage::tell(const QString& sentence)
{
    m_toldAt = m_model.now();
    m_told = sentence;
    m_ask->showRefusal(sentence);
    render();
}

void PeoplePage::resizeEvent(QResizeEvent*)
{
    place();
    render();
}

void PeoplePage::showEvent(QShowEvent* event)
{
    Page::showEvent(event);
    m_toldAt.reset();
    m_ask->close();
    render();
}

void PeoplePage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange) {
        m_ask->close();
        render();
    }
    Page::changeEvent(event);
}

/// Those who work here first.
std::vector<Member> PeoplePage::members() const
{
    std::vector<Member> all;
    for (const auto& [id, member] : m_model.bench().people.members)
        all.push_back(member);
    std::ranges::stable_sort(all, {}, &Member::departed);
    return all;
}

int PeoplePage::pages() const
{
    const auto many = static_cast<int>(members().size()),
               each = std::max(1, static_cast<int>(m_tiles.size()));
    return std::max(1, (many + each - 1) / each);
}

void PeoplePage::place()
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx(), bar = metrics.ceilPx(Metrics::kMinimum);
    const int notice = metrics.ceilPx(kNoticeMm), top = notice + metrics.ceilPx(kAfterMm);
    m_notice->setGeometry(0, 0, width(), notice);
    const QRect room(0, top, width(), height() - top);
    m_ask->setGeometry(m_ask->room() == AskPane::Room::Page ? rect() : room);
    const QRect low(0, height() - bar, width(), bar);
    constexpr int kPlaces = 4;
    int at = 0;
    for (TapButton* each : {m_bench, m_setUp, m_add, m_more})
        each->setGeometry(cellOf(low, {kPlaces, 1}, at++));
    const QRect middle = room.adjusted(0, 0, 0, -(bar + gap));
    const auto fit = [gap](int space, int size) {
        return std::max(1, (space + gap) / (size + gap));
    };
    const GridShape shape{fit(middle.width(), metrics.ceilPx(kTileWide)),
                          fit(middle.height(), metrics.ceilPx(kTileHigh))};
    const auto count = static_cast<std::size_t>(shape.columns * shape.rows);
    while (m_tiles.size() > count) {
        m_tiles.back()->deleteLater();
        m_tiles.pop_back();
    }
    while (m_tiles.size() < count)
        addTile();
    for (std::size_t i = 0; i < m_tiles.size(); ++i)
        m_tiles[i]->setGeometry(cellOf(middle, shape, static_cast<int>(i)));
}

void PeoplePage::addTile()
{
    TapButton* tile = button(QString());
    const std::size_t index = m_tiles.size();
    connect(tile, &TapButton::pressed, this,
            [this, index](const TapStamp& stamp) { pressTile(index, stamp); });
    tile->hide();
    tile->stackUnder(m_ask);
    m_tiles.push_back(tile);
}

void PeoplePage::render()
{
    if (m_toldAt && elapsed(*m_toldAt, m_model.now()).time > kToldFor)
        m_toldAt.reset();
    m_page = std::min(m_page, pages() - 1);
    const bool covered = m_ask->isOpen();
    for (TapButton* each : {m_bench, m_setUp, m_add})
        each->setVisible(!covered);
    m_more->setVisible(!covered && pages() > 1);
    const bool areListed = m_model.bench().people.areListed();
    m_bench->setWord(tr("bench"));
    m_setUp->setWord(tr("set-up"));
    m_setUp->setMark(Mark::Back);
    m_add->setWord(areListed ? tr("add a person …") : tr("add the shift lead …"));
    m_add->setRole(areListed ? Role::Neutral : Role::Primary);
    m_more->setWord(tr("more …", "more people"));
    m_more->setLine(tr("%1 of %2", "which page of how many").arg(m_page + 1).arg(pages()));
    renderTiles();
    renderNotice();
}

void PeoplePage::renderTiles()
{
    const auto all = members();
    const std::size_t first = static_cast<std::size_t>(m_page) * m_tiles.size();
    for (std::size_t i = 0; i < m_tiles.size(); ++i) {
        const bool there = first + i < all.size();
        m_tiles[i]->setVisible(there && !m_ask->isOpen());
        if (!there)
            continue;
        const Member& member = all[first + i];
        m_tiles[i]->setPlace(QStringLiteral("people.person.") + idText(member.id));
        m_tiles[i]->setWord(personText(m_model.bench().people, member.id));
        m_tiles[i]->setLine(standingOf(member, m_parts.pins));
        m_tiles[i]->setRole(member.departed ? Role::Quiet : Role::Neutral);
    }
}

void PeoplePage::renderNotice()
{
    const Bench& bench = m_model.bench();
    if (m_toldAt)
        return m_notice->say(Role::HeadsUp, {}, m_told);
    if (!bench.people.areListed())
        return m_notice->say(
            Role::HeadsUp, tr("NOBODY IS LISTED"),
            tr("Begin with the shift lead: without one everybody may do everything and nobody can "
               "sign."));
    if (signersFor(bench, m_parts.pins, Act::Approve).empty())
        return m_notice->say(Role::Limit, tr("NOBODY CAN SIGN"),
                             tr("A shift lead has to set a PIN: tap the name."));
    m_notice->say(Role::Good, tr("IN ORDER"),
                  tr("A name is enough at the bench; a PIN is a signature."));
}

}  // namespace bathside::ui
