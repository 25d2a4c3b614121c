#pragma once

// The station's Clock: the kernel's boot clock and UTC as one consistent pair, with the id of this
// boot.
//
// `boot` never goes back from one call to the next, also between threads that order their calls.
// Callable from any thread; never fails.

#include <filesystem>
#include <optional>
#include <string_view>

#include "app/system/kernel_clock.h"
#include "core/base/clock.h"

namespace bathside::app {

/// What the kernel calls this boot. Where it does not say, an id made up for this process: every
/// start of the program then counts as a boot of its own, and times across it as uncertain.
[[nodiscard]] BootId readBootId(
    const std::filesystem::path& file = "/proc/sys/kernel/random/boot_id");

/// `xxxxxxxx-xxxx-xxxx-xxxx-xxxxxxxxxxxx` in hex digits, and nothing else (random(4)).
[[nodiscard]] std::optional<BootId> parseBootId(std::string_view text);

class BootClock final : public Clock {
public:
    explicit BootClock(ReadClock read = readKernelClock, BootId id = readBootId());

    [[nodiscard]] Stamp now() const override { return stampOf(readTogether(m_read)); }

    /// The same, with the monotonic clock's reading that input events are compared with.
    [[nodiscard]] ClockReading reading() const { return readTogether(m_read); }
    [[nodiscard]] Stamp stampOf(const ClockReading& reading) const;

private:
    ReadClock m_read;
    BootId m_id;
};

}  // namespace bathside::app
