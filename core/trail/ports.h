#pragma once

// The trail's ports: what the rules need from whatever keeps the entries.

#include <cstdint>
#include <functional>
#include <span>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/facts/event.h"
#include "core/trail/entry.h"

namespace bathside {

/// Why the store would not, and the system's error number (0 where there is none).
struct StoreTrouble {
    StoreFault fault{};
    std::int64_t errorNumber = 0;
    friend bool operator==(const StoreTrouble&, const StoreTrouble&) = default;
};

/// A kept trail. One thread at a time.
class TrailStore {
public:
    TrailStore() = default;
    TrailStore(const TrailStore&) = delete;
    TrailStore& operator=(const TrailStore&) = delete;
    virtual ~TrailStore() = default;

    [[nodiscard]] virtual Head head() const = 0;

    /// Stores all of `entries` or none; they must continue the head, with their hashes. When it
    /// returns a value, they survive a power cut. `Unconfirmed`: they may or may not be there, and
    /// this store refuses all further work (`Unconfirmed` again).
    [[nodiscard]] virtual Result<void, StoreTrouble> append(std::span<const Entry> entries) = 0;

    /// Hands out the entries with from <= seq <= to in order until `take` returns false.
    [[nodiscard]] virtual Result<void, StoreTrouble> read(
        Seq from, Seq to, const std::function<bool(const Entry&)>& take) const = 0;
};

/// How far the record has come. The service makes one `store.failed` for each step of `failures`
/// and one `store.recovered` for each step of `merges`.
struct RecordState {
    enum class Health : std::uint8_t {
        Recorded,      // all is durable in the trail
        Behind,        // something has waited longer than a second
        NotConfirmed,  // the trail failed (`trouble`); going on in the spool
        NotRecorded,   // neither trail nor spool takes it: kept in memory
    };
    Health health = Health::Recorded;
    Seq recorded = 0;           // the last seq that is durable (trail or spool)
    std::int64_t waiting = 0;   // events not durable yet
    StoreTrouble trouble;       // of the last failure
    std::string spool;          // the spool file in use; empty: none
    std::int64_t failures = 0;  // failures of the trail since the start
    std::int64_t merges = 0;    // merges of spools into the trail since the start
    std::int64_t merged = 0;    // events that the last merge brought back
    std::string mergedSpool;    // the last spool file that was merged
    friend bool operator==(const RecordState&, const RecordState&) = default;
};

/// Where the service hands its events, in order; never blocks the caller.
class Recorder {
public:
    Recorder() = default;
    Recorder(const Recorder&) = delete;
    Recorder& operator=(const Recorder&) = delete;
    virtual ~Recorder() = default;

    /// One tap's events, to be stored all or none.
    virtual void record(std::vector<Event> events) = 0;
};

}  // namespace bathside
