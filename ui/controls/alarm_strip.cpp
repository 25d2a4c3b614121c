#include "ui/controls/alarm_strip.h"

#include <QPainter>
#include <algorithm>

#include "ui/controls/paint.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {

AlarmStrip::AlarmStrip(QWidget* parent) : Control(parent)
{
    setObjectName(QStringLiteral("alarms"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void AlarmStrip::setAlarms(const QList<AlarmLine>& alarms, const QString& calm,
                           std::function<QString(int)> more)
{
    m_alarms = alarms;
    m_calm = calm;
    m_more = std::move(more);
    QStringList words;
    for (const AlarmLine& alarm : m_alarms)
        words.append(QStringLiteral("%1: %2").arg(alarm.level, alarm.text));
    suggestAccessibleName(words.isEmpty() ? m_calm : words.join(QStringLiteral("; ")));
    update();
}

QSize AlarmStrip::sizeHint() const { return sizeOfMm(80, Metrics::kStrip); }

// A second one beside the first only where each keeps 90 mm; more rows where the strip is high.
int AlarmStrip::shown() const
{
    const Metrics& metrics = theme().metrics();
    const int rows = std::max(1, static_cast<int>(height() / metrics.px(Metrics::kStrip - 1)));
    return std::min(static_cast<int>(m_alarms.size()), rows);
}

QRectF AlarmStrip::moreRoom() const
{
    const auto rest = static_cast<int>(m_alarms.size()) - shown();
    if (rest <= 0 || !m_more)
        return {width() + 0.0, 0, 0, height() + 0.0};
    const double wide = widthOf(m_more(rest), 4, Weight::Strong) + theme().metrics().px(2);
    return {width() - wide, 0, wide, height() + 0.0};
}

QRectF AlarmStrip::room(int index) const
{
    const double gap = theme().metrics().px(1), rows = std::max(1, shown());
    const double each = (height() - (rows - 1) * gap) / rows;
    return {0, index * (each + gap), moreRoom().left() - (moreRoom().width() > 0 ? gap : 0), each};
}

QList<PlacedText> AlarmStrip::texts() const
{
    const Metrics& metrics = theme().metrics();
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    if (m_alarms.isEmpty())
        return {{m_calm,
                 QRectF(rect()),
                 left,
                 {Metrics::kWords, Metrics::kSmall, Weight::Regular},
                 theme().palette().softInk()}};
    QList<PlacedText> texts;
    for (int i = 0; i < shown(); ++i) {
        const AlarmLine& alarm = m_alarms.at(i);
        QRectF at = room(i).adjusted(metrics.px(10), 0, -metrics.px(alarm.hushed ? 8 : 2), 0);
        const QColor ink = theme().tone(alarm.role).ink;
        QRectF level = at;
        level.setWidth(widthOf(alarm.level, Metrics::kSmall, Weight::Regular) + metrics.px(2));
        at.setLeft(level.right());
        texts.append({alarm.level,
                      level,
                      left,
                      {Metrics::kSmall, Metrics::kSmall, Weight::Regular, 1},
                      ink});
        texts.append(
            {alarm.text, at, left, {Metrics::kWords, Metrics::kSmall, Weight::Strong, 2}, ink});
    }
    if (const auto rest = static_cast<int>(m_alarms.size()) - shown(); rest > 0 && m_more)
        texts.append({m_more(rest),
                      moreRoom(),
                      Qt::AlignRight | Qt::AlignVCenter,
                      {4, Metrics::kSmall, Weight::Strong, 1},
                      theme().palette().ink()});
    return texts;
}

void AlarmStrip::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Metrics& metrics = theme().metrics();
    for (int i = 0; i < shown(); ++i) {
        const AlarmLine& alarm = m_alarms.at(i);
        const Tone& tone = theme().tone(alarm.role);
        const QRectF at = room(i);
        drawPlate(painter, at, tone);
        const double side = std::min(metrics.px(7), 0.7 * at.height());
        const double y = at.center().y() - side / 2;
        drawMark(painter, {at.left() + metrics.px(1.8), y, side, side}, markOf(alarm.role),
                 tone.ink);
        if (alarm.hushed)
            drawMark(painter,
                     {at.right() - metrics.px(7), at.center().y() - metrics.px(2.5), metrics.px(5),
                      metrics.px(5)},
                     Mark::Ear, tone.ink);
    }
    drawAll(painter, texts());
}

}  // namespace bathside::ui
