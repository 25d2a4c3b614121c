#include "core/plan/bench_schedule.h"

#include <algorithm>
#include <optional>
#include <ranges>

namespace bathside::plan {
namespace {

/// Starts as early as can be, each at or after its release and not after its latest start.
class EarliestStarts {
public:
    struct Job {
        DayTime release{};
        DayTime latest{};
    };

    EarliestStarts(std::vector<Job> jobs, Millis length, std::size_t machines)
        : m_jobs(std::move(jobs)),
          m_length(length),
          m_machines(machines),
          m_barriers(m_jobs.size(), DayTime::min())
    {
    }

    /// The k-th start for every k, or a job that cannot be met.
    Result<std::vector<DayTime>, std::size_t> find()
    {
        while (true) {
            const auto late = fill();
            if (!late)
                return m_starts;
            if (!raiseBarrier(*late))
                return failure(m_inSlot[*late]);
        }
    }

private:
    /// Slot by slot the most urgent job there is; the first slot whose job is late.
    std::optional<std::size_t> fill()
    {
        m_starts.clear();
        m_inSlot.clear();
        std::vector<bool> isDone(m_jobs.size());
        for (std::size_t slot = 0; slot < m_jobs.size(); ++slot) {
            m_starts.push_back(startOf(slot, isDone));
            m_inSlot.push_back(mostUrgent(m_starts.back(), isDone));
            isDone[m_inSlot.back()] = true;
            if (m_starts.back() > m_jobs[m_inSlot.back()].latest)
                return slot;
        }
        return std::nullopt;
    }

    [[nodiscard]] DayTime startOf(std::size_t slot, const std::vector<bool>& isDone) const
    {
        DayTime release = DayTime::max();
        for (std::size_t job = 0; job < m_jobs.size(); ++job)
            if (!isDone[job])
                release = std::min(release, m_jobs[job].release);
        DayTime start = std::max(release, m_barriers[slot]);
        if (slot > 0)
            start = std::max(start, m_starts[slot - 1]);
        if (slot >= m_machines)
            start = std::max(start, m_starts[slot - m_machines] + m_length);
        return start;
    }

    [[nodiscard]] std::size_t mostUrgent(DayTime at, const std::vector<bool>& isDone) const
    {
        std::size_t best = m_jobs.size();
        for (std::size_t job = 0; job < m_jobs.size(); ++job)
            if (!isDone[job] && m_jobs[job].release <= at &&
                (best == m_jobs.size() || m_jobs[job].latest < m_jobs[best].latest))
                best = job;
        return best;
    }

    /// The last slot before `late` that went to a job less urgent has to wait until the jobs after
    /// it, all as urgent as the late one, begin to be released; false: there is no such slot.
    bool raiseBarrier(std::size_t late)
    {
        const DayTime latest = m_jobs[m_inSlot[late]].latest;
        DayTime release = m_jobs[m_inSlot[late]].release;
        for (std::size_t slot = late; slot-- > 0;) {
            const Job& job = m_jobs[m_inSlot[slot]];
            if (job.latest > latest) {
                m_barriers[slot] = release;
                return true;
            }
            release = std::min(release, job.release);
        }
        return false;
    }

    std::vector<Job> m_jobs;
    Millis m_length;
    std::size_t m_machines;
    std::vector<DayTime> m_barriers;  // by slot: no start before it
    std::vector<DayTime> m_starts;    // by slot
    std::vector<std::size_t> m_inSlot;
};

/// Of the windows that have begun at `start`, the first that ends.
std::size_t firstToEnd(const std::vector<StartWindow>& windows, const std::vector<bool>& isMade,
                       DayTime start)
{
    std::size_t best = windows.size();
    for (std::size_t bag = 0; bag < windows.size(); ++bag)
        if (!isMade[bag] && windows[bag].earliest <= start &&
            (best == windows.size() || windows[bag].latest < windows[best].latest))
            best = bag;
    return best;
}

}  // namespace

Result<std::vector<BenchSlot>, std::size_t> latestSchedule(const std::vector<StartWindow>& windows,
                                                           Millis prepareTime,
                                                           std::size_t preparers)
{
    std::vector<EarliestStarts::Job> backwards;
    for (const StartWindow& window : windows)
        backwards.push_back({-window.latest, -window.earliest});
    const auto found = EarliestStarts(backwards, prepareTime, preparers).find();
    if (!found)
        return failure(found.error());
    std::vector<BenchSlot> slots;
    std::vector<bool> isMade(windows.size());
    for (const DayTime backward : std::views::reverse(*found)) {
        const std::size_t bag = firstToEnd(windows, isMade, -backward);
        isMade[bag] = true;
        slots.push_back({bag, slots.size() % preparers, -backward});
    }
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
