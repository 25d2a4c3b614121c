// What `nextChange` promises, on random benches: nothing in what is due differs before it, and
// something does at it. Time left is not part of it: it runs all the time.

#include <cstdlib>
#include <random>

#include <gtest/gtest.h>

#include "tests/core/alarms/support.h"
#include "tests/support/benches.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

class RandomBench {
public:
    explicit RandomBench(unsigned seed) : m_random(seed), m_maker(card()) {}

    Bench make()
    {
        addPull();
        addBags();
        addBath();
        addLines();
        addStation();
        addHeard();
        return m_maker.bench;
    }

    std::int64_t whole(std::int64_t least, std::int64_t most)
    {
        return std::uniform_int_distribution<std::int64_t>(least, most)(m_random);
    }

private:
    bool chance(int oneIn) { return whole(1, oneIn) == 1; }

    Micros before(Micros longest) { return -Micros(whole(0, longest.count())); }

    template <typename T>
    T oneOf(std::initializer_list<T> list)
    {
        return *(list.begin() + whole(0, static_cast<std::int64_t>(list.size()) - 1));
    }

    std::shared_ptr<const Card> card()
    {
        static const auto other = cardWith(R"({"limits": {
            "bath between pulls": {"overrun_ms": 5000}, "swirl": {"heads_up_ms": 600000},
            "dose check": {"at_ms": 60000}}, "taps": {"hush_in_window_ms": 3000}})");
        return chance(2) ? defaultCard() : other;
    }

    /// Now and then stamped before the machine was started.
    void age(Stamp& stamp)
    {
        if (chance(4))
            stamp = {.wall = stamp.wall,
                     .boot = Micros(whole(0, 1'000'000'000'000)),
                     .bootId = kLastBoot};
    }

    void addPull()
    {
        if (chance(4))
            return;
        const int count = static_cast<int>(whole(1, 4));
        for (int no = 1; no <= count; ++no) {
            const AmpouleRef ref{1, no};
            const Micros out = before(120s);
            m_maker.out(ref, out);
            if (chance(2))
                m_maker.step(ref, Step::Bath, out / 2);
            for (auto& step : m_maker.ampouleOf(ref).steps) {
                if (step)
                    age(step->at);
            }
            if (chance(5))
                m_maker.lost(ref, LossReason::Broken, 0s);
        }
        if (chance(2))
            m_maker.bathAtPull(
                1, oneOf<std::optional<Verdict>>({{}, Verdict::Outside, Verdict::Undecided}));
        if (std::ranges::none_of(m_maker.pullOf(1).ampoules, &Ampoule::isOpen))
            m_maker.closePull(before(15s));
    }

    void addBags()
    {
        for (const char* id : {"B1", "B2", "B3"}) {
            if (chance(2))
                continue;
            const Micros started = before(65min);
            m_maker.bag(id, started);
            if (chance(3))
                m_maker.bagOf(id).temperature = MilliCelsius{whole(15'000, 30'000)};
            if (chance(2))
                m_maker.mixed(id, started, before(16min));
            if (chance(5))
                m_maker.bagOf(id).holds = {BagHold{momentAt(0s), HoldReason::Leak, {}}};
            if (m_maker.bagOf(id).firstDiluent)
                age(m_maker.bagOf(id).firstDiluent->at);
        }
    }

    void addBath()
    {
        const auto count = whole(0, 4);
        for (std::int64_t i = count; i > 0; --i)
            m_maker.reading(oneOf({Verdict::Inside, Verdict::Undecided, Verdict::Outside}),
                            -i * 3min + before(3min));
        if (chance(6))
            m_maker.faulty(ReadingFault::Lost, 0s);
        m_maker.bench.waterSince = at(before(30min));
        if (chance(2))
            m_maker.bench.nextPull = at(before(10min) + 20min).wall;
    }

    void addLines()
    {
        for (const char* id : {"A", "B"}) {
            if (chance(2))
                m_maker.line(id, before(3h), whole(0, 6000));
        }
    }

    void addStation()
    {
        Bench& bench = m_maker.bench;
        bench.last = at(before(60s));
        bench.clockTrusted = !chance(6);
        bench.soundProven = !chance(6);
        bench.soundLost = chance(10);
        if (chance(10))
            bench.storeFailed = StoreFault::NoSpace;
        if (chance(10))
            bench.clockStepped = at(before(60s));
    }

    void addHeard()
    {
        for (const Alarm& alarm : alarms(m_maker.bench, at(0s)).due) {
            if (chance(2))
                m_maker.raised(alarm.id, oneOf({Level::HeadsUp, alarm.level}), at(before(60s)),
                               at(before(130s)));
        }
    }

    std::mt19937 m_random;
    BenchMaker m_maker;
};

/// Wall time has whole ms: an instant reckoned from it moves by less than one.
bool isSame(const Alarm& a, const Alarm& b)
{
    const bool fromWall = !a.certain || a.cause == AlarmCause(LimitName::NextPull) ||
                          a.cause == AlarmCause(LimitName::BathBetweenPulls);
    const Micros moved = a.since < b.since ? b.since - a.since : a.since - b.since;
    return a.id == b.id && a.level == b.level && a.hushed == b.hushed && a.certain == b.certain &&
           a.birdsLeft == b.birdsLeft && (fromWall ? moved < 1ms : moved == 0us);
}

std::vector<Alarm> byId(std::vector<Alarm> due)
{
    std::ranges::sort(due, {}, &Alarm::id);
    return due;
}

/// Their order follows from level and `since`: two within the same ms may change places.
bool isSame(const Alarms& a, const Alarms& b)
{
    return std::ranges::equal(byId(a.due), byId(b.due),
                              [](const Alarm& x, const Alarm& y) { return isSame(x, y); });
}

std::string described(const Alarms& state)
{
    std::string text;
    for (const Alarm& alarm : state.due)
        text += alarm.id + " " + std::string(nameOf(alarm.level)) +
                (alarm.hushed ? " hushed" : "") + " since " + std::to_string(alarm.since.count()) +
                "\n";
    return text;
}

class NextChange : public testing::Test {
protected:
    /// Looks at `now`, then between it and the next change, then at that; says where that is.
    std::optional<Stamp> step(const Bench& bench, const Stamp& now, RandomBench& random)
    {
        const Alarms here = alarms(bench, now);
        const Micros free = here.nextChange ? *here.nextChange - now.boot : Micros(48h);
        if (free <= 0us) {
            ADD_FAILURE() << "the next change is not after now";
            return std::nullopt;
        }
        for (const Micros later : {free - 1us, Micros(random.whole(0, free.count() - 1)),
                                   Micros(random.whole(0, free.count() - 1))}) {
            const Alarms then = alarms(bench, shifted(now, later));
            EXPECT_TRUE(isSame(here, then)) << described(here) << "then\n" << described(then);
        }
        if (!here.nextChange)
            return std::nullopt;
        const Stamp next = shifted(now, free);
        EXPECT_FALSE(isSame(here, alarms(bench, next))) << described(here);
        ++m_changes;
        return next;
    }

    int m_changes = 0;
};

TEST_F(NextChange, isNeverEarlyAndNeverLateOnRandomBenches)
{
    const unsigned benches = std::getenv("BATHSIDE_LONG") ? 100'000 : 3'000;
    for (unsigned seed = 1; seed <= benches && !HasFailure(); ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        RandomBench random(seed);
        const Bench bench = random.make();
        std::optional<Stamp> now = at(0s);
        for (int changes = 0; now && !HasFailure(); ++changes) {
            ASSERT_LT(changes, 200) << "it must come to rest";
            now = step(bench, *now, random);
        }
    }
    EXPECT_GT(m_changes, static_cast<int>(benches));  // the benches were not all quiet
}

TEST_F(NextChange, isTheSameForTheLoudspeaker)
{
    for (unsigned seed = 1; seed <= 300; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        const auto bench = std::make_shared<const Bench>(RandomBench(seed).make());
        const auto source = soundSource(bench);
        Stamp now = at(0s);
        for (Sounding here = source->at(now); here.nextChange; here = source->at(now)) {
            ASSERT_GT(*here.nextChange, now.boot);
            const Sounding then = source->at(shifted(now, *here.nextChange - now.boot - 1us));
            EXPECT_EQ(then.level, here.level);
            EXPECT_EQ(then.alarm, here.alarm);
            now = shifted(now, *here.nextChange - now.boot);
        }
    }
}

}  // namespace
}  // namespace bathside::test
