#include "ui/sound/alarm_voice.h"

#include <algorithm>
#include <utility>

namespace bathside::ui {

namespace {

// Changes passed over in one look, while the machine slept; more than a bench can have open.
constexpr int kMostChanges = 256;

bool isSame(const Sounding& a, const Sounding& b)
{
    return a.level == b.level && a.alarm == b.alarm;
}

}  // namespace

BootTime AlarmVoice::look(const SoundSource* source, const Stamp& now,
                          std::vector<SoundReport>& reports)
{
    const Sounding before = std::exchange(m_current, source ? source->at(now) : Sounding{});
    if (!m_current.level) {
        if (before.level)
            m_sounder.silence();
        m_repeat.reset();
    } else if (!isSame(before, m_current)) {
        raise(*source, now, reports);
        sound(now, reports);
    } else if (!m_repeat || now.boot >= *m_repeat || m_generation != m_sounder.generation()) {
        sound(now, reports);
    }
    m_lastLook = now.boot;
    return nextLook(now);
}

void AlarmVoice::raise(const SoundSource& source, const Stamp& now,
                       std::vector<SoundReport>& reports)
{
    m_due = dueSince(source, now);
    m_repeat.reset();
    m_isReported = false;
    reports.push_back(
        report::AlarmRaised{m_current.alarm, *m_current.level, now, now.boot - m_due});
}

void AlarmVoice::sound(const Stamp& now, std::vector<SoundReport>& reports)
{
    if (!m_sounder.isReady()) {
        m_repeat.reset();
        return;
    }
    const auto burst = m_book.of(*m_current.level);
    m_sounder.play(Voice::Alarm, burst);
    m_repeat = now.boot + burst->repeatAfter;
    m_generation = m_sounder.generation();
    if (std::exchange(m_isReported, true))
        return;
    reports.push_back(report::AlarmSounded{m_current.alarm, *m_current.level, now, now.boot - m_due,
                                           m_sounder.status().device});
}

// Walks the source from the last look to now, so that after a suspend "how late" is counted from
// the change that mattered, not from the first one slept through.
BootTime AlarmVoice::dueSince(const SoundSource& source, const Stamp& now) const
{
    const BootTime published = std::min(m_published, now.boot);
    BootTime at = m_lastLook.value_or(published);
    for (int i = 0; i < kMostChanges && at < now.boot; ++i) {
        const Sounding then = source.at(shifted(now, at - now.boot));
        // Due at the last look already, and not sounded: by what was published since.
        if (isSame(then, m_current))
            return i == 0 ? published : at;
        if (!then.nextChange || *then.nextChange <= at)
            break;
        at = *then.nextChange;
    }
    return std::min(at, now.boot);
}

BootTime AlarmVoice::nextLook(const Stamp& now) const
{
    BootTime next = now.boot + kLookAgain;
    if (m_current.nextChange)
        next = std::min(next, *m_current.nextChange);
    if (m_repeat)
        next = std::min(next, *m_repeat);
    return next;
}

}  // namespace bathside::ui
