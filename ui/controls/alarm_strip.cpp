#include "ui/controls/alarm_strip.h"

#include <QPainter>
#include <algorithm>

#include "ui/controls/paint.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {

struct AlarmStrip::LineRooms {
    QRectF mark, ear, level, text;
};

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

// More than one where the strip is high.
int AlarmStrip::shown() const
{
    const Metrics& metrics = theme().metrics();
    const int rows = std::max(1, static_cast<int>(height() / metrics.px(Metrics::kStrip - 1)));
    return std::min(static_cast<int>(m_alarms.size()), rows);
}

// The number and its word may stand on two lines.
QRectF AlarmStrip::moreRoom() const
{
    const auto rest = static_cast<int>(m_alarms.size()) - shown();
    if (rest <= 0 || !m_more)
        return {width() + 0.0, 0, 0, height() + 0.0};
    double wide = 0;
    for (const QString& word : m_more(rest).split(u' '))
        wide = std::max(wide, widthOf(word, 4, Weight::Strong) + 1);
    return {width() - wide, 0, wide, height() + 0.0};
}

QRectF AlarmStrip::room(int index) const
{
    const double gap = theme().metrics().px(1), rows = std::max(1, shown());
    const double each = (height() - (rows - 1) * gap) / rows;
    return {0, index * (each + gap), moreRoom().left() - (moreRoom().width() > 0 ? gap : 0), each};
}

// At the left of a line the level: its mark, and the ear when hushed, over its word.
AlarmStrip::LineRooms AlarmStrip::lineRooms(int index) const
{
    const Metrics& metrics = theme().metrics();
    const QRectF line =
        room(index).adjusted(metrics.px(2), metrics.px(0.8), -metrics.px(2), -metrics.px(0.8));
    const double word = heightOf(1, Metrics::kSmall, Weight::Regular);
    const double side = std::min(metrics.px(6), line.height() - word);
    const double wide = std::max(
        widthOf(m_alarms.at(index).level, Metrics::kSmall, Weight::Regular) + 1, 2.2 * side);
    LineRooms at;
    at.mark = QRectF(line.left(), line.top(), side, side);
    at.ear = at.mark.translated(1.2 * side, 0);
    at.level = QRectF(line.left(), line.bottom() - word, wide, word);
    at.text = line.adjusted(wide + metrics.px(2), 0, 0, 0);
    return at;
}

QList<PlacedText> AlarmStrip::texts() const
{
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    const TextWish small{Metrics::kSmall, Metrics::kSmall, Weight::Regular, 1};
    const TextWish words{Metrics::kWords, Metrics::kSmall, Weight::Strong, 2};
    if (m_alarms.isEmpty())
        return {{m_calm,
                 QRectF(rect()),
                 left,
                 {Metrics::kWords, Metrics::kSmall},
                 theme().palette().softInk()}};
    QList<PlacedText> texts;
    for (int i = 0; i < shown(); ++i) {
        const AlarmLine& alarm = m_alarms.at(i);
        const LineRooms at = lineRooms(i);
        const QColor ink = theme().tone(alarm.role).ink;
        texts.append({alarm.level, at.level, left, small, ink});
        texts.append({alarm.text, at.text, left, words, ink});
    }
    if (const auto rest = static_cast<int>(m_alarms.size()) - shown(); rest > 0 && m_more)
        texts.append({m_more(rest),
                      moreRoom(),
                      Qt::AlignCenter,
                      {4, Metrics::kSmall, Weight::Strong, 2},
                      theme().palette().ink()});
    return texts;
}

void AlarmStrip::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    for (int i = 0; i < shown(); ++i) {
        const AlarmLine& alarm = m_alarms.at(i);
        const Tone& tone = theme().tone(alarm.role);
        const LineRooms at = lineRooms(i);
        drawPlate(painter, room(i), tone);
        drawMark(painter, at.mark, markOf(alarm.role), tone.ink);
        if (alarm.hushed)
            drawMark(painter, at.ear, Mark::Ear, tone.ink);
    }
    drawAll(painter, texts());
}

}  // namespace bathside::ui
