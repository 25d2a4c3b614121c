#pragma once

// A slow thermometer read on a thread of its own, behind the port that answers at once.
//
// The thread calls `take` over and over, `every` apart from one end to the next begin, and stamps
// what it gives with the clock's instant just after. What is waiting is handed out oldest first; if
// nobody polls, the oldest go. Destroying it waits for the `take` that is running.

#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <thread>
#include <vector>

#include "app/system/w1_bus.h"
#include "core/base/clock.h"

namespace bathside::app {

class BackgroundSource final : public ReadingSource {
public:
    static constexpr std::size_t kMostWaiting = 1'000;
    using Take = std::function<std::vector<ProbeValue>()>;

    /// `clock` outlives this.
    BackgroundSource(Take take, Millis every, const Clock& clock);

    [[nodiscard]] std::optional<RawReading> poll(const Stamp& now) override;

private:
    void run(const std::stop_token& stop);
    void put(std::vector<ProbeValue> values);

    Take m_take;
    Millis m_every;
    const Clock& m_clock;
    std::mutex m_mutex;
    std::condition_variable_any m_wake;
    std::deque<RawReading> m_waiting;
    std::jthread m_thread;  // last: it uses all of the above
};

}  // namespace bathside::app
