#include <algorithm>
#include <utility>

#include "core/alarms/rows.h"
#include "core/alarms/view.h"

namespace bathside {
namespace {

const Subject kBath{SubjectKind::Bath, {}};

struct Water {
    Verdict verdict{};
    Origin since;  // the first of the last readings that all say so
};

/// What the readings of this water say, however old: an *outside* is not ended by forgetting it.
std::optional<Water> water(const View& view)
{
    const auto counts = [&view](const TakenReading& reading) {
        return !view.bench.waterSince ||
               view.origin(*view.bench.waterSince).at <= view.origin(reading.at).at;
    };
    std::optional<Water> water;
    const auto& readings = view.bench.readings;
    for (auto it = readings.rbegin(); it != readings.rend() && counts(*it); ++it) {
        if (it->fact.fault)
            continue;
        const Verdict verdict = it->fact.verdict.value_or(Verdict::Undecided);
        if (water && water->verdict != verdict)
            break;
        water = Water{verdict, view.origin(it->at)};
    }
    return water;
}

std::optional<Origin> firstInBath(const View& view, const Pull& pull)
{
    std::optional<Origin> first;
    for (const Ampoule& ampoule : pull.ampoules) {
        if (const auto& bath = ampoule.when(Step::Bath)) {
            const Origin in = view.origin(bath->at);
            first = first ? earlierOf(*first, in) : in;
        }
    }
    return first;
}

bool isInBath(const Ampoule& ampoule)
{
    return ampoule.isOpen() && ampoule.reached() == Step::Bath;
}

/// Since when the water has been outside with an ampoule in it; none: it is not.
std::optional<Origin> outsideAroundAmpoules(const View& view, const Pull& pull)
{
    const auto now = water(view);
    if (!now || now->verdict != Verdict::Outside || std::ranges::none_of(pull.ampoules, isInBath))
        return std::nullopt;
    return now->since;
}

/// What the water was as they went in stands until the pull is closed. Water that was inside then
/// and leaves the tolerance around them is a heads-up: no deviation, as that is judged at *in
/// bath*.
std::optional<AlarmCourse> bathAtPull(const View& view, const Pull& pull)
{
    if (pull.closed || !pull.bath)
        return std::nullopt;
    const auto in = firstInBath(view, pull);
    const bool wasInside = pull.bath->verdict == Verdict::Inside;
    const auto left = wasInside ? outsideAroundAmpoules(view, pull) : std::nullopt;
    if (!in || (wasInside && !left))
        return std::nullopt;
    const bool wasOutside = pull.bath->verdict == Verdict::Outside;
    return judgedCourse(
        LimitName::BathAtPull, subjectOfPull(pull.no), wasOutside ? Level::Limit : Level::HeadsUp,
        left ? laterOf(*left, *in) : *in, view.limit(LimitName::BathAtPull).time.overrun);
}

/// Since when the next pull's water matters: a bag is being made up, or a pull is due soon. It may
/// lie ahead. None while a pull is open: its own row judges the water then.
std::optional<Origin> pullDueFrom(const View& view)
{
    const Bench& bench = view.bench;
    if (!bench.shiftIsOpen() || bench.openPull())
        return std::nullopt;
    std::optional<Origin> from;
    if (const Bag* bag = bench.bagBeingMadeUp())
        from = view.origin(bag->started.at);
    if (bench.nextPull) {
        const Origin soon{
            .at = onBootClock(*bench.nextPull - bench.card->content().pullSoon, view.now)};
        from = from ? earlierOf(*from, soon) : soon;
    }
    if (from && !bench.pulls.empty() && bench.pulls.back().closed)
        from = laterOf(*from, view.origin(bench.pulls.back().closed->at));
    return from;
}

/// When it was passed: as the record has it, though what made the pull due has changed meanwhile;
/// else with the last fact at the earliest, for a pull may be planned for sooner than the card's
/// time.
Origin passedSince(const View& view, const Origin& since, const Limit& limit)
{
    if (since.at > view.now.boot)
        return since;
    const auto raised = view.bench.alarms.find(alarmId(LimitName::BathBetweenPulls, kBath));
    if (raised == view.bench.alarms.end() || raised->second.level < Level::Limit)
        return laterOf(since, view.origin(view.bench.last));
    Origin passed = view.origin(raised->second.since);
    if (raised->second.level == Level::Overrun)
        passed.at -= limit.time.overrun.value_or(Millis::zero());
    return passed;
}

std::optional<AlarmCourse> bathBetweenPulls(const View& view)
{
    const auto now = water(view);
    const auto due = pullDueFrom(view);
    if (!now || !due || now->verdict == Verdict::Inside)
        return std::nullopt;
    const Limit& limit = view.limit(LimitName::BathBetweenPulls);
    const Origin since = laterOf(now->since, *due);
    if (now->verdict == Verdict::Undecided)
        return judgedCourse(LimitName::BathBetweenPulls, kBath, Level::HeadsUp, since, {});
    return judgedCourse(LimitName::BathBetweenPulls, kBath, Level::Limit,
                        passedSince(view, since, limit), limit.time.overrun);
}

std::optional<AlarmCourse> reading(const View& view)
{
    const Bench& bench = view.bench;
    if (!bench.shiftIsOpen())
        return std::nullopt;
    Origin from = view.origin(bench.waterSince.value_or(bench.shift->opened.at));
    if (!bench.readings.empty())
        from = laterOf(from, view.origin(bench.readings.back().at));
    return timedCourse(LimitName::Reading, kBath, from, view.limit(LimitName::Reading).time);
}

}  // namespace

std::vector<AlarmCourse> bathCourses(const Bench& bench, const Stamp& now)
{
    std::vector<AlarmCourse> courses;
    if (!bench.card)
        return courses;
    const View view{bench, now};
    for (const Pull& pull : bench.pulls) {
        if (auto row = bathAtPull(view, pull))
            courses.push_back(*std::move(row));
    }
    if (auto row = bathBetweenPulls(view))
        courses.push_back(*std::move(row));
    if (auto row = reading(view))
        courses.push_back(*std::move(row));
    return courses;
}

}  // namespace bathside
