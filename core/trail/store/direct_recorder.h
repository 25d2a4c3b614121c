#pragma once

// Stores each tap before `record` returns: for the command line and for tests, where waiting is
// wanted. What cannot be stored is kept and tried again with the next; `state()` says how it
// stands.

#include <functional>

#include "core/trail/failover.h"

namespace bathside::store {

class DirectRecorder final : public Recorder {
public:
    using Report = std::function<void(const RecordState&)>;

    DirectRecorder(TrailFiles& files, StationId station, Report report = {})
        : m_failover(files, std::move(station)), m_report(std::move(report))
    {
    }

    /// Opens the trail; before anything else.
    [[nodiscard]] Result<void, StoreTrouble> start() { return m_failover.start(); }

    void record(std::vector<Event> events) override
    {
        m_failover.take(std::move(events));
        if (m_failover.wantsRetry())
            m_failover.retry();
        else
            m_failover.store();
        if (m_report)
            m_report(m_failover.state());
    }

    [[nodiscard]] RecordState state() const { return m_failover.state(); }
    [[nodiscard]] TrailStore* trail() const noexcept { return m_failover.trail(); }

private:
    Failover m_failover;
    Report m_report;
};

}  // namespace bathside::store
