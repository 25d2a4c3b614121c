#pragma once

// Big choices, in place of a dialog: a question over a grid of targets.

#include <QList>
#include <QString>
#include <QStringList>

#include "ui/controls/control.h"
#include "ui/controls/tap_stamp.h"
#include "ui/theme/role.h"

namespace bathside::ui {

class Label;
class TapButton;

struct Choice {
    QString id{};    // told with the tap
    QString word{};  // translated
    QString line{};  // a smaller line under it, may be empty
    Role role = Role::Neutral;
    QString reason{};  // not empty: shown as unavailable
    Mark mark = Mark::None;
};

class ChoiceGrid final : public Control {
    Q_OBJECT

public:
    /// Each target's place is `place` + "." + the choice's id.
    explicit ChoiceGrid(const QString& place, QWidget* parent = nullptr);

    void setTitle(const QString& question);  // empty: no line for it
    void setChoices(const QList<Choice>& choices);
    void setChosen(const QString& id);  // marks one as holding
    void setColumns(int columns);       // 0: as many as fit, balanced
    void setTileMm(double width, double height);

    [[nodiscard]] QSize sizeHint() const override;
    /// The ids of those that can be tapped.
    [[nodiscard]] QStringList offered() const;
    [[nodiscard]] const QList<TapButton*>& targets() const noexcept { return m_targets; }

signals:
    void chosen(const QString& id, const bathside::ui::TapStamp& stamp);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void themeChanged() override { arrange(); }

private:
    void arrange();
    bool place(const QRect& room, int columns);
    [[nodiscard]] int columnsFor(const QRect& room) const;

    QString m_place;
    Label* m_title;
    QList<Choice> m_choices;
    QList<TapButton*> m_targets;
    QString m_chosen;
    int m_columns = 0;
    double m_tileWidthMm = 40, m_tileHeightMm = 25;
};

}  // namespace bathside::ui
