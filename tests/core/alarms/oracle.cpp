#include "tests/core/alarms/oracle.h"

#include <algorithm>
#include <set>

#include "core/bath/card_heat.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

using Maybe = std::optional<Millis>;

struct Row {
    Maybe headsUp, limit, overrun;
};

// The default card's rows. `common practice`: exposure 10 s, thaw 80 s and 90 s; the rest from
// memory.
const Row kExposure{7s, 10s, 15s};
const Row kExposureOfSerotype1{5s, 8s, 12s};  // constructed: the year's card
const Row kThaw{80s, 90s, 95s};
const Row kThawOfSerotype1{70s, 85s, 92s};  // constructed: the year's card
const Row kInUse{45min, 60min, 62min};
const Row kReading{8min, 10min, 15min};
const Row kSwirl{9min, 10min, 15min};
const Row kNextPull{-5min, 0s, 5min};
constexpr Millis kOldestReading = 10min;
constexpr Millis kFaultLasts = 15s;
constexpr Millis kBathOverrun = 2min;
constexpr Millis kPullSoon = 15min;
constexpr Millis kHandling = 8s;
constexpr Millis kShortestThaw = 40s;
constexpr Millis kDoseCheck = 2h;

class Oracle {
public:
    Oracle(const Day& day, const SlushScale* learned) : m_day(day), m_learned(learned) {}

    Periods reckon() &&
    {
        for (const PullLife& pull : m_day.pulls) {
            bathAtPull(pull);
            for (const AmpouleLife& ampoule : pull.ampoules)
                ampouleRows(pull, ampoule);
        }
        for (const BagLife& bag : m_day.bags)
            bagRows(bag);
        for (const LineLife& line : m_day.lines)
            lineRows(line);
        bathBetweenPulls();
        reading();
        nextPull();
        station();
        for (const Restart& restart : m_day.restarts)
            leaveOut(restart);
        return tidied(std::move(m_periods));
    }

private:
    void add(const std::string& id, Level level, Millis from, Millis to)
    {
        if (from < to)
            m_periods[id].push_back({level, from, to});
    }

    /// A row that runs from `start`, looked at within [from, to).
    void timed(const std::string& id, Millis start, const Row& row, Millis from, Millis to)
    {
        const auto begin = [&](const Maybe& at) { return at ? start + *at : Millis::max(); };
        const Millis h = begin(row.headsUp), l = begin(row.limit), o = begin(row.overrun);
        add(id, Level::HeadsUp, std::max(from, h), std::min(to, l));
        add(id, Level::Limit, std::max(from, l), std::min(to, o));
        add(id, Level::Overrun, std::max(from, o), to);
    }

    // --- ampoules ---

    void ampouleRows(const PullLife& pull, const AmpouleLife& ampoule)
    {
        const std::string name =
            "ampoule:" + std::to_string(ampoule.ref.pull) + "/" + std::to_string(ampoule.ref.no);
        const bool other = ampoule.component == "serotype 1";
        timed("exposure " + name, ampoule.out, other ? kExposureOfSerotype1 : kExposure,
              ampoule.out, ampoule.inBath().value_or(ampoule.end));
        if (!ampoule.inBath())
            return;
        Row row = other ? kThawOfSerotype1 : kThaw;
        // as late as the record allows: an untimed one may have gone in when it came out
        const Millis start = ampoule.bath ? *ampoule.bath : ampoule.out;
        const Millis end = ampoule.inDiluent().value_or(ampoule.end);
        row.headsUp = called(pull, ampoule, row, start, end) - start;
        timed("thaw " + name, start, row, *ampoule.inBath(), end);
    }

    /// When the hands are called to it: as it looked at each moment, and never taken back.
    Millis called(const PullLife& pull, const AmpouleLife& ampoule, const Row& row, Millis start,
                  Millis end) const
    {
        std::set<Millis> moments{*ampoule.inBath(), end};
        for (const AmpouleLife& other : pull.ampoules) {
            for (const Maybe& at : {other.inBath(), other.inDiluent(), Maybe(other.end)}) {
                if (at && *at > *ampoule.inBath() && *at < end)
                    moments.insert(*at);
            }
        }
        for (auto it = moments.begin(); std::next(it) != moments.end(); ++it) {
            const Millis early = *row.limit - waitingBefore(pull, ampoule, *it) * handling(*it);
            const Millis cue = std::min(slushy(row, *ampoule.inBath(), handling(*it)),
                                        std::max(kShortestThaw, early));
            const Millis call = std::max(*it, start + cue);
            if (call < *std::next(it))
                return call;
        }
        return end;
    }

    /// What the water was said to be; the day's thermometer shows these three (day_script.cpp).
    std::optional<MilliCelsius> water(Millis in) const
    {
        const auto said = holding(in);
        if (!said)
            return std::nullopt;
        switch (said->verdict) {
            case Verdict::Inside:
                return MilliCelsius{28'000};
            case Verdict::Undecided:
                return MilliCelsius{29'000};
            case Verdict::Outside:
                return MilliCelsius{30'500};
        }
        return std::nullopt;
    }

    /// When it is looked for: what warmer water makes of the time, and what the shifts before
    /// taught of it, is the thaw model's business, checked elsewhere.
    Millis slushy(const Row& row, Millis in, Millis hand) const
    {
        static const SlushScale scale(HeatRules{}, MilliCelsius{28'000});
        const auto times = [](Millis usual, double factor) {
            return std::chrono::floor<Millis>(std::chrono::duration<double>(usual * factor));
        };
        const auto bath = water(in);
        if (!bath)
            return *row.headsUp;
        const Millis byCard = times(*row.headsUp, *scale.at(*bath));
        const auto factor = m_learned ? m_learned->at(*bath) : std::nullopt;
        if (!factor)
            return byCard;
        const Millis learned = times(*row.headsUp, *factor);
        return learned <= byCard ? std::max(learned, std::min(byCard, kShortestThaw))
                                 : std::max(byCard, std::min(learned, *row.limit) - hand);
    }

    static int waitingBefore(const PullLife& pull, const AmpouleLife& ampoule, Millis at)
    {
        return static_cast<int>(std::ranges::count_if(pull.ampoules, [&](const AmpouleLife& other) {
            const auto in = other.inBath();
            const auto done = other.inDiluent();
            const bool waits = in && *in <= at && other.end > at && !(done && *done <= at);
            return waits &&
                   std::pair(*in, other.ref.no) < std::pair(*ampoule.inBath(), ampoule.ref.no);
        }));
    }

    /// Between two ampoules of a pull in diluent: the upper median of those seen, from three on.
    Millis handling(Millis at) const
    {
        std::multiset<Millis> seen;
        for (const PullLife& pull : m_day.pulls) {
            std::set<Millis> times;
            for (const AmpouleLife& ampoule : pull.ampoules) {
                if (ampoule.diluent && *ampoule.diluent <= at)
                    times.insert(*ampoule.diluent);
            }
            for (auto it = times.begin(); it != times.end() && std::next(it) != times.end(); ++it)
                seen.insert(*std::next(it) - *it);
        }
        const auto middle = static_cast<std::ptrdiff_t>(seen.size() / 2);
        return seen.size() < 3 ? kHandling : *std::next(seen.begin(), middle);
    }

    // --- bags ---

    void bagRows(const BagLife& bag)
    {
        const std::string name = "bag:" + bag.id;
        if (bag.temperature.count < 18'000 || bag.temperature.count > 27'000)
            add("diluent " + name, Level::Limit, bag.started, bag.mixed.value_or(bag.down));
        Maybe age;
        for (const PullLife& pull : m_day.pulls) {
            for (const AmpouleLife& ampoule : pull.ampoules) {
                if (pull.bag == bag.id && !ampoule.lost)
                    age = std::min(age.value_or(Millis::max()), *ampoule.inDiluent());
            }
        }
        if (age)
            timed("in use " + name, *age, kInUse, *age, bag.down);
        if (bag.mixed)
            swirls(bag, name);
    }

    void swirls(const BagLife& bag, const std::string& name)
    {
        std::vector<Millis> starts{*bag.mixed};
        starts.insert(starts.end(), bag.swirls.begin(), bag.swirls.end());
        starts.push_back(bag.down);
        const Span held = bag.held.value_or(Span{bag.down, bag.down});
        for (std::size_t i = 0; i + 1 < starts.size(); ++i) {
            const Millis to = starts[i + 1];
            timed("swirl " + name, starts[i], kSwirl, starts[i], std::min(to, held.from));
            timed("swirl " + name, starts[i], kSwirl, std::max(starts[i], held.to), to);
        }
    }

    // --- the bath ---

    static bool brokeInBath(const AmpouleLife& ampoule)
    {
        return ampoule.lost == LossReason::Broken && ampoule.bath && !ampoule.opened;
    }

    /// When there was new water: nothing that was read before says anything of it.
    std::set<Millis> newWater() const
    {
        std::set<Millis> times(m_day.newWater.begin(), m_day.newWater.end());
        times.insert(m_day.opened);
        for (const PullLife& pull : m_day.pulls) {
            for (const AmpouleLife& ampoule : pull.ampoules) {
                if (brokeInBath(ampoule))
                    times.insert(ampoule.end);
            }
        }
        return times;
    }

    struct Said {
        Millis at{};
        Verdict verdict{};
    };

    /// What the last good reading of this water said, by `at`.
    std::optional<Said> lastSaid(Millis at) const
    {
        const auto water = newWater();
        const Millis since = *std::prev(water.upper_bound(at));
        std::optional<Said> last;
        for (const auto& [when, said] : m_day.readings) {
            const auto* verdict = std::get_if<Verdict>(&said);
            if (verdict && when >= since && when <= at)
                last = Said{when, *verdict};
        }
        return last;
    }

    /// That, where it is not too old and the one thermometer of the day has not failed since.
    std::optional<Said> holding(Millis at) const
    {
        const auto said = lastSaid(at);
        const bool failed = std::ranges::any_of(m_day.readings, [&](const auto& reading) {
            return std::holds_alternative<ReadingFault>(reading.second) && said &&
                   reading.first > said->at && reading.first <= at;
        });
        return said && !failed && at - said->at < kOldestReading ? said : std::nullopt;
    }

    void bathAtPull(const PullLife& pull)
    {
        Maybe unsure, outside;
        for (const AmpouleLife& ampoule : pull.ampoules) {
            const auto in = ampoule.inBath();
            if (!in)
                continue;
            const auto said = holding(*in);
            if (said && said->verdict == Verdict::Outside)
                outside = std::min(outside.value_or(Millis::max()), *in);
            else if (!said || said->verdict == Verdict::Undecided)
                unsure = std::min(unsure.value_or(Millis::max()), *in);
        }
        const std::string id =
            "bath at pull pull:" + std::to_string(pull.ampoules.front().ref.pull);
        const Millis worse = outside.value_or(pull.closed());
        if (unsure)
            add(id, Level::HeadsUp, *unsure, std::min(worse, pull.closed()));
        add(id, Level::Limit, worse, pull.closed());
        outsideAroundAmpoules(pull, id, std::min(unsure.value_or(worse), worse));
    }

    static bool isInBath(const AmpouleLife& ampoule, Millis at)
    {
        const Millis taken = ampoule.opened.value_or(
            std::min(ampoule.inDiluent().value_or(ampoule.end), ampoule.end));
        return ampoule.inBath() && *ampoule.inBath() <= at && at < taken;
    }

    /// A heads-up of its own until the pull has one, or worse, for what the water was at *in bath*.
    void outsideAroundAmpoules(const PullLife& pull, const std::string& id, Millis until)
    {
        std::set<Millis> moments = newWater();
        for (const auto& [at, said] : m_day.readings)
            moments.insert(at);
        for (const AmpouleLife& ampoule : pull.ampoules) {
            for (const Maybe& at : {ampoule.inBath(), ampoule.opened, ampoule.inDiluent()})
                moments.insert(at.value_or(ampoule.end));
            moments.insert(ampoule.end);
        }
        for (auto it = moments.lower_bound(pull.first());
             it != moments.end() && *it < pull.closed(); ++it) {
            const auto said = lastSaid(*it);
            const bool isOut = said && said->verdict == Verdict::Outside;
            const bool isAround = std::ranges::any_of(
                pull.ampoules, [&](const auto& ampoule) { return isInBath(ampoule, *it); });
            if (isOut && isAround)
                add(id, Level::HeadsUp, *it, std::min(*std::next(it), until));
        }
    }

    bool pullIsOpen(Millis at) const
    {
        return std::ranges::any_of(m_day.pulls, [&](const PullLife& pull) {
            return pull.first() <= at && at < pull.closed();
        });
    }

    bool bagIsBeingMadeUp(Millis at) const
    {
        return std::ranges::any_of(m_day.bags, [&](const BagLife& bag) {
            return bag.started <= at && at < bag.mixed.value_or(bag.down);
        });
    }

    /// The planned start that stands at `at`: the last that was said, no pull having begun since.
    Maybe planned(Millis at) const
    {
        Maybe start;
        Millis said{};
        for (const auto& [when, planned] : m_day.plans) {
            if (when <= at)
                start = planned, said = when;
        }
        for (const PullLife& pull : m_day.pulls) {
            for (const AmpouleLife& ampoule : pull.ampoules) {
                if (ampoule.out > said && ampoule.out <= at)
                    start.reset();
            }
        }
        return start;
    }

    std::optional<Level> bathLevel(Millis at) const
    {
        const auto start = planned(at);
        const bool due = bagIsBeingMadeUp(at) || (start && at >= *start - kPullSoon);
        const auto said = lastSaid(at);
        if (!due || pullIsOpen(at) || !said || said->verdict == Verdict::Inside)
            return std::nullopt;
        return said->verdict == Verdict::Outside ? Level::Limit : Level::HeadsUp;
    }

    /// Every instant at which what bathLevel looks at can differ.
    std::set<Millis> bathMoments() const
    {
        std::set<Millis> moments = newWater();
        moments.insert(m_day.closed);
        for (const auto& [at, said] : m_day.readings)
            moments.insert(at);
        for (const auto& [said, start] : m_day.plans)
            moments.insert({said, start - kPullSoon});
        for (const PullLife& pull : m_day.pulls) {
            moments.insert(pull.closed());
            for (const AmpouleLife& ampoule : pull.ampoules)
                moments.insert(ampoule.out);
        }
        for (const BagLife& bag : m_day.bags)
            moments.insert({bag.started, bag.mixed.value_or(bag.down)});
        moments.erase(moments.begin(), moments.lower_bound(m_day.opened));
        moments.erase(moments.upper_bound(m_day.closed), moments.end());
        return moments;
    }

    void bathBetweenPulls()
    {
        const std::string id = "bath between pulls bath";
        const auto moments = bathMoments();
        Maybe outsideSince;
        for (auto it = moments.begin(); std::next(it) != moments.end(); ++it) {
            const Millis to = *std::next(it);
            const auto level = bathLevel(*it);
            if (level != Level::Limit) {
                outsideSince.reset();
                if (level)
                    add(id, *level, *it, to);
                continue;
            }
            outsideSince = outsideSince.value_or(*it);
            const Millis overrun = std::clamp(*outsideSince + kBathOverrun, *it, to);
            add(id, Level::Limit, *it, overrun);
            add(id, Level::Overrun, overrun, to);
        }
    }

    void reading()
    {
        std::set<Millis> starts = newWater();
        for (const auto& [at, said] : m_day.readings) {
            if (std::holds_alternative<Verdict>(said))
                starts.insert(at);
        }
        starts.insert(m_day.closed);
        for (auto it = starts.begin(); std::next(it) != starts.end(); ++it)
            timed("reading bath", *it, kReading, *it, *std::next(it));
    }

    void nextPull()
    {
        std::set<Millis> moments{m_day.closed};
        for (const auto& [said, start] : m_day.plans)
            moments.insert(said);
        for (const PullLife& pull : m_day.pulls) {
            for (const AmpouleLife& ampoule : pull.ampoules)
                moments.insert(ampoule.out);
        }
        for (auto it = moments.begin(); std::next(it) != moments.end(); ++it) {
            if (const auto start = planned(*it))
                timed("next pull bench", *start, kNextPull, *it, *std::next(it));
        }
    }

    // --- lines ---

    void lineRows(const LineLife& line)
    {
        needle(line);
        std::vector<Millis> starts{line.first};
        starts.insert(starts.end(), line.doseChecks.begin(), line.doseChecks.end());
        for (std::size_t i = 0; i < starts.size(); ++i) {
            const Millis to = i + 1 < starts.size() ? starts[i + 1] : m_day.closed;
            const std::int64_t before = birdsBy(line, starts[i]);
            Millis due = starts[i] + kDoseCheck;
            for (const auto& [at, total] : line.counts) {
                if (at > starts[i] && total - before >= 5000)
                    due = std::min(due, at);
            }
            add("dose check line:" + line.id, Level::Limit, due, to);
        }
    }

    static std::int64_t birdsBy(const LineLife& line, Millis at)
    {
        std::int64_t birds = 0;
        for (const auto& [when, total] : line.counts)
            birds = when <= at ? total : birds;
        return birds;
    }

    void needle(const LineLife& line)
    {
        std::set<Millis> moments{m_day.closed};
        for (const auto& [at, total] : line.counts)
            moments.insert(at);
        moments.insert(line.needles.begin(), line.needles.end());
        for (auto it = moments.begin(); std::next(it) != moments.end(); ++it) {
            Millis changed{};
            for (const Millis at : line.needles)
                changed = at <= *it ? at : changed;
            const auto birds = birdsBy(line, *it) - birdsBy(line, changed);
            const std::string id = "needle line:" + line.id;
            if (birds >= 900)
                add(id,
                    birds >= 1200   ? Level::Overrun
                    : birds >= 1000 ? Level::Limit
                                    : Level::HeadsUp,
                    *it, *std::next(it));
        }
    }

    // --- the station ---

    void station()
    {
        for (const Span& span : m_day.storeFailed)
            add("not recorded station", Level::Limit, span.from, span.to);
        for (const Span& span : m_day.clockStepped)
            add("clock stepped station", Level::HeadsUp, span.from, span.to);
        sound();
        probeLost();
    }

    /// At once where it does not answer, after a while where it answers with faults alone; until it
    /// reads again.
    void probeLost()
    {
        Maybe lost;
        for (const auto& [at, said] : m_day.readings) {
            const auto* fault = std::get_if<ReadingFault>(&said);
            if (!fault) {
                if (lost)
                    add("probe lost station", Level::HeadsUp, *lost, at);
                lost.reset();
                continue;
            }
            const bool gone = *fault == ReadingFault::Lost || *fault == ReadingFault::OpenLine ||
                              *fault == ReadingFault::Empty;
            lost = std::min(lost.value_or(at + kFaultLasts), gone ? at : Millis::max());
        }
        if (lost)
            add("probe lost station", Level::HeadsUp, *lost, m_day.closed);
    }

    /// A start forgets both that sound was proven and that it was lost.
    void sound()
    {
        std::set<Millis> moments{m_day.opened, m_day.closed};
        moments.insert(m_day.soundProven.begin(), m_day.soundProven.end());
        for (const Span& span : m_day.soundLost)
            moments.insert({span.from, span.to});
        for (const Restart& restart : m_day.restarts)
            moments.insert(restart.up);
        bool proven = false, lost = false;
        for (auto it = moments.begin(); std::next(it) != moments.end(); ++it) {
            const auto is = [&](const auto& list) {
                return std::ranges::find(list, *it) != list.end();
            };
            const bool started =
                std::ranges::find(m_day.restarts, *it, &Restart::up) != m_day.restarts.end();
            const bool isLost =
                std::ranges::find(m_day.soundLost, *it, &Span::from) != m_day.soundLost.end();
            const bool isFound =
                std::ranges::find(m_day.soundLost, *it, &Span::to) != m_day.soundLost.end();
            proven = (proven && !started) || is(m_day.soundProven);
            lost = (lost && !started && !isFound && !is(m_day.soundProven)) || isLost;
            if (lost || !proven)
                add("no sound station", lost ? Level::Limit : Level::HeadsUp, *it, *std::next(it));
        }
    }

    /// Nothing is raised while the program is down; what is due then is raised when it is back.
    void leaveOut(const Restart& restart)
    {
        const auto moved = [&](Millis at) {
            return at > restart.down && at < restart.up ? restart.up : at;
        };
        for (auto& [id, periods] : m_periods) {
            for (Period& period : periods)
                period = {period.level, moved(period.from), moved(period.to)};
        }
    }

    const Day& m_day;
    const SlushScale* m_learned;
    Periods m_periods;
};

}  // namespace

Periods tidied(Periods periods)
{
    Periods tidy;
    for (auto& [id, list] : periods) {
        std::ranges::stable_sort(list, {}, &Period::from);
        for (const Period& period : list) {
            auto& kept = tidy[id];
            const bool continues =
                !kept.empty() && kept.back().to == period.from && kept.back().level == period.level;
            if (period.from == period.to)
                continue;
            if (continues)
                kept.back().to = period.to;
            else
                kept.push_back(period);
        }
        if (tidy[id].empty())
            tidy.erase(id);
    }
    return tidy;
}

Periods expectedAlarms(const Day& day, const SlushScale* learned)
{
    return Oracle(day, learned).reckon();
}

}  // namespace bathside::test
