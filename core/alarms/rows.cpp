#include "core/alarms/rows.h"

#include <algorithm>
#include <utility>

#include "core/alarms/view.h"
#include "core/bench/dose.h"
#include "core/bench/next.h"

namespace bathside {
namespace {

using Row = std::optional<AlarmCourse>;

// --- ampoules ---

/// When the thaw's heads-up was called, if it was: the call stands though a lane before it is done
/// and the pace would call later now. Never before the shortest thaw: that is no call of the pace.
Millis calledAt(const Bench& bench, const Ampoule& ampoule, const Stamp& from)
{
    const auto raised = bench.alarms.find(alarmId(LimitName::Thaw, subjectOf(ampoule.ref)));
    if (raised == bench.alarms.end())
        return Millis::max();
    const auto called = std::chrono::floor<Millis>(elapsed(from, raised->second.since).time);
    return called < cardOf(bench, ampoule)->content().shortestThaw ? Millis::max() : called;
}

Row ampouleRow(const View& view, const Ampoule& ampoule)
{
    const auto running = runningLimit(view.bench, ampoule);
    if (!running)
        return std::nullopt;
    return timedCourse(running->limit, subjectOf(ampoule.ref), view.origin(running->from),
                       running->thresholds);
}

// --- bags ---

Row inUse(const View& view, const Bag& bag)
{
    if (!bag.isOpen() || !bag.firstDiluent)
        return std::nullopt;
    return timedCourse(LimitName::InUse, subjectOf(bag.id), view.origin(bag.firstDiluent->at),
                       view.cardOf(bag).limit(LimitName::InUse).time);
}

Row diluent(const View& view, const Bag& bag)
{
    if (!bag.isBeingMadeUp() || !bag.temperature)
        return std::nullopt;
    const Card::Content& card = view.cardOf(bag).content();
    if (*bag.temperature >= card.diluentLow && *bag.temperature <= card.diluentHigh)
        return std::nullopt;
    return judgedCourse(LimitName::Diluent, subjectOf(bag.id), Level::Limit,
                        view.origin(bag.started.at),
                        view.cardOf(bag).limit(LimitName::Diluent).time.overrun);
}

Row swirl(const View& view, const Bag& bag)
{
    if (!bag.isOpen() || bag.held() || !bag.mixed)
        return std::nullopt;
    const Moment& last = bag.swirled ? *bag.swirled : *bag.mixed;
    return timedCourse(LimitName::Swirl, subjectOf(bag.id), view.origin(last.at),
                       view.cardOf(bag).limit(LimitName::Swirl).time);
}

// --- lines and the plan ---

std::optional<BootTime> earlier(const std::optional<BootTime>& a, const std::optional<BootTime>& b)
{
    return a && b ? std::min(*a, *b) : (a ? a : b);
}

/// By birds or by time since the last one, whichever comes first. A stopped line's time counts too.
AlarmCourse lineRow(const View& view, LimitName cause, const Line& line, const Moment& last,
                    std::int64_t birds)
{
    const Limit& limit = view.limit(cause);
    AlarmCourse course = timedCourse(cause, subjectOf(line.id), view.origin(last.at), limit.time);
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

/// Due again at once where the last one failed, until one is good.
AlarmCourse doseCheck(const View& view, const Line& line)
{
    AlarmCourse course =
        lineRow(view, LimitName::DoseCheck, line, line.since, line.birds - line.birdsAtDoseCheck);
    if (!doseIsInDoubt(line))
        return course;
    course.begins[indexOf(Level::Limit)] = view.origin(line.since.at).at;
    course.limitAt.reset();
    course.birdsLeft.reset();
    return course;
}

void addLines(const View& view, std::vector<AlarmCourse>& courses)
{
    for (const auto& [id, line] : view.bench.lines) {
        courses.push_back(
            lineRow(view, LimitName::Needle, line, line.needle, line.birds - line.birdsAtNeedle));
        courses.push_back(doseCheck(view, line));
    }
}

Row nextPull(const View& view)
{
    if (!view.bench.shiftIsOpen() || !view.bench.nextPull)
        return std::nullopt;
    const Origin planned{.at = onBootClock(*view.bench.nextPull, view.now)};
    return timedCourse(LimitName::NextPull, {SubjectKind::Bench, {}}, planned,
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
        headsUp = std::min(thawCue(bench, ampoule), calledAt(bench, ampoule, thaw.from));
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

std::vector<AlarmCourse> workCourses(const Bench& bench, const Stamp& now)
{
    std::vector<AlarmCourse> courses;
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
    }
    for (const Bag& bag : bench.bags) {
        add(inUse(view, bag));
        add(diluent(view, bag));
        add(swirl(view, bag));
    }
    if (bench.shiftIsOpen())
        addLines(view, courses);
    add(nextPull(view));
    return courses;
}

}  // namespace bathside
