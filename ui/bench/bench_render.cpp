#include <QEvent>
#include <algorithm>

#include "core/bench/next.h"
#include "ui/bench/ask_shift.h"
#include "ui/bench/bag_places.h"
#include "ui/bench/bench_page.h"
#include "ui/bench/line_tiles.h"
#include "ui/bench/pull_lanes.h"
#include "ui/controls/bag_tile.h"
#include "ui/controls/banner.h"
#include "ui/controls/big_clock.h"
#include "ui/controls/fact_list.h"
#include "ui/controls/label.h"
#include "ui/controls/step_button.h"
#include "ui/models/recent.h"
#include "ui/models/urgent.h"
#include "ui/text/printing.h"
#include "ui/text/short_facts.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/text/words.h"
#include "ui/theme/theme.h"

// What the bench page shows: every function reads the model anew and sets one part of it.

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;

constexpr Micros kRefusalStays = 6s, kPrintedStays = 12s;

/// Minutes and seconds of what is near, else whole minutes.
void setTime(BigClockState& state, const Urgent& urgent)
{
    constexpr Micros kNear = 10min;
    if (urgent.of == Urgent::Of::Ampoule || (urgent.left < kNear && urgent.left > -kNear)) {
        state.time = countdownText(urgent.left);
        return;
    }
    const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(urgent.left).count();
    state.time = minutes < 0 ? QStringLiteral("+%1").arg(-minutes) : QString::number(minutes);
    //: After the digits of the big clock: minutes.
    state.unit = BenchPage::tr("min");
}

}  // namespace

void BenchPage::resizeEvent(QResizeEvent*)
{
    place();
    render();
}

void BenchPage::showEvent(QShowEvent* event)
{
    Page::showEvent(event);
    render();
}

void BenchPage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        render();
    Page::changeEvent(event);
}

void BenchPage::place()
{
    constexpr double kTitleMm = 13;
    const Metrics& metrics = theme().metrics();
    m_at = benchLayout(size(), metrics, m_clock->sizeHint().width());
    const int title = metrics.ceilPx(kTitleMm);
    const auto split = [title](const QRect& room, Label* above, Label* below) {
        above->setGeometry(room.left(), room.top(), room.width(), title);
        below->setGeometry(room.adjusted(0, title, 0, 0));
    };
    m_clock->setGeometry(m_at.clock);
    split(m_at.clock, m_noteTitle, m_note);
    split(m_at.left, m_hintTitle, m_hint);
    m_lanes->setGeometry(m_at.left);
    m_lines->setGeometry(m_at.left);
    const auto facts = static_cast<int>(m_facts.size());
    for (int i = 0; i < facts; ++i) {
        const int wide = m_at.facts.width() / facts;
        m_facts[static_cast<std::size_t>(i)]->setGeometry(
            m_at.facts.left() + i * wide, m_at.facts.top(), wide, m_at.facts.height());
    }
    m_refusal->setGeometry(m_at.facts);
    m_takeBack->setGeometry(m_at.takeBack);
    m_heard->setGeometry(m_at.heard);
    m_more->setGeometry(m_at.more);
    makeTiles(m_at.tiles.size());
    for (std::size_t i = 0; i < m_tiles.size(); ++i)
        m_tiles[i]->setGeometry(m_at.tiles[i]);
    placeStep();
    placeAsked(m_at);
}

void BenchPage::placeAsked(const BenchLayout& at)
{
    switch (m_ask->room()) {
        case AskPane::Room::None:
            return;
        case AskPane::Room::Beside:
            return m_ask->setGeometry(at.left);
        case AskPane::Room::Whole:
            return m_ask->setGeometry(at.whole);
        case AskPane::Room::Page:
            return m_ask->setGeometry(rect());
    }
}

// From the last step before a pull until its bag hangs the place beside the big button stays where
// it is.
bool BenchPage::stepIsWide() const
{
    if (m_ask->step())
        return true;
    const NextDeed deed = next(m_model.bench()).deed;
    const bool nearPull = deed == NextDeed::DrawDiluent || deed == NextDeed::TakeOut ||
                          deed == NextDeed::MoveOn || deed == NextDeed::Mix ||
                          deed == NextDeed::Hang;
    return !nearPull && !m_model.isInCriticalWindow() && !sideStep(m_model);
}

void BenchPage::placeStep()
{
    m_step->setGeometry(stepIsWide() ? m_at.step.united(m_at.side) : m_at.step);
    m_side->setGeometry(m_at.side);
}

void BenchPage::makeTiles(std::size_t count)
{
    while (m_tiles.size() > count) {
        m_tiles.back()->deleteLater();
        m_tiles.pop_back();
    }
    while (m_tiles.size() < count) {
        const std::size_t index = m_tiles.size();
        auto* tile = new BagTile(QStringLiteral("bag.%1").arg(index + 1), this);
        connect(tile, &TapButton::pressed, this,
                [this, index](const TapStamp& stamp) { pressTile(index, stamp); });
        tile->stackUnder(m_refusal);
        tile->hide();
        m_tiles.push_back(tile);
    }
}

void BenchPage::follow()
{
    const auto& day = m_model.day();
    m_draft.follow(m_model.bench(), day && day->next ? &*day->next : nullptr);
    render();
}

void BenchPage::render()
{
    followWindow();
    renderStep();
    renderClock();
    renderLeft();
    renderFacts();
    renderBottom();
    renderTiles();
    renderRefusal();
}

// In the window nothing is asked; after it, what has to be explained, until it is put off.
void BenchPage::followWindow()
{
    if (m_model.isInCriticalWindow()) {
        m_questionsWait = false;
        m_ask->close();
        return;
    }
    if (!m_ask->isOpen() && !m_questionsWait && !questions(m_model.state()).empty())
        askQuestion(m_context);
}

void BenchPage::renderStep()
{
    const bool covered = m_ask->coversStep();
    m_step->setVisible(!covered);
    placeStep();
    const auto side = m_ask->isOpen() ? std::nullopt : sideStep(m_model);
    m_side->setVisible(side.has_value());
    if (side) {
        m_side->setWord(side->word);
        m_side->setReason(side->reason);
    }
    if (const auto& asked = m_ask->step()) {
        m_step->setWord(asked->word);
        m_step->setLine(asked->line);
        m_step->setReason(asked->reason);
        return;
    }
    const BigStep step = bigStep(m_model, m_draft);
    m_step->setWord(step.word);
    m_step->setLine(step.line);
    m_step->setReason(step.reason);
}

bool BenchPage::isBeforePull() const
{
    return !m_model.isInCriticalWindow() && next(m_model.bench()).deed == NextDeed::TakeOut;
}

void BenchPage::renderClock()
{
    const bool covered = m_ask->coversStep();
    const auto urgent = mostUrgent(m_model.bench(), m_model.alarms(), m_model.now());
    const bool notes = isBeforePull() || !urgent;
    m_clock->setVisible(!covered && !notes);
    m_noteTitle->setVisible(!covered && notes);
    m_note->setVisible(!covered && notes);
    if (notes)
        return renderNote();
    BigClockState state;
    state.role = roleOf(urgent->level);
    if (urgent->level)
        state.level = wordOf(*urgent->level);
    const bool past = urgent->left <= Micros::zero();
    state.label = past ? pastText(urgent->limit) : untilText(urgent->limit);
    if (urgent->of != Urgent::Of::NextPull)
        //: Under the big clock: whose time it is, and until what.
        state.label = tr("%1: %2").arg(subjectText(urgent->subject), state.label);
    setTime(state, *urgent);
    m_clock->setState(state);
}

// Where no time runs, its place says how many ampoules fit at this pace and what to mind.
void BenchPage::renderNote()
{
    const Bench& bench = m_model.bench();
    if (!isBeforePull()) {
        m_noteTitle->setText({});
        m_note->setText({});
        return;
    }
    const int count = std::max(1, static_cast<int>(m_draft.ampoules().size()));
    const Pace pace = bathside::pace(bench, count);
    const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(pace.stagger).count();
    m_noteTitle->setWeight(Weight::Strong);
    m_noteTitle->setText(pace.together >= count ? tr("%n fit(s) in time together", nullptr, count)
                                                : tr("Stagger: one every %n second(s)", nullptr,
                                                     static_cast<int>(seconds)));
    m_noteTitle->setRole(pace.together >= count ? Role::Neutral : Role::HeadsUp);
    m_noteTitle->setMaxLines(2);
    m_note->setMaxLines(5);
    m_note->setCapMm(4, Metrics::kSmall);
    m_note->setText(tr(
        "Face shield, insulated gloves, tongs, fresh air. Ampoules can burst: open them away from "
        "you, thumb clear. The label comes first."));
}

BenchPage::Left BenchPage::left() const
{
    const Bench& bench = m_model.bench();
    if (pullInHand(bench, m_model.now()) || bench.bagBeingMadeUp())
        return Left::Lanes;
    return bench.lines.empty() ? Left::Hint : Left::Lines;
}

void BenchPage::renderLeft()
{
    const Left shown = left();
    const bool free = !m_ask->isOpen();
    m_lanes->setVisible(free && shown == Left::Lanes);
    m_lines->setVisible(free && shown == Left::Lines);
    m_hintTitle->setVisible(free && shown == Left::Hint);
    m_hint->setVisible(free && shown == Left::Hint);
    if (shown != Left::Lanes)
        m_lanes->closeEnds();
    if (shown == Left::Lanes) {
        const Bench& bench = m_model.bench();
        const Pull* pull = bench.openPull();
        const int first = pull && !pull->ampoules.empty() ? pull->ampoules.back().ref.no + 1 : 1;
        m_lanes->render(lanes(bench, m_draft, m_model.alarms(), m_model.now()), first,
                        !m_model.isInCriticalWindow());
    }
    if (shown == Left::Lines)
        m_lines->render(m_model.bench(), m_model.alarms());
    if (shown == Left::Hint)
        renderHint();
}

void BenchPage::renderHint()
{
    const NextDeed deed = next(m_model.bench()).deed;
    m_hintTitle->setWeight(Weight::Strong);
    m_hintTitle->setCapMm(7, Metrics::kSmall);
    m_hintTitle->setMaxLines(1);
    m_hint->setMaxLines(9);
    m_hint->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    if (deed == NextDeed::OpenShift) {
        m_hintTitle->setText(tr("No shift is open"));
        m_hint->setText(tr(
            "The big button says what has been DONE. Press it in the moment you have done it: "
            "Bathside "
            "takes the time, watches the limits and calls you. A slip of the finger? TAKE BACK."));
    } else if (deed == NextDeed::SetUp) {
        m_hintTitle->setText(tr("Set the bench up"));
        m_hint->setText(
            tr("Go through the list: alarm heard, diluent inspected, bath at temperature, eyes and "
               "hands "
               "protected. Then start a bag."));
    } else {
        m_hintTitle->setText(tr("Ready for a bag"));
        m_hint->setText(
            tr("Start a bag, inspect it, draw the diluent. Then take the ampoules out of the "
               "cryogen: from "
               "there on every step is one press."));
    }
}

void BenchPage::renderFacts()
{
    constexpr double kForTimes = 60;  // mm
    const bool covered = m_ask->room() == AskPane::Room::Page;
    const bool timed =
        !m_facts.empty() && theme().metrics().mm(m_facts.front()->width()) >= kForTimes;
    const auto said = lastSaid(m_model.state(), m_model.record().recorded, m_facts.size());
    for (std::size_t i = 0; i < m_facts.size(); ++i) {
        m_facts[i]->setVisible(!covered && !m_refusedAt && !tellsPrinted());
        QList<FactLine> one;
        if (i < said.size())
            one.append({.text = shortText(said[i].facts),
                        .time = timed ? localTimeText(said[i].at.wall, m_context.zoneNow()).left(5)
                                      : QString(),
                        .recorded = said[i].recorded,
                        .refused = false});
        m_facts[i]->setFacts(one);
    }
}

void BenchPage::renderBottom()
{
    const bool covered = m_ask->room() == AskPane::Room::Page;
    const bool inWindow = m_model.isInCriticalWindow();
    for (QWidget* each : {m_takeBack, m_heard, m_more})
        each->setVisible(!covered);

    m_takeBack->setWord(tr("TAKE BACK"));
    m_takeBack->setMark(Mark::Back);
    const auto refusal = m_model.refusal(TakeBack{"?"});
    m_takeBack->setReason(refusal ? tr("nothing yet") : QString());

    const auto& due = m_model.alarms().due;
    const bool sounds = std::ranges::any_of(due, [](const Alarm& alarm) { return !alarm.hushed; });
    m_heard->setWord(tr("HEARD"));
    m_heard->setMark(Mark::Ear);
    m_heard->setRole(sounds ? roleOf(due.front().level) : Role::Neutral);
    m_heard->setReason(sounds ? QString() : tr("nothing sounds"));

    const auto& duty = m_model.bench().onDuty;
    const bool asks = m_ask->isOpen();
    m_more->setWord(asks ? tr("CLOSE") : tr("MORE"));
    m_more->setMark(asks ? Mark::Cross : Mark::None);
    const bool hasDuty = duty || m_model.bench().shiftIsOpen();
    //: %1 is a person's initials.
    const QString onDuty = tr("on duty: %1").arg(duty ? idText(duty->id) : QStringLiteral("–"));
    m_more->setLine(asks || !hasDuty ? QString() : onDuty);
    m_more->setEnabled(!inWindow);
    m_more->setRole(inWindow ? Role::Quiet : Role::Neutral);
}

void BenchPage::renderTiles()
{
    const bool covered = m_ask->room() == AskPane::Room::Page;
    const bool inWindow = m_model.isInCriticalWindow();
    const auto places = bagPlaces(m_model.bench());
    for (std::size_t i = 0; i < m_tiles.size(); ++i) {
        const Bag* bag = i < places.size() ? places[i] : nullptr;
        m_tiles[i]->setVisible(bag && !covered);
        if (!bag)
            continue;
        BagState state = bagState(*bag, m_model.alarms(), m_model.now());
        const bool deaf = inWindow && !deedInWindow(m_model, *bag);
        if (deaf && state.level.isEmpty())
            state.role = Role::Quiet;
        m_tiles[i]->setEnabled(!deaf);
        m_tiles[i]->setState(state);
    }
}

void BenchPage::renderRefusal()
{
    if (m_refusedAt && elapsed(*m_refusedAt, m_model.now()).time >= kRefusalStays)
        m_refusedAt.reset();
    if (!m_refusedAt)
        renderPrinted();
    m_refusal->raise();
}

bool BenchPage::tellsPrinted() const { return m_printed && !m_model.isInCriticalWindow(); }

// Not told in the critical window, and elsewhere long enough to be read.
void BenchPage::renderPrinted()
{
    if (m_printedAt && elapsed(*m_printedAt, m_model.now()).time >= kPrintedStays) {
        m_printed.reset();
        m_printedAt.reset();
    }
    if (!tellsPrinted() || !isVisible())
        return m_refusal->say(Role::HeadsUp, {}, {});
    if (!m_printedAt)
        m_printedAt = m_model.now();
    const PrintNews news = printNews(*m_printed);
    m_refusal->say(news.role, news.word, news.text);
}

}  // namespace bathside::ui
