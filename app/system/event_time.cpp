#include "app/system/event_time.h"

namespace bathside::app {
namespace {

// How long before `monotonic` the event was; below zero: after it. Only the low 32 bits of both
// count, so that the wrap between them does not matter.
Micros ageOf(std::uint64_t eventMs, Micros monotonic)
{
    const auto now = std::chrono::floor<Millis>(monotonic);
    const auto apart = static_cast<std::int32_t>(static_cast<std::uint32_t>(now.count()) -
                                                 static_cast<std::uint32_t>(eventMs));
    return Millis(apart) + (monotonic - now);
}

}  // namespace

InputInstant EventTime::instantOf(std::uint64_t eventMs) const
{
    ClockReading instant = m_clock.reading();
    const Micros age = ageOf(eventMs, instant.monotonic);
    const bool plausible = eventMs != 0 && age >= Micros::zero() && age <= kOldest;
    if (plausible) {
        instant.boot -= age;
        instant.wall -= age;
    }
    return {.at = m_clock.stampOf(instant), .byReceipt = !plausible};
}

}  // namespace bathside::app
