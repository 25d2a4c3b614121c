#pragma once

// The whole edge of the screen as the alarm, for when sound cannot be relied on: a thick frame in
// the level's colour with its shape all around. Lies over everything, takes no tap, never blinks.

#include <QWidget>
#include <optional>

#include "core/alarms/level.h"

namespace bathside::ui {

class Edge final : public QWidget {
    Q_OBJECT

public:
    static constexpr double kThickMm = 1.8;  // what the frame keeps free around its page

    explicit Edge(QWidget* parent);

    /// None: not there.
    void show(std::optional<Level> level);
    [[nodiscard]] std::optional<Level> level() const noexcept { return m_level; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<Level> m_level;
};

}  // namespace bathside::ui
