#pragma once

// The lanes of the pull, planned and running, each in its place; and the target that plans one
// more.
//
// Tells taps, decides nothing. Places: lane.1 … lane.6, their ends (LaneView), add-ampoule.

#include <QWidget>

#include "ui/controls/lane_view.h"
#include "ui/models/lanes.h"

namespace bathside::ui {

class TapButton;

class PullLanes final : public QWidget {
    Q_OBJECT

public:
    explicit PullLanes(QWidget* parent);

    /// `shown` as lanes() gives them; `firstNumber` is what the first planned ampoule would be
    /// called.
    void render(const std::vector<Lane>& shown, int firstNumber, bool mayPlan);
    void closeEnds();

    /// Ids of a planned lane's end piece; a running lane's are the trail's words for a loss.
    static constexpr auto kLot = "lot", kRemove = "remove";

signals:
    void advanced(const bathside::ui::Lane& lane, const QString& place,
                  const bathside::ui::TapStamp& stamp);
    void ended(const bathside::ui::Lane& lane, const QString& end, const QString& place,
               const bathside::ui::TapStamp& stamp);
    void added(const bathside::ui::TapStamp& stamp);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    enum class Ends : std::uint8_t { None, Planned, Running };

    void place();
    void giveEnds(std::size_t index);
    [[nodiscard]] static Ends endsOf(const Lane& lane);

    std::vector<LaneView*> m_views;
    std::vector<Ends> m_ends;
    std::vector<Lane> m_lanes;
    TapButton* m_add;
    bool m_mayPlan = false;
};

/// What a lane shows; `number` for a planned one.
[[nodiscard]] LaneState laneState(const Lane& lane, int number);

}  // namespace bathside::ui
