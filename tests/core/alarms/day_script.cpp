#include <algorithm>

#include "tests/core/alarms/day.h"
#include "tests/support/cards.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

class Script {
public:
    Script(const Day& day, WallTime morning) : m_day(day), m_morning(morning) {}

    std::vector<Entry> write() &&
    {
        open();
        for (const BagLife& bag : m_day.bags)
            add(bag);
        for (const PullLife& pull : m_day.pulls) {
            for (const AmpouleLife& ampoule : pull.ampoules)
                add(ampoule, pull.bag);
        }
        for (const LineLife& line : m_day.lines)
            add(line);
        addBathAndPlan();
        addStation();
        add(m_day.closed, CloseShift{});
        std::ranges::stable_sort(m_entries, {}, &Entry::at);
        return std::move(m_entries);
    }

private:
    void add(Millis at, Intent intent) { m_entries.push_back({at, std::move(intent)}); }

    void open()
    {
        add(m_day.opened, OpenShift{"Europe/Madrid", {"AB"}});
        for (const Check& check : defaultCard()->content().checks) {
            if (check.id != kAlarmHeard)
                add(m_day.opened, RecordCheck{check.id, true, {}});
        }
        for (const Millis at : m_day.soundProven)
            add(at, RecordCheck{kAlarmHeard, true, "bench"});
    }

    void add(const BagLife& bag)
    {
        const BagId id{bag.id};
        add(bag.started, StartBag{id, {400'000}, {"D1"}, bag.temperature});
        if (bag.mixed)
            add(*bag.mixed, MixBag{id});
        if (bag.hung)
            add(bag.hung->first, HangBag{id, {bag.hung->second}});
        for (const Millis at : bag.swirls)
            add(at, SwirlBag{id});
        if (bag.held)
            add(bag.held->from, HoldBag{id, HoldReason::Leak, {}});
        if (bag.held && bag.held->to < bag.down)
            add(bag.held->to, ReleaseBag{id, {"CD"}, "looked at"});
        add(bag.down, TakeBagDown{id, DownReason::Finished, {}});
    }

    void add(const AmpouleLife& ampoule, const std::string& bag)
    {
        const int no = ampoule.ref.no;
        add(ampoule.out, TakeOut{{{no, {ampoule.component}, {"L1"}}}});
        const auto move = [&](const std::optional<Millis>& at, Step step) {
            if (at)
                add(*at, MoveOn{step, {no}, {}});
        };
        move(ampoule.bath, Step::Bath);
        move(ampoule.opened, Step::Opened);
        move(ampoule.diluent, Step::Diluent);
        if (ampoule.lost)
            add(ampoule.end, LoseAmpoule{no, *ampoule.lost});
        else
            add(ampoule.end, MoveOn{Step::Bagged, {no}, BagId{bag}});
    }

    void add(const LineLife& line)
    {
        const LineId id{line.id};
        for (const auto& [at, total] : line.counts)
            add(at, CountBirds{id, total});
        for (const Millis at : line.needles)
            add(at, ChangeNeedle{id});
        for (const Millis at : line.doseChecks)
            add(at, CheckDose{id, true});
    }

    static TakeReading reading(const std::variant<Verdict, ReadingFault>& said)
    {
        if (const auto* fault = std::get_if<ReadingFault>(&said))
            return {thermometer().probe, *fault};
        switch (std::get<Verdict>(said)) {
            case Verdict::Inside:
                return {thermometer().probe, MilliCelsius{28'000}};
            case Verdict::Undecided:
                return {thermometer().probe, MilliCelsius{29'000}};
            case Verdict::Outside:
                return {thermometer().probe, MilliCelsius{30'500}};
        }
        return {};
    }

    void addBathAndPlan()
    {
        for (const auto& [at, said] : m_day.readings)
            add(at, reading(said));
        for (const Millis at : m_day.newWater)
            add(at, ChangeWater{"dirty"});
        for (const auto& [at, start] : m_day.plans)
            add(at, PlanPull{m_morning + start});
    }

    void addStation()
    {
        for (const Span& span : m_day.soundLost) {
            add(span.from, LoseSound{"bench"});
            add(span.to, FindSound{"bench"});
        }
        for (const Span& span : m_day.storeFailed) {
            add(span.from, NoteStoreFailure{StoreFault::NoSpace, 28, {}});
            add(span.to, NoteStoreRecovery{1, {}});
        }
        for (const Span& span : m_day.clockStepped) {
            add(span.from, NoteClockStep{Millis(1500)});
            add(span.to, HearAlarm{"clock stepped station"});
        }
    }

    const Day& m_day;
    WallTime m_morning;
    std::vector<Entry> m_entries;
};

}  // namespace

std::vector<Entry> scriptOf(const Day& day, WallTime morning)
{
    return Script(day, morning).write();
}

DescribeProbe thermometer()
{
    return {{"glass 1"}, R"({"id": "glass 1", "name": "glass thermometer", "certificate": "K-1",
        "resolution_c": 0.1, "drift_c": 0.02, "calibrated": "2026-01-01", "due": "2099-01-01",
        "points": [{"indicated_c": 0, "reference_c": 0, "u_c": 0.2},
                   {"indicated_c": 50, "reference_c": 50, "u_c": 0.2}]})"};
}

}  // namespace bathside::test
