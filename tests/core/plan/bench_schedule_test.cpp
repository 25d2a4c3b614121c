#include "core/plan/bench_schedule.h"

#include <algorithm>
#include <random>

#include <gtest/gtest.h>

namespace bathside::plan {
namespace {

using namespace std::chrono_literals;

using Starts = std::vector<DayTime>;

/// Every order of the bags, each start as late as its order lets it be: whatever schedule there is,
/// one of these is nowhere earlier. The latest k-th start of all of them, for every k.
class EveryOrder {
public:
    EveryOrder(const std::vector<StartWindow>& windows, Millis length, std::size_t preparers)
        : m_windows(windows), m_length(length), m_preparers(preparers), m_isMade(windows.size())
    {
        goOn();
    }

    [[nodiscard]] bool isPossible() const { return m_found; }
    [[nodiscard]] const Starts& latest() const { return m_latest; }  // the last start first

private:
    void goOn()
    {
        if (m_starts.size() == m_windows.size())
            return keep();
        for (std::size_t bag = 0; bag < m_windows.size(); ++bag) {
            DayTime start = m_windows[bag].latest;
            if (!m_starts.empty())
                start = std::min(start, m_starts.back());
            if (m_starts.size() >= m_preparers)
                start = std::min(start, m_starts[m_starts.size() - m_preparers] - m_length);
            if (m_isMade[bag] || start < m_windows[bag].earliest)
                continue;
            m_isMade[bag] = true;
            m_starts.push_back(start);
            goOn();
            m_starts.pop_back();
            m_isMade[bag] = false;
        }
    }

    void keep()
    {
        m_found = true;
        m_latest.resize(m_starts.size(), DayTime::min());
        for (std::size_t k = 0; k < m_starts.size(); ++k)
            m_latest[k] = std::max(m_latest[k], m_starts[k]);
    }

    const std::vector<StartWindow>& m_windows;
    Millis m_length;
    std::size_t m_preparers;
    std::vector<bool> m_isMade;
    Starts m_starts;
    Starts m_latest;
    bool m_found = false;
};

std::vector<StartWindow> randomWindows(std::mt19937& random)
{
    std::vector<StartWindow> windows(1 + random() % 6);
    if (random() % 20 == 0)
        windows.resize(8);
    const auto span = 5 + random() % 40;
    for (StartWindow& window : windows) {
        window.earliest = Millis(random() % span) - 10ms;
        window.latest = window.earliest + Millis(random() % (1 + span / 2));
    }
    return windows;
}

void expectSound(const std::vector<BenchSlot>& slots, const std::vector<StartWindow>& windows,
                 Millis length, std::size_t preparers)
{
    std::vector<int> times(windows.size());
    for (std::size_t k = 0; k < slots.size(); ++k) {
        ++times[slots[k].bag];
        EXPECT_LE(windows[slots[k].bag].earliest, slots[k].start);
        EXPECT_GE(windows[slots[k].bag].latest, slots[k].start);
        EXPECT_EQ(slots[k].preparer, k % preparers);
        EXPECT_LE(slots[k - std::min<std::size_t>(k, 1)].start, slots[k].start);
        EXPECT_TRUE(k < preparers || slots[k - preparers].start + length <= slots[k].start);
    }
    EXPECT_EQ(std::ranges::count(times, 1), static_cast<std::ptrdiff_t>(windows.size()));
}

TEST(BenchScheduleTest, isFoundWheneverThereIsOneAndAsLateAsAnyForEveryStart)
{
    std::mt19937 random(1);
    int possible = 0;
    int impossible = 0;
    for (int round = 0; round < 6000; ++round) {
        const auto windows = randomWindows(random);
        const Millis length(random() % 12);
        const std::size_t preparers = 1 + random() % 3;
        const EveryOrder every(windows, length, preparers);
        const auto slots = latestSchedule(windows, length, preparers);
        ASSERT_EQ(slots.has_value(), every.isPossible()) << round;
        ++(slots ? possible : impossible);
        if (!slots)
            continue;
        expectSound(*slots, windows, length, preparers);
        Starts starts;
        for (const BenchSlot& slot : *slots)
            starts.insert(starts.begin(), slot.start);
        ASSERT_EQ(starts, every.latest()) << round;
    }
    EXPECT_GT(possible, 1000);
    EXPECT_GT(impossible, 1000);
}

TEST(BenchScheduleTest, needsTheFewestPreparersWithWhomItCanBe)
{
    std::mt19937 random(2);
    for (int round = 0; round < 2000; ++round) {
        const auto windows = randomWindows(random);
        const Millis length(random() % 12);
        std::size_t fewest = 1;
        while (!EveryOrder(windows, length, fewest).isPossible())
            ++fewest;
        ASSERT_EQ(preparersNeeded(windows, length), fewest) << round;
    }
}

// By hand: the wide window holds both, but only if the narrow one comes first; a machine that takes
// the wide one as soon as it can misses the narrow one.
TEST(BenchScheduleTest, leavesRoomForWhatIsUrgent)
{
    const std::vector<StartWindow> windows{{0min, 40min}, {5min, 8min}};
    const auto slots = latestSchedule(windows, 10min, 1);
    ASSERT_TRUE(slots);
    EXPECT_EQ(*slots, (std::vector<BenchSlot>{{1, 0, 8min}, {0, 0, 40min}}));
}

TEST(BenchScheduleTest, givesTiesToTheBagThatStandsFirstAndPreparersInTurn)
{
    const std::vector<StartWindow> windows{{0min, 30min}, {0min, 30min}, {0min, 20min}};
    const auto slots = latestSchedule(windows, 10min, 2);
    ASSERT_TRUE(slots);
    EXPECT_EQ(*slots, (std::vector<BenchSlot>{{2, 0, 20min}, {0, 1, 30min}, {1, 0, 30min}}));
}

TEST(BenchScheduleTest, namesABagThatCannotBeMet)
{
    const std::vector<StartWindow> windows{{0min, 60min}, {10min, 12min}, {11min, 12min}};
    const auto slots = latestSchedule(windows, 10min, 1);
    ASSERT_FALSE(slots);
    EXPECT_NE(slots.error(), 0U);
    EXPECT_EQ(preparersNeeded(windows, 10min), 2U);
}

TEST(BenchScheduleTest, hasNothingToDoWithoutBags)
{
    EXPECT_EQ(latestSchedule({}, 10min, 1), std::vector<BenchSlot>{});
    EXPECT_EQ(preparersNeeded({}, 10min), 1U);
}

}  // namespace
}  // namespace bathside::plan
