#include "ui/frame/scan_notice.h"

#include <QCoreApplication>
#include <QEvent>
#include <QPainter>

#include "ui/controls/paint.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kPadMm = 3, kMarkMm = 14;

}  // namespace

ScanNotice::ScanNotice(QWidget* parent) : Control(parent)
{
    setObjectName(QStringLiteral("scan-notice"));
    hide();
}

void ScanNotice::say(const Words& words)
{
    m_words = words;
    suggestAccessibleName(
        QStringList{words.title, words.scanned, words.expected, words.why}.join(u' '));
    QCoreApplication::instance()->removeEventFilter(this);
    QCoreApplication::instance()->installEventFilter(this);
    show();
    raise();
    update();
}

void ScanNotice::hideEvent(QHideEvent*) { QCoreApplication::instance()->removeEventFilter(this); }

// At the widget that has the finger, not at its window: what lies under this one is not tapped with
// it.
bool ScanNotice::eventFilter(QObject* watched, QEvent* event)
{
    const bool isTap =
        event->type() == QEvent::MouseButtonPress || event->type() == QEvent::TouchBegin;
    const auto* widget = isTap ? qobject_cast<QWidget*>(watched) : nullptr;
    if (widget && widget->window() == window())
        hide();
    return false;
}

QRectF ScanNotice::markRoom() const
{
    const Metrics& metrics = theme().metrics();
    const double pad = metrics.px(kPadMm), side = metrics.px(kMarkMm);
    return {2 * pad, (height() - side) / 2, side, side};
}

QList<PlacedText> ScanNotice::texts() const
{
    const Metrics& metrics = theme().metrics();
    const QColor ink = theme().tone(m_words.role).ink;
    const double pad = metrics.px(kPadMm);
    QRectF rest =
        QRectF(rect()).adjusted(markRoom().right() + 2 * pad, pad / 2, -2 * pad, -pad / 2);
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    QList<PlacedText> placed;
    const auto line = [&](const QString& text, double share, const TextWish& wish) {
        const double high = share * (height() - pad);
        placed.append({text, QRectF(rest.left(), rest.top(), rest.width(), high), left, wish, ink});
        rest.setTop(rest.top() + high);
    };
    line(m_words.title, 0.4, {Metrics::kCaps, Metrics::kCaps - 3, Weight::Strong, 1});
    const QStringList both{m_words.scanned, m_words.expected};
    for (const QString& text : both) {
        if (!text.isEmpty())
            line(text, 0.2, {Metrics::kWords, Metrics::kSmall, Weight::Strong, 1});
    }
    line(m_words.why, (rest.height()) / (height() - pad), {4, Metrics::kSmall, Weight::Regular, 2});
    return placed;
}

void ScanNotice::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Tone& tone = theme().tone(m_words.role);
    drawPlate(painter, QRectF(rect()), tone, Outline::Strong);
    drawMark(painter, markRoom(), markOf(m_words.role), tone.ink);
    drawAll(painter, texts());
}

}  // namespace bathside::ui
