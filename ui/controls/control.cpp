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

QString Control::clipped() const
{
    for (const PlacedText& placed : texts()) {
        if (allFit({placed}))
            continue;
        const QSizeF needs = fitted(placed.text, placed.room.size(), placed.wish).size;
        return QStringLiteral("\"%1\" has %2 x %3 px, needs %4 x %5")
            .arg(placed.text)
            .arg(placed.room.width())
            .arg(placed.room.height())
            .arg(needs.width())
            .arg(needs.height());
    }
    return {};
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
