#pragma once

// What the bench would do next: the one big button, the pace, and what has to be asked afterwards.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/bench/state.h"

namespace bathside {

enum class NextDeed : std::uint8_t {
    OpenShift,
    SetUp,
    StartBag,
    Inspect,
    DrawDiluent,
    TakeOut,
    MoveOn,
    Mix,
    Hang,
    Wait,
};

/// The next thing a person will have done, and for which ampoules.
struct Next {
    NextDeed deed = NextDeed::Wait;
    Step step{};                // for MoveOn
    std::vector<int> ampoules;  // for MoveOn: all that can go
    std::optional<BagId> bag;   // for bag deeds
};
[[nodiscard]] Next next(const Bench& bench);

/// The step that comes next for one ampoule; none when it is in a bag or lost.
[[nodiscard]] std::optional<Step> nextStep(const Ampoule& ampoule);

/// Handling time per ampoule: the median of this shift's own, from three on, else the card's.
[[nodiscard]] Millis handling(const Bench& bench);

struct Pace {
    int together = 1;  // how many may go in at once and each still be in time
    Millis stagger{};  // else this far apart, in whole seconds; 0 when they fit
};
/// For `n` ampoules at this handling time, by the card in force.
[[nodiscard]] Pace pace(const Bench& bench, int n);

/// How the cue goes by what the pulls of the shifts before say of the time to slush; null: by the
/// card alone, as they say too little, or are of other ampoules than the card's.
[[nodiscard]] const SlushScale* learnedScale(const Bench& bench, const Card& card);

/// When to call for this ampoule: the card's heads-up, scaled by the thaw model to the water it
/// went into where that is known and in the card's range, and moved by what the pulls of the shifts
/// before say; never so late that handling it would pass the limit, and earlier where those before
/// it need the time.
[[nodiscard]] Millis thawCue(const Bench& bench, const Ampoule& ampoule);

enum class QuestionKind : std::uint8_t {
    WhyLate,
    ThawedShort,
    WhichBroke,
    AnyoneHurt,
    WaterChanged,
    WhichAmpoule  // was it that a lot was scanned of
};
inline constexpr std::string_view kNoneOfThem = "none";  // of the pull's ampoules

struct Question {
    std::string id;
    QuestionKind kind{};
    Subject subject;
    LimitName limit{};                 // for WhyLate
    std::vector<std::string> choices;  // words of the trail; ui/text translates the fixed ones
    LotId lot{};                       // for WhichAmpoule: as scanned
    std::optional<ComponentId> of{};   // and what it is of, where the stores know it
};
/// What has to be explained and is not yet, oldest first. Ask none of it within the critical
/// window.
[[nodiscard]] std::vector<Question> questions(const Bench& bench);
/// That, and then what each lot was on that was scanned within a window, where the record cannot
/// tell or says otherwise.
[[nodiscard]] std::vector<Question> questions(const State& state);

/// Birds the bag has served on its line, and what is left of its volume by the card's dose.
[[nodiscard]] std::int64_t birdsServed(const Bench& bench, const Bag& bag);
[[nodiscard]] MicroLitres volumeLeft(const Bench& bench, const Bag& bag);

}  // namespace bathside
