#include "ui/sound/waiter.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cerrno>
#include <cstdint>
#include <ctime>

#include <poll.h>
#include <sys/eventfd.h>
#include <sys/timerfd.h>
#include <unistd.h>

namespace bathside::ui {

namespace {

timespec toSpec(Micros time)
{
    const auto whole = std::chrono::duration_cast<std::chrono::seconds>(time);
    return {.tv_sec = static_cast<time_t>(whole.count()),
            .tv_nsec = static_cast<long>((time - whole).count() * 1000)};
}

bool hasRead(int fd)
{
    std::uint64_t count = 0;
    return ::read(fd, &count, sizeof count) == static_cast<ssize_t>(sizeof count);
}

}  // namespace

BootTime bootNow()
{
    timespec now{};
    ::clock_gettime(CLOCK_BOOTTIME, &now);
    return std::chrono::seconds{now.tv_sec} + Micros{now.tv_nsec / 1000};
}

Waiter::Waiter()
    : m_timer(::timerfd_create(CLOCK_BOOTTIME, TFD_NONBLOCK | TFD_CLOEXEC)),
      m_poke(::eventfd(0, EFD_NONBLOCK | EFD_CLOEXEC)),
      m_wall(::timerfd_create(CLOCK_REALTIME, TFD_NONBLOCK | TFD_CLOEXEC))
{
    assert(m_timer >= 0 && m_poke >= 0 && m_wall >= 0);
    watchWall();
}

Waiter::~Waiter()
{
    for (const int fd : {m_timer, m_poke, m_wall})
        ::close(fd);
}

void Waiter::poke()
{
    const std::uint64_t one = 1;
    // Fails only when the counter is full, and then the poke is there already.
    [[maybe_unused]] const auto written = ::write(m_poke, &one, sizeof one);
}

Waiter::Woken Waiter::wait(BootTime until)
{
    arm(until);
    std::array<pollfd, 3> fds{{{m_timer, POLLIN, 0}, {m_poke, POLLIN, 0}, {m_wall, POLLIN, 0}}};
    // A signal counts as a wake-up: the caller reads the clock anyway.
    if (::poll(fds.data(), fds.size(), -1) <= 0)
        return {};
    if (fds[0].revents != 0)
        hasRead(m_timer);
    Woken woken{.isPoked = fds[1].revents != 0 && hasRead(m_poke)};
    if (fds[2].revents != 0 && !hasRead(m_wall)) {
        woken.isWallSet = errno == ECANCELED;
        watchWall();
    }
    return woken;
}

void Waiter::arm(BootTime until)
{
    // All zero would disarm it, so an instant long past is the first microsecond.
    const itimerspec spec{.it_interval = {}, .it_value = toSpec(std::max(until, BootTime{1}))};
    ::timerfd_settime(m_timer, TFD_TIMER_ABSTIME, &spec, nullptr);
}

void Waiter::watchWall()
{
    // Far ahead: it is never meant to fire, only to be cancelled.
    const itimerspec spec{.it_interval = {}, .it_value = {.tv_sec = 4'000'000'000, .tv_nsec = 0}};
    ::timerfd_settime(m_wall, TFD_TIMER_ABSTIME | TFD_TIMER_CANCEL_ON_SET, &spec, nullptr);
}

}  // namespace bathside::ui
