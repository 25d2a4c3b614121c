#include "ui/bench/line_tiles.h"

#include "ui/bench/ask_line.h"
#include "ui/bench/bench_layout.h"
#include "ui/controls/tap_button.h"
#include "ui/models/urgent.h"
#include "ui/text/subjects.h"
#include "ui/theme/theme.h"

namespace bathside::ui {

LineTiles::LineTiles(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("line-tiles"));
    connect(&theme(), &Theme::changed, this, &LineTiles::place);
}

TapButton* LineTiles::tile(std::size_t index)
{
    constexpr double kCapMm = 8;
    while (m_tiles.size() <= index) {
        auto* made = new TapButton(QStringLiteral("lines"), this);
        made->setCapMm(kCapMm);
        connect(made, &TapButton::pressed, this,
                [this, at = m_tiles.size()](const TapStamp& stamp) {
                    emit chosen(m_lines.at(at), stamp);
                });
        m_tiles.push_back(made);
    }
    return m_tiles[index];
}

void LineTiles::render(const Bench& bench, const Alarms& due)
{
    m_lines.clear();
    for (const auto& [id, line] : bench.lines) {
        if (m_lines.size() == kMost)
            break;
        TapButton* shown = tile(m_lines.size());
        m_lines.push_back(id);
        const Bag* bag = bench.bagOn(id);
        const auto level = worstFor(due, subjectOf(id));
        shown->setPlace(QStringLiteral("lines.") + idText(id));
        //: A line of injectors and the bag that hangs on it: "line A · bag B4".
        shown->setWord(
            bag ? tr("%1 · %2").arg(subjectText(subjectOf(id)), subjectText(subjectOf(bag->id)))
                : tr("%1 · no bag").arg(subjectText(subjectOf(id))));
        shown->setLine(lineText(bench, line));
        shown->setRole(level ? roleOf(*level) : Role::Neutral);
        shown->setMark(level ? markOf(roleOf(*level)) : Mark::None);
    }
    place();
}

void LineTiles::resizeEvent(QResizeEvent*) { place(); }

void LineTiles::place()
{
    const auto used = static_cast<int>(m_lines.size());
    const auto places = lanePlaces(rect(), theme().metrics(), used, static_cast<int>(kMost));
    for (std::size_t i = 0; i < m_tiles.size(); ++i) {
        const bool there = i < m_lines.size() && i < places.size();
        if (there)
            m_tiles[i]->setGeometry(places[i]);
        m_tiles[i]->setVisible(there);
    }
}

}  // namespace bathside::ui
