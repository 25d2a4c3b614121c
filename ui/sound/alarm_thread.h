#pragma once

// The thread that waits for alarms and sounds them, whatever the screen is doing.
//
// It asks the published, immutable source what is due, sounds the worst level that is not hushed,
// and queues what it did. It waits on the kernel's boot clock (waiter.h), so that nothing sounds
// early and everything sounds at once after a suspend; it looks again at each change, at each poke
// and once a second. It needs neither the UI thread nor the default device. All functions may be
// called from any thread and do not wait (but for `settle` and the destructor); the notifier is
// called from the alarm thread and should only post an event to whoever then takes the reports.

#include <condition_variable>
#include <cstdint>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <thread>
#include <vector>

#include "core/alarms/sounding.h"
#include "core/base/clock.h"
#include "ui/sound/sound_report.h"
#include "ui/sound/sounder.h"
#include "ui/sound/waiter.h"

namespace bathside::ui {

/// How the thread learns that time has passed.
enum class Waiting : std::uint8_t {
    BootClock,  // by the kernel; the clock's boot time is CLOCK_BOOTTIME
    Poked,      // by `wake` alone, for a clock that is stepped by hand
};

class AlarmThread {
public:
    using Notifier = std::function<void()>;

    AlarmThread(const Clock& clock, std::unique_ptr<Sounder> sounder, Waiting waiting,
                Notifier notifier);
    AlarmThread(const AlarmThread&) = delete;
    AlarmThread& operator=(const AlarmThread&) = delete;
    ~AlarmThread();

    /// From now on this is asked. None: silence.
    void publish(std::shared_ptr<const SoundSource> source);
    /// The clock was stepped: look at it. Needed with Waiting::Poked only.
    void wake();
    /// Returns once everything asked for before has been done (for a driver of simulated time).
    void settle();

    void click() { cue(Cue::Click); }
    void refuse() { cue(Cue::Refusal); }
    void test() { cue(Cue::Test); }

    /// The device to use while it is there (an id from `output().devices`); empty: the default.
    void preferDevice(std::string device);
    /// Keeps the volume at the proven level or above, until given none.
    void holdVolume(std::optional<double> atLeast);

    [[nodiscard]] std::vector<SoundReport> takeReports();
    /// Where sound goes at present, as seen at the last look.
    [[nodiscard]] OutStatus output() const;

private:
    // What other threads ask for, until the alarm thread takes it.
    struct Inbox {
        std::vector<Cue> cues;
        std::optional<std::string> device;
        std::optional<std::optional<double>> volume;
        bool mustLook = true;
        bool mustStop = false;
        std::optional<BootTime> published;
        std::uint64_t asked = 1;
    };

    void cue(Cue cue);
    void change(const std::function<void(Inbox&)>& what);
    void run();
    [[nodiscard]] Inbox takeInbox();
    void carryOut(const Inbox& inbox);
    void reportSounder(const Stamp& now);
    void reportClock(const Stamp& now);
    void deliver(const Inbox& inbox);
    [[nodiscard]] BootTime waitUntil(BootTime next) const;

    const Clock& m_clock;
    const Waiting m_waiting;
    const Notifier m_notifier;
    Waiter m_waiter;

    // The alarm thread's own.
    std::unique_ptr<Sounder> m_sounder;
    std::shared_ptr<const SoundSource> m_asked;
    std::vector<SoundReport> m_new;
    std::optional<Micros> m_wallAhead;  // of the boot clock, at the last step

    mutable std::mutex m_mutex;  // all below
    std::condition_variable m_settled;
    std::shared_ptr<const SoundSource> m_published;
    Inbox m_inbox;
    std::uint64_t m_done = 0;
    std::vector<SoundReport> m_reports;
    OutStatus m_output;

    std::thread m_thread;  // last: starts when all else is there
};

}  // namespace bathside::ui
