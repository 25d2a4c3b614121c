#include "ui/controls/lane_view.h"

#include <QResizeEvent>

#include "ui/controls/tap_button.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

QString endPlace(const QString& lane) { return lane + QStringLiteral(".end"); }

}  // namespace

LaneView::LaneView(const QString& place, QWidget* parent)
    : Control(parent),
      m_place(place),
      m_face(new LaneFace(place, this)),
      m_end(new TapButton(endPlace(place), this))
{
    setObjectName(place + QStringLiteral(".view"));
    m_end->setMark(Mark::Cross);
    connect(m_face, &TapButton::pressed, this, &LaneView::advanced);
    connect(m_end, &TapButton::pressed, this, [this] { open(true); });
}

void LaneView::setState(const LaneState& state)
{
    if (!state.open)
        open(false);
    m_face->setState(state);
    arrange();
}

void LaneView::setEnds(const QList<Choice>& ends, const QString& endWord, const QString& closeWord)
{
    m_end->setAccessibleName(endWord);
    qDeleteAll(m_choices);
    m_choices.clear();
    for (const Choice& end : ends) {
        auto* choice = new TapButton(endPlace(m_place) + u'.' + end.id, this);
        choice->setWord(end.word);
        choice->setCapMm(3.6);
        choice->setWeight(Weight::Narrow);
        connect(choice, &TapButton::pressed, this, [this, id = end.id](const TapStamp& stamp) {
            open(false);
            emit ended(id, stamp);
        });
        m_choices.append(choice);
    }
    auto* close = new TapButton(endPlace(m_place) + QStringLiteral(".close"), this);
    close->setWord(closeWord);
    close->setCapMm(3.6);
    close->setRole(Role::Quiet);
    connect(close, &TapButton::pressed, this, [this] { open(false); });
    m_choices.append(close);
    arrange();
}

void LaneView::closeEnds() { open(false); }

void LaneView::open(bool open)
{
    if (open == m_open)
        return;
    m_open = open;
    arrange();
}

void LaneView::resizeEvent(QResizeEvent*) { arrange(); }

// While its ends are open they take the lane's place; the way back lies where the end piece was.
void LaneView::arrange()
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx(), end = metrics.ceilPx(Metrics::kMinimum);
    const bool endable = m_face->state().open && !m_choices.isEmpty();
    m_end->setVisible(endable && !m_open);
    m_end->setGeometry(width() - end, 0, end, height());
    m_face->setVisible(!m_open);
    m_face->setGeometry(0, 0, endable ? width() - end - gap : width(), height());
    const auto ends = static_cast<int>(m_choices.size()) - 1;
    for (int i = 0; i <= ends; ++i) {
        TapButton* choice = m_choices.at(i);
        choice->setVisible(m_open);
        const int room = width() - end - gap;
        const int left = ends > 0 ? i * (room + gap) / ends : 0;
        const int right = ends > 0 ? (i + 1) * (room + gap) / ends - gap : 0;
        if (i < ends)
            choice->setGeometry(left, 0, right - left, height());
        else
            choice->setGeometry(width() - end, 0, end, height());
    }
}

}  // namespace bathside::ui
