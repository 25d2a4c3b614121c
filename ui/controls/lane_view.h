#pragma once

// One ampoule of the pull: its number, what it is, where it stands, and a bar that burns towards
// its limit.
//
// A tap on the lane takes that ampoule alone to its next step. The end piece (20 mm) opens its ends
// (broken, abandoned …) in the lane itself; the second tap there tells which, or closes them again.
// Nothing moves otherwise.

#include <QList>

#include "ui/controls/choice_grid.h"
#include "ui/controls/control.h"
#include "ui/controls/lane_face.h"

namespace bathside::ui {

class TapButton;

class LaneView final : public Control {
    Q_OBJECT

public:
    /// Places: `place` (the lane), `place`.end, `place`.end.<id>, `place`.end.close
    explicit LaneView(const QString& place, QWidget* parent = nullptr);

    void setState(const LaneState& state);
    void setEnds(const QList<Choice>& ends, const QString& endWord, const QString& closeWord);
    [[nodiscard]] bool endsAreOpen() const noexcept { return m_open; }
    void closeEnds();

    [[nodiscard]] QSize sizeHint() const override { return sizeOfMm(100, Metrics::kMinimum); }

signals:
    void advanced(const bathside::ui::TapStamp& stamp);
    void ended(const QString& id, const bathside::ui::TapStamp& stamp);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void themeChanged() override { arrange(); }

private:
    void arrange();
    void open(bool open);

    QString m_place;
    LaneFace* m_face;
    TapButton* m_end;
    QList<TapButton*> m_choices;  // the ends, and last the one that closes
    bool m_open = false;
};

}  // namespace bathside::ui
