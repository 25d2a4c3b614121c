#include "app/station/hand.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <algorithm>

#include "ui/controls/letter_pad.h"
#include "ui/controls/tap_button.h"

namespace bathside::app {
namespace {

constexpr quint64 kBetweenPresses = 1000;  // ms

/// "28.2" for 28200 with three decimals.
QString typed(qint64 value, int decimals)
{
    QString text = QString::number(value).rightJustified(decimals + 1, u'0');
    if (decimals == 0)
        return text;
    text.insert(text.size() - decimals, u'.');
    while (text.endsWith(u'0'))
        text.chop(1);
    if (text.endsWith(u'.'))
        text.chop(1);
    return text;
}

QString keyOf(QChar sign)
{
    if (sign == u'-')
        return QStringLiteral("hyphen");
    return sign == u' ' ? QStringLiteral("space") : QString(sign);
}

}  // namespace

ui::TapButton* Hand::find(const QString& place) const
{
    for (auto* target : m_window.findChildren<ui::TapButton*>(place)) {
        if (target->isVisible())
            return target;
    }
    return nullptr;
}

void Hand::press(const QString& place)
{
    if (failed())
        return;
    ui::TapButton* target = find(place);
    if (!target || !target->isEnabled())
        return fail(QStringLiteral("nothing to press at “%1”").arg(place));
    m_inputMs += kBetweenPresses;
    const QPointF middle = QRectF(target->rect()).center();
    for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
        const auto held = type == QEvent::MouseButtonPress ? Qt::LeftButton : Qt::NoButton;
        QMouseEvent event(type, middle, target->mapToGlobal(middle), Qt::LeftButton, held,
                          Qt::NoModifier);
        event.setTimestamp(m_inputMs);
        QCoreApplication::sendEvent(target, &event);
    }
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

void Hand::enterNumber(qint64 value, int decimals)
{
    for (const QChar sign : typed(value, decimals))
        press(QStringLiteral("pad.") + (sign == u'.' ? QStringLiteral("sign") : QString(sign)));
    press(QStringLiteral("pad.set"));
}

void Hand::enterText(const QString& text)
{
    const auto pads = m_window.findChildren<ui::LetterPad*>(QStringLiteral("letters"));
    const auto shown = std::ranges::find_if(pads, &QWidget::isVisible);
    ui::LetterPad* pad = shown == pads.end() ? nullptr : *shown;
    if (!pad)
        return fail(QStringLiteral("there is no letter pad to type “%1”").arg(text));
    while (!pad->typed().isEmpty() && !failed())
        press(QStringLiteral("letters.delete"));
    for (const QChar sign : text) {
        const QString place = QStringLiteral("letters.") + keyOf(sign);
        if (sign.isDigit() != sees(QStringLiteral("letters.0")) && sign.isLetterOrNumber() &&
            !sign.isLower())
            press(QStringLiteral("letters.layer"));
        if (sees(place))
            press(place);
        else
            typeKey(*pad, sign);
    }
    press(QStringLiteral("letters.set"));
}

void Hand::typeKey(QWidget& pad, QChar sign)
{
    m_inputMs += kBetweenPresses;
    QKeyEvent event(QEvent::KeyPress, 0, Qt::NoModifier, QString(sign));
    event.setTimestamp(m_inputMs);
    QCoreApplication::sendEvent(&pad, &event);
}

void Hand::fail(const QString& why)
{
    if (m_wrong.isEmpty())
        m_wrong = why;
}

}  // namespace bathside::app
