#pragma once

// What one bag does on one line: how many birds it serves, from when to when.
//
// A bag serves until it is empty, its time is up or the line's birds are done; it goes on when the
// line is free, or at the end of the next break where no more than the longest idle time is given
// up. (Spec: planning, rules 2 to 4, and planning again.)

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "core/plan/line_clock.h"

namespace bathside::plan {

/// One bag's time on the line.
struct Turn {
    DayTime firstBird{};
    DayTime lastBird{};
    Count birds = 0;
    Millis idle{};  // working time given up before it
    friend bool operator==(const Turn&, const Turn&) = default;
};

/// A bag that is there already: when it can go on, and before when its last bird must be.
struct ReadyBag {
    MadeBag bag;
    DayTime ready{};
    DayTime end{};
    bool hangs = false;
};

/// The turns a bag may have, earlier first bird first; none where it would serve no bird.
class Turns {
public:
    void add(const Turn& turn) { m_turns.at(m_count++) = turn; }
    [[nodiscard]] const Turn* begin() const { return m_turns.data(); }
    [[nodiscard]] const Turn* end() const { return m_turns.data() + m_count; }

private:
    std::array<Turn, 2> m_turns{};
    std::size_t m_count = 0;
};

/// A line's first bag loses what its tubes take up.
enum class Tubes : std::uint8_t { Empty, Full };

class LineRules {
public:
    LineRules(const DayInput& input, const Line& line);

    [[nodiscard]] const LineClock& clock() const { return m_clock; }
    [[nodiscard]] const std::vector<ReadyBag>& ready() const { return m_ready; }
    [[nodiscard]] Count birdsToDo() const { return m_birds; }
    /// When the line's first bag could go on.
    [[nodiscard]] DayTime start() const { return m_start; }
    [[nodiscard]] Millis changeover() const { return m_changeover; }
    /// From a new bag's first bird to the time before which its last must be.
    [[nodiscard]] Millis life() const { return m_life; }
    /// The first bird of a new bag cannot be earlier, because its pull has to be made.
    [[nodiscard]] DayTime firstNew(DayTime free) const;

    /// Birds in `left` of a bag.
    [[nodiscard]] Count birdsIn(MicroLitres left, Tubes tubes) const;
    /// The most birds that a new bag serves where no break is.
    [[nodiscard]] Count mostBirds(MicroLitres volume, Tubes tubes) const;
    /// Of so many birds, those that the ready bags from the nth on cannot serve.
    [[nodiscard]] Count birdsBeyondReady(std::size_t first, Count toDo) const;
    /// With so many birds still to do.
    [[nodiscard]] Tubes tubes(Count toDo) const { return toDo < m_birds ? Tubes::Full : m_tubes; }

    /// For a line that is free at `free` with `toDo` birds left.
    [[nodiscard]] Turns newBag(MicroLitres volume, DayTime free, Count toDo) const;
    [[nodiscard]] Turns readyBag(const ReadyBag& bag, DayTime free, Count toDo) const;

private:
    void readReady(const DayInput& input, const Line& line);
    [[nodiscard]] Turn turn(DayTime firstBird, DayTime end, Count atMost) const;
    template <typename EndOf>
    [[nodiscard]] Turns turnsFrom(DayTime atOnce, std::optional<DayTime> later, Count atMost,
                                  EndOf endOf) const;
    /// When the bag may go on, if not at once: at the end of the next break.
    [[nodiscard]] std::optional<DayTime> afterNextBreak(DayTime free) const;

    LineClock m_clock;
    std::vector<ReadyBag> m_ready;
    Count m_birds;
    DayTime m_start;
    Millis m_changeover;
    Millis m_longestIdle;
    Millis m_life;
    MicroLitres m_dose;
    MicroLitres m_residual;
    MicroLitres m_prime;
    std::optional<DayTime> m_firstNew;
    Tubes m_tubes;  // at the beginning
};

}  // namespace bathside::plan
