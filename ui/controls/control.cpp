#include "ui/controls/control.h"

#include "ui/theme/theme.h"

namespace bathside::ui {

Control::Control(QWidget* parent) : QWidget(parent)
{
    connect(&theme(), &Theme::changed, this, [this] {
        themeChanged();
        updateGeometry();
        update();
    });
}

void Control::suggestAccessibleName(const QString& name)
{
    if (accessibleName() == m_suggested && m_suggested != name) {
        m_suggested = name;
        setAccessibleName(name);
    }
}

QSize sizeOfMm(double width, double height)
{
    const Metrics& metrics = theme().metrics();
    return {metrics.ceilPx(width), metrics.ceilPx(height)};
}

}  // namespace bathside::ui
