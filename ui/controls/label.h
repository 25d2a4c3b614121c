#pragma once

// Words on the screen that are no target: fitted, wrapped, never cut.
//
// For page authors: use this instead of QLabel. Its size hint is one line of its text at the wanted
// height; give it stretch or a minimum width where it may wrap.

#include "ui/controls/control.h"
#include "ui/theme/metrics.h"
#include "ui/theme/role.h"

namespace bathside::ui {

class Label final : public Control {
    Q_OBJECT

public:
    explicit Label(QWidget* parent = nullptr);

    [[nodiscard]] const QString& text() const noexcept { return m_text; }
    void setText(const QString& text);
    void setCapMm(double want, double least);  // default kWords, kSmall
    void setWeight(Weight weight);
    void setAlignment(Qt::Alignment alignment);
    void setSoft(bool soft);      // in the lesser ink
    void setRole(Role role);      // other than Neutral: filled, with its mark
    void setMaxLines(int lines);  // the size hint's height; default 1

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QRectF textRoom() const;

    QString m_text;
    double m_capMm = Metrics::kWords, m_leastMm = Metrics::kSmall;
    Weight m_weight = Weight::Regular;
    Qt::Alignment m_alignment = Qt::AlignLeft | Qt::AlignVCenter;
    Role m_role = Role::Neutral;
    int m_lines = 1;
    bool m_soft = false;
};

}  // namespace bathside::ui
