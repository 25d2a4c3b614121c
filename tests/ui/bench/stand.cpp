#include "tests/ui/bench/stand.h"

#include <QApplication>
#include <QFile>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QWindow>

#include <gtest/gtest.h>

#include "core/base/rfc3339.h"
#include "ui/bench/bench_page.h"
#include "ui/theme/theme.h"

namespace bathside::test {
namespace {

WallTime morning() { return *fromRfc3339("2026-03-05T07:10:00.000+01:00"); }

std::string defaultCard()
{
    QFile file(QStringLiteral(":/cards/default.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll().toStdString();
}

TapId nextTapId()
{
    static int last = 0;
    return {"t" + std::to_string(++last)};
}

}  // namespace

Stand::Stand(const Panel& panel, const QString& language, As day, ui::Printing* printing)
    : m_clock(morning()),
      m_station({}, m_clock, m_kept, nextTapId),
      m_model(
          m_station, m_heard,
          [this](std::uint64_t) { return ui::InputTime{.at = m_clock.now(), .byReceipt = false}; },
          ui::StationModel::Ticking::ByHand),
      m_frame(m_model, m_language)
{
    m_language.use(language);
    ui::theme().setMetrics({panel.pxPerMm, QSizeF(panel.px) / panel.pxPerMm});
    note(StartStation{"0.1.0", {}, day == As::Rehearsal, true, {}});
    note(AdoptCard{defaultCard()});
    m_frame.addPage(
        QString::fromLatin1(ui::Frame::kBench),
        new ui::BenchPage(m_model, m_language, printing ? *printing : m_papers, "Europe/Madrid"));
    m_frame.resize(panel.px);
    m_frame.show();
}

Stand::~Stand() { m_language.use(QStringLiteral("en")); }

void Stand::say(const Intent& intent)
{
    pass(std::chrono::milliseconds(400));
    const auto done = m_station.handle(
        intent, {.place = {"script"}, .at = m_clock.now(), .byReceipt = false, .id = {}});
    EXPECT_TRUE(done.has_value()) << "refused: " << nameOf(intent);
}

void Stand::note(const Intent& intent)
{
    EXPECT_TRUE(m_station.note(intent).has_value()) << "refused: " << nameOf(intent);
}

void Stand::pass(Micros time)
{
    const BootTime end = m_clock.now().boot + time;
    m_model.tick();
    while (m_station.nextChange() && *m_station.nextChange() < end) {
        const BootTime before = m_clock.now().boot;
        m_clock.runTo(*m_station.nextChange());
        m_model.tick();
        if (m_clock.now().boot == before)
            break;
    }
    m_clock.runTo(end);
    m_model.tick();
}

void Stand::record(RecordState::Health health)
{
    RecordState state = m_station.record();
    state.health = health;
    state.waiting = health == RecordState::Health::Recorded ? 0 : 3;
    if (health == RecordState::Health::NotConfirmed || health == RecordState::Health::NotRecorded)
        state.trouble = {StoreFault::NoSpace, 28};
    m_station.recorded(state);
}

QWidget* Stand::target(const QString& place) const
{
    for (QWidget* each : m_frame.findChildren<QWidget*>(place)) {
        if (each->isVisible())
            return each;
    }
    return nullptr;
}

void Stand::tap(const QString& place)
{
    pass(std::chrono::milliseconds(400));
    m_inputMs += 1000;
    QWidget* widget = target(place);
    ASSERT_TRUE(widget) << "no target " << place.toStdString();
    const QPointF middle = QRectF(widget->rect()).center();
    for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
        QMouseEvent event(type, middle, widget->mapToGlobal(middle), Qt::LeftButton,
                          type == QEvent::MouseButtonPress ? Qt::LeftButton : Qt::NoButton,
                          Qt::NoModifier);
        event.setTimestamp(m_inputMs);
        QApplication::sendEvent(widget, &event);
    }
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

void Stand::scan(const QString& text)
{
    constexpr int kGapMs = 8;
    pass(std::chrono::milliseconds(400));
    m_inputMs += 1000;
    for (const QChar sign : text)
        key(sign.toUpper().unicode(), QString(sign), kGapMs);
    key(Qt::Key_Return, QStringLiteral("\r"), kGapMs);
}

void Stand::key(int code, const QString& text, int afterMs)
{
    m_inputMs += static_cast<quint64>(afterMs);
    for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
        QKeyEvent event(type, code, {}, text);
        event.setTimestamp(m_inputMs);
        QApplication::sendEvent(m_frame.windowHandle(), &event);
    }
}

void Stand::taps(const std::vector<const char*>& places)
{
    for (const char* place : places)
        tap(QString::fromLatin1(place));
}

}  // namespace bathside::test
