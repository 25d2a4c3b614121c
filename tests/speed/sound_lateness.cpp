// How late an alarm is: from its deadline to the decision, and to the first loud sample on a null
// device's monitor, idle and with every core busy and the window's thread stuck. Fails when one is
// early or not heard; lateness is only printed, beside the bare kernel timer of the same run.

#include <atomic>
#include <memory>
#include <random>
#include <thread>

#include "tests/speed/sound_figures.h"
#include "tests/ui/sound/monitor.h"
#include "tests/ui/sound/sound_server.h"
#include "tests/ui/sound/stand_ins.h"
#include "ui/sound/pulse_out.h"

using namespace bathside;
using namespace std::chrono_literals;

namespace {

constexpr auto kAtMost = 20s;
const std::string kDevice = "bench";
std::atomic<std::size_t> g_early = 0;
std::atomic<std::size_t> g_missed = 0;

// Loops on every core for as long as it lives.
class Busy {
public:
    Busy()
    {
        for (unsigned i = 0; i < std::max(2U, std::thread::hardware_concurrency()); ++i)
            m_threads.emplace_back([](const std::stop_token& stop) {
                for (volatile unsigned spin = 0; !stop.stop_requested();)
                    spin = spin + 1;
            });
    }

private:
    std::vector<std::jthread> m_threads;
};

template <typename Out, typename... Args>
std::unique_ptr<ui::Sounder> sounderOf(Args&&... args)
{
    std::vector<std::unique_ptr<ui::AudioOut>> paths;
    paths.push_back(std::make_unique<Out>(std::forward<Args>(args)...));
    return std::make_unique<ui::Sounder>(std::move(paths));
}

void measureKernel(const std::string& when, std::size_t count)
{
    ui::Waiter waiter;
    test::Figures figures;
    for (std::size_t i = 0; i < count; ++i) {
        const BootTime due = ui::bootNow() + Micros{2000 + static_cast<int>(i % 1000)};
        waiter.wait(due);
        const BootTime now = ui::bootNow();
        g_early += now < due ? 1 : 0;
        figures.add(now - due);
    }
    figures.print("bare timer, " + when, count, "(peer)");
}

// Deadlines 2 ms apart in one published source, as the thread itself reports them. When it comes so
// late that the next is due as well, it reports only that one: those passed over were decided at
// the same instant and are counted from their own.
void measureDecisions(const std::string& when, std::size_t count)
{
    const test::RealClock clock;
    test::Reports reports;
    const auto speaker = std::make_shared<test::FakeSpeaker>();
    ui::AlarmThread thread(clock, sounderOf<test::FakeOut>(speaker), ui::Waiting::BootClock,
                           reports.notifier());
    (void)reports.next<ui::report::SoundFound>(thread, kAtMost);
    const BootTime begin = ui::bootNow() + 100ms;
    std::vector<test::Timetable::Row> rows;
    for (std::size_t i = 0; i < count; ++i)
        rows.push_back({begin + static_cast<int>(i) * 2ms, Level::Limit, std::to_string(i)});
    thread.publish(std::make_shared<test::Timetable>(std::move(rows)));
    test::Figures figures;
    for (std::size_t next = 0; next < count;) {
        const auto sounded = reports.next<ui::report::AlarmSounded>(thread, kAtMost);
        if (!sounded) {
            g_missed += count - next;
            break;
        }
        for (const std::size_t last = std::stoul(sounded->alarm); next <= last; ++next) {
            const BootTime due = begin + static_cast<int>(next) * 2ms;
            g_early += sounded->at.boot < due ? 1 : 0;
            figures.add(sounded->at.boot - due);
        }
    }
    figures.print("deadline to decision, " + when, count, "(wanted: p99 20, max 50)");
}

void measureSound(const std::string& when, const test::Monitor& monitor, std::size_t count)
{
    const test::RealClock clock;
    test::Reports reports;
    ui::AlarmThread thread(clock, sounderOf<ui::PulseOut>(), ui::Waiting::BootClock,
                           reports.notifier());
    (void)reports.next<ui::report::SoundFound>(thread, kAtMost);
    (void)monitor.silence(200ms, kAtMost);
    std::mt19937 random(7);
    test::Figures fromDeadline;
    test::Figures fromDecision;
    for (std::size_t i = 0; i < count; ++i) {
        const BootTime due = ui::bootNow() + Micros{30'000 + static_cast<int>(random() % 30'000)};
        const std::size_t from = monitor.position();
        thread.publish(test::dueAt(due, Level::HeadsUp, std::to_string(i)));
        const auto onset = monitor.sound(from, kAtMost);
        const auto sounded = reports.next<ui::report::AlarmSounded>(thread, kAtMost);
        thread.publish(nullptr);
        g_missed += onset && sounded ? 0 : 1;
        if (onset && sounded) {
            g_early += onset->arrived < due ? 1 : 0;
            fromDeadline.add(onset->arrived - due);
            fromDecision.add(onset->arrived - sounded->at.boot);
        }
        (void)monitor.silence(50ms, kAtMost);
    }
    fromDeadline.print("deadline to first sample, " + when, count, "");
    fromDecision.print("decision to first sample, " + when, count, "(wanted: p95 60, max 150)");
}

// The measuring runs beside; the main thread, which would be the window's, spins and answers to
// nobody.
template <typename Measure>
void whileStuck(Measure measure)
{
    const Busy busy;
    std::atomic<bool> isDone = false;
    const std::jthread other([&] {
        measure();
        isDone = true;
    });
    while (!isDone) {
    }
}

}  // namespace

int main()
{
    const std::string stuck = "busy and stuck";
    const std::size_t timers = test::howMany(2'000, 100'000);
    const std::size_t sounds = test::howMany(40, 400);
    test::SoundServer server;
    server.addDevice(kDevice);
    const test::Monitor monitor(server.address(), kDevice);
    std::printf("counted / deadlines\n");
    measureKernel("idle", timers / 10);
    measureDecisions("idle", timers);
    measureSound("idle", monitor, sounds);
    whileStuck([&] { measureKernel(stuck, timers / 10); });
    whileStuck([&] { measureDecisions(stuck, timers); });
    whileStuck([&] { measureSound(stuck, monitor, sounds); });
    std::printf("early: %zu, not heard: %zu (wanted: 0 and 0)\n", g_early.load(), g_missed.load());
    return g_early == 0 && g_missed == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
