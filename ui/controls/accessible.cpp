#include "ui/controls/accessible.h"

#include <QAccessible>
#include <QAccessibleWidget>

#include "ui/controls/tap_button.h"

namespace bathside::ui {
namespace {

class AccessibleTarget final : public QAccessibleWidget {
public:
    explicit AccessibleTarget(TapButton* target)
        : QAccessibleWidget(target, QAccessible::Button), m_target(target)
    {
    }

    [[nodiscard]] QStringList actionNames() const override { return {pressAction()}; }
    void doAction(const QString& name) override
    {
        if (name == pressAction() && m_target->isEnabled())
            m_target->press({});
    }
    [[nodiscard]] QAccessible::State state() const override
    {
        QAccessible::State state = QAccessibleWidget::state();
        state.pressed = m_target->isDown();
        state.selected = m_target->isChosen();
        return state;
    }

private:
    TapButton* m_target;
};

QAccessibleInterface* makeInterface(const QString&, QObject* object)
{
    auto* target = qobject_cast<TapButton*>(object);
    return target == nullptr ? nullptr : new AccessibleTarget(target);
}

}  // namespace

void installAccessibility() { QAccessible::installFactory(makeInterface); }

}  // namespace bathside::ui
