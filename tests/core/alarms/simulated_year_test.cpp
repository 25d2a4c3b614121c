// A year of shifts through the one service, on a clock of the test's own: every alarm that the
// oracle reckons is raised and ended at that very ms (none missed), and no other is (none false).
// (Spec: alarms, last line.) Ten years where BATHSIDE_LONG is set.

#include <cstdlib>
#include <memory>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/simulated_clock.h"
#include "core/bath/learned.h"
#include "core/station/station.h"
#include "tests/core/alarms/oracle.h"
#include "tests/support/cards.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

const WallTime kFirstMorning(Millis(1'772'668'800'000));  // 2026-03-05T00:00:00Z

class Keeper final : public Recorder {
public:
    void record(std::vector<Event> added) override
    {
        for (Event& event : added) {
            if (std::holds_alternative<ShiftOpened>(event.fact))
                events.clear();
            events.push_back(std::move(event));
        }
    }

    std::vector<Event> events;  // since the shift opened
};

/// What the record has of alarms, as periods on the day's clock.
class Logged {
public:
    void note(const Event& event, Millis at)
    {
        if (const auto* raised = std::get_if<AlarmRaised>(&event.fact)) {
            end(raised->alarm, at);
            m_standing[raised->alarm] = {raised->level, at, at};
        } else if (const auto* ended = std::get_if<AlarmEnded>(&event.fact)) {
            end(ended->alarm, at);
        }
    }

    Periods take()
    {
        EXPECT_TRUE(m_standing.empty()) << m_standing.begin()->first << " stands overnight";
        return tidied(std::exchange(m_periods, {}));
    }

private:
    void end(const std::string& alarm, Millis at)
    {
        const auto found = m_standing.find(alarm);
        if (found == m_standing.end())
            return;
        m_periods[alarm].push_back({found->second.level, found->second.from, at});
        m_standing.erase(found);
    }

    std::map<std::string, Period> m_standing;
    Periods m_periods;
};

class SimulatedYear : public testing::Test {
protected:
    SimulatedYear()
    {
        start({});
        say(AdoptCard{cardWith(kYearsCard)->document()});
        say(thermometer());
        m_carried = m_keeper.events;
    }

    /// Runs one day and says what the record has of it.
    Periods run(const Day& day, Millis morning)
    {
        m_morning = morning;
        until(morning);
        restart({{}, {}, morning.count() % 3 == 0});
        auto restart = day.restarts.begin();
        for (const Entry& entry : scriptOf(day, kFirstMorning + morning)) {
            if (restart != day.restarts.end() && restart->up < entry.at)
                this->restart(*restart++);
            until(morning + entry.at);
            say(entry.intent);
        }
        until(morning + day.closed + 6h);
        return m_logged.take();
    }

    /// By what the record has, how the cue for slush goes; null: by the card.
    [[nodiscard]] const SlushScale* cue() const
    {
        return m_learned ? m_learned->cue.get() : nullptr;
    }
    [[nodiscard]] int cuesLearned() const { return m_cuesLearned; }

private:
    /// Since the first morning, as the wall clock has it.
    [[nodiscard]] Millis time() const { return m_clock.now().wall - kFirstMorning; }

    /// Lets time pass, as the program does: from one next change to the next.
    void until(Millis at)
    {
        const BootTime then = m_clock.now().boot + (at - time());
        for (auto next = m_station->nextChange(); next && *next <= then;
             next = m_station->nextChange()) {
            ASSERT_GT(*next, m_clock.now().boot) << "time stands still";
            m_clock.runTo(*next);
            m_station->tick();
            listen();
        }
        m_clock.runTo(then);
    }

    void say(const Intent& intent)
    {
        const auto said = m_station->handle(
            intent, {.place = {}, .at = m_clock.now(), .byReceipt = false, .id = {}});
        EXPECT_TRUE(said) << nameOf(intent)
                          << " is refused: " << static_cast<int>(said.error().code) << " at "
                          << (time() - m_morning).count();
        listen();
    }

    void start(State state)
    {
        m_station = std::make_unique<Station>(std::move(state), m_clock, m_keeper,
                                              [this] { return TapId{std::to_string(++m_taps)}; });
        say(StartStation{
            .version = "test", .head = {}, .rehearsal = false, .synchronised = true, .offset = {}});
    }

    /// From what the record has, like a start after SIGKILL or a power cut.
    void restart(const Restart& restart)
    {
        until(m_morning + restart.down);
        if (restart.powerCut)
            m_clock.restart(kFirstMorning + m_morning + restart.up);
        else
            m_clock.runTo(kFirstMorning + m_morning + restart.up);
        const auto& events = m_keeper.events;
        const bool inShift =
            !events.empty() && std::holds_alternative<ShiftOpened>(events.front().fact);
        start(restored(m_carried, inShift ? events : std::vector<Event>{}));
    }

    void listen()
    {
        auto& events = m_keeper.events;
        const auto isNew = [this](const Event& event) { return event.seq > m_heard; };
        for (auto it = std::ranges::find_if(events, isNew); it != events.end(); ++it)
            note(*it);
        if (!events.empty())
            m_heard = events.back().seq;
    }

    void note(const Event& event)
    {
        m_logged.note(event, time() - m_morning);
        if (const auto* carried = std::get_if<BathCarried>(&event.fact)) {
            auto learned = bathLearnedFrom(carried->document.text);
            ASSERT_TRUE(learned) << learned.error().key << ": " << learned.error().found
                                 << ", expected " << learned.error().expected << " in "
                                 << carried->document.text;
            m_learned = std::move(*learned);
            m_cuesLearned += m_learned->cue != nullptr;
        }
    }

    SimulatedClock m_clock{kFirstMorning};
    Keeper m_keeper;
    std::unique_ptr<Station> m_station;
    std::vector<Event> m_carried;
    Logged m_logged;
    std::optional<BathLearned> m_learned;
    int m_cuesLearned = 0;
    Millis m_morning{};
    Seq m_heard = 0;
    int m_taps = 0;
};

std::string described(const std::vector<Period>& periods)
{
    std::string text;
    for (const Period& period : periods)
        text += " " + std::string(nameOf(period.level)) + " [" +
                std::to_string(period.from.count()) + ", " + std::to_string(period.to.count()) +
                ")";
    return text.empty() ? " never" : text;
}

/// How many periods the first has that the second lacks.
int lacking(const Periods& periods, const Periods& in)
{
    int count = 0;
    for (const auto& [id, list] : periods) {
        const auto other = in.find(id);
        for (const Period& period : list)
            count += other == in.end() ||
                     std::ranges::find(other->second, period) == other->second.end();
    }
    return count;
}

std::string difference(const Periods& expected, const Periods& logged)
{
    std::string text;
    std::set<std::string> ids;
    for (const Periods* periods : {&expected, &logged}) {
        for (const auto& [id, list] : *periods)
            ids.insert(id);
    }
    const auto in = [](const Periods& periods, const std::string& id) {
        const auto found = periods.find(id);
        return found == periods.end() ? std::vector<Period>{} : found->second;
    };
    for (const std::string& id : ids) {
        if (in(expected, id) != in(logged, id))
            text += id + "\n  expected" + described(in(expected, id)) + "\n  logged  " +
                    described(in(logged, id)) + "\n";
    }
    return text;
}

/// "thaw overrun": so that it can be seen that nothing of the table was left out.
void gather(std::set<std::string>& kinds, const Periods& periods)
{
    for (const auto& [id, list] : periods) {
        for (const Period& period : list) {
            const auto colon = id.find(':');
            const auto cause = id.substr(0, id.rfind(' ', colon));
            kinds.insert(cause + ": " + std::string(nameOf(period.level)));
        }
    }
}

void gather(std::set<std::string>& kinds, const Day& day)
{
    for (const Restart& restart : day.restarts) {
        const bool inPull = std::ranges::any_of(day.pulls, [&](const PullLife& pull) {
            return pull.first() < restart.down && restart.up < pull.closed();
        });
        kinds.insert(std::string(restart.powerCut ? "machine" : "program") +
                     (inPull ? " in mid-pull" : " between pulls"));
    }
}

TEST_F(SimulatedYear, missesNoAlarmAndRaisesNoFalseOne)
{
    const unsigned days = std::getenv("BATHSIDE_LONG") ? 3650 : 365;
    int alarms = 0, missed = 0, wrong = 0;
    std::set<std::string> kinds, restarts;
    for (unsigned day = 1; day <= days && !HasFailure(); ++day) {
        SCOPED_TRACE("day " + std::to_string(day));
        const Day life = dayFrom(day);
        const Periods logged = run(life, day * 24h);
        const Periods expected = expectedAlarms(life, cue());
        missed += lacking(expected, logged);
        wrong += lacking(logged, expected);
        for (const auto& [id, list] : expected)
            alarms += static_cast<int>(list.size());
        gather(kinds, expected);
        gather(restarts, life);
        EXPECT_EQ(expected, logged) << difference(expected, logged);
    }
    EXPECT_EQ(missed, 0);
    EXPECT_EQ(wrong, 0);
    EXPECT_GT(cuesLearned(), 0) << "no shift was told by what the shifts before taught";
    std::cout << alarms << " alarms in " << days << " shifts: " << missed << " missed, " << wrong
              << " false\n";
    EXPECT_THAT(restarts, testing::ElementsAre("machine between pulls", "machine in mid-pull",
                                               "program between pulls", "program in mid-pull"));
    EXPECT_THAT(
        kinds,
        testing::ElementsAre(
            "bath at pull: heads-up", "bath at pull: limit", "bath between pulls: heads-up",
            "bath between pulls: limit", "bath between pulls: overrun", "clock stepped: heads-up",
            "diluent: limit", "dose check: limit", "exposure: heads-up", "exposure: limit",
            "exposure: overrun", "in use: heads-up", "in use: limit", "in use: overrun",
            "needle: heads-up", "needle: limit", "needle: overrun", "next pull: heads-up",
            "next pull: limit", "next pull: overrun", "no sound: heads-up", "no sound: limit",
            "not recorded: limit", "probe lost: heads-up", "reading: heads-up", "reading: limit",
            "reading: overrun", "swirl: heads-up", "swirl: limit", "swirl: overrun",
            "thaw: heads-up", "thaw: limit", "thaw: overrun"));
}

}  // namespace
}  // namespace bathside::test
