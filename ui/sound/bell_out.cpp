#include "ui/sound/bell_out.h"

namespace bathside::ui {

namespace {

constexpr const char* kName = "bell";  // as the record names it

}  // namespace

BellOut::~BellOut() { close(); }

void BellOut::listen(std::function<void()> changed) { m_changed = std::move(changed); }

void BellOut::open(const std::string& /*device*/)
{
    close();
    if (!m_tone || !m_tone(0.0))
        return fail(OutFault::NoDevice);
    {
        const std::scoped_lock lock(m_mutex);
        m_mustStop = false;
        m_order = {};
        m_status = {.state = OutState::Ready, .device = kName};
    }
    m_thread = std::thread([this] { run(); });
}

void BellOut::close()
{
    {
        const std::scoped_lock lock(m_mutex);
        m_mustStop = true;
        m_status = {};
    }
    m_ordered.notify_all();
    if (m_thread.joinable())
        m_thread.join();
}

void BellOut::play(Voice voice, std::shared_ptr<const Burst> burst)
{
    give(voice, std::move(burst));
}

void BellOut::silence() { give(Voice::Alarm, nullptr); }

void BellOut::give(Voice voice, std::shared_ptr<const Burst> burst)
{
    {
        const std::scoped_lock lock(m_mutex);
        if (voice == Voice::Cue && m_isSounding && m_order.voice == Voice::Alarm)
            return;
        m_order = {std::move(burst), voice, m_order.number + 1};
    }
    m_ordered.notify_all();
}

OutStatus BellOut::status() const
{
    const std::scoped_lock lock(m_mutex);
    OutStatus status = m_status;
    // The kernel takes a tone at once and asks for nothing: it cannot stall.
    status.asked =
        static_cast<std::uint64_t>(std::chrono::steady_clock::now().time_since_epoch().count());
    return status;
}

void BellOut::run()
{
    std::uint64_t done = 0;
    std::unique_lock lock(m_mutex);
    while (!m_mustStop) {
        m_ordered.wait(lock, [&] { return m_mustStop || m_order.number != done; });
        const Order order = m_order;
        done = order.number;
        if (m_mustStop || !order.burst)
            continue;
        m_isSounding = true;
        lock.unlock();
        sound(order);
        lock.lock();
        m_isSounding = false;
    }
}

void BellOut::sound(const Order& order)
{
    const auto begin = std::chrono::steady_clock::now();
    for (const Pulse& pulse : order.burst->pulses) {
        if (!lasts(order, begin + pulse.start))
            return;
        tone(pulse.pitchHz);
        const bool goesOn = lasts(order, begin + pulse.start + pulse.length);
        tone(0.0);
        if (!goesOn)
            return;
    }
}

// Waits, unless something else is ordered meanwhile.
bool BellOut::lasts(const Order& order, std::chrono::steady_clock::time_point until)
{
    std::unique_lock lock(m_mutex);
    return !m_ordered.wait_until(lock, until,
                                 [&] { return m_mustStop || m_order.number != order.number; });
}

void BellOut::tone(double pitchHz)
{
    if (!m_tone(pitchHz))
        fail(OutFault::WriteLost);
}

void BellOut::fail(OutFault fault)
{
    {
        const std::scoped_lock lock(m_mutex);
        m_status = {.state = OutState::Failed, .fault = fault};
    }
    if (m_changed)
        m_changed();
}

}  // namespace bathside::ui
