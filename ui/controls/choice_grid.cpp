#include "ui/controls/choice_grid.h"

#include <QResizeEvent>
#include <algorithm>

#include "ui/controls/grid.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kTitleMm = 8.2;  // one line of words

}  // namespace

ChoiceGrid::ChoiceGrid(const QString& place, QWidget* parent)
    : Control(parent), m_place(place), m_title(new Label(this))
{
    setObjectName(place);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    m_title->setWeight(Weight::Strong);
    m_title->hide();
}

void ChoiceGrid::setTitle(const QString& question)
{
    m_title->setText(question);
    m_title->setVisible(!question.isEmpty());
    arrange();
}

void ChoiceGrid::setChoices(const QList<Choice>& choices)
{
    m_choices = choices;
    while (m_targets.size() > choices.size())
        m_targets.takeLast()->deleteLater();
    while (m_targets.size() < choices.size()) {
        auto* target = new TapButton(m_place, this);
        const auto index = m_targets.size();
        connect(target, &TapButton::pressed, this, [this, index](const TapStamp& stamp) {
            emit chosen(m_choices.at(index).id, stamp);
        });
        m_targets.append(target);
    }
    for (qsizetype i = 0; i < choices.size(); ++i) {
        const Choice& choice = choices.at(i);
        TapButton* target = m_targets.at(i);
        target->setPlace(m_place + u'.' + choice.id);
        target->setWord(choice.word);
        target->setLine(choice.line);
        target->setMark(choice.mark);
        target->setRole(choice.role);
        target->setReason(choice.reason);
        target->setChosen(choice.id == m_chosen);
        target->show();
    }
    updateGeometry();
    arrange();
}

void ChoiceGrid::setChosen(const QString& id)
{
    m_chosen = id;
    for (qsizetype i = 0; i < m_targets.size(); ++i)
        m_targets.at(i)->setChosen(m_choices.at(i).id == id);
}

QStringList ChoiceGrid::offered() const
{
    QStringList ids;
    for (const Choice& choice : m_choices) {
        if (choice.reason.isEmpty())
            ids.append(choice.id);
    }
    return ids;
}

void ChoiceGrid::setColumns(int columns)
{
    m_columns = columns;
    arrange();
}

void ChoiceGrid::setTileMm(double width, double height)
{
    m_tileWidthMm = std::max(width, Metrics::kMinimum);
    m_tileHeightMm = std::max(height, Metrics::kMinimum);
    updateGeometry();
    arrange();
}

// As many as the tiles' width allows, more where the rows would else be too low; the last row not
// nearly empty.
int ChoiceGrid::columnsFor(const QRect& room) const
{
    if (m_columns > 0)
        return m_columns;
    const auto count = std::max(1, static_cast<int>(m_targets.size()));
    const Metrics& metrics = theme().metrics();
    const int tile = metrics.ceilPx(m_tileWidthMm), least = metrics.ceilPx(Metrics::kMinimum),
              gap = metrics.gapPx();
    const int across = std::clamp((room.width() + gap) / (tile + gap), 1, count);
    const int down = std::max(1, (room.height() + gap) / (least + gap));
    const int rows = std::min((count + across - 1) / across, down);
    return (count + rows - 1) / rows;
}

QSize ChoiceGrid::sizeHint() const
{
    const auto count = std::max(1, static_cast<int>(m_choices.size()));
    const int columns = m_columns > 0 ? m_columns : std::min(count, 3);
    const int rows = (count + columns - 1) / columns;
    const double title = m_title->text().isEmpty() ? 0 : kTitleMm;
    return sizeOfMm(columns * m_tileWidthMm + (columns - 1) * Metrics::kGap,
                    rows * m_tileHeightMm + (rows - 1) * Metrics::kGap + title);
}

void ChoiceGrid::resizeEvent(QResizeEvent*) { arrange(); }

void ChoiceGrid::arrange()
{
    QRect room = rect();
    if (!m_title->text().isEmpty()) {
        const int high = theme().metrics().ceilPx(kTitleMm);
        m_title->setGeometry(0, 0, width(), high);
        room.setTop(high);
    }
    const auto count = static_cast<int>(m_targets.size());
    if (count == 0)
        return;
    const int usual = columnsFor(room);
    if (place(room, usual) || m_columns > 0)
        return;
    // Higher tiles in fewer rows, where a word has no room.
    for (int rows = (count + usual - 1) / usual - 1; rows > 0; --rows) {
        if (place(room, (count + rows - 1) / rows))
            return;
    }
    place(room, usual);
}

// Whether that leaves every word its room and every tile its least size.
bool ChoiceGrid::place(const QRect& room, int columns)
{
    const auto count = static_cast<int>(m_targets.size());
    const GridShape shape{columns, (count + columns - 1) / columns};
    for (int i = 0; i < count; ++i)
        m_targets.at(i)->setGeometry(cellOf(room, shape, i));
    return m_targets.first()->width() >= theme().metrics().ceilPx(Metrics::kMinimum) &&
           std::ranges::all_of(m_targets, &TapButton::fits);
}

}  // namespace bathside::ui
