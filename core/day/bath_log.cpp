#include "core/day/bath_log.h"

#include <algorithm>
#include <cmath>

#include "core/bath/card_heat.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;

constexpr Micros kBefore = 2min, kAfter = 3min;

struct Entry {
    Stamp at;
    int ampoules = 0;
};

double celsius(MilliCelsius value) { return static_cast<double>(value.count) / 1000; }

std::vector<const Event*> readingsOf(const State& state)
{
    std::vector<const Event*> all;
    for (const auto& event : state.journal) {
        const auto* fact = std::get_if<ReadingTaken>(&event->fact);
        if (fact && fact->corrected && state.bench.isOfBath(fact->probe))
            all.push_back(event.get());
    }
    return all;
}

const ReadingTaken& readingIn(const Event& event) { return std::get<ReadingTaken>(event.fact); }

/// When a pull's first ampoule went in, and how many did; none: not one was tapped.
std::optional<Entry> entryOf(const Pull& pull)
{
    std::optional<Entry> entry;
    for (const Ampoule& ampoule : pull.ampoules) {
        const auto& in = ampoule.when(Step::Bath);
        if (!in || !in->timed)
            continue;
        if (!entry)
            entry = Entry{in->at, 0};
        ++entry->ampoules;
        if (in->at.wall < entry->at.wall)
            entry->at = in->at;
    }
    return entry;
}

std::optional<LoggedDip> dipOf(const std::vector<const Event*>& readings, const Entry& entry,
                               const std::optional<Entry>& next)
{
    const Event* before = nullptr;
    std::optional<double> lowest;
    for (const Event* event : readings) {
        const Micros since = event->at.wall - entry.at.wall;
        if (since <= Micros::zero()) {
            if (since >= -kBefore)
                before = event;
            continue;
        }
        const bool isOfNext = next && event->at.wall >= next->at.wall;
        if (!before || since > kAfter || isOfNext)
            break;
        if (readingIn(*event).probe != readingIn(*before).probe)
            continue;
        const double here = celsius(*readingIn(*event).corrected);
        lowest = std::min(lowest.value_or(here), here);
    }
    if (!lowest)
        return std::nullopt;
    return LoggedDip{entry.ampoules, celsius(*readingIn(*before).corrected), *lowest};
}

std::optional<LoggedThaw> openOf(const Pull& pull, const AmpouleShape& shape)
{
    std::optional<LoggedThaw> soonest;
    for (const Ampoule& ampoule : pull.ampoules) {
        const auto& in = ampoule.when(Step::Bath);
        const auto& opened = ampoule.when(Step::Opened);
        if (!in || !opened || !in->timed || !opened->timed || !ampoule.water)
            continue;
        const double seconds =
            std::chrono::duration<double>(elapsed(in->at, opened->at).time).count();
        if (seconds > 0 && (!soonest || seconds < soonest->slush))
            soonest = LoggedThaw{celsius(*ampoule.water), seconds, shape};
    }
    return soonest;
}

double rms(const std::vector<double>& misses)
{
    double sum = 0;
    for (const double miss : misses)
        sum += miss * miss;
    return std::sqrt(sum / static_cast<double>(misses.size()));
}

}  // namespace

std::vector<LoggedDip> dipsOf(const State& state)
{
    const auto readings = readingsOf(state);
    std::vector<Entry> entries;
    for (const Pull& pull : state.bench.pulls) {
        if (const auto entry = entryOf(pull))
            entries.push_back(*entry);
    }
    std::vector<LoggedDip> dips;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const auto next = i + 1 < entries.size() ? std::optional(entries[i + 1]) : std::nullopt;
        if (const auto dip = dipOf(readings, entries[i], next))
            dips.push_back(*dip);
    }
    return dips;
}

std::vector<LoggedThaw> opensOf(const State& state, const HeatRules& heat, std::size_t most)
{
    const AmpouleShape shape = thawSettingOf(heat, 0).shape;
    std::vector<LoggedThaw> opens;
    for (const Pull& pull : state.bench.pulls) {
        if (const auto open = openOf(pull, shape))
            opens.push_back(*open);
    }
    if (opens.size() > most)
        opens.erase(opens.begin(), opens.end() - static_cast<std::ptrdiff_t>(most));
    return opens;
}

namespace {

/// Those of the shifts before first; the last ones that count.
template <typename T>
std::vector<T> lastOf(std::vector<T> before, const std::vector<T>& now)
{
    before.insert(before.end(), now.begin(), now.end());
    keepLast(before);
    return before;
}

std::vector<LoggedDip> allDips(const State& state)
{
    const auto& known = state.bench.learned;
    return lastOf(known ? known->dips : std::vector<LoggedDip>{}, dipsOf(state));
}

std::vector<LoggedThaw> allOpens(const State& state, const HeatRules& heat)
{
    const auto& known = state.bench.learned;
    return lastOf(known ? known->opens : std::vector<LoggedThaw>{},
                  opensOf(state, heat, kMostLearned));
}

}  // namespace

std::optional<FitOfPulls> massOf(const State& state, const HeatRules& heat)
{
    const auto dips = allDips(state);
    const auto figure = learnedMass(heat, dips);
    if (!figure)
        return std::nullopt;
    std::vector<double> misses;
    for (const LoggedDip& dip : dips) {
        const auto foreseen = bathside::dipOf(budgetOf(heat, dip.start), dip.ampoules);
        misses.push_back((foreseen ? foreseen->end : 0) - dip.end);
    }
    return FitOfPulls{*figure, rms(misses)};
}

std::optional<FitOfPulls> filmOf(const State& state, const HeatRules& heat)
{
    const auto opens = allOpens(state, heat);
    const auto figure = learnedFilm(heat, opens);
    if (!figure)
        return std::nullopt;
    std::vector<double> misses;
    for (const LoggedThaw& open : opens) {
        ThawSetting setting = thawSettingOf(heat, open.bath);
        setting.shape = open.shape;
        misses.push_back(thawed(setting).slush.value_or(setting.longest) - open.slush);
    }
    return FitOfPulls{*figure, rms(misses)};
}

std::optional<BathLearned> learnedFor(const State& state, const Card& card)
{
    const HeatRules& heat = card.content().heat;
    auto dips = allDips(state);
    auto opens = allOpens(state, heat);
    if (dips.empty() && opens.empty())
        return std::nullopt;
    const auto& known = state.bench.learned;
    const bool isNew = !known || !dipsOf(state).empty() || !opensOf(state, heat, 1).empty();
    if (!isNew && known->card == card.hash())
        return *known;
    return learnedFrom(std::move(dips), std::move(opens), card);
}

}  // namespace bathside
