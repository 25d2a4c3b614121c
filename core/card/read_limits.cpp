#include "core/card/read_limits.h"

#include <optional>
#include <utility>

namespace bathside {
namespace {

constexpr std::int64_t kDayMs = 24LL * 60 * 60 * 1000;
constexpr std::int64_t kMostBirds = 10'000'000;
constexpr std::size_t kLongestWords = 80;

// What a limit is measured by.
enum class Measure : std::uint8_t {
    Time,
    Birds,
    TimeOrBirds,
    Start,           // ms from a planned instant, before it below zero
    Verdict,         // of one reading: undecided is its heads-up, outside its limit
    LastingVerdict,  // the same, and how long it has lasted
    Window,          // a value outside its window: no heads-up
};

struct Nature {
    Measure measure;
    bool mayBeLimit;  // the station can judge it as a deviation
};

Nature natureOf(LimitName name)
{
    switch (name) {
        case LimitName::Exposure:
        case LimitName::Thaw:
        case LimitName::InUse:
        case LimitName::Swirl:
            return {Measure::Time, true};
        case LimitName::BathAtPull:
            return {Measure::Verdict, true};
        case LimitName::Diluent:
            return {Measure::Window, true};
        case LimitName::BathBetweenPulls:
            return {Measure::LastingVerdict, false};
        case LimitName::Reading:
            return {Measure::Time, false};
        case LimitName::Needle:
            return {Measure::Birds, true};
        case LimitName::DoseCheck:
            return {Measure::TimeOrBirds, true};
        case LimitName::NextPull:
            return {Measure::Start, false};
    }
    return {};
}

std::string keyOf(std::string_view level, std::string_view unit)
{
    return std::string(level) + "_" + std::string(unit);
}

struct Ranges {
    WholeRange headsUp, at, overrun;
};

Ranges ranges(std::string_view unit, std::int64_t most)
{
    return {{1, most, unit}, {1, most, unit}, {1, most, unit}};
}

template <typename Unit>
std::optional<Unit> threshold(JsonObject& object, const std::string& key, const WholeRange& range)
{
    const auto value = object.wholeIfAny(key, range);
    return value ? std::optional(Unit(*value)) : std::nullopt;
}

template <typename Unit>
bool isAfter(const std::optional<Unit>& earlier, const std::optional<Unit>& later)
{
    return earlier && later && *earlier > *later;
}

template <typename Unit>
Thresholds<Unit> thresholdsFrom(JsonObject& object, const Ranges& in, std::string_view suffix)
{
    const std::string at = keyOf("at", suffix);
    Thresholds<Unit> found;
    found.headsUp = threshold<Unit>(object, keyOf("heads_up", suffix), in.headsUp);
    found.at = threshold<Unit>(object, at, in.at);
    found.overrun = threshold<Unit>(object, keyOf("overrun", suffix), in.overrun);
    if (isAfter(found.headsUp, found.at))
        object.refuse(keyOf("heads_up", suffix), "at most " + at);
    if (isAfter(found.at, found.overrun))
        object.refuse(keyOf("overrun", suffix), "at least " + at);
    if ((found.headsUp || found.overrun) && !found.at)
        object.refuse(at, "a whole number, as there is a heads-up or an overrun");
    return found;
}

void needEither(JsonObject& object, const Limit& limit, std::string_view key,
                std::string_view expected)
{
    if (!limit.time.at && !limit.birds.at)
        object.refuse(key, std::string(expected));
}

void readThresholds(JsonObject& object, Limit& limit, Measure measure)
{
    const WholeRange ms{1, kDayMs, "ms"};
    switch (measure) {
        case Measure::Time:
            limit.time = thresholdsFrom<Millis>(object, ranges("ms", kDayMs), "ms");
            return needEither(object, limit, "at_ms", "a whole number of ms");
        case Measure::Birds:
            limit.birds =
                thresholdsFrom<std::int64_t>(object, ranges("birds", kMostBirds), "birds");
            return needEither(object, limit, "at_birds", "a whole number of birds");
        case Measure::TimeOrBirds:
            limit.time = thresholdsFrom<Millis>(object, ranges("ms", kDayMs), "ms");
            limit.birds =
                thresholdsFrom<std::int64_t>(object, ranges("birds", kMostBirds), "birds");
            return needEither(object, limit, "at_birds", "at_birds, at_ms or both");
        case Measure::Start:
            limit.time = thresholdsFrom<Millis>(
                object, {{-kDayMs, 0, "ms"}, {0, 0, "ms"}, {0, kDayMs, "ms"}}, "ms");
            return needEither(object, limit, "at_ms", "0, the planned start");
        case Measure::LastingVerdict:
            limit.time.overrun = threshold<Millis>(object, "overrun_ms", ms);
            return;
        case Measure::Verdict:
        case Measure::Window:
            return;
    }
}

// Which levels can occur, and so need words.
std::array<bool, 3> levelsOf(const Limit& limit, Measure measure)
{
    const bool byVerdict = measure == Measure::Verdict || measure == Measure::LastingVerdict;
    return {byVerdict || limit.time.headsUp || limit.birds.headsUp, true,
            limit.time.overrun || limit.birds.overrun};
}

std::array<Words, 3> wordsByLevel(JsonObject words, const std::array<bool, 3>& levels,
                                  const std::vector<std::string>& languages)
{
    constexpr std::array<std::string_view, 3> kKeys{"heads_up", "limit", "overrun"};
    std::array<Words, 3> all;
    for (std::size_t level = 0; level < kKeys.size(); ++level)
        if (levels[level] || words.has(kKeys[level]))
            all[level] = wordsFrom(words, kKeys[level], languages);
    words.noOthers();
    return all;
}

Limit limitFrom(JsonObject object, LimitName name, const std::vector<std::string>& languages)
{
    const Nature nature = natureOf(name);
    Limit limit;
    limit.sort = object.word<Sort>("sort");
    if (limit.sort == Sort::Limit && !nature.mayBeLimit)
        object.refuse("sort", "\"reminder\", as the station cannot judge a deviation from it");
    limit.severity = object.word<Severity>("severity");
    readThresholds(object, limit, nature.measure);
    limit.words = wordsByLevel(object.object("words"), levelsOf(limit, nature.measure), languages);
    limit.source = object.text("source", kLongestSource);
    object.noOthers();
    return limit;
}

}  // namespace

std::array<Limit, kLimits> limitsFrom(JsonObject limits, const std::vector<std::string>& languages)
{
    std::array<Limit, kLimits> all;
    for (std::size_t i = 0; i < kLimits; ++i) {
        const auto name = static_cast<LimitName>(i);
        all[i] = limitFrom(limits.object(nameOf(name)), name, languages);
    }
    limits.noOthers();
    return all;
}

Thresholds<Millis> ampouleTimesFrom(JsonObject& object)
{
    auto found = thresholdsFrom<Millis>(object, ranges("ms", kDayMs), "ms");
    if (!found.at)
        object.refuse("at_ms", "a whole number of ms");
    return found;
}

Words wordsFrom(JsonObject& object, std::string_view key, const std::vector<std::string>& languages)
{
    JsonObject texts = object.object(key);
    Words words;
    for (const std::string& language : languages)
        words.byLanguage[language] = texts.text(language, kLongestWords);
    texts.noOthers();
    return words;
}

}  // namespace bathside
