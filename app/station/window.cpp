#include "app/station/window.h"

#include <QCloseEvent>

namespace bathside::app {

Window::Window()
{
    setObjectName(QStringLiteral("window"));
    setWindowTitle(QStringLiteral("Bathside"));
}

void Window::put(QWidget* content)
{
    if (m_content)
        m_content->deleteLater();
    m_content = content;
    m_content->setParent(this);
    m_content->setGeometry(rect());
    m_content->show();
}

void Window::resizeEvent(QResizeEvent*)
{
    if (m_content)
        m_content->setGeometry(rect());
}

void Window::closeEvent(QCloseEvent* event)
{
    if (m_mayClose && !m_mayClose())
        return event->ignore();
    QWidget::closeEvent(event);
}

}  // namespace bathside::app
