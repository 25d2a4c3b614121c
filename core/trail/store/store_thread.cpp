#include "core/trail/store/store_thread.h"

#include <algorithm>
#include <utility>

namespace bathside::store {
namespace {

constexpr int kTidyPages = 64;  // less in the log is not worth a checkpoint of its own

TrailDb* databaseOf(const Failover& failover) { return dynamic_cast<TrailDb*>(failover.trail()); }

// Reads a slice and queues the next one behind whatever has come to be stored meanwhile.
struct Slicer : std::enable_shared_from_this<Slicer> {
    StoreThread& thread;
    std::vector<SeqRange> ranges;
    Seq slice;
    std::function<void(std::vector<Entry>)> take;
    std::function<void(Result<void, StoreTrouble>)> done;
    std::size_t at = 0;

    Slicer(StoreThread& on, std::vector<SeqRange> what, Seq size)
        : thread(on), ranges(std::move(what)), slice(size)
    {
    }

    void queue()
    {
        thread.run([self = shared_from_this()](TrailDb& trail) { self->readOne(trail); },
                   [self = shared_from_this()](const StoreTrouble& trouble) {
                       self->done(failure(trouble));
                   });
    }

    void readOne(TrailDb& trail)
    {
        if (at == ranges.size()) {
            done({});
            return;
        }
        SeqRange& range = ranges[at];
        const Seq last = std::min(range.last, range.first + slice - 1);
        std::vector<Entry> entries;
        const auto read = trail.read(range.first, last, [&](const Entry& entry) {
            entries.push_back(entry);
            return true;
        });
        if (!read) {
            done(read);
            return;
        }
        take(std::move(entries));
        range.first = last + 1;
        if (range.first > range.last)
            ++at;
        queue();
    }
};

}  // namespace

StoreThread::StoreThread(std::unique_ptr<TrailFiles> files, Settings settings, Report report)
    : m_files(std::move(files)), m_settings(std::move(settings)), m_report(std::move(report))
{
}

StoreThread::~StoreThread()
{
    {
        const std::lock_guard lock(m_mutex);
        m_stop = true;
    }
    m_wake.notify_all();
    m_changed.notify_all();
    if (m_keeper.joinable())
        m_keeper.join();
    if (m_watcher.joinable())
        m_watcher.join();
}

Result<Head, StoreTrouble> StoreThread::start()
{
    std::promise<Result<Head, StoreTrouble>> started;
    auto answer = started.get_future();
    m_keeper =
        std::thread([this, started = std::move(started)]() mutable { keep(std::move(started)); });
    auto opened = answer.get();
    if (opened)
        m_watcher = std::thread([this] { watch(); });
    return opened;
}

void StoreThread::record(std::vector<Event> events)
{
    if (events.empty())
        return;
    {
        const std::lock_guard lock(m_mutex);
        m_waiting += static_cast<std::int64_t>(events.size());
        m_since.push_back(std::chrono::steady_clock::now());
        m_queue.push_back(std::move(events));
    }
    m_wake.notify_one();
    m_changed.notify_all();
}

void StoreThread::call(StationId station)
{
    const std::lock_guard lock(m_mutex);
    m_settings.station = std::move(station);
}

void StoreThread::run(Job job, Refused refused)
{
    {
        const std::lock_guard lock(m_mutex);
        if (!m_stop)
            m_work.push_back({std::move(job), std::exchange(refused, {})});
    }
    m_wake.notify_one();
    if (refused)
        refused({StoreFault::InUse, 0});
}

void StoreThread::readSlices(std::vector<SeqRange> ranges, Seq slice,
                             std::function<void(std::vector<Entry>)> take,
                             std::function<void(Result<void, StoreTrouble>)> done)
{
    const auto slicer = std::make_shared<Slicer>(*this, std::move(ranges), slice);
    slicer->take = std::move(take);
    slicer->done = std::move(done);
    slicer->queue();
}

std::future<Result<void, StoreTrouble>> StoreThread::copyTo(std::filesystem::path target)
{
    return ask([target = std::move(target)](TrailDb& trail) { return trail.copyTo(target); });
}

bool StoreThread::flush(Millis within)
{
    std::unique_lock lock(m_mutex);
    m_changed.wait_for(lock, within, [this] {
        const bool refused = m_queue.empty() && m_state.health == RecordState::Health::NotRecorded;
        return m_waiting == 0 || refused || m_stop;
    });
    return m_waiting == 0;
}

RecordState StoreThread::state() const
{
    const std::lock_guard lock(m_mutex);
    return stateNow();
}

RecordState StoreThread::stateNow() const
{
    RecordState state = m_state;
    state.waiting = m_waiting;
    if (state.health == RecordState::Health::Recorded && m_behind)
        state.health = RecordState::Health::Behind;
    return state;
}

void StoreThread::tell()
{
    const std::lock_guard telling(m_telling);
    const RecordState now = state();
    if (now == m_told)
        return;
    m_told = now;
    if (m_report)
        m_report(now);
}

// --- the store's thread ---

void StoreThread::keep(std::promise<Result<Head, StoreTrouble>> started)
{
    Failover failover(*m_files, m_settings.station);
    if (const auto opened = failover.start(); !opened) {
        started.set_value(failure(opened.error()));
        refuseRest();
        return;
    }
    settle(failover, Next::Retry);
    started.set_value(failover.trail()->head());
    tell();
    std::unique_lock lock(m_mutex);
    for (Next todo = next(lock); todo != Next::Stop; todo = next(lock)) {
        lock.unlock();
        if (todo == Next::Store)
            storeQueued(failover);
        else if (todo == Next::Retry)
            failover.retry();
        else if (todo == Next::Work)
            workOnce(failover);
        else if (TrailDb* const trail = databaseOf(failover))
            trail->tidy(kTidyPages);
        if (todo == Next::Store || todo == Next::Retry) {
            settle(failover, todo);
            tell();
        }
        lock.lock();
        m_untidy = todo == Next::Store || (m_untidy && todo != Next::Tidy);
    }
    lock.unlock();
    refuseRest();
}

StoreThread::Next StoreThread::next(std::unique_lock<std::mutex>& lock)
{
    for (;;) {
        const Time now = std::chrono::steady_clock::now();
        if (!m_queue.empty())
            return Next::Store;
        if (m_stop)
            return Next::Stop;
        if (m_wantsRetry && now >= m_retryAt)
            return Next::Retry;
        if (!m_work.empty())
            return Next::Work;
        if (m_wantsRetry)
            m_wake.wait_until(lock, m_retryAt);
        else if (!m_untidy)
            m_wake.wait(lock);
        else if (m_wake.wait_for(lock, m_settings.idle) == std::cv_status::timeout)
            return Next::Tidy;
    }
}

void StoreThread::storeQueued(Failover& failover)
{
    {
        const std::lock_guard lock(m_mutex);
        failover.call(m_settings.station);
        for (auto& batch : m_queue)
            failover.take(std::move(batch));
        m_queue.clear();
    }
    failover.store();
}

// Takes over what the failover came to: how much is durable, and when to try again.
void StoreThread::settle(const Failover& failover, Next after)
{
    {
        const std::lock_guard lock(m_mutex);
        m_state = failover.state();
        const std::size_t left = failover.waitingBatches() + m_queue.size();
        while (m_since.size() > left)
            m_since.pop_front();
        m_waiting = m_state.waiting;
        for (const auto& batch : m_queue)
            m_waiting += static_cast<std::int64_t>(batch.size());
        m_behind = m_behind && !m_since.empty() &&
                   std::chrono::steady_clock::now() - m_since.front() > m_settings.patience;
        // Taps that go to the spool do not put the next try off.
        if (failover.wantsRetry() && (!m_wantsRetry || after == Next::Retry))
            m_retryAt = std::chrono::steady_clock::now() + m_settings.retryEvery;
        m_wantsRetry = failover.wantsRetry();
    }
    m_changed.notify_all();
}

void StoreThread::workOnce(Failover& failover)
{
    Work work;
    {
        const std::lock_guard lock(m_mutex);
        work = std::move(m_work.front());
        m_work.pop_front();
    }
    if (TrailDb* const trail = databaseOf(failover))
        work.job(*trail);
    else if (work.refused)
        work.refused(failover.state().trouble);
}

void StoreThread::refuseRest()
{
    std::deque<Work> rest;
    {
        const std::lock_guard lock(m_mutex);
        m_stop = true;
        rest.swap(m_work);
    }
    m_changed.notify_all();
    for (const Work& work : rest) {
        if (work.refused)
            work.refused({StoreFault::InUse, 0});
    }
}

// --- the watch: a blocked disk blocks the store's thread, so another one says that it is behind
// ---

void StoreThread::watch()
{
    std::unique_lock lock(m_mutex);
    while (!m_stop) {
        if (m_since.empty() || m_behind) {
            m_changed.wait(lock);
            continue;
        }
        const Time due = m_since.front() + m_settings.patience;
        if (std::chrono::steady_clock::now() < due) {
            m_changed.wait_until(lock, due);
            continue;
        }
        m_behind = true;
        lock.unlock();
        tell();
        lock.lock();
    }
}

}  // namespace bathside::store
