#pragma once

// Who works here and who may do what: a fold over the trail, and the one table of rights.
//
// While nobody is listed everybody may do everything, so that a site can begin and an old trail
// still reads. Rights are asked for in `decide`, never in a widget. (Spec: the job, 1 and 2.7.)

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/time.h"
#include "core/facts/event.h"

namespace bathside {

struct Member {
    PersonId id;  // initials
    std::string name;
    Role role{};
    bool departed = false;
    bool hasPin = false;
    int refused = 0;  // PINs in a row that were not theirs
    std::optional<Stamp> lastRefused;
};

/// What not everybody may do.
enum class Act : std::uint8_t {
    WorkAtBench,  // be on duty
    Judge,        // review a deviation, dispose of a bag, allow or release a lot, comment a note
    Approve,      // a card, a person, a baseline
    Sign,
};
template <>
struct Names<Act> {
    static constexpr std::array<std::string_view, 4> all{"work at the bench", "judge", "approve",
                                                         "sign"};
};

struct People {
    std::map<PersonId, Member> members;

    [[nodiscard]] bool areListed() const noexcept { return !members.empty(); }
    /// Null: not listed.
    [[nodiscard]] const Member* find(const PersonId& id) const;
};

[[nodiscard]] bool may(Role role, Act act);
/// True for everybody while nobody is listed; never for who has left or is not on the list.
[[nodiscard]] bool may(const People& people, const PersonId& person, Act act);

void evolve(People& people, const Event& event);

}  // namespace bathside
