#include "core/trail/store/store_thread.h"

#include <latch>

#include <gmock/gmock.h>

#include "core/trail/store/direct_recorder.h"
#include "core/trail/store/disk_files.h"
#include "tests/core/trail/store/support.h"
#include "tests/support/memory_files.h"
#include "tests/support/temp_folder.h"
#include "tests/support/trail_days.h"

namespace bathside::store {
namespace {

using namespace std::chrono_literals;
using Health = RecordState::Health;
using test::TempFolder;
using test::TrailDays;

constexpr Millis kLong = 60s;  // never waited for unless something is wrong

// What was reported, and a way to wait for a state instead of for a time.
class Reports {
public:
    void take(const RecordState& state)
    {
        const std::lock_guard lock(m_mutex);
        m_all.push_back(state);
        m_changed.notify_all();
    }

    bool waitFor(const std::function<bool(const RecordState&)>& wanted)
    {
        std::unique_lock lock(m_mutex);
        return m_changed.wait_for(lock, kLong, [&] { return std::ranges::any_of(m_all, wanted); });
    }

    std::vector<RecordState> all()
    {
        const std::lock_guard lock(m_mutex);
        return m_all;
    }

    StoreThread::Report report()
    {
        return [this](const RecordState& state) { take(state); };
    }

private:
    std::mutex m_mutex;
    std::condition_variable m_changed;
    std::vector<RecordState> m_all;
};

class StoreThreadTest : public testing::Test {
protected:
    std::unique_ptr<StoreThread> started(StoreThread::Settings settings = {.station = {"bench 1"}})
    {
        auto files = std::make_unique<DiskFiles>(DiskFiles::Places{file(), {m_folder.path()}});
        auto thread = std::make_unique<StoreThread>(std::move(files), settings, m_reports.report());
        EXPECT_TRUE(thread->start());
        return thread;
    }

    std::filesystem::path file() const { return m_folder / "trail.db"; }

    std::vector<Event> tap()
    {
        Event event = m_days.event(NoteMade{"a tap"});
        m_days.entry(event.fact);  // counts on
        return {std::move(event)};
    }

    TempFolder m_folder;
    TrailDays m_days;
    Reports m_reports;
};

TEST_F(StoreThreadTest, recordsInOrderAndTellsWhatIsDurable)
{
    {
        const auto thread = started();
        for (int i = 0; i < 50; ++i)
            thread->record(tap());
        ASSERT_TRUE(thread->flush(kLong));
        EXPECT_EQ(thread->state().recorded, 50);
        EXPECT_EQ(thread->state().health, Health::Recorded);
        EXPECT_TRUE(
            m_reports.waitFor([](const RecordState& state) { return state.recorded == 50; }));
    }
    const auto trail = opened(file());
    EXPECT_EQ(trail->head().seq, 50);
    Seq last = 0;
    for (const RecordState& state : m_reports.all()) {
        EXPECT_GE(state.recorded, last) << "what was recorded stays recorded";
        last = state.recorded;
    }
}

TEST_F(StoreThreadTest, whatWaitsIsStoredBeforeItEnds)
{
    {
        const auto thread = started();
        for (int i = 0; i < 500; ++i)
            thread->record(tap());
    }
    EXPECT_EQ(opened(file())->head().seq, 500);
}

TEST_F(StoreThreadTest, goesOnWhereTheTrailEnds)
{
    {
        const auto thread = started();
        thread->record(tap());
    }
    auto files = std::make_unique<DiskFiles>(DiskFiles::Places{file(), {}});
    StoreThread thread(std::move(files), {.station = {"bench 1"}}, {});
    EXPECT_EQ(thread.start()->seq, 1);
}

TEST_F(StoreThreadTest, saysWhyItCannotStart)
{
    const auto held = opened(file());
    auto files = std::make_unique<DiskFiles>(DiskFiles::Places{file(), {}});
    const DiskFiles& kept = *files;
    StoreThread thread(std::move(files), {.station = {"bench 1"}}, {});
    const auto head = thread.start();
    ASSERT_FALSE(head);
    EXPECT_EQ(head.error().fault, StoreFault::InUse);
    EXPECT_EQ(kept.refusal()->trouble.fault, StoreFault::InUse);
    EXPECT_EQ(
        thread.ask([](TrailDb& trail) { return openingOfLastShift(trail); }).get().error().fault,
        StoreFault::InUse)
        << "and what is asked of it is answered";
}

TEST_F(StoreThreadTest, readsBetweenTheTaps)
{
    const auto thread = started();
    for (int i = 0; i < 100; ++i)
        thread->record(tap());
    const auto entries = thread->ask([](TrailDb& trail) { return entriesFrom(trail, 1); }).get();
    ASSERT_TRUE(entries);
    EXPECT_EQ(entries->size(), 100U) << "what was handed over before is stored before";
}

TEST_F(StoreThreadTest, readsRangesInSlices)
{
    const auto thread = started();
    for (int i = 0; i < 40; ++i)
        thread->record(tap());
    std::vector<Seq> seqs;
    std::vector<std::size_t> slices;
    std::promise<bool> done;
    thread->readSlices(
        {{3, 14}, {20, 20}, {30, 33}}, 5,
        [&](std::vector<Entry> entries) {
            slices.push_back(entries.size());
            for (const Entry& entry : entries)
                seqs.push_back(entry.seq);
        },
        [&](Result<void, StoreTrouble> result) { done.set_value(result.has_value()); });
    ASSERT_TRUE(done.get_future().get());
    EXPECT_THAT(slices, testing::ElementsAre(5, 5, 2, 1, 4));
    EXPECT_THAT(seqs,
                testing::ElementsAre(3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 20, 30, 31, 32, 33));
}

TEST_F(StoreThreadTest, aTapComesBeforeTheNextSlice)
{
    const auto thread = started();
    std::latch begun(1);
    std::latch queued(1);
    std::promise<Seq> seen;
    thread->run([&](TrailDb&) {
        begun.count_down();
        queued.wait();
    });
    thread->run([&](TrailDb& trail) { seen.set_value(trail.head().seq); });
    begun.wait();
    thread->record(tap());
    queued.count_down();
    EXPECT_EQ(seen.get_future().get(), 1);
}

TEST_F(StoreThreadTest, copiesWhileItRuns)
{
    const auto thread = started();
    thread->record(tap());
    ASSERT_TRUE(thread->copyTo(m_folder / "copy.db").get());
    thread->record(tap());
    EXPECT_EQ(opened(m_folder / "copy.db", Mode::ReadOnly)->head().seq, 1);
}

TEST_F(StoreThreadTest, theLogIsEmptiedWhenItIsQuiet)
{
    const auto thread = started({.station = {"bench 1"}, .idle = 1ms});
    for (int i = 0; i < 200; ++i)
        thread->record(tap());
    ASSERT_TRUE(thread->flush(kLong));
    const auto logPages = [&] {
        return *thread
                    ->ask([](TrailDb& trail) -> Result<int, StoreTrouble> {
                        return trail.connection().logPages();
                    })
                    .get();
    };
    while (logPages() > 100)  // until it is; the test's own time is the bound
        std::this_thread::yield();
    EXPECT_EQ(thread->state().health, Health::Recorded);
}

// --- a disk that hangs, and one that fails, in memory ---

// Holds every append up until it is let through.
class SlowFiles final : public TrailFiles {
public:
    explicit SlowFiles(std::shared_future<void> gate, test::MemoryDisk& disk)
        : m_gate(std::move(gate)), m_files(disk)
    {
    }

    Result<std::unique_ptr<TrailStore>, StoreTrouble> openTrail() override
    {
        auto store = m_files.openTrail();
        if (!store)
            return store;
        return std::make_unique<Slow>(m_gate, std::move(*store));
    }
    Result<Spool, StoreTrouble> makeSpool(const Head& after) override
    {
        return m_files.makeSpool(after);
    }
    std::vector<std::string> unmerged() override { return m_files.unmerged(); }
    Result<Spool, StoreTrouble> openSpool(const std::string& name) override
    {
        return m_files.openSpool(name);
    }
    void markMerged(const std::string& name) override { m_files.markMerged(name); }

private:
    class Slow final : public TrailStore {
    public:
        Slow(std::shared_future<void> gate, std::unique_ptr<TrailStore> store)
            : m_gate(std::move(gate)), m_store(std::move(store))
        {
        }
        Head head() const override { return m_store->head(); }
        Result<void, StoreTrouble> append(std::span<const Entry> entries) override
        {
            m_gate.wait();
            return m_store->append(entries);
        }
        Result<void, StoreTrouble> read(
            Seq from, Seq to, const std::function<bool(const Entry&)>& take) const override
        {
            return m_store->read(from, to, take);
        }

    private:
        std::shared_future<void> m_gate;
        std::unique_ptr<TrailStore> m_store;
    };

    std::shared_future<void> m_gate;
    test::MemoryFiles m_files;
};

TEST_F(StoreThreadTest, aDiskThatHangsIsToldAsBehindAndHoldsNoTapBack)
{
    test::MemoryDisk disk;
    std::promise<void> gate;
    StoreThread thread(std::make_unique<SlowFiles>(gate.get_future().share(), disk),
                       {.station = {"bench 1"}, .patience = 5ms}, m_reports.report());
    ASSERT_TRUE(thread.start());
    for (int i = 0; i < 3; ++i)
        thread.record(tap());  // returns, although nothing can be stored
    EXPECT_TRUE(
        m_reports.waitFor([](const RecordState& state) { return state.health == Health::Behind; }));
    EXPECT_EQ(thread.state().recorded, 0);
    EXPECT_EQ(thread.state().waiting, 3);
    gate.set_value();
    EXPECT_TRUE(thread.flush(kLong));
    EXPECT_TRUE(m_reports.waitFor([](const RecordState& state) { return state.recorded == 3; }));
    EXPECT_EQ(thread.state().health, Health::Recorded);
}

TEST_F(StoreThreadTest, aTrailThatFailsIsTriedAgainAndToldAllTheWay)
{
    test::MemoryDisk disk;
    StoreThread thread(std::make_unique<test::MemoryFiles>(disk),
                       {.station = {"bench 1"}, .retryEvery = 1ms}, m_reports.report());
    ASSERT_TRUE(thread.start());
    disk.appends = {test::Outcome::Lands};
    thread.record(tap());
    EXPECT_TRUE(m_reports.waitFor([](const RecordState& state) { return state.failures == 1; }));
    EXPECT_TRUE(m_reports.waitFor([](const RecordState& state) { return state.merges == 1; }));
    thread.record(tap());
    ASSERT_TRUE(thread.flush(kLong));
    EXPECT_EQ(thread.state().recorded, 2);
    EXPECT_EQ(disk.trail.entries.size(), 2U) << "what was there after all is there once";
}

TEST_F(StoreThreadTest, flushDoesNotWaitForWhatCannotBeStored)
{
    test::MemoryDisk disk;
    StoreThread thread(std::make_unique<test::MemoryFiles>(disk),
                       {.station = {"bench 1"}, .retryEvery = kLong}, m_reports.report());
    ASSERT_TRUE(thread.start());
    disk.trailOpens = disk.spoolsOpen = false;
    disk.appends = {test::Outcome::Refused};
    thread.record(tap());
    EXPECT_FALSE(thread.flush(kLong));
    EXPECT_EQ(thread.state().health, Health::NotRecorded);
    EXPECT_EQ(thread.state().waiting, 1);
    const auto refused = thread.ask([](TrailDb& trail) { return openingOfLastShift(trail); }).get();
    EXPECT_EQ(refused.error().fault, StoreFault::NoSpace);
}

// --- the command line's recorder ---

TEST_F(StoreThreadTest, theDirectRecorderStoresBeforeItReturns)
{
    DiskFiles files({file(), {}}, Mode::New);
    DirectRecorder recorder(files, {"bench 1"}, m_reports.report());
    ASSERT_TRUE(recorder.start());
    for (Seq seq = 1; seq <= 5; ++seq) {
        recorder.record(tap());
        EXPECT_EQ(recorder.trail()->head().seq, seq);
        EXPECT_EQ(m_reports.all().back().recorded, seq);
    }
}

TEST_F(StoreThreadTest, theDirectRecorderTriesAgainWithTheNextTap)
{
    test::MemoryDisk disk;
    test::MemoryFiles files(disk);
    DirectRecorder recorder(files, {"bench 1"});
    ASSERT_TRUE(recorder.start());
    disk.spoolsOpen = false;
    disk.appends = {test::Outcome::Refused};
    recorder.record(tap());
    EXPECT_EQ(recorder.state().health, Health::NotRecorded);
    recorder.record(tap());
    EXPECT_EQ(recorder.state().health, Health::Recorded);
    EXPECT_EQ(recorder.state().recorded, 2);
}

}  // namespace
}  // namespace bathside::store
