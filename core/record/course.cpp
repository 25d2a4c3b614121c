#include "core/record/course.h"

#include <algorithm>
#include <utility>

#include "core/record/cases.h"

namespace bathside {
namespace {

using What = Course::What;

CourseUnit unitOf(LimitName limit)
{
    switch (limit) {
        case LimitName::BathAtPull:
        case LimitName::Diluent:
            return CourseUnit::Temperature;
        case LimitName::Needle:
        case LimitName::DoseCheck:
            return CourseUnit::Birds;
        case LimitName::Exposure:
        case LimitName::Thaw:
        case LimitName::InUse:
        case LimitName::BathBetweenPulls:
        case LimitName::Reading:
        case LimitName::Swirl:
        case LimitName::NextPull:
            return CourseUnit::Time;
    }
    std::unreachable();
}

std::int64_t since(const Moment& first, const Moment& then)
{
    return std::chrono::floor<Millis>(elapsed(first.at, then.at).time).count();
}

void addTick(Course& course, What what, const Moment& first, const std::optional<Moment>& then)
{
    if (then)
        course.ticks.push_back({what, since(first, *then), then->timed});
}

/// What is allowed begins at `begin` and lasts `limit`.
void spread(Course& course, std::int64_t begin, std::int64_t limit, std::int64_t over)
{
    course.from = begin;
    course.to = begin + limit;
    course.reached = course.to + over;
}

/// What the journal has of the bath from the first of all to the last.
void addReadings(Course& course, const State& state, const Moment& first)
{
    std::int64_t last = std::max(course.to, course.reached);
    for (const Course::Tick& tick : course.ticks)
        last = std::max(last, tick.at);
    for (const auto& event : state.journal) {
        const auto* reading = std::get_if<ReadingTaken>(&event->fact);
        if (!reading || reading->fault || !reading->corrected || event->at.wall < first.at.wall ||
            !state.bench.isOfBath(reading->probe))
            continue;
        const std::int64_t at = since(first, {.at = event->at});
        if (at <= last)
            course.readings.push_back({at, *reading->corrected, reading->verdict});
    }
}

Course ofAmpoule(const State& state, const Ampoule& ampoule, const DeviationFound& fact,
                 std::int64_t limit)
{
    Course course{.unit = CourseUnit::Time, .ticks = {}, .readings = {}};
    const Moment& out = *ampoule.when(Step::Out);
    for (std::size_t i = 0; i < kSteps; ++i)
        addTick(course, static_cast<What>(i), out, ampoule.steps[i]);
    std::ranges::stable_sort(course.ticks, {}, &Course::Tick::at);
    const auto& bath = ampoule.when(Step::Bath);
    const bool fromBath = fact.limit == LimitName::Thaw && bath && bath->timed;
    spread(course, fromBath ? since(out, *bath) : 0, limit, fact.over);
    addReadings(course, state, out);
    return course;
}

Course ofBag(const State& state, const Bag& bag, const DeviationFound& fact, std::int64_t limit)
{
    Course course{.unit = CourseUnit::Time, .ticks = {}, .readings = {}};
    addTick(course, What::Started, bag.started, bag.started);
    addTick(course, What::FirstDiluent, bag.started, bag.firstDiluent);
    addTick(course, What::Mixed, bag.started, bag.mixed);
    addTick(course, What::Hung, bag.started, bag.hung);
    if (bag.down)
        addTick(course, What::Down, bag.started, bag.down->moment);
    const bool hasBegun = fact.limit == LimitName::InUse && bag.firstDiluent;
    spread(course, hasBegun ? since(bag.started, *bag.firstDiluent) : 0, limit, fact.over);
    if (!hasBegun)
        course.ticks.clear();  // swirls are not kept one by one
    else
        addReadings(course, state, bag.started);
    return course;
}

/// Whether it was too cold; a deviation says by how much only.
bool wasBelow(const State& state, const DeviationFound& fact, MilliCelsius middle)
{
    for (const Seq seq : fact.from) {
        const Event* event = eventAt(state, seq);
        const auto* reading = event ? std::get_if<ReadingTaken>(&event->fact) : nullptr;
        const auto* bag = event ? std::get_if<BagStarted>(&event->fact) : nullptr;
        if (reading && reading->corrected)
            return *reading->corrected < middle;
        if (bag && bag->temperature)
            return *bag->temperature < middle;
    }
    return false;
}

Course ofTemperature(const State& state, const DeviationOnRecord& deviation)
{
    const DeviationFound& fact = deviation.fact;
    Course course{.unit = CourseUnit::Temperature, .ticks = {}, .readings = {}};
    const Card* card = cardOf(state.bench, deviation);
    if (!card)
        return course;
    const Card::Content& content = card->content();
    const bool isBath = fact.limit == LimitName::BathAtPull;
    course.from =
        (isBath ? content.bath.target - content.bath.tolerance : content.diluentLow).count;
    course.to = (isBath ? content.bath.target + content.bath.tolerance : content.diluentHigh).count;
    const bool below = wasBelow(state, fact, {(course.from + course.to) / 2});
    course.reached = below ? course.from - fact.over : course.to + fact.over;
    return course;
}

}  // namespace

Course courseOf(const State& state, const DeviationOnRecord& deviation)
{
    const Bench& bench = state.bench;
    const DeviationFound& fact = deviation.fact;
    const bool isHere = !isCarried(bench, deviation);
    if (unitOf(fact.limit) == CourseUnit::Temperature)
        return ofTemperature(state, deviation);
    const std::int64_t limit = limitOf(bench, deviation).value_or(0);
    const Ampoule* ampoule = isHere ? bench.ampoule(ampouleOf(fact.subject)) : nullptr;
    if (ampoule)
        return ofAmpoule(state, *ampoule, fact, limit);
    const Bag* bag = isHere && fact.bag ? bench.bag(*fact.bag) : nullptr;
    if (bag && fact.subject.kind == SubjectKind::Bag)
        return ofBag(state, *bag, fact, limit);
    Course course{.unit = unitOf(fact.limit), .ticks = {}, .readings = {}};
    spread(course, 0, limit, fact.over);
    return course;
}

}  // namespace bathside
