#pragma once

// The thread that keeps the trail, so that a slow disk never holds a tap back.
//
// `record` queues and returns. Events are stored in their order, each tap whole; reads, copies and
// other work wait until nothing is to be stored, so they must come in short slices. A failed trail
// is tried again every `retryEvery`. Everything of SQLite lives and dies on this thread. Needs a
// QCoreApplication. (Spec: the trail; core/trail/failover.h says what happens on a failure.)

#include <chrono>
#include <condition_variable>
#include <deque>
#include <functional>
#include <future>
#include <mutex>
#include <thread>

#include "core/trail/failover.h"
#include "core/trail/store/queries.h"
#include "core/trail/store/trail_db.h"

namespace bathside::store {

class StoreThread final : public Recorder {
public:
    struct Settings {
        StationId station;
        Millis patience{1000};    // what has waited longer is Behind
        Millis retryEvery{5000};  // while the trail is failing
        Millis idle{1000};        // quiet time before the log is emptied into the file
    };

    /// Called on a thread of the store's, one call at a time, on each change; post it on, do not
    /// block, and do not destroy the StoreThread from it.
    using Report = std::function<void(const RecordState&)>;
    using Job = std::function<void(TrailDb&)>;
    using Refused = std::function<void(const StoreTrouble&)>;

    StoreThread(std::unique_ptr<TrailFiles> files, Settings settings, Report report);
    /// Stores what waits, as far as it can be stored, and ends. Jobs not begun are told `InUse`.
    ~StoreThread() override;

    /// Opens the trail on the thread and waits for it; spools of an earlier run are merged first.
    /// Before it returns nothing is stored. Once.
    [[nodiscard]] Result<Head, StoreTrouble> start();

    void record(std::vector<Event> events) override;
    /// What the station is called in what is recorded from now on; any thread.
    void call(StationId station);

    /// One slice of work on the store's thread, after all that is to be stored; `refused` instead
    /// where the trail is closed after a failure.
    void run(Job job, Refused refused = {});

    /// The same for work that answers: `ask` a function that returns a Result<T, StoreTrouble>.
    template <typename Question>
    [[nodiscard]] auto ask(Question question)
        -> std::future<std::invoke_result_t<Question, TrailDb&>>;

    /// Reads ranges in slices of so many entries; `take` and then `done` are called on the store's
    /// thread.
    void readSlices(std::vector<SeqRange> ranges, Seq slice,
                    std::function<void(std::vector<Entry>)> take,
                    std::function<void(Result<void, StoreTrouble>)> done);

    /// A consistent copy while the station runs; not in a critical window: what is tapped meanwhile
    /// waits.
    [[nodiscard]] std::future<Result<void, StoreTrouble>> copyTo(std::filesystem::path target);

    /// Waits until everything handed over is durable, or can not be stored now, or the time is up;
    /// whether it is durable.
    [[nodiscard]] bool flush(Millis within);

    [[nodiscard]] RecordState state() const;

private:
    using Time = std::chrono::steady_clock::time_point;
    struct Work {
        Job job;
        Refused refused;
    };
    enum class Next : std::uint8_t { Store, Retry, Work, Tidy, Stop };

    void keep(std::promise<Result<Head, StoreTrouble>> started);
    void watch();
    [[nodiscard]] Next next(std::unique_lock<std::mutex>& lock);
    void storeQueued(Failover& failover);
    void workOnce(Failover& failover);
    void refuseRest();
    void settle(const Failover& failover, Next after);
    void tell();
    [[nodiscard]] RecordState stateNow() const;  // with m_mutex held

    std::unique_ptr<TrailFiles> m_files;
    Settings m_settings;
    Report m_report;

    mutable std::mutex m_mutex;
    std::condition_variable m_wake;     // the store's thread: something to do
    std::condition_variable m_changed;  // the watch and `flush`: something was done
    std::deque<std::vector<Event>> m_queue;
    std::deque<Work> m_work;
    std::deque<Time> m_since;  // of each batch not durable yet, when it came
    std::int64_t m_waiting = 0;
    RecordState m_state;  // as the failover last gave it
    Time m_retryAt{};
    bool m_wantsRetry = false;
    bool m_untidy = false;
    bool m_behind = false;
    bool m_stop = false;

    std::mutex m_telling;
    RecordState m_told;
    std::thread m_keeper;
    std::thread m_watcher;
};

template <typename Question>
auto StoreThread::ask(Question question) -> std::future<std::invoke_result_t<Question, TrailDb&>>
{
    using Answer = std::invoke_result_t<Question, TrailDb&>;
    auto answer = std::make_shared<std::promise<Answer>>();
    auto future = answer->get_future();
    run([answer, question = std::move(question)](
            TrailDb& trail) mutable { answer->set_value(question(trail)); },
        [answer](const StoreTrouble& trouble) { answer->set_value(failure(trouble)); });
    return future;
}

}  // namespace bathside::store
