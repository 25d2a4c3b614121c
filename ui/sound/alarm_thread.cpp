#include "ui/sound/alarm_thread.h"

#include <algorithm>
#include <utility>

#include <pthread.h>

#include "ui/sound/alarm_voice.h"

namespace bathside::ui {

namespace {

// A change of (wall − boot) beyond this is a step, not the slow pull of a time service.
constexpr Micros kClockStep = std::chrono::seconds{1};

Micros wallAhead(const Stamp& now)
{
    return std::chrono::duration_cast<Micros>(now.wall.time_since_epoch()) - now.boot;
}

SoundReport toReport(const SounderChange& change, const Stamp& now)
{
    switch (change.kind) {
        case SounderChange::Kind::Lost:
            return report::SoundLost{change.from, change.fault, now};
        case SounderChange::Kind::Found:
            return report::SoundFound{change.to, now};
        case SounderChange::Kind::Moved:
            return report::SoundMoved{change.from, change.to, now};
    }
    return report::SoundLost{};
}

}  // namespace

AlarmThread::AlarmThread(const Clock& clock, std::unique_ptr<Sounder> sounder, Waiting waiting,
                         Notifier notifier)
    : m_clock(clock),
      m_waiting(waiting),
      m_notifier(std::move(notifier)),
      m_sounder(std::move(sounder)),
      m_thread([this] { run(); })
{
}

AlarmThread::~AlarmThread()
{
    change([](Inbox& inbox) { inbox.mustStop = true; });
    m_thread.join();
}

void AlarmThread::publish(std::shared_ptr<const SoundSource> source)
{
    change([&, now = m_clock.now().boot](Inbox& inbox) {
        m_published.swap(source);  // the old one is let go of outside the lock
        inbox.published = now;
        inbox.mustLook = true;
    });
}

void AlarmThread::wake()
{
    change([](Inbox& inbox) { inbox.mustLook = true; });
}

void AlarmThread::cue(Cue cue)
{
    change([&](Inbox& inbox) { inbox.cues.push_back(cue); });
}

void AlarmThread::preferDevice(std::string device)
{
    change([&](Inbox& inbox) { inbox.device = std::move(device); });
}

void AlarmThread::holdVolume(std::optional<double> atLeast)
{
    change([&](Inbox& inbox) { inbox.volume = atLeast; });
}

void AlarmThread::change(const std::function<void(Inbox&)>& what)
{
    {
        const std::scoped_lock lock(m_mutex);
        what(m_inbox);
        ++m_inbox.asked;
    }
    m_waiter.poke();
}

void AlarmThread::settle()
{
    std::unique_lock lock(m_mutex);
    const std::uint64_t asked = m_inbox.asked;
    m_settled.wait(lock, [&] { return m_done >= asked; });
}

std::vector<SoundReport> AlarmThread::takeReports()
{
    const std::scoped_lock lock(m_mutex);
    return std::exchange(m_reports, {});
}

OutStatus AlarmThread::output() const
{
    const std::scoped_lock lock(m_mutex);
    return m_output;
}

void AlarmThread::run()
{
    ::pthread_setname_np(::pthread_self(), "alarms");
    const SoundBook book;
    AlarmVoice voice(*m_sounder, book);
    m_sounder->listen([this] { m_waiter.poke(); });
    BootTime next{};
    std::uint64_t generation = 0;
    for (Inbox inbox = takeInbox(); !inbox.mustStop; inbox = takeInbox()) {
        const Stamp now = m_clock.now();
        carryOut(inbox);
        reportSounder(now);
        const bool isElsewhere = generation != std::exchange(generation, m_sounder->generation());
        if (inbox.mustLook || isElsewhere || m_waiting == Waiting::BootClock) {
            reportClock(now);
            if (inbox.published)
                voice.notePublished(*inbox.published);
            next = voice.look(m_asked.get(), now, m_new);
        }
        for (const Cue cue : inbox.cues)
            m_sounder->play(Voice::Cue, book.of(cue));
        deliver(inbox);
        m_waiter.wait(waitUntil(next));
    }
    m_sounder->close();
}

AlarmThread::Inbox AlarmThread::takeInbox()
{
    const std::scoped_lock lock(m_mutex);
    m_asked = m_published;
    Inbox taken = m_inbox;
    m_inbox = Inbox{};
    m_inbox.mustLook = false;
    m_inbox.asked = taken.asked;
    return taken;
}

void AlarmThread::carryOut(const Inbox& inbox)
{
    if (inbox.device)
        m_sounder->preferDevice(*inbox.device);
    if (inbox.volume)
        m_sounder->holdVolume(*inbox.volume);
}

void AlarmThread::reportSounder(const Stamp& now)
{
    for (const SounderChange& change : m_sounder->look(bootNow()))
        m_new.push_back(toReport(change, now));
    for (VolumeRaise& raise : m_sounder->takeRaises())
        m_new.push_back(report::VolumeRaised{std::move(raise), now});
}

void AlarmThread::reportClock(const Stamp& now)
{
    const Micros ahead = wallAhead(now);
    const Micros by = ahead - m_wallAhead.value_or(ahead);
    if (!m_wallAhead || std::chrono::abs(by) > kClockStep)
        m_wallAhead = ahead;
    if (std::chrono::abs(by) > kClockStep)
        m_new.push_back(report::ClockStepped{std::chrono::round<Millis>(by), now});
}

void AlarmThread::deliver(const Inbox& inbox)
{
    const bool hasNews = !m_new.empty();
    {
        const std::scoped_lock lock(m_mutex);
        std::ranges::move(m_new, std::back_inserter(m_reports));
        m_output = m_sounder->status();
        m_done = inbox.asked;
    }
    m_new.clear();
    m_settled.notify_all();
    if (hasNews && m_notifier)
        m_notifier();
}

// Devices are looked after by the real clock in any case; a stepped clock never sets the hour of a
// look.
BootTime AlarmThread::waitUntil(BootTime next) const
{
    const BootTime upkeep = bootNow() + AlarmVoice::kLookAgain;
    return m_waiting == Waiting::BootClock ? std::min(next, upkeep) : upkeep;
}

}  // namespace bathside::ui
