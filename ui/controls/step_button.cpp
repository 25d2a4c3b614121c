#include "ui/controls/step_button.h"

#include "ui/theme/theme.h"

namespace bathside::ui {

StepButton::StepButton(const QString& place, QWidget* parent) : TapButton(place, parent)
{
    setRole(Role::Primary);
    setSizeMm(Metrics::kStepWidth, Metrics::kStepHeight);
    setFocusPolicy(Qt::StrongFocus);  // the one place where the focus rests
}

// The word fills what the line leaves: two thirds and one.
QList<PlacedText> StepButton::texts() const
{
    constexpr double kBesideMm = 1.5;
    const double beside = theme().metrics().px(kBesideMm);
    const QRectF room = inner().adjusted(beside, 0, -beside, 0);
    const QColor ink = shownTone().ink;
    const double share = shownLine().isEmpty() ? 1 : isAvailable() ? 0.64 : 0.5;
    const double split = room.top() + share * room.height();
    const QRectF word(room.topLeft(), QPointF(room.right(), split));
    const QRectF line(QPointF(room.left(), split), room.bottomRight());
    return {{this->word(), word, Qt::AlignCenter, {14, Metrics::kWords, Weight::Strong, 2}, ink},
            {shownLine(), line, Qt::AlignCenter, {6, Metrics::kSmall, Weight::Regular}, ink}};
}

}  // namespace bathside::ui
