#include "ui/review/course_picture.h"

#include <QPainter>
#include <algorithm>

#include "ui/controls/paint.h"
#include "ui/text/numbers.h"
#include "ui/text/review.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kBarMm = 6, kTopMm = 7, kSideMm = 8, kDotMm = 2.2, kAfterMm = 2, kBathMm = 4;

struct Ends {
    std::int64_t low = 0, high = 1;
};

/// A temperature stands apart from nought; times and birds begin there.
Ends endsOf(const Course& course)
{
    Ends ends{std::min(course.from, course.reached), std::max(course.to, course.reached)};
    for (const Course::Tick& tick : course.ticks) {
        ends.low = std::min(ends.low, tick.at);
        ends.high = std::max(ends.high, tick.at);
    }
    if (course.unit == CourseUnit::Temperature) {
        const std::int64_t aside = (ends.high - ends.low) / 4 + 1;
        return {ends.low - aside, ends.high + aside};
    }
    ends.low = std::min<std::int64_t>(ends.low, 0);
    ends.high = std::max(ends.high, ends.low + 1);
    return ends;
}

double across(const Ends& ends, const QRectF& room, std::int64_t value)
{
    return room.left() + room.width() * static_cast<double>(value - ends.low) /
                             static_cast<double>(ends.high - ends.low);
}

/// What is outside says so by a sign, too.
QString readingText(const Course::Reading& reading)
{
    const QString value = temperatureText(reading.value);
    return reading.verdict == Verdict::Outside ? QStringLiteral("! %1").arg(value) : value;
}

double smallLine() { return heightOf(1, Metrics::kSmall, Weight::Regular) + 1; }

}  // namespace

CoursePicture::CoursePicture(QWidget* parent) : Control(parent)
{
    setObjectName(QStringLiteral("review.course"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void CoursePicture::show(const Course& course, const QString& over)
{
    m_course = course;
    m_over = over;
    QStringList parts{over};
    for (const Course::Tick& tick : course.ticks)
        parts.append(
            QStringLiteral("%1 %2").arg(wordOf(tick.what), courseText(course.unit, tick.at)));
    for (const Course::Reading& reading : course.readings)
        parts.append(tr("bath %1 at %2", "temperature, time since the first step")
                         .arg(readingText(reading), courseText(course.unit, reading.at)));
    suggestAccessibleName(parts.join(QStringLiteral(", ")));
    update();
}

void CoursePicture::clear()
{
    m_course.reset();
    update();
}

QRectF CoursePicture::axis() const
{
    const Metrics& metrics = theme().metrics();
    const double side = metrics.px(kSideMm);
    return {side, metrics.px(kTopMm), width() - 2 * side, metrics.px(kBarMm)};
}

double CoursePicture::x(std::int64_t value) const
{
    return across(endsOf(*m_course), axis(), value);
}

/// Under the axis, each in the first row where it has room, else behind the shortest.
QList<CoursePicture::Label> CoursePicture::ticks() const
{
    QList<Label> labels;
    const double gap = theme().metrics().px(kAfterMm), line = smallLine();
    const double top = strip().bottom() + gap;
    const int rows = std::max(1, static_cast<int>((height() - top) / line));
    QList<double> ends(rows, 0.0);  // of each row
    for (const Course::Tick& tick : m_course->ticks) {
        const QString text =
            QStringLiteral("%1 %2").arg(wordOf(tick.what), courseText(m_course->unit, tick.at));
        const double wide = widthOf(text, Metrics::kSmall, Weight::Regular) + 2, at = x(tick.at);
        const double left = std::clamp(at - wide / 2, 0.0, std::max(0.0, width() - wide));
        const auto free = std::ranges::find_if(ends, [&](double end) { return end <= left; });
        const auto row = free != ends.end() ? free : std::ranges::min_element(ends);
        const double start = std::max(left, *row);
        *row = start + wide + gap;
        const auto index = static_cast<double>(std::distance(ends.begin(), row));
        labels.append({text, {start, top + index * line, wide, line}, at});
    }
    return labels;
}

QRectF CoursePicture::strip() const
{
    const Metrics& metrics = theme().metrics();
    const QRectF bar = axis();
    if (m_course->readings.empty())
        return {bar.left(), bar.bottom(), bar.width(), 0};
    return {bar.left(), bar.bottom() + metrics.px(kAfterMm), bar.width(),
            metrics.px(kBathMm) + smallLine()};
}

QList<CoursePicture::Label> CoursePicture::readings() const
{
    QList<Label> labels;
    const QRectF room = strip();
    const double line = smallLine(), gap = theme().metrics().px(kAfterMm);
    double end = 0;
    for (const Course::Reading& reading : m_course->readings) {
        const QString text = readingText(reading);
        const double wide = widthOf(text, Metrics::kSmall, Weight::Strong) + 2, at = x(reading.at);
        const double left = std::clamp(at - wide / 2, 0.0, std::max(0.0, width() - wide));
        const bool fits = left >= end;
        if (fits)
            end = left + wide + gap;
        labels.append({fits ? text : QString(), {left, room.bottom() - line, wide, line}, at});
    }
    return labels;
}

/// A dot each, the warmer the higher.
void CoursePicture::paintReadings(QPainter& painter) const
{
    const auto& all = m_course->readings;
    if (all.empty())
        return;
    const Metrics& metrics = theme().metrics();
    const QRectF room = strip();
    const double dot = metrics.px(kDotMm), high = metrics.px(kBathMm);
    const auto [coldest, warmest] = std::ranges::minmax(all, {}, &Course::Reading::value);
    const auto span = static_cast<double>((warmest.value - coldest.value).count);
    painter.fillRect(QRectF(room.left(), room.top(), room.width(), high),
                     theme().palette().track());
    painter.setPen(Qt::NoPen);
    for (const Course::Reading& reading : all) {
        const auto above = static_cast<double>((reading.value - coldest.value).count);
        const double up = span > 0 ? above / span : 0.5;
        painter.setBrush(theme().tone(roleOf(reading.verdict)).edge);
        painter.drawEllipse(QPointF(x(reading.at), room.top() + dot / 2 + (1 - up) * (high - dot)),
                            dot / 2, dot / 2);
    }
}

/// Over the axis: the limit that was passed, and by how much.
QList<CoursePicture::Label> CoursePicture::limits() const
{
    const bool below = m_course->reached < m_course->from;
    const std::int64_t limit = below ? m_course->from : m_course->to;
    const QString allowed = courseText(
        m_course->unit,
        limit - (below || m_course->unit == CourseUnit::Temperature ? 0 : m_course->from));
    const double gap = theme().metrics().px(kAfterMm), line = smallLine();
    const double wide = widthOf(allowed, Metrics::kSmall, Weight::Regular) + 2;
    const double over = widthOf(m_over, Metrics::kSmall, Weight::Strong) + 2;
    const double at = x(limit), all = wide + gap + over;
    const double left = std::clamp(at - (below ? all : wide), 0.0, std::max(0.0, width() - all));
    const double top = axis().top() - line - 1;
    const QRectF first{left, top, below ? over : wide, line},
        second{left + first.width() + gap, top, below ? wide : over, line};
    return {{allowed, below ? second : first, at}, {m_over, below ? first : second, at}};
}

QList<PlacedText> CoursePicture::texts() const
{
    if (!m_course)
        return {};
    const Palette& palette = theme().palette();
    const TextWish plain{Metrics::kSmall, Metrics::kSmall, Weight::Regular, 1},
        strong{Metrics::kSmall, Metrics::kSmall, Weight::Strong, 1};
    QList<PlacedText> texts;
    for (const Label& label : ticks())
        texts.append({label.text, label.room, Qt::AlignCenter, plain, palette.ink()});
    for (qsizetype i = 0; const Label& label : readings()) {
        const auto& reading = m_course->readings[static_cast<std::size_t>(i++)];
        const bool isOut = reading.verdict == Verdict::Outside;
        if (!label.text.isEmpty())
            texts.append(
                {label.text, label.room, Qt::AlignCenter, isOut ? strong : plain, palette.ink()});
    }
    const QList<Label> over = limits();
    texts.append({over.first().text, over.first().room, Qt::AlignCenter, plain, palette.softInk()});
    texts.append({over.last().text, over.last().room, Qt::AlignCenter, strong, palette.ink()});
    return texts;
}

void drawCourse(QPainter& painter, const QRectF& where, const Course& course, const QColor& allowed,
                const QColor& beyond)
{
    const Ends ends = endsOf(course);
    const auto span = [&](std::int64_t from, std::int64_t to) {
        const double left = across(ends, where, from), right = across(ends, where, to);
        return QRectF(left, where.top(), std::max(1.0, right - left), where.height());
    };
    const bool below = course.reached < course.from;
    painter.fillRect(span(course.from, course.to), allowed);
    painter.fillRect(below ? span(course.reached, course.from) : span(course.to, course.reached),
                     beyond);
}

void CoursePicture::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Palette& palette = theme().palette();
    painter.fillRect(rect(), palette.panel());
    if (!m_course)
        return;
    const Metrics& metrics = theme().metrics();
    const QRectF bar = axis();
    painter.fillRect(bar, palette.track());
    drawCourse(painter, bar, *m_course, theme().tone(Role::Good).edge,
               theme().tone(Role::Overrun).edge);
    const double thick = metrics.px(0.7), dot = metrics.px(kDotMm);
    const double limit = x(m_course->reached < m_course->from ? m_course->from : m_course->to);
    painter.fillRect(QRectF(limit - thick / 2, bar.top() - thick, thick, bar.height() + 2 * thick),
                     palette.ink());
    const QList<Label> labels = ticks();
    for (qsizetype i = 0; i < labels.size(); ++i) {
        const Label& label = labels.at(i);
        painter.setPen(QPen(palette.rule(), 1));
        painter.drawLine(QPointF(label.x, bar.center().y()),
                         QPointF(label.x, bar.bottom() + metrics.px(kAfterMm / 2)));
        painter.setPen(QPen(palette.ink(), metrics.px(0.4)));
        const bool timed = m_course->ticks[static_cast<std::size_t>(i)].timed;
        painter.setBrush(timed ? palette.ink() : palette.panel());
        painter.drawEllipse(QPointF(label.x, bar.center().y()), dot / 2, dot / 2);
    }
    paintReadings(painter);
    drawAll(painter, texts());
}

}  // namespace bathside::ui
