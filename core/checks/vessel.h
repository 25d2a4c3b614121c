#pragma once

// A cryogen vessel: litres by its dipstick, how fast it boils off, when it must be filled, whether
// its vacuum fails.
//
// Rate: Theil–Sen, the median slope of all pairs of readings between the same two fills, which one
// reading in four may spoil; interval by Sen's ranks (J. Am. Stat. Assoc. 63 (1968) 1379) with the
// variances of the stretches between fills added up, ties of litres not counted. Weeks that were
// good outvote days that are not, so the last two intervals between readings, and the last days,
// are looked at beside it. Time in days, volume in L; a positive rate is a loss. (Spec: checks,
// cryogen vessel.)

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/base/piecewise.h"
#include "core/base/quantiles.h"
#include "core/base/result.h"
#include "core/facts/names.h"

namespace bathside {

enum class DipstickFault : std::uint8_t { TooFew, NotRising };

/// The table of one vessel: mm that the dipstick shows and what is in then.
class Dipstick {
public:
    struct Row {
        double millimetres = 0;
        double litres = 0;
    };

    /// Two rows at least, rising in both.
    [[nodiscard]] static Result<Dipstick, DipstickFault> from(std::vector<Row> rows);

    /// None beyond the table.
    [[nodiscard]] std::optional<double> litresAt(double millimetres) const;
    [[nodiscard]] double fullest() const { return m_table.last().y; }
    /// How far two readings of one level may lie apart, in L: 5 mm where it has most to the mm;
    /// ours, no published value.
    [[nodiscard]] double error() const { return m_error; }

private:
    Dipstick(Piecewise table, double error) : m_table(std::move(table)), m_error(error) {}

    Piecewise m_table;
    double m_error;
};

struct LevelReading {
    double day = 0;  // since any fixed instant, rising
    double litres = 0;
    bool afterFill = false;  // filled between the reading before and this one
};

struct Evaporation {
    double rate = 0;                   // L/day
    std::optional<Interval> interval;  // none with too few readings for this confidence
    std::size_t pairs = 0;
};

/// None without two readings between the same two fills.
[[nodiscard]] std::optional<Evaporation> evaporationOf(std::span<const LevelReading> log,
                                                       double confidence);

/// A level that rose by more than `error` was filled, whether that was said or not.
[[nodiscard]] std::vector<LevelReading> withFillsSeen(std::vector<LevelReading> log, double error);

/// The loss of late: none unless the last interval between two readings lost more than at `alarm`
/// (L/day), by more than `error` (L), so that it was not the hand that read. Where the one before
/// it did so, too, both together, with the interval from the lesser to the greater: a single
/// reading that is mistaken can spoil but one. Without it, that reading has yet to be confirmed.
///
/// An interval is the shortest of 20 h (ours) or of so great a loss, and never goes over a fill.
[[nodiscard]] std::optional<Evaporation> lossOfLate(std::span<const LevelReading> log, double alarm,
                                                    double error);

/// The loss of the last 8 to 14 readings, where it is too high beyond doubt: none unless the whole
/// of Sen's interval at 99.8 % lies above `alarm`. Tells a loss that has doubled in some eight
/// days, where `lossOfLate` is held up by the dipstick's error and the median by the weeks before.
/// Ranks are free of how readings scatter: at a loss of just `alarm` eight readings mislead once
/// in 5,000 (8 of 8! orders have at most one pair the wrong way round).
[[nodiscard]] std::optional<Evaporation> lossOfDays(std::span<const LevelReading> log,
                                                    double alarm);

struct Refill {
    double days = 0;  // from now; 0 where it is at the minimum already
    double earliest = 0;
    std::optional<double> latest;  // none: with the rate's lower end it never gets there
};

/// When the level reaches `minimum`; none where the vessel does not lose anything.
[[nodiscard]] std::optional<Refill> refillIn(const Evaporation& evaporation, double litres,
                                             double minimum);

enum class Vacuum : std::uint8_t {
    Sound,
    Suspect,  // the rate is too high, its interval reaches down to what would do
    Failing,  // the whole interval is too high
};

template <>
struct Names<Vacuum> {
    static constexpr std::array<std::string_view, 3> all{"sound", "suspect", "failing"};
};

/// Against `alarm`, the rate in L/day from which it is too high; none where no loss is shown.
[[nodiscard]] std::optional<Vacuum> judged(const Evaporation& evaporation, double alarm);

}  // namespace bathside
