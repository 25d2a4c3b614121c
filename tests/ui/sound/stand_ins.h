#pragma once

// Clocks, sources and a loudspeaker for the tests of sound.

#include <algorithm>
#include <chrono>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/alarms/sounding.h"
#include "core/base/clock.h"
#include "ui/sound/alarm_thread.h"
#include "ui/sound/audio_out.h"
#include "ui/sound/waiter.h"

namespace bathside::test {

/// The machine's own clocks.
class RealClock final : public Clock {
public:
    [[nodiscard]] Stamp now() const override
    {
        const auto wall = std::chrono::floor<Millis>(std::chrono::system_clock::now());
        return {.wall = wall, .boot = ui::bootNow()};
    }
};

/// Stands still until it is moved.
class FakeClock final : public Clock {
public:
    [[nodiscard]] Stamp now() const override
    {
        const std::scoped_lock lock(m_mutex);
        return m_now;
    }
    void pass(Micros time)
    {
        const std::scoped_lock lock(m_mutex);
        m_now = shifted(m_now, time);
    }
    void setWall(Millis by)
    {
        const std::scoped_lock lock(m_mutex);
        m_now.wall += by;
    }

private:
    mutable std::mutex m_mutex;
    Stamp m_now{.wall = WallTime{std::chrono::hours{480'000}}, .boot = std::chrono::hours{1}};
};

/// One change after another: what is to be heard from each instant on.
class Timetable final : public SoundSource {
public:
    struct Row {
        BootTime from{};
        std::optional<Level> level{};
        std::string alarm{};
    };

    explicit Timetable(std::vector<Row> rows) : m_rows(std::move(rows)) {}

    [[nodiscard]] Sounding at(const Stamp& now) const override
    {
        const auto next = std::ranges::upper_bound(m_rows, now.boot, {}, &Row::from);
        Sounding sounding;
        if (next != m_rows.end())
            sounding.nextChange = next->from;
        if (next != m_rows.begin()) {
            sounding.level = std::prev(next)->level;
            sounding.alarm = std::prev(next)->alarm;
        }
        return sounding;
    }

private:
    std::vector<Row> m_rows;  // in order
};

inline std::shared_ptr<const SoundSource> dueAt(BootTime when, Level level,
                                                const std::string& alarm = "limit")
{
    return std::make_shared<Timetable>(std::vector<Timetable::Row>{{when, level, alarm}});
}

/// A loudspeaker that is told how to be and remembers what it was given.
struct FakeSpeaker {
    mutable std::mutex mutex;
    ui::OutStatus status;
    ui::OutState afterOpen = ui::OutState::Ready;
    std::optional<ui::OutFault> faultAfterOpen;
    std::string name = "speaker";
    bool isStuck = false;
    int opened = 0;
    int closed = 0;
    int silenced = 0;
    std::optional<double> held;
    std::vector<std::pair<ui::Voice, std::shared_ptr<const ui::Burst>>> played;
    std::function<void()> changed;

    [[nodiscard]] std::size_t alarms() const
    {
        const std::scoped_lock lock(mutex);
        return static_cast<std::size_t>(
            std::ranges::count(played, ui::Voice::Alarm, [](const auto& p) { return p.first; }));
    }

    void become(ui::OutState state, std::optional<ui::OutFault> fault = std::nullopt)
    {
        std::function<void()> tell;
        {
            const std::scoped_lock lock(mutex);
            status.state = state;
            status.fault = fault;
            status.device = state == ui::OutState::Ready ? name : std::string();
            tell = changed;
        }
        if (tell)
            tell();
    }
};

class FakeOut final : public ui::AudioOut {
public:
    explicit FakeOut(std::shared_ptr<FakeSpeaker> speaker) : m_speaker(std::move(speaker)) {}

    void open(const std::string&) override
    {
        ++m_speaker->opened;
        m_speaker->become(m_speaker->afterOpen, m_speaker->faultAfterOpen);
    }
    void close() override
    {
        ++m_speaker->closed;
        m_speaker->become(ui::OutState::Closed);
    }
    void play(ui::Voice voice, std::shared_ptr<const ui::Burst> burst) override
    {
        const std::scoped_lock lock(m_speaker->mutex);
        m_speaker->played.emplace_back(voice, std::move(burst));
    }
    void silence() override
    {
        const std::scoped_lock lock(m_speaker->mutex);
        ++m_speaker->silenced;
    }
    void holdVolume(std::optional<double> atLeast) override { m_speaker->held = atLeast; }
    [[nodiscard]] ui::OutStatus status() const override
    {
        const std::scoped_lock lock(m_speaker->mutex);
        if (!m_speaker->isStuck)
            ++m_speaker->status.asked;
        return m_speaker->status;
    }
    [[nodiscard]] bool canFollow(ui::OutFault fault) const override
    {
        return fault != ui::OutFault::Muted;
    }
    void listen(std::function<void()> changed) override { m_speaker->changed = std::move(changed); }

private:
    std::shared_ptr<FakeSpeaker> m_speaker;
};

/// Collects what an alarm thread reports, and waits for it.
class Reports {
public:
    [[nodiscard]] ui::AlarmThread::Notifier notifier()
    {
        return [this] {
            const std::scoped_lock lock(m_mutex);
            m_hasNews = true;
            m_came.notify_all();
        };
    }

    /// The next report of this kind, in order; those before it are passed over.
    template <typename Kind>
    std::optional<Kind> next(ui::AlarmThread& thread,
                             std::chrono::milliseconds atMost = std::chrono::seconds{10})
    {
        const auto until = std::chrono::steady_clock::now() + atMost;
        while (true) {
            for (; m_read < m_all.size(); ++m_read) {
                if (const auto* found = std::get_if<Kind>(&m_all[m_read])) {
                    ++m_read;
                    return *found;
                }
            }
            std::unique_lock lock(m_mutex);
            if (!m_came.wait_until(lock, until, [&] { return std::exchange(m_hasNews, false); }))
                return std::nullopt;
            lock.unlock();
            take(thread);
        }
    }

    template <typename Kind>
    [[nodiscard]] std::size_t count() const
    {
        return static_cast<std::size_t>(std::ranges::count_if(
            m_all, [](const auto& r) { return std::holds_alternative<Kind>(r); }));
    }

    void take(ui::AlarmThread& thread)
    {
        std::ranges::move(thread.takeReports(), std::back_inserter(m_all));
    }

private:
    std::mutex m_mutex;
    std::condition_variable m_came;
    bool m_hasNews = false;
    std::vector<ui::SoundReport> m_all;
    std::size_t m_read = 0;
};

}  // namespace bathside::test
