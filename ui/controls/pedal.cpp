#include "ui/controls/pedal.h"

#include <QApplication>
#include <QKeyEvent>

namespace bathside::ui {
namespace {

bool isReserved(int key)
{
    return key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape;
}

}  // namespace

Pedal::Pedal(QWidget* window) : QObject(window), m_window(window), m_key(Qt::Key_F13)
{
    qApp->installEventFilter(this);
}

void Pedal::setTarget(TapButton* target) { m_target = target; }

void Pedal::setKey(int key)
{
    if (!isReserved(key))
        m_key = key;
}

bool Pedal::isFor(int key) const
{
    if (key == m_key)
        return true;
    const QWidget* focused = QApplication::focusWidget();
    const bool elsewhere =
        focused != nullptr && focused != m_target && focused->focusPolicy() != Qt::NoFocus;
    return key == Qt::Key_Space && !elsewhere;
}

bool Pedal::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::KeyRelease)
        return false;
    const auto* widget = qobject_cast<QWidget*>(watched);
    if (widget == nullptr || widget->window() != m_window->window() || m_target == nullptr)
        return false;
    const auto& key = *static_cast<QKeyEvent*>(event);
    if (event->type() == QEvent::KeyPress && key.key() == Qt::Key_Escape)
        m_target->setFocus();
    if (!isFor(key.key()) || !m_target->isVisible() || !m_target->isEnabled())
        return false;
    if (event->type() == QEvent::KeyPress && !key.isAutoRepeat())
        m_target->press({key.timestamp()});
    return true;
}

}  // namespace bathside::ui
