#include "core/plan/bench_schedule.h"

#include <algorithm>
#include <optional>
#include <queue>
#include <ranges>
#include <utility>

namespace bathside::plan {
namespace {

struct Job {
    DayTime release{};
    DayTime latest{};
    std::size_t window = 0;
};

/// Jobs that are released, the most urgent first (ties: the window that stands first).
class Waiting {
public:
    explicit Waiting(const std::vector<Job>& byRelease) : m_byRelease(byRelease) {}

    /// When the next job can be had, from `at` on.
    [[nodiscard]] DayTime next(DayTime at)
    {
        release(at);
        return m_waiting.empty() ? m_byRelease[m_released].release : at;
    }

    [[nodiscard]] Job take(DayTime at)
    {
        release(at);
        const Job job = m_waiting.top();
        m_waiting.pop();
        return job;
    }

private:
    struct LessUrgent {
        bool operator()(const Job& a, const Job& b) const
        {
            return std::pair(a.latest, a.window) > std::pair(b.latest, b.window);
        }
    };

    void release(DayTime at)
    {
        while (m_released < m_byRelease.size() && m_byRelease[m_released].release <= at)
            m_waiting.push(m_byRelease[m_released++]);
    }

    const std::vector<Job>& m_byRelease;
    std::size_t m_released = 0;
    std::priority_queue<Job, std::vector<Job>, LessUrgent> m_waiting;
};

/// Starts as early as can be, each at or after its release and not after its latest start.
class EarliestStarts {
public:
    EarliestStarts(std::vector<Job> jobs, Millis length, std::size_t machines)
        : m_jobs(std::move(jobs)),
          m_length(length),
          m_machines(machines),
          m_barriers(m_jobs.size(), DayTime::min())
    {
        std::ranges::sort(m_jobs, {}, &Job::release);
    }

    /// The k-th start for every k, or the window of a job that cannot be met.
    Result<std::vector<DayTime>, std::size_t> find()
    {
        while (const auto late = fill())
            if (!raiseBarrier(*late))
                return failure(m_inSlot[*late].window);
        return m_starts;
    }

private:
    /// Slot by slot the most urgent job there is; the first slot whose job is late.
    std::optional<std::size_t> fill()
    {
        m_starts.clear();
        m_inSlot.clear();
        Waiting waiting(m_jobs);
        for (std::size_t slot = 0; slot < m_jobs.size(); ++slot) {
            const DayTime start = waiting.next(freeFor(slot));
            m_starts.push_back(start);
            m_inSlot.push_back(waiting.take(start));
            if (start > m_inSlot.back().latest)
                return slot;
        }
        return std::nullopt;
    }

    [[nodiscard]] DayTime freeFor(std::size_t slot) const
    {
        DayTime free = m_barriers[slot];
        if (slot > 0)
            free = std::max(free, m_starts[slot - 1]);
        if (slot >= m_machines)
            free = std::max(free, m_starts[slot - m_machines] + m_length);
        return free;
    }

    /// The last slot before `late` that went to a job less urgent has to wait until the jobs after
    /// it, all as urgent as the late one, begin to be released; false: there is no such slot.
    bool raiseBarrier(std::size_t late)
    {
        DayTime release = m_inSlot[late].release;
        for (std::size_t slot = late; slot-- > 0;) {
            if (m_inSlot[slot].latest > m_inSlot[late].latest) {
                m_barriers[slot] = release;
                return true;
            }
            release = std::min(release, m_inSlot[slot].release);
        }
        return false;
    }

    std::vector<Job> m_jobs;  // by release
    Millis m_length;
    std::size_t m_machines;
    std::vector<DayTime> m_barriers;  // by slot: no start before it
    std::vector<DayTime> m_starts;    // by slot
    std::vector<Job> m_inSlot;
};

}  // namespace

Result<std::vector<BenchSlot>, std::size_t> latestSchedule(const std::vector<StartWindow>& windows,
                                                           Millis prepareTime,
                                                           std::size_t preparers)
{
    std::vector<Job> forwards;
    std::vector<Job> backwards;
    for (std::size_t i = 0; i < windows.size(); ++i) {
        forwards.push_back({windows[i].earliest, windows[i].latest, i});
        backwards.push_back({-windows[i].latest, -windows[i].earliest, i});
    }
    const auto found = EarliestStarts(backwards, prepareTime, preparers).find();
    if (!found)
        return failure(found.error());
    std::ranges::sort(forwards, {}, &Job::release);
    Waiting waiting(forwards);
    std::vector<BenchSlot> slots;
    for (const DayTime start : std::views::reverse(*found))
        slots.push_back({waiting.take(-start).window, slots.size() % preparers, -start});
    return slots;
}

std::size_t preparersNeeded(const std::vector<StartWindow>& windows, Millis prepareTime)
{
    std::size_t preparers = 1;
    while (!latestSchedule(windows, prepareTime, preparers))
        ++preparers;
    return preparers;
}

}  // namespace bathside::plan
