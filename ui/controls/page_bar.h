#pragma once

// One tap to another place of the program: a row of targets, the present one marked.

#include <QList>

#include "ui/controls/choice_grid.h"
#include "ui/controls/control.h"

namespace bathside::ui {

class TapButton;

class PageBar final : public Control {
    Q_OBJECT

public:
    /// Each target's place is `place` + "." + the page's id.
    explicit PageBar(const QString& place, QWidget* parent = nullptr);

    void setPages(const QList<Choice>& pages);
    void setCurrent(const QString& id);

    [[nodiscard]] QSize sizeHint() const override;

signals:
    void chosen(const QString& id, const bathside::ui::TapStamp& stamp);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void themeChanged() override { arrange(); }

private:
    void arrange();

    QString m_place, m_current;
    QList<Choice> m_pages;
    QList<TapButton*> m_targets;
};

}  // namespace bathside::ui
