#pragma once

// The lines while nothing is being made up: which bag hangs there, birds, needle; a target each.
//
// Places: lines.<id>. Tells taps, decides nothing.

#include <QWidget>
#include <vector>

#include "core/alarms/alarms.h"
#include "ui/controls/tap_stamp.h"

namespace bathside::ui {

class TapButton;

class LineTiles final : public QWidget {
    Q_OBJECT

public:
    static constexpr std::size_t kMost = 6;  // others are reached from the list of all lines

    explicit LineTiles(QWidget* parent);

    void render(const Bench& bench, const Alarms& due);

signals:
    void chosen(const bathside::LineId& line, const bathside::ui::TapStamp& stamp);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void place();
    [[nodiscard]] TapButton* tile(std::size_t index);

    std::vector<TapButton*> m_tiles;
    std::vector<LineId> m_lines;
};

}  // namespace bathside::ui
