#pragma once

// The day's plan as a picture: lines as rows, bags as bars with their life and margin under them,
// breaks hatched, the bench as a row of its own, now as a line. No target.
//
// Planned bags have a dashed outline, those that are there a plain one, the one that hangs a thick
// one; a small margin is said by mark, word and colour. Of more lines than fit, `turn` shows the
// next ones.

#include "ui/controls/control.h"
#include "ui/plan/timeline_layout.h"
#include "ui/text/plan_clock.h"

namespace bathside::ui {

class TimelineView final : public Control {
    Q_OBJECT

public:
    explicit TimelineView(QWidget* parent = nullptr);

    void show(const DayPlan& day, const PlanClock& clock);
    [[nodiscard]] TimelineLayout layout() const;
    [[nodiscard]] int sheets() const;
    [[nodiscard]] int sheet() const noexcept { return m_sheet; }  // from 0
    /// To the next lines, after the last to the first.
    void turn();

    [[nodiscard]] QSize sizeHint() const override { return sizeOfMm(120, 50); }

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] int linesEach() const;
    void addHead(QList<PlacedText>& texts, const PlacedRow& row) const;
    void addBars(QList<PlacedText>& texts, const PlacedRow& row) const;
    void addLegend(QList<PlacedText>& texts, const TimelineLayout& all) const;
    [[nodiscard]] QList<QStringList> words(const TimelineBar& bar) const;  // the most first
    [[nodiscard]] QString fault(const TimelineRow& row) const;  // why it has no plan; empty: it has
    void paintGround(QPainter& painter, const TimelineLayout& all) const;
    void paint(QPainter& painter, const PlacedRow& row) const;
    void paintNow(QPainter& painter, const TimelineLayout& all) const;
    void describe();

    std::optional<DayPlan> m_day;
    PlanClock m_clock{WallTime{}, {}};
    Timeline m_timeline;
    int m_sheet = 0;
};

}  // namespace bathside::ui
