#pragma once

// The procedure card: one versioned document per vaccine and site, from which every limit comes.
//
// A `Card` can only be made by `cardFrom` (read.h), so whoever holds one may rely on it: every
// limit is there, heads-up <= at <= overrun, words exist in every language it names. Numbers are
// whole: ms, µL, m°C, birds. Words, sort and source are the site's; the default card
// (resources/cards) marks each value as common practice or from memory. (Spec: the job, section 3.)

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/base/ids.h"
#include "core/base/time.h"
#include "core/base/units.h"
#include "core/card/heat_rules.h"
#include "core/card/live_cell_rules.h"
#include "core/facts/words.h"

namespace bathside {

/// The same words in several languages, by ISO 639-1 code. Always holds "en".
struct Words {
    std::map<std::string, std::string> byLanguage;

    /// In that language, else in English.
    [[nodiscard]] const std::string& in(
        const std::string& language) const;  // empty: no words at all
    friend bool operator==(const Words&, const Words&) = default;
};

enum class Sort : std::uint8_t {
    Limit,     // passing it is a deviation
    Reminder,  // passing it is an alarm and stands in the record as late
};
template <>
struct Names<Sort> {
    static constexpr std::array<std::string_view, 2> all{"limit", "reminder"};
};

enum class Severity : std::uint8_t { Minor, Major, Critical };
template <>
struct Names<Severity> {
    static constexpr std::array<std::string_view, 3> all{"minor", "major", "critical"};
};

/// Where an alarm stands on its way: three instants (or counts of birds); none: no such level. For
/// `NextPull` they are counted from the planned start, so that its heads-up is below zero.
template <typename Unit>
struct Thresholds {
    std::optional<Unit> headsUp;
    std::optional<Unit> at;
    std::optional<Unit> overrun;
    friend bool operator==(const Thresholds&, const Thresholds&) = default;
};

struct Limit {
    Sort sort = Sort::Limit;
    Severity severity = Severity::Major;
    Thresholds<Millis> time;  // for limits by verdict: overrun only, from the moment it is passed
    Thresholds<std::int64_t> birds;  // for limits counted in birds
    std::array<Words, 3> words;      // what to do, by level; empty where the level cannot occur
    std::string source;              // where the values come from, e.g. "common practice"

    [[nodiscard]] const Words& wordsAt(Level level) const
    {
        return words[static_cast<std::size_t>(level)];
    }
    friend bool operator==(const Limit&, const Limit&) = default;
};

/// One part of the recipe; its own exposure and thaw limits where they differ from the card's.
struct Component {
    ComponentId id;
    std::optional<Thresholds<Millis>> exposure;
    std::optional<Thresholds<Millis>> thaw;
    friend bool operator==(const Component&, const Component&) = default;
};

/// One line of the bench's set-up.
struct Check {
    CheckId id;
    Words words;
    bool blocking = false;  // open: a bag may start only with a recorded override
    friend bool operator==(const Check&, const Check&) = default;
};

/// The check that proves the sound; a card that has none leaves it unproven.
inline const CheckId kAlarmHeard{"alarm-heard"};

struct BathRules {
    MilliCelsius target;
    MilliCelsius tolerance;
    std::int64_t guardPercent = 100;  // guard band as a share of U; 0 is plain comparison
    Millis settling{};                // inside and steady this long: ready
    MilliCelsius lowest, highest;     // beyond: no bath at all, but a fault of the probe
    MilliCelsius fastest;             // per second: a faster change is a jump, not water
    MilliCelsius steady;              // per minute: moving less is stable
    friend bool operator==(const BathRules&, const BathRules&) = default;
};

/// What a shift's reckoning is held to. Optional on a card; the defaults are from memory.
struct StoreRules {
    std::int64_t ampoulesOff = 0;  // pieces that a count may differ by
    std::int64_t bagsOff = 0;
    std::int64_t consumablesOff = 5;
    std::int64_t dosesOffPercent = 5;
    std::int64_t volumeOffPercent = 5;
    std::int64_t nearExpiryDays = 30;
    MicroLitres primeLoss;  // of a line's first bag, to fill hoses and injector
    friend bool operator==(const StoreRules&, const StoreRules&) = default;
};

/// What a dose check is held to: a card's section `check_limits.dose`.
struct DoseCheckRules {
    std::int64_t systematicPerMille = 0;  // of the dose, either way
    std::int64_t randomPerMille = 0;      // of the mean
    std::optional<std::int64_t> density;  // of the diluent, kg/m³; none: water is weighed
    Words words;                          // what to do when it failed
    std::string source;
    friend bool operator==(const DoseCheckRules&, const DoseCheckRules&) = default;
};

/// What a vaccination check is held to: a card's section `check_limits.birds`.
struct BirdCheckRules {
    std::int64_t targetPerMille = 0;        // of the birds that are to have it well
    std::int64_t confidencePerMille = 950;  // of the bounds that the verdict goes by
    Words words;                            // what to do when the target is missed
    std::string source;
    friend bool operator==(const BirdCheckRules&, const BirdCheckRules&) = default;
};

/// Each optional on a card; none: what is usual (core/checks/check_limits.h).
struct CheckRules {
    std::optional<DoseCheckRules> dose;
    std::optional<BirdCheckRules> birds;
    friend bool operator==(const CheckRules&, const CheckRules&) = default;
};

/// What a day is planned by beside the limits. Optional on a card; the defaults are from memory.
struct PlanRules {
    Millis dilute = std::chrono::minutes(2);      // first ampoule in diluent → bag mixed
    Millis hang = std::chrono::minutes(3);        // mixed → first bird, at least
    Millis changeover = std::chrono::minutes(1);  // the line stands still between two bags
    Millis slack{};                               // kept free in every bag's window
    Millis longestIdle = std::chrono::minutes(10);
    Millis prepare = std::chrono::minutes(8);  // start of a bag → mixed
    MicroLitres residual;                      // of a bag, cannot be injected
    std::int64_t preparers = 1;
    std::int64_t dosesPerAmpoule = 2000;  // where the stores do not say
    friend bool operator==(const PlanRules&, const PlanRules&) = default;
};

/// A cause that a shift lead may give for a deviation. The record has its id, people its words.
struct CauseOnCard {
    std::string id;
    Words words;
    friend bool operator==(const CauseOnCard&, const CauseOnCard&) = default;
};

class Card {
public:
    struct Content {
        std::string name;
        std::int64_t version = 1;
        std::string site;
        std::vector<std::string> languages;  // every words of the card are there in each of them
        std::vector<Component> recipe;       // at least one
        std::array<Limit, kLimits> limits;
        BathRules bath;
        MilliCelsius diluentLow, diluentHigh;
        StoreRules stores;
        PlanRules plan;
        HeatRules heat;
        LiveCellRules liveCells;
        CheckRules checkRules;
        std::vector<Check> checks;
        std::vector<CauseOnCard> causes;      // of deviations; none: those of core/review/causes.h
        std::vector<MicroLitres> bagVolumes;  // offered at start, smallest first
        MicroLitres dose, syringe, diluentDrawn;
        int ampoulesPerPull = 3;
        Millis handling{};      // per ampoule, until learned from the log
        Millis shortestThaw{};  // sooner is asked about afterwards
        Millis sameTap{};       // same-place lock
        Millis hushInWindow{}, hushOutside{};
        Millis windowTail{};    // the critical window's last part, after the last ampoule
        Millis takeBackFree{};  // take back without a reason
        Millis pullSoon{};      // a pull counts as due this long before its planned start
        std::map<std::string, std::string>
            sources;  // where bath, diluent, make_up, taps and stores come from
        friend bool operator==(const Content&, const Content&) = default;
    };

    [[nodiscard]] const CardHash& hash() const noexcept { return m_hash; }
    [[nodiscard]] const std::string& document() const noexcept
    {
        return m_document;
    }  // canonical text
    [[nodiscard]] const Content& content() const noexcept { return m_content; }
    [[nodiscard]] const Limit& limit(LimitName name) const;

    /// The thresholds of exposure or thaw that hold for this component.
    [[nodiscard]] const Thresholds<Millis>& timesFor(LimitName name,
                                                     const ComponentId& component) const;

private:
    friend class CardReader;
    Card(Content content, std::string document, CardHash hash);

    Content m_content;
    std::string m_document;
    CardHash m_hash;
};

}  // namespace bathside
