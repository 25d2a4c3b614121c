#pragma once

// Instants and durations.
//
// A `Stamp` carries two clocks because neither alone is enough: `wall` is what a person reads and
// an export prints, but it can jump; `boot` (CLOCK_BOOTTIME) never goes back and counts through
// suspend, so durations and deadlines use it. The boot clock starts anew at each boot, which
// `bootId` tells apart.

#include <array>
#include <chrono>
#include <compare>
#include <cstdint>

namespace bathside {

using Micros = std::chrono::microseconds;
using Millis = std::chrono::milliseconds;

/// UTC, never local.
using WallTime = std::chrono::sys_time<Millis>;

/// Since boot, suspend included.
using BootTime = Micros;

using BootId = std::array<std::uint8_t, 16>;

struct Stamp {
    WallTime wall{};
    BootTime boot{};
    BootId bootId{};

    friend auto operator<=>(const Stamp&, const Stamp&) = default;
};

/// How long something took, and whether that can be relied on.
struct Elapsed {
    Micros time{};
    bool certain = true;  // false: taken from wall time, because the machine was started between
};

/// From `from` to `to`: by the boot clock within one boot, else by wall time, never below zero.
[[nodiscard]] Elapsed elapsed(const Stamp& from, const Stamp& to);

/// The machine was started between, and its clock was set back: nobody can tell how long it was.
[[nodiscard]] bool wentBackOverRestart(const Stamp& from, const Stamp& to);

/// `at` moved by `by` on both clocks.
[[nodiscard]] Stamp shifted(const Stamp& at, Micros by);

}  // namespace bathside
