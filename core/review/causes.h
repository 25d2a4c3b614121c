#pragma once

// What a shift lead may say of a deviation: a short list of our own each, in the trail by its name;
// anything else in words of one's own.

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/facts/names.h"

namespace bathside {

enum class Cause : std::uint8_t {
    HandsNotReady,
    Stuck,  // ampoule frozen in, or the cane
    Interrupted,
    Tool,       // or the bath
    PlanTight,  // too many at once, too little time
    TapLate,    // it was done in time and tapped late
    Other
};
template <>
struct Names<Cause> {
    static constexpr std::array<std::string_view, 7> all{"hands not ready",
                                                         "ampoule stuck or frozen in",
                                                         "interrupted",
                                                         "tool or bath",
                                                         "plan too tight",
                                                         "tapped late",
                                                         "other"};
};

/// What was done so that it does not happen again.
enum class Remedy : std::uint8_t { None, ShownAgain, ToolMended, PlanChanged, MoreHands, Other };
template <>
struct Names<Remedy> {
    static constexpr std::array<std::string_view, 6> all{
        "none needed",  "shown again", "tool mended or replaced",
        "plan changed", "more hands",  "other"};
};

/// What becomes of the bag.
enum class Disposition : std::uint8_t { Use, UseWithNote, Discard };
template <>
struct Names<Disposition> {
    static constexpr std::array<std::string_view, 3> all{"use", "use with note", "discard"};
};

/// As the trail says it: "use", "use with note: the first line only".
[[nodiscard]] std::string textOf(Disposition disposition, const std::string& note);
/// "shown again; bag: use".
[[nodiscard]] std::string actionText(const std::string& remedy, const std::string& disposition);

}  // namespace bathside
