#include "ui/frame/status_bar.h"

#include <QEvent>

#include "ui/controls/alarm_strip.h"
#include "ui/controls/status_chip.h"
#include "ui/text/alarms.h"
#include "ui/text/readings.h"
#include "ui/text/time.h"
#include "ui/text/words.h"
#include "ui/theme/theme.h"

namespace bathside::ui {

StatusBar::StatusBar(const StationModel& model, const Language& language, QWidget* parent)
    : QWidget(parent),
      m_model(model),
      m_language(language),
      m_bath(new StatusChip(QStringLiteral("status.bath"), this)),
      m_alarms(new AlarmStrip(this)),
      m_record(new StatusChip(QStringLiteral("status.record"), this)),
      m_sound(new StatusChip(QStringLiteral("status.sound"), this))
{
    m_alarms->setObjectName(QStringLiteral("status.alarms"));
    connect(&m_model, &StationModel::changed, this, &StatusBar::render);
    connect(&theme(), &Theme::changed, this, &StatusBar::place);
    render();
}

void StatusBar::resizeEvent(QResizeEvent*) { place(); }

void StatusBar::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        render();
    QWidget::changeEvent(event);
}

// Shares of the width, so that nothing moves when a word changes: bath, alarms, record, sound.
void StatusBar::place()
{
    constexpr double kBath = 0.262, kRecord = 0.184, kSound = 0.155, kBetweenMm = 1.5;
    const int gap = theme().metrics().ceilPx(kBetweenMm);
    const int free = width() - 3 * gap;
    const int bath = qRound(free * kBath), record = qRound(free * kRecord),
              sound = qRound(free * kSound);
    const int alarms = free - bath - record - sound;
    m_bath->setGeometry(0, 0, bath, height());
    m_alarms->setGeometry(bath + gap, 0, alarms, height());
    m_record->setGeometry(bath + alarms + 2 * gap, 0, record, height());
    m_sound->setGeometry(width() - sound, 0, sound, height());
}

void StatusBar::render()
{
    renderBath();
    renderAlarms();
    renderRecord();
    renderSound();
}

void StatusBar::renderBath()
{
    const Bench& bench = m_model.bench();
    if (const auto fault = bench.readingFault()) {
        m_bath->setStatus(Role::HeadsUp, Mark::Drop, tr("no bath reading"), shortWordOf(*fault));
        return;
    }
    // Of the thermometer the record goes by, what it says now: before a shift little is written.
    const auto written = bench.lastGoodReading();
    const auto last = written ? m_model.newest(written->fact.probe) : std::nullopt;
    if (!last || !last->fact.corrected) {
        m_bath->setStatus(Role::HeadsUp, Mark::Drop, tr("bath not measured"));
        return;
    }
    const auto verdict = isTooOld(bench, *last, m_model.now()) ? std::nullopt : last->fact.verdict;
    const QString age = ageText(elapsed(last->at, m_model.now()).time);
    //: Under the bath's temperature; %1 is the verdict ("inside"), %2 the reading's age ("4 min").
    const QString detail =
        verdict ? tr("%1 · %2 ago").arg(wordOf(*verdict), age) : tr("too old: %1 ago").arg(age);
    m_bath->setStatus(roleOf(verdict), Mark::Drop, readingText(bench, last->fact), detail);
}

void StatusBar::renderAlarms()
{
    QList<AlarmLine> lines;
    const Card* card = m_model.bench().card.get();
    for (const Alarm& alarm : m_model.alarms().due) {
        lines.append(
            {.role = roleOf(alarm.level),
             .level = wordOf(alarm.level),
             .text = alarmText(alarm, card, m_language.cardCode(), m_model.bench().readingFault()),
             .hushed = alarm.hushed});
    }
    m_alarms->setAlarms(lines, nothingDue(), moreAlarms);
}

void StatusBar::renderRecord()
{
    const RecordState& record = m_model.record();
    const bool lost = record.health == RecordState::Health::NotRecorded;
    const bool good = record.health == RecordState::Health::Recorded;
    const Role role = good ? Role::Good : lost ? Role::Overrun : Role::HeadsUp;
    // What is lost or not confirmed takes both lines for its words.
    const bool behind = record.health == RecordState::Health::Behind;
    const QString words = behind ? tr("%n waiting", nullptr, static_cast<int>(record.waiting))
                                 : wordOf(record.health);
    m_record->setStatus(role, good ? Mark::Tick : Mark::OpenTick, words);
}

void StatusBar::renderSound()
{
    const Bench& bench = m_model.bench();
    if (bench.soundLost)
        m_sound->setStatus(Role::Overrun, Mark::Note, tr("NO SOUND"));
    else if (bench.soundProven)
        m_sound->setStatus(Role::Good, Mark::Note, tr("sound"), tr("proven"));
    else
        m_sound->setStatus(Role::HeadsUp, Mark::Note, tr("sound"), tr("unproven"));
}

}  // namespace bathside::ui
