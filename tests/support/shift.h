#pragma once

// A shift at the bench for tests: one station on a simulated clock, its events kept in memory.
//
// Times are seconds since the start (2026-03-05T06:00:00Z); `at` runs the clock there, stopping
// wherever an alarm can change, as the program does.

#include <initializer_list>
#include <string>
#include <vector>

#include "core/base/simulated_clock.h"
#include "core/station/station.h"
#include "tests/support/cards.h"

namespace bathside::test {

class MemoryRecorder final : public Recorder {
public:
    void record(std::vector<Event> batch) override
    {
        events.insert(events.end(), batch.begin(), batch.end());
    }

    std::vector<Event> events;
};

class BenchShift {
public:
    /// Station started and the card adopted; nothing else.
    explicit BenchShift(const std::shared_ptr<const Card>& card = defaultCard());

    /// Shift opened by AB in Europe/Amsterdam, every check passed.
    BenchShift& open();
    /// A bag of 400 mL with its diluent inspected and drawn.
    BenchShift& readyBag(const std::string& bag);
    /// Ampoules of these components in the bag, mixed, from `start` on, every limit kept.
    BenchShift& madeUp(const std::string& bag, double start);

    BenchShift& at(double seconds);
    /// Said on a place of its own, and taken; the test fails otherwise.
    Taken say(const Intent& intent);
    Result<Taken, Refusal> attempt(const Intent& intent, const std::string& place = {});
    /// The code of the refusal; the test fails when it was taken.
    RefusalCode refused(const Intent& intent);

    [[nodiscard]] const Bench& bench() const { return station.bench(); }
    [[nodiscard]] std::vector<std::string> kindsFrom(Seq seq) const;
    [[nodiscard]] std::string text(double seconds) const;  // that instant in RFC 3339
    template <typename F>
    [[nodiscard]] std::vector<F> all() const
    {
        std::vector<F> found;
        for (const Event& event : recorder.events) {
            if (const F* fact = std::get_if<F>(&event.fact))
                found.push_back(*fact);
        }
        return found;
    }

    SimulatedClock clock;
    MemoryRecorder recorder;
    Station station;

private:
    int m_places = 0;
};

[[nodiscard]] TakeOut out(std::initializer_list<int> numbers);
[[nodiscard]] MoveOn moved(Step step, std::initializer_list<int> numbers = {});

}  // namespace bathside::test
