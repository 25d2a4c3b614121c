#include "ui/bench/bench_page.h"

#include <QKeyEvent>
#include <utility>

#include "ui/bench/ask_bag.h"
#include "ui/bench/ask_line.h"
#include "ui/bench/ask_mend.h"
#include "ui/bench/ask_menu.h"
#include "ui/bench/ask_pull.h"
#include "ui/bench/ask_shift.h"
#include "ui/bench/bag_places.h"
#include "ui/bench/line_tiles.h"
#include "ui/bench/pull_lanes.h"
#include "ui/controls/bag_tile.h"
#include "ui/controls/banner.h"
#include "ui/controls/big_clock.h"
#include "ui/controls/fact_list.h"
#include "ui/controls/label.h"
#include "ui/controls/step_button.h"
#include "ui/frame/frame.h"
#include "ui/text/refusals.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr int kFactsShown = 3;

}  // namespace

BenchPage::BenchPage(StationModel& model, const Language& language, Printing& printing,
                     std::string zone, QWidget* parent)
    : Page(parent),
      m_model(model),
      m_language(language),
      m_printing(printing),
      m_step(new StepButton(QStringLiteral("step"), this)),
      m_side(new TapButton(QStringLiteral("side"), this)),
      m_clock(new BigClock(this)),
      m_noteTitle(new Label(this)),
      m_note(new Label(this)),
      m_hintTitle(new Label(this)),
      m_hint(new Label(this)),
      m_lanes(new PullLanes(this)),
      m_lines(new LineTiles(this)),
      m_takeBack(new TapButton(QStringLiteral("take-back"), this)),
      m_heard(new TapButton(QStringLiteral("heard"), this)),
      m_more(new TapButton(QStringLiteral("more"), this)),
      m_refusal(new Banner(QStringLiteral("refusal"), this)),
      m_ask(new AskPane(model, this)),
      m_context{.model = model,
                .draft = m_draft,
                .asker = *m_ask,
                .language = language,
                .zone = std::move(zone),
                .goTo = [this](const QString& page) { emit asksFor(page); },
                .draftChanged = [this] { render(); },
                .later = [this] { putOff(); },
                .printLabel = [this](const BagId& bag) { printLabel(bag); }}
{
    m_side->setWeight(Weight::Narrow);
    setObjectName(QStringLiteral("bench"));
    for (int i = 0; i < kFactsShown; ++i)
        m_facts.push_back(new FactList(1, this));
    connectAll();
    connectLanes();
    follow();
}

TapButton* BenchPage::step() { return m_ask->coversStep() ? nullptr : m_step; }

void BenchPage::connectAll()
{
    connect(m_step, &TapButton::pressed, this, &BenchPage::pressStep);
    connect(m_side, &TapButton::pressed, this, &BenchPage::pressSide);
    connect(m_takeBack, &TapButton::pressed, this, [this](const TapStamp& stamp) {
        ask(stamp, [this, stamp] { takeBack(m_context, {stamp.inputMs, m_takeBack->place()}); });
    });
    connect(m_heard, &TapButton::pressed, this, [this](const TapStamp& stamp) {
        m_model.say(HearAlarm{}, stamp.inputMs, m_heard->place());
    });
    connect(m_more, &TapButton::pressed, this, [this](const TapStamp& stamp) {
        if (m_ask->isOpen())
            return putOff();
        ask(stamp, [this] { askMore(m_context); });
    });
    connect(m_lines, &LineTiles::chosen, this, [this](const LineId& line, const TapStamp& stamp) {
        ask(stamp, [this, line] { askLine(m_context, line); });
    });
    connect(m_ask, &AskPane::changed, this, [this] {
        place();
        render();
        emit stepChanged();
    });
    connect(&m_model, &StationModel::stateChanged, this, &BenchPage::follow);
    connect(&m_model, &StationModel::changed, this, whileShown([this] { render(); }));
    connect(&m_model, &StationModel::refused, this, &BenchPage::showRefusal);
    connect(&m_model, &StationModel::taken, this, [this] { m_refusedAt.reset(); });
    connect(&m_printing, &Printing::ended, this, [this](const PrintOutcome& outcome) {
        if (outcome.of != PrintOutcome::Of::Label)
            return;
        m_printed = outcome;
        m_printedAt.reset();
        render();
    });
    connect(&theme(), &Theme::changed, this, &BenchPage::place);
}

void BenchPage::connectLanes()
{
    connect(m_lanes, &PullLanes::advanced, this, &BenchPage::moveLane);
    connect(m_lanes, &PullLanes::ended, this, &BenchPage::endLane);
    connect(m_lanes, &PullLanes::added, this,
            [this](const TapStamp& stamp) { ask(stamp, [this] { askAmpoule(m_context); }); });
}

/// Opens a question, unless the window forbids it.
void BenchPage::ask(const TapStamp& stamp, const std::function<void()>& question)
{
    m_ask->opening(stamp.inputMs);
    question();
    if (m_model.isInCriticalWindow())
        m_ask->close();
}

/// Closes what is asked; what has to be explained comes back after the next pull.
void BenchPage::putOff()
{
    m_questionsWait = true;
    m_ask->close();
}

void BenchPage::pressStep(const TapStamp& stamp)
{
    if (m_ask->step())
        return m_ask->pressStep({stamp.inputMs, m_step->place()});
    const BigStep step = bigStep(m_model, m_draft);
    if (!step.intent)
        return ask(stamp, [this, step] { askFor(step); });
    if (m_model.say(*step.intent, stamp.inputMs, m_step->place()))
        m_ask->close();
}

void BenchPage::pressSide(const TapStamp& stamp)
{
    const auto step = sideStep(m_model);
    if (!step)
        return;
    if (step->intent)
        m_model.say(*step->intent, stamp.inputMs, m_side->place());
    else if (!isPrintBounce(stamp.inputMs))
        askFor(*step);
}

/// A finger that bounces on *print label* wants one label.
bool BenchPage::isPrintBounce(quint64 inputMs)
{
    const quint64 since = inputMs - std::exchange(m_printPressedMs, inputMs);
    return since < static_cast<quint64>(m_model.bench().card->content().sameTap.count());
}

// Nobody waits for it: how it went is told when it is known.
void BenchPage::printLabel(const BagId& bag)
{
    if (m_model.isInCriticalWindow())
        return;
    if (const auto label = bagLabel(m_model.state(), bag))
        m_printing.printLabel(*label);
}

void BenchPage::askFor(const BigStep& step)
{
    switch (step.asks) {
        case BigStep::Asks::Nothing:
            return;
        case BigStep::Asks::Person:
            return askWhoOpens(m_context);
        case BigStep::Asks::SetUp:
            emit asksFor(QString::fromLatin1(Frame::kSetUp));
            return;
        case BigStep::Asks::Bag:
            return askNewBag(m_context);
        case BigStep::Asks::Ampoules:
            return askAmpoule(m_context);
        case BigStep::Asks::Lot:
            return askLot(m_context, m_draft.firstWithoutLot().value_or(0));
        case BigStep::Asks::Line:
            if (step.bag)
                askWhereHung(m_context, *step.bag);
            return;
        case BigStep::Asks::Label:
            if (step.bag)
                printLabel(*step.bag);
            return;
    }
}

void BenchPage::moveLane(const Lane& lane, const QString& place, const TapStamp& stamp)
{
    if (lane.kind == Lane::Kind::Planned)
        return takeOutPlanned(lane, place, stamp);
    // A lane that has ended is asked for all the same: the core refuses it, and the record says so.
    const Step step = lane.next.value_or(Step::Bagged);
    m_model.say(MoveOn{step, {lane.ampoule.no}, {}}, stamp.inputMs, place);
}

void BenchPage::takeOutPlanned(const Lane& lane, const QString& place, const TapStamp& stamp)
{
    if (lane.planned >= m_draft.ampoules().size())
        return;
    const AmpouleTaken ampoule = m_draft.ampoules()[lane.planned];
    if (ampoule.lot.empty() && !m_model.isInCriticalWindow())
        return ask(stamp, [this, lane] { askLot(m_context, lane.planned); });
    if (m_model.say(TakeOut{{ampoule}}, stamp.inputMs, place))
        m_ask->close();
}

void BenchPage::endLane(const Lane& lane, const QString& end, const QString& place,
                        const TapStamp& stamp)
{
    if (lane.kind != Lane::Kind::Planned) {
        if (const auto why = named<LossReason>(end.toStdString()))
            m_model.say(LoseAmpoule{lane.ampoule.no, *why}, stamp.inputMs, place);
        return;
    }
    if (end == QLatin1String(PullLanes::kRemove))
        m_draft.removeAt(lane.planned);
    else
        ask(stamp, [this, lane] { askLot(m_context, lane.planned); });
    render();
}

void BenchPage::pressTile(std::size_t index, const TapStamp& stamp)
{
    const auto places = bagPlaces(m_model.bench());
    if (index >= places.size() || !places[index])
        return;
    const Bag& bag = *places[index];
    if (m_model.isInCriticalWindow()) {
        if (const auto deed = deedInWindow(m_model, bag))
            m_model.say(*deed, stamp.inputMs, m_tiles.at(index)->place());
        return;
    }
    ask(stamp, [this, id = bag.id] { askBag(m_context, id); });
}

void BenchPage::showRefusal(const Refusal& refusal)
{
    m_refusedAt = m_model.now();
    const QString why = refusalText(refusal);
    m_refusal->say(Role::HeadsUp, tr("Not taken."), why);
    m_ask->showRefusal(why);
    renderRefusal();
}

// Arrows go from target to target, as Tab does; Enter, as a scanner sends it, does nothing.
void BenchPage::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
        case Qt::Key_Left:
        case Qt::Key_Up:
            focusNextPrevChild(false);
            return;
        case Qt::Key_Right:
        case Qt::Key_Down:
            focusNextPrevChild(true);
            return;
        default:
            QWidget::keyPressEvent(event);
    }
}

}  // namespace bathside::ui
