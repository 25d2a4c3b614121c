#include "core/alarms/rows.h"

#include <algorithm>
#include <utility>

#include "core/bench/next.h"

namespace bathside {
namespace {

using Row = std::optional<Course>;

std::size_t indexOf(Level level) { return static_cast<std::size_t>(level); }

/// The bench at one instant.
struct View {
    const Bench& bench;
    const Stamp& now;

    [[nodiscard]] Origin origin(const Stamp& from) const { return originOf(bench, from, now); }
    [[nodiscard]] const Limit& limit(LimitName name) const { return bench.card->limit(name); }
    [[nodiscard]] const Limit& limit(LimitName name, const Bag& bag) const
    {
        return (bag.card ? bag.card : bench.card)->limit(name);
    }
};

Course timed(LimitName cause, Subject subject, const Origin& from,
             const Thresholds<Millis>& thresholds)
{
    const Begins begins = beginsFrom(from, thresholds);
    return {.cause = cause,
            .subject = std::move(subject),
            .begins = begins,
            .limitAt = begins[indexOf(Level::Limit)],
            .birdsLeft = {},
            .certain = from.certain};
}

/// Not a matter of time but for the overrun, which counts from the moment the limit is passed.
Course judged(LimitName cause, Subject subject, Level level, const Origin& since,
              const Limit& limit)
{
    Begins begins;
    begins[indexOf(level)] = since.at;
    if (level == Level::Limit && limit.time.overrun)
        begins[indexOf(Level::Overrun)] = since.at + *limit.time.overrun;
    return {.cause = cause,
            .subject = std::move(subject),
            .begins = begins,
            .limitAt = {},
            .birdsLeft = {},
            .certain = since.certain};
}

// --- ampoules and pulls --------------------------------------------------------------------------

Row ampouleRow(const View& view, const Ampoule& ampoule)
{
    const auto running = runningLimit(view.bench, ampoule);
    if (!running)
        return std::nullopt;
    return timed(running->limit, subjectOf(ampoule.ref), view.origin(running->from),
                 running->thresholds);
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

Row bathAtPull(const View& view, const Pull& pull)
{
    if (pull.closed || !pull.bath || pull.bath->verdict == Verdict::Inside)
        return std::nullopt;
    const auto in = firstInBath(view, pull);
    if (!in)
        return std::nullopt;
    const bool outside = pull.bath->verdict == Verdict::Outside;
    return judged(LimitName::BathAtPull, subjectOfPull(pull.no),
                  outside ? Level::Limit : Level::HeadsUp, *in, view.limit(LimitName::BathAtPull));
}

// --- bags ----------------------------------------------------------------------------------------

Row inUse(const View& view, const Bag& bag)
{
    if (!bag.isOpen() || !bag.firstDiluent)
        return std::nullopt;
    return timed(LimitName::InUse, subjectOf(bag.id), view.origin(bag.firstDiluent->at),
                 view.limit(LimitName::InUse, bag).time);
}

Row diluent(const View& view, const Bag& bag)
{
    if (!bag.isBeingMadeUp() || !bag.temperature)
        return std::nullopt;
    const Card::Content& card = (bag.card ? bag.card : view.bench.card)->content();
    if (*bag.temperature >= card.diluentLow && *bag.temperature <= card.diluentHigh)
        return std::nullopt;
    return judged(LimitName::Diluent, subjectOf(bag.id), Level::Limit, view.origin(bag.started.at),
                  view.limit(LimitName::Diluent, bag));
}

Row swirl(const View& view, const Bag& bag)
{
    if (!bag.isOpen() || bag.held || !bag.mixed)
        return std::nullopt;
    const Moment& last = bag.swirled ? *bag.swirled : *bag.mixed;
    return timed(LimitName::Swirl, subjectOf(bag.id), view.origin(last.at),
                 view.limit(LimitName::Swirl, bag).time);
}

// --- the bath ------------------------------------------------------------------------------------

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

Row bathBetweenPulls(const View& view)
{
    const auto now = water(view);
    const auto due = pullDueFrom(view);
    if (!now || !due || now->verdict == Verdict::Inside)
        return std::nullopt;
    return judged(LimitName::BathBetweenPulls, {SubjectKind::Bath, {}},
                  now->verdict == Verdict::Outside ? Level::Limit : Level::HeadsUp,
                  laterOf(now->since, *due), view.limit(LimitName::BathBetweenPulls));
}

Row reading(const View& view)
{
    const Bench& bench = view.bench;
    if (!bench.shiftIsOpen())
        return std::nullopt;
    Origin from = view.origin(bench.waterSince.value_or(bench.shift->opened.at));
    if (const auto last = bench.lastGoodReading())
        from = laterOf(from, view.origin(last->at));
    return timed(LimitName::Reading, {SubjectKind::Bath, {}}, from,
                 view.limit(LimitName::Reading).time);
}

// --- lines and the plan --------------------------------------------------------------------------

std::optional<BootTime> earlier(const std::optional<BootTime>& a, const std::optional<BootTime>& b)
{
    return a && b ? std::min(*a, *b) : (a ? a : b);
}

/// By birds or by time since the last one, whichever comes first. A stopped line's time counts too.
Course lineRow(const View& view, LimitName cause, const Line& line, const Moment& last,
               std::int64_t birds)
{
    const Limit& limit = view.limit(cause);
    Course course = timed(cause, subjectOf(line.id), view.origin(last.at), limit.time);
    const std::string id = alarmId(course.cause, course.subject);
    const std::array byBirds{limit.birds.headsUp, limit.birds.at, limit.birds.overrun};
    for (const Level level : {Level::HeadsUp, Level::Limit, Level::Overrun}) {
        auto& begin = course.begins[indexOf(level)];
        if (byBirds[indexOf(level)] && birds >= *byBirds[indexOf(level)])
            begin = earlier(begin, sinceOnRecord(view.bench, id, level, view.now).at);
    }
    if (limit.birds.at)
        course.birdsLeft = *limit.birds.at - birds;
    return course;
}

Row nextPull(const View& view)
{
    if (!view.bench.shiftIsOpen() || !view.bench.nextPull)
        return std::nullopt;
    const Origin planned{.at = onBootClock(*view.bench.nextPull, view.now)};
    return timed(LimitName::NextPull, {SubjectKind::Bench, {}}, planned,
                 view.limit(LimitName::NextPull).time);
}

}  // namespace

std::string alarmId(const AlarmCause& cause, const Subject& subject)
{
    const auto name = std::visit([](auto which) { return std::string(nameOf(which)); }, cause);
    return name + " " + toText(subject);
}

std::optional<RunningLimit> runningLimit(const Bench& bench, const Ampoule& ampoule)
{
    const Card* card = cardOf(bench, ampoule);
    if (!card || !ampoule.isOpen() || ampoule.when(Step::Diluent) || !ampoule.when(Step::Out))
        return std::nullopt;
    if (!ampoule.when(Step::Bath))
        return RunningLimit{LimitName::Exposure, ampoule.when(Step::Out)->at,
                            card->timesFor(LimitName::Exposure, ampoule.component)};
    // an untimed *in bath* may have been as early as *out of cryogen*: judge.cpp says the same
    const Moment& bath = *ampoule.when(Step::Bath);
    RunningLimit thaw{LimitName::Thaw, bath.timed ? bath.at : ampoule.when(Step::Out)->at,
                      card->timesFor(LimitName::Thaw, ampoule.component)};
    if (auto& headsUp = thaw.thresholds.headsUp)
        headsUp = std::min(*headsUp, thawCue(bench, ampoule));
    return thaw;
}

Origin sinceOnRecord(const Bench& bench, const std::string& alarm, Level level, const Stamp& now)
{
    const auto raised = bench.alarms.find(alarm);
    const bool onRecord = raised != bench.alarms.end() && raised->second.level >= level;
    Origin since = originOf(bench, onRecord ? raised->second.since : bench.last, now);
    since.at = std::min(since.at, now.boot);
    return since;
}

std::vector<Course> cardCourses(const Bench& bench, const Stamp& now)
{
    std::vector<Course> courses;
    if (!bench.card)
        return courses;
    const View view{bench, now};
    const auto add = [&courses](Row row) {
        if (row)
            courses.push_back(*std::move(row));
    };
    for (const Pull& pull : bench.pulls) {
        for (const Ampoule& ampoule : pull.ampoules)
            add(ampouleRow(view, ampoule));
        add(bathAtPull(view, pull));
    }
    for (const Bag& bag : bench.bags) {
        add(inUse(view, bag));
        add(diluent(view, bag));
        add(swirl(view, bag));
    }
    add(bathBetweenPulls(view));
    add(reading(view));
    for (const auto& [id, line] : bench.lines) {
        add(lineRow(view, LimitName::Needle, line, line.needle, line.birds - line.birdsAtNeedle));
        add(lineRow(view, LimitName::DoseCheck, line, line.since,
                    line.birds - line.birdsAtDoseCheck));
    }
    add(nextPull(view));
    return courses;
}

}  // namespace bathside
