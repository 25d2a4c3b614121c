#include "ui/controls/tap_button.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QTimer>
#include <QTouchEvent>
#include <algorithm>
#include <chrono>

#include "ui/controls/paint.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;
constexpr auto kSeen =
    120ms;  // a press looks pressed at least this long; it keeps nothing from happening

constexpr double kLineCapMm = 4;  // the smaller line, as wanted

bool anyPressed(const QTouchEvent& touch)
{
    const auto& points = touch.points();
    return std::any_of(points.begin(), points.end(), [](const QEventPoint& point) {
        return point.state() == QEventPoint::Pressed;
    });
}

}  // namespace

struct TapButton::Rooms {
    QRectF mark, word, line;
};

TapButton::TapButton(const QString& place, QWidget* parent) : Control(parent)
{
    setObjectName(place);
    setFocusPolicy(Qt::TabFocus);  // a finger never moves the focus
    setAttribute(Qt::WA_AcceptTouchEvents);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void TapButton::setWord(const QString& word)
{
    m_word = word;
    describe();
    update();
}

void TapButton::setLine(const QString& line)
{
    m_line = line;
    describe();
    update();
}

void TapButton::setMark(Mark mark)
{
    m_mark = mark;
    update();
}

void TapButton::setRole(Role role)
{
    m_role = role;
    update();
}

void TapButton::setChosen(bool chosen)
{
    m_chosen = chosen;
    describe();
    update();
}

void TapButton::setReason(const QString& why)
{
    m_reason = why;
    describe();
    update();
}

void TapButton::setWeight(Weight weight)
{
    m_weight = weight;
    update();
}

void TapButton::setCapMm(double want)
{
    m_capMm = want;
    update();
}

void TapButton::setSizeMm(double width, double height)
{
    m_widthMm = std::max(width, Metrics::kMinimum);
    m_heightMm = std::max(height, Metrics::kMinimum);
    updateGeometry();
}

void TapButton::describe()
{
    const QString& line = shownLine();
    suggestAccessibleName(line.isEmpty() ? m_word : QStringLiteral("%1, %2").arg(m_word, line));
    setAccessibleDescription(m_reason);
}

// --- pressing
// ----------------------------------------------------------------------------------------

void TapButton::press(TapStamp stamp)
{
    takeDown();
    see();
    emit pressed(stamp);
}

// Painted at once, before whatever the press sets off.
void TapButton::takeDown()
{
    m_down = true;
    m_shown = false;
    repaint();
}

void TapButton::see()
{
    QTimer::singleShot(kSeen, this, [this] {
        m_shown = true;
        if (!m_held)
            letGo();
    });
}

void TapButton::letGo()
{
    m_held = false;
    if (!m_shown)
        return;
    m_down = false;
    update();
}

bool TapButton::event(QEvent* event)
{
    switch (event->type()) {
        case QEvent::TouchBegin:
        case QEvent::TouchUpdate:
        case QEvent::TouchEnd:
        case QEvent::TouchCancel:
            return handleTouch(event);
        case QEvent::Hide:  // under the finger, whose going it never sees
            m_held = m_down = false;
            return Control::event(event);
        default:
            return Control::event(event);
    }
}

bool TapButton::handleTouch(QEvent* event)
{
    const auto& touch = *static_cast<QTouchEvent*>(event);
    event->accept();
    if (!isEnabled())
        return true;
    if (event->type() == QEvent::TouchEnd || event->type() == QEvent::TouchCancel) {
        letGo();
    } else if (anyPressed(touch)) {
        m_held = true;
        press({touch.timestamp()});
    }
    return true;
}

void TapButton::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton)
        return;
    m_held = true;
    press({event->timestamp()});
}

void TapButton::mouseReleaseEvent(QMouseEvent*) { letGo(); }

// The second press of two quick ones; whether it counts is for the core to say.
void TapButton::mouseDoubleClickEvent(QMouseEvent* event) { mousePressEvent(event); }

void TapButton::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Space && event->key() != Qt::Key_Select)
        return Control::keyPressEvent(event);
    if (event->isAutoRepeat())
        return;
    m_held = true;
    press({event->timestamp()});
}

void TapButton::keyReleaseEvent(QKeyEvent* event)
{
    if (!event->isAutoRepeat())
        letGo();
}

void TapButton::focusInEvent(QFocusEvent* event)
{
    Control::focusInEvent(event);
    update();
}

void TapButton::focusOutEvent(QFocusEvent* event)
{
    letGo();
    Control::focusOutEvent(event);
    update();
}

// --- painting
// ----------------------------------------------------------------------------------------

Tone TapButton::shownTone() const
{
    Tone tone = theme().tone(isAvailable() && isEnabled() ? m_role : Role::Quiet);
    if (m_down) {
        std::swap(tone.fill, tone.ink);
        tone.bar = tone.ink;
    }
    return tone;
}

QRectF TapButton::inner() const
{
    constexpr double kSlimMm = 24, kUsual = 0.7, kSlim = 0.4;
    const Metrics& metrics = theme().metrics();
    const double by =
        metrics.px(Metrics::kInset * (metrics.mm(width()) < kSlimMm ? kSlim : kUsual));
    return QRectF(rect()).adjusted(by, by, -by, -by);
}

TapButton::Rooms TapButton::rooms() const
{
    QRectF rest = inner();
    Rooms rooms;
    const Metrics& metrics = theme().metrics();
    if (m_mark != Mark::None && m_word.isEmpty()) {
        const double side = std::min({rest.width(), rest.height(), metrics.px(10)});
        rooms.mark = QRectF(0, 0, side, side);
        rooms.mark.moveCenter(rest.center());
        return rooms;
    }
    // A small target has no room for both a mark and a second line; the words say more.
    const bool crowded = !shownLine().isEmpty() && rest.height() < metrics.px(28);
    if (m_mark != Mark::None && !crowded) {
        const double side = std::min(metrics.px(7), 0.3 * rest.height());
        rooms.mark =
            QRectF(rest.center().x() - side / 2, rest.top() + 0.06 * rest.height(), side, side);
        rest.setTop(rooms.mark.bottom() + 0.04 * rest.height());
    }
    rooms.word = rest;
    if (!shownLine().isEmpty()) {
        rooms.word.setHeight(rest.height() * (isAvailable() ? 0.565 : 0.26));
        rooms.line = rest;
        rooms.line.setTop(rooms.word.bottom());
    }
    return rooms;
}

QList<PlacedText> TapButton::texts() const
{
    const Rooms at = rooms();
    const QColor ink = shownTone().ink;
    const double wantLine = std::min(kLineCapMm, m_capMm);
    return {
        {m_word, at.word, Qt::AlignCenter, {m_capMm, Metrics::kSmall, m_weight}, ink},
        {shownLine(), at.line, Qt::AlignCenter, {wantLine, Metrics::kSmall, Weight::Regular}, ink}};
}

void TapButton::paintMarks(QPainter& painter) const
{
    drawMark(painter, rooms().mark, m_mark, shownTone().ink);
}

void TapButton::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Outline usual = isAvailable() ? Outline::Plain : Outline::Dashed;
    drawPlate(painter, QRectF(rect()), shownTone(), m_chosen ? Outline::Strong : usual);
    paintMarks(painter);
    drawAll(painter, texts());
    if (m_chosen) {
        const double side = theme().metrics().px(5), by = theme().metrics().px(1.6);
        const QRectF corner(width() - side - by, by, side, side);
        drawMark(painter, corner, Mark::Tick, shownTone().ink);
    }
    if (hasFocus())
        drawFocus(painter, QRectF(rect()), theme().palette().focus());
}

}  // namespace bathside::ui
