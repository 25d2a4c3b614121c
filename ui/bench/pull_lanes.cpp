#include "ui/bench/pull_lanes.h"

#include <QCoreApplication>
#include <QEvent>
#include <algorithm>

#include "ui/bench/bench_layout.h"
#include "ui/controls/tap_button.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/text/words.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

struct LaneText {
    Q_DECLARE_TR_FUNCTIONS(LaneText)
};

QString placeOf(std::size_t index) { return QStringLiteral("lane.%1").arg(index + 1); }

QString whatOf(const Lane& lane)
{
    if (lane.lot.empty())
        return LaneText::tr("%1 · which lot?").arg(idText(lane.component));
    return idText(lane.component) + QStringLiteral(" · ") + idText(lane.lot);
}

QString standing(const Lane& lane)
{
    if (lane.lost)
        return wordOf(*lane.lost);
    if (lane.bag)
        return LaneText::tr("in %1").arg(subjectText(subjectOf(*lane.bag)));
    if (lane.kind == Lane::Kind::Planned)
        //: A lane of the pull: this ampoule is still in the cryogen.
        return LaneText::tr("in cryogen");
    return wordOf(lane.reached);
}

double share(Micros part, Micros whole)
{
    return whole.count() > 0
               ? static_cast<double>(part.count()) / static_cast<double>(whole.count())
               : -1;
}

QList<Choice> plannedEnds()
{
    return {{.id = QString::fromLatin1(PullLanes::kLot), .word = LaneText::tr("lot …")},
            {.id = QString::fromLatin1(PullLanes::kRemove), .word = LaneText::tr("not this one")}};
}

/// On a target of 20 mm.
QString shortWordOf(LossReason why)
{
    return why == LossReason::Abandoned ? LaneText::tr("given up", "an ampoule was abandoned")
                                        : wordOf(why);
}

QList<Choice> losses()
{
    QList<Choice> ends;
    for (const LossReason why :
         {LossReason::Broken, LossReason::Dropped, LossReason::Abandoned, LossReason::HandedOver})
        ends.append({.id = fromCore(std::string(nameOf(why))), .word = shortWordOf(why)});
    return ends;
}

}  // namespace

LaneState laneState(const Lane& lane, int number)
{
    LaneState state;
    state.number = number;
    state.what = whatOf(lane);
    state.state = standing(lane);
    state.open = lane.kind == Lane::Kind::Running || lane.kind == Lane::Kind::Planned;
    state.role = lane.kind == Lane::Kind::Planned ? Role::Neutral : roleOf(lane.level);
    if (lane.level)
        state.level = wordOf(*lane.level);
    if (lane.countdown) {
        state.time = countdownText(lane.countdown->left);
        const Micros whole = lane.countdown->run + lane.countdown->left;
        state.used = share(lane.countdown->run, whole);
        if (lane.countdown->thresholds.headsUp)
            state.headsUp = share(*lane.countdown->thresholds.headsUp, whole);
        if (!lane.countdown->certain)
            state.uncertain = LaneText::tr("by wall time, after a restart");
    }
    return state;
}

PullLanes::PullLanes(QWidget* parent)
    : QWidget(parent),
      m_ends(PullDraft::kMost, Ends::None),
      m_lanes(PullDraft::kMost),
      m_add(new TapButton(QStringLiteral("add-ampoule"), this))
{
    setObjectName(QStringLiteral("lanes"));
    for (std::size_t i = 0; i < PullDraft::kMost; ++i) {
        auto* view = new LaneView(placeOf(i), this);
        view->hide();
        m_views.push_back(view);
        connect(view, &LaneView::advanced, this, [this, i](const TapStamp& stamp) {
            emit advanced(m_lanes.at(i), placeOf(i), stamp);
        });
        connect(view, &LaneView::ended, this, [this, i](const QString& end, const TapStamp& stamp) {
            emit ended(m_lanes.at(i), end, placeOf(i) + QStringLiteral(".end.") + end, stamp);
        });
    }
    m_add->setRole(Role::Quiet);
    connect(m_add, &TapButton::pressed, this, &PullLanes::added);
    connect(&theme(), &Theme::changed, this, &PullLanes::place);
}

PullLanes::Ends PullLanes::endsOf(const Lane& lane)
{
    if (lane.kind == Lane::Kind::Planned)
        return Ends::Planned;
    return lane.kind == Lane::Kind::Running ? Ends::Running : Ends::None;
}

void PullLanes::giveEnds(std::size_t index)
{
    const Ends ends = endsOf(m_lanes.at(index));
    if (ends == m_ends.at(index) || ends == Ends::None)
        return;
    m_ends.at(index) = ends;
    m_views.at(index)->setEnds(ends == Ends::Planned ? plannedEnds() : losses(),
                               LaneText::tr("Other ends of this ampoule"), LaneText::tr("back"));
}

void PullLanes::render(const std::vector<Lane>& shown, int firstNumber, bool mayPlan)
{
    m_lanes = shown;
    m_mayPlan = mayPlan;
    m_add->setWord(LaneText::tr("+ ampoule"));
    for (std::size_t i = 0; i < m_views.size(); ++i) {
        const Lane& lane = m_lanes.at(i);
        if (lane.kind == Lane::Kind::Free)
            continue;
        const bool planned = lane.kind == Lane::Kind::Planned;
        const int number = planned ? firstNumber + static_cast<int>(lane.planned) : lane.ampoule.no;
        giveEnds(i);
        m_views.at(i)->setState(laneState(lane, number));
    }
    place();
}

void PullLanes::closeEnds()
{
    for (LaneView* view : m_views)
        view->closeEnds();
}

void PullLanes::resizeEvent(QResizeEvent*) { place(); }

void PullLanes::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        std::ranges::fill(m_ends, Ends::None);  // worded anew at the next render
    QWidget::changeEvent(event);
}

void PullLanes::place()
{
    int used = 0;
    for (std::size_t i = 0; i < m_lanes.size(); ++i) {
        if (m_lanes[i].kind != Lane::Kind::Free)
            used = static_cast<int>(i) + 1;
    }
    const auto firstFree = static_cast<std::size_t>(used);
    const auto places =
        lanePlaces(rect(), theme().metrics(), used, static_cast<int>(m_views.size()));
    for (std::size_t i = 0; i < m_views.size(); ++i) {
        const bool there = i < places.size() && m_lanes[i].kind != Lane::Kind::Free;
        if (there)
            m_views[i]->setGeometry(places[i]);
        m_views[i]->setVisible(there);
    }
    const bool adds = m_mayPlan && firstFree < places.size() && firstFree < m_views.size();
    if (adds)
        m_add->setGeometry(places[firstFree]);
    m_add->setVisible(adds);
}

}  // namespace bathside::ui
