#pragma once

// A balance's line of text, and when a line is a shot.
//
// The weight is the number that g or mg follows, in either case, whatever else the line has; a
// point and a comma are both its decimal sign, as no balance groups digits, and a sign may stand
// apart from it. Without a unit in the line the only number counts, in the unit that is set. A line
// of no digit that says OL, or the same sign three times and nothing else, is an overload (from
// memory: what balances send). Weights in tenths of a mg. (Spec: checks, dose check.)

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/facts/names.h"

namespace bathside {

enum class WeightUnit : std::uint8_t { Grams, Milligrams };
template <>
struct Names<WeightUnit> {
    static constexpr std::array<std::string_view, 2> all{"g", "mg"};
};

/// How a line tells that the weight is still.
enum class Stillness : std::uint8_t {
    ThreeAlike,  // it does not: three lines in a row to 1 mg are; ours
    StillMark,   // by a text that it has then only
    MovingMark,  // by a text that it has else
    EachLine,    // it is sent then only: on a key of the balance, which is tared before each shot
};
template <>
struct Names<Stillness> {
    static constexpr std::array<std::string_view, 4> all{"three alike", "still mark", "moving mark",
                                                         "each line"};
};

struct WeightFormat {
    WeightUnit unit = WeightUnit::Grams;  // of a line that has none
    Stillness stillness = Stillness::ThreeAlike;
    std::string mark{};  // of StillMark and MovingMark
    friend bool operator==(const WeightFormat&, const WeightFormat&) = default;
};

enum class WeightFault : std::uint8_t {
    Empty,
    Unreadable,  // no number, or several and no unit beside one
    OtherUnit,   // a number with letters that are neither g nor mg
    Overload,    // also: below what it can weigh
};
template <>
struct Names<WeightFault> {
    static constexpr std::array<std::string_view, 4> all{"empty", "unreadable", "other unit",
                                                         "overload"};
};

struct Weighed {
    std::int64_t tenthsOfMilligram = 0;
    bool isStill = true;  // by its mark; always so where there is none
    friend bool operator==(const Weighed&, const Weighed&) = default;
};

[[nodiscard]] Result<Weighed, WeightFault> weightIn(const WeightFormat& format,
                                                    std::string_view line);

/// Tells shots from everything else that the pan sees: taring, emptying, a vessel put on.
///
/// A still weight that lies by a shot above the still one before it is a shot, so that shots may be
/// tared away or stay in the vessel. The first still one is only what the pan had on it, unless
/// each line is a shot.
class ShotWeigher {
public:
    /// A shot weighs a tenth of `expected` at least and twice it at most; ours.
    ShotWeigher(Stillness stillness, std::int64_t expected);

    /// The shot that this line completes, in tenths of a mg.
    [[nodiscard]] std::optional<std::int64_t> take(const Weighed& weight);
    /// A line that was no weight: what is counted in a row begins anew.
    void miss() { m_alike = 0; }

private:
    [[nodiscard]] bool settles(const Weighed& weight);
    [[nodiscard]] bool isShot(std::int64_t weight) const;

    Stillness m_stillness;
    std::int64_t m_least, m_most;
    std::optional<std::int64_t> m_before;  // still
    std::int64_t m_last = 0;               // still or not
    int m_alike = 0;
};

}  // namespace bathside
