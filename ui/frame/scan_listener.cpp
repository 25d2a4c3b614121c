#include "ui/frame/scan_listener.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QWidget>
#include <QWindow>
#include <algorithm>
#include <utility>

#include "core/scan/element_string.h"

namespace bathside::ui {
namespace {

constexpr QChar kFnc1 = QLatin1Char(gs1::kSeparator);

bool isModifier(int key)
{
    switch (key) {
        case Qt::Key_Shift:
        case Qt::Key_Control:
        case Qt::Key_Alt:
        case Qt::Key_AltGr:
        case Qt::Key_Meta:
        case Qt::Key_CapsLock:
        case Qt::Key_NumLock:
            return true;
        default:
            return false;
    }
}

/// Enter or Tab; a line feed, too, as a key of its own or as Ctrl+J.
bool isEnd(const QKeyEvent& key)
{
    const bool isNamed =
        key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter || key.key() == Qt::Key_Tab;
    return !key.modifiers().testFlag(Qt::ShiftModifier) &&
           (isNamed || key.text() == QLatin1Char('\n') || key.text() == QLatin1Char('\r'));
}

/// The sign that the key makes; none: it makes no sign of a code.
QChar signOf(const QKeyEvent& key)
{
    const QString text = key.text();
    const bool isControl = key.modifiers() & Qt::ControlModifier;
    if (text == kFnc1 || (isControl && key.key() == Qt::Key_BracketRight))
        return kFnc1;
    const bool isCommand = isControl || (key.modifiers() & (Qt::AltModifier | Qt::MetaModifier));
    return text.size() == 1 && text.front().isPrint() && !isCommand ? text.front() : QChar();
}

Wedge::Key keyOf(const QKeyEvent& event)
{
    using Sort = Wedge::Key::Sort;
    const QChar sign = signOf(event);
    const bool ends = isEnd(event);
    return {ends ? Sort::End : (sign.isNull() ? Sort::Other : Sort::Sign), sign, event.timestamp(),
            event.isAutoRepeat()};
}

}  // namespace

ScanListener::ScanListener(QWidget* window) : QObject(window), m_window(window)
{
    m_patience.setSingleShot(true);
    m_patience.setInterval(Wedge::kPatienceMs);
    m_patience.setTimerType(Qt::PreciseTimer);
    connect(&m_patience, &QTimer::timeout, this, [this] {
        m_wedge.giveUp();
        deliver();
    });
    QCoreApplication::instance()->installEventFilter(this);
}

ScanListener::~ScanListener() = default;

// The window system's keys come to the window first; others come to a widget itself.
bool ScanListener::isOurs(QObject* watched) const
{
    const auto* widget = qobject_cast<QWidget*>(watched);
    const auto* window = qobject_cast<QWindow*>(watched);
    return (widget != nullptr && widget->window() == m_window->window()) ||
           (window != nullptr && window == m_window->window()->windowHandle());
}

bool ScanListener::eventFilter(QObject* watched, QEvent* event)
{
    const bool isPress = event->type() == QEvent::KeyPress;
    const bool isTap =
        event->type() == QEvent::MouseButtonPress || event->type() == QEvent::TouchBegin;
    if (isTap && !m_delivering && !m_held.empty()) {  // a tap never overtakes what was typed before
        m_wedge.giveUp();
        deliver();
    }
    if (m_delivering || (!isPress && event->type() != QEvent::KeyRelease) || !isOurs(watched))
        return false;
    const auto& key = *static_cast<QKeyEvent*>(event);
    if (isModifier(key.key()))
        return false;
    return isPress ? press(watched, key) : release(watched, key);
}

bool ScanListener::press(QObject* receiver, const QKeyEvent& key)
{
    switch (m_wedge.press(keyOf(key))) {
        case Wedge::Answer::ReleaseAndHold:
            deliver();
            [[fallthrough]];
        case Wedge::Answer::Hold:
            hold(receiver, key);
            return true;
        case Wedge::Answer::ReleaseAndPass:
            deliver();
            return false;
        case Wedge::Answer::Scanned:
            drop(key);
            emit scanned(m_wedge.text(), {key.timestamp()});
            return true;
        case Wedge::Answer::Swallow:
            m_dropped.push_back(key.key());
            return true;
    }
    Q_UNREACHABLE();
}

bool ScanListener::release(QObject* receiver, const QKeyEvent& key)
{
    if (std::erase(m_dropped, key.key()) > 0)
        return true;
    const bool isHeld = std::ranges::any_of(
        m_held, [&](const Held& each) { return each.event->key() == key.key(); });
    if (isHeld)
        m_held.push_back({receiver, std::unique_ptr<QKeyEvent>(key.clone())});
    return isHeld;
}

void ScanListener::hold(QObject* receiver, const QKeyEvent& key)
{
    std::erase(m_dropped, key.key());
    m_held.push_back({receiver, std::unique_ptr<QKeyEvent>(key.clone())});
    m_patience.start();
}

void ScanListener::deliver()
{
    m_patience.stop();
    const auto held = std::exchange(m_held, {});
    m_delivering = true;
    for (const Held& each : held)
        if (each.receiver != nullptr)
            QCoreApplication::sendEvent(each.receiver, each.event.get());
    m_delivering = false;
}

void ScanListener::drop(const QKeyEvent& end)
{
    m_patience.stop();
    m_dropped = {end.key()};
    for (const Held& each : std::exchange(m_held, {})) {
        if (each.event->type() == QEvent::KeyPress)
            m_dropped.push_back(each.event->key());
        else
            std::erase(m_dropped, each.event->key());
    }
}

}  // namespace bathside::ui
