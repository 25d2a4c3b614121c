#pragma once

// Whom and what a fact is about, read from its members: what the day's filter goes by. Pure.

#include <optional>
#include <set>
#include <string>

#include "core/facts/facts.h"

namespace bathside::ui {

/// The big parts of a day's record.
enum class Group : std::uint8_t {
    All,
    Ampoules,
    Bags,
    Lines,
    Bath,
    Shift,
    Alarms,
    Deviations,  // and everything that was corrected or taken back
    Station,
    Stores,
    People,
};

/// By its kind; `Station` for a kind that is not known.
[[nodiscard]] Group groupOf(std::string_view kind);

struct About {
    std::set<std::string> persons;
    std::set<std::string> bags;
    std::set<std::string> lots;
    std::optional<AmpouleRef> ampoule;
    std::set<Seq> entries;  // that it corrects, takes back, follows from, reviews, comments, signs
    bool mends = false;     // it corrects or takes back
    bool undoes = false;    // it takes back
};

[[nodiscard]] About aboutOf(const Fact& fact);

}  // namespace bathside::ui
