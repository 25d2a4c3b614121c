#pragma once

// Plays a script through the one service on a simulated clock.
//
// Between entries the clock stops wherever an alarm can change, so that each is raised at its own
// instant; after the last entry it runs on for ten minutes. Playing stops at the first entry that
// goes back in time, is refused without being expected, or is taken although a refusal was.

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/base/simulated_clock.h"
#include "core/replay/script.h"
#include "core/station/station.h"

namespace bathside {

struct PlayFault {
    enum class Kind : std::uint8_t { GoesBack, Refused, NotRefused, UnknownEntry };
    int line = 0;
    std::string verb;
    Kind kind{};
    Refusal refusal;  // for Refused
};

class Player {
public:
    /// Notes the start of the station and adopts the card, at the first entry's time.
    Player(const std::vector<ScriptEntry>& entries, std::string cardDocument, Recorder& recorder,
           std::string version);

    /// The day is planned as it goes; `days` outlives the player.
    void planBy(const LocalDays& days) { m_station.planBy(days); }
    /// Every entry, then ten minutes more. What was played before a fault stands.
    [[nodiscard]] std::optional<PlayFault> play();
    /// One entry; its time is reached first.
    [[nodiscard]] std::optional<PlayFault> play(const ScriptEntry& entry);
    /// The clock runs on to `wall`, stopping wherever an alarm can change.
    void runTo(WallTime wall);

    [[nodiscard]] const Station& station() const { return m_station; }

private:
    void start(bool synchronised);
    std::optional<PlayFault> say(const ScriptEntry& entry, const Intent& intent,
                                 const PlaceId& place);
    std::optional<PlayFault> openShift(const ScriptEntry& entry, const OpenShiftEntry& open);
    std::optional<PlayFault> deliver(const ScriptEntry& entry, const DeliveryEntry& delivery);
    std::optional<PlayFault> correct(const ScriptEntry& entry, const CorrectEntry& correction);
    // people_entries.cpp
    std::optional<PlayFault> sign(const ScriptEntry& entry, const SignEntry& signing);
    std::optional<PlayFault> review(const ScriptEntry& entry, const ReviewEntry& reviewing);
    std::optional<PlayFault> comment(const ScriptEntry& entry, const CommentEntry& commenting);
    std::optional<PlayFault> approve(const ScriptEntry& entry, const ApproveEntry& approval);

    const std::vector<ScriptEntry>& m_entries;
    std::string m_version;
    SimulatedClock m_clock;
    Station m_station;
    std::map<std::string, Taken> m_taken;  // what the entries with an id became
};

/// The seqs of those facts of a tap that have the field, of one ampoule or (0) of all.
[[nodiscard]] std::vector<Seq> seqsToCorrect(const State& state, const Taken& taken, int ampoule,
                                             const std::string& field, const std::string& value);

}  // namespace bathside
