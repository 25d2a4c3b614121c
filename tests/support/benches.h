#pragma once

// Benches built by hand, fact by fact, without the rules that would fold them from events.
//
// Instants are given as time since the shift's opening, which lies one hour after the machine's
// start. What has no word here is set on `bench` itself.

#include <memory>
#include <optional>
#include <string>

#include "core/bench/bench.h"
#include "tests/support/cards.h"

namespace bathside::test {

inline constexpr BootId kThisBoot{1};
inline constexpr BootId kLastBoot{2};
inline constexpr BootTime kOpening = std::chrono::hours(1);

/// Both clocks, so long after the opening (2026-03-05T06:00:00Z); before it where below zero.
[[nodiscard]] Stamp at(Micros time);
/// The same instant as a boot before this one stamped it: its boot clock tells nothing now.
[[nodiscard]] Stamp inLastBoot(Micros time);
[[nodiscard]] Moment momentAt(Micros time);

class BenchMaker {
public:
    /// A shift opened at 0, sound proven, nothing else.
    explicit BenchMaker(std::shared_ptr<const Card> card = defaultCard());

    BenchMaker& out(AmpouleRef ref, Micros time, const std::string& component = "serotype 3");
    BenchMaker& step(AmpouleRef ref, Step step, Micros time);
    BenchMaker& bagged(AmpouleRef ref, const std::string& bag, Micros time);
    BenchMaker& lost(AmpouleRef ref, LossReason why, Micros time);
    BenchMaker& bathAtPull(int pull, std::optional<Verdict> verdict);
    BenchMaker& closePull(Micros time);

    BenchMaker& bag(const std::string& id, Micros time, std::shared_ptr<const Card> card = {});
    BenchMaker& mixed(const std::string& id, Micros firstDiluent, Micros time);

    BenchMaker& reading(Verdict verdict, Micros time);
    BenchMaker& faulty(ReadingFault fault, Micros time);
    BenchMaker& line(const std::string& id, Micros time, std::int64_t birds = 0);
    BenchMaker& raised(const std::string& alarm, Level level, const Stamp& since,
                       std::optional<Stamp> heard = {});

    [[nodiscard]] Ampoule& ampouleOf(AmpouleRef ref);
    [[nodiscard]] Bag& bagOf(const std::string& id);
    [[nodiscard]] Pull& pullOf(int no);

    Bench bench;
};

}  // namespace bathside::test
