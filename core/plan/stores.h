#pragma once

// What the stores hold for a day's bags, and what each bag takes from them.
//
// A bag is charged for ceil(volume / dose) doses of every component; all its ampoules of one
// component come from one lot, the usable one that expires first and still has enough (ties: lot
// name, then order of input). (Spec: planning, rule 1.)

#include <cstddef>
#include <optional>
#include <vector>

#include "core/plan/input.h"

namespace bathside::plan {

/// What one bag takes of one component.
struct Draw {
    std::size_t component = 0;  // in order of the recipe
    std::size_t lot = 0;        // in order of the component's input
    Count ampoules = 0;
    friend bool operator==(const Draw&, const Draw&) = default;
};

/// How much is left of everything: bags by size, then ampoules by lot.
using Level = std::vector<Count>;

inline constexpr Count kUnlimited = std::int64_t{1} << 60;

class Stores {
public:
    struct Size {
        MicroLitres volume;
        Count charged = 0;  // doses of every component
    };
    struct UsableLot {
        std::size_t lot = 0;  // in order of the component's input
        Count doses = 1;
        std::size_t at = 0;  // its place in a level
    };

    explicit Stores(const DayInput& input);

    /// Larger first; entries of one volume are one size.
    [[nodiscard]] const std::vector<Size>& sizes() const { return m_sizes; }
    /// Usable lots of each component, in the order in which they are taken.
    [[nodiscard]] const std::vector<std::vector<UsableLot>>& lots() const { return m_lots; }
    [[nodiscard]] const Level& full() const { return m_full; }

    /// Ampoules of `lot` that a bag of that size takes.
    [[nodiscard]] Count ampoules(std::size_t size, const UsableLot& lot) const;
    /// The lot that a bag of that size takes of that component; none: no lot has enough.
    [[nodiscard]] const UsableLot* lotFor(const Level& level, std::size_t size,
                                          std::size_t component) const;
    /// Doses opened for one bag, all components; none: it cannot be made.
    [[nodiscard]] std::optional<Count> dosesOpened(const Level& level, std::size_t size) const;
    /// The fewest doses that a bag of that size can open from this level on, whatever is taken
    /// before it; none: it can never be made.
    [[nodiscard]] std::optional<Count> leastDoses(const Level& level, std::size_t size) const;
    /// One draw a component; the bag must be one that can be made.
    [[nodiscard]] std::vector<Draw> draws(const Level& level, std::size_t size) const;
    /// The bag must be one that can be made.
    void take(Level& level, std::size_t size) const;

private:
    void addSizes(const DayInput& input);
    [[nodiscard]] std::optional<Count> leastDoses(const Level& level, std::size_t size,
                                                  std::size_t component) const;
    void addLots(const Component& component, std::chrono::sys_days day);

    std::vector<Size> m_sizes;
    std::vector<std::vector<UsableLot>> m_lots;
    Level m_full;
};

}  // namespace bathside::plan
