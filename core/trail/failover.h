#pragma once

// Gets events into the trail, and where the trail fails, into a spool, so that nothing is lost and
// nothing is called recorded that is not.
//
// An append that fails ends the use of its handle. What was not acknowledged goes, under its own
// seqs, into a fresh spool file that continues the chain from the last acknowledged entry; if no
// spool takes it either, it stays in memory. A retry opens the trail afresh, re-reads its end,
// brings in what is not there yet (each under a new seq that names the spool's), and keeps the
// spool. It makes no events of its own: the service does, from `state()`. No clock, no thread: who
// owns it calls `store` and `retry`. (Spec: the trail, faults.)

#include <deque>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "core/trail/ports.h"

namespace bathside {

struct Spool {
    std::string name;
    Head after;  // what its first entry follows
    std::unique_ptr<TrailStore> store;
};

/// The files a recorder writes to. Every opening gives a fresh handle.
class TrailFiles {
public:
    TrailFiles() = default;
    TrailFiles(const TrailFiles&) = delete;
    TrailFiles& operator=(const TrailFiles&) = delete;
    virtual ~TrailFiles() = default;

    /// The trail with its end re-read; what a crash or a failed sync left unsynced is durable
    /// again.
    [[nodiscard]] virtual Result<std::unique_ptr<TrailStore>, StoreTrouble> openTrail() = 0;
    /// A new file, in the first place that takes it.
    [[nodiscard]] virtual Result<Spool, StoreTrouble> makeSpool(const Head& after) = 0;
    /// Those that were not merged yet, in the order they were made.
    [[nodiscard]] virtual std::vector<std::string> unmerged() = 0;
    [[nodiscard]] virtual Result<Spool, StoreTrouble> openSpool(const std::string& name) = 0;
    /// Keeps the file under a name that says so. It is closed.
    virtual void markMerged(const std::string& name) = 0;
};

class Failover {
public:
    Failover(TrailFiles& files, StationId station) : m_files(files), m_station(std::move(station))
    {
    }

    /// Opens the trail and merges what spools an earlier run left. One that cannot be read, or that
    /// continues another trail, is left as it is; the first is told in `state().trouble`.
    [[nodiscard]] Result<void, StoreTrouble> start();

    /// What the station is called in what is taken from now on.
    void call(StationId station) { m_station = std::move(station); }
    void take(std::vector<Event> batch);
    /// Stores what waits, as far as trail or spool take it; takes as long as the disk does.
    void store();
    /// Tries a failed trail again, and if it still fails, the spool.
    void retry();

    [[nodiscard]] bool wantsRetry() const noexcept { return !m_trail || m_stuck; }
    [[nodiscard]] RecordState state() const;
    [[nodiscard]] std::size_t waitingBatches() const noexcept { return m_waiting.size(); }
    /// None while the trail is closed after a failure.
    [[nodiscard]] TrailStore* trail() const noexcept { return m_trail.get(); }

private:
    struct Batch {
        StationId station;
        std::vector<Event> events;
    };

    [[nodiscard]] std::vector<Entry> nextGroup(const Head& head, std::size_t& batches) const;
    [[nodiscard]] bool fallBack(const StoreTrouble& trouble);
    [[nodiscard]] bool openFreshSpool();
    [[nodiscard]] Result<void, StoreTrouble> reopen();
    [[nodiscard]] Result<void, StoreTrouble> mergeFound(TrailStore& trail);
    [[nodiscard]] Result<void, StoreTrouble> dropWhatIsThere(const TrailStore& trail);
    void noteMerged(std::int64_t count);

    TrailFiles& m_files;
    StationId m_station;
    std::unique_ptr<TrailStore> m_trail;
    std::unique_ptr<TrailStore> m_spool;
    std::deque<Batch> m_waiting;
    std::vector<Entry> m_spooled;           // acknowledged by a spool and not by the trail
    std::vector<std::string> m_spoolNames;  // of this outage
    Head m_head;                            // the last acknowledged entry, wherever
    Head m_trailHead;                       // the last one acknowledged by the trail
    bool m_stuck = false;                   // nothing takes what waits, until the next retry
    RecordState m_told;                     // counts and the last trouble
};

}  // namespace bathside
