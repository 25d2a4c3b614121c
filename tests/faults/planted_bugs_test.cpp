// The harness itself: each of these faults, planted into the store on purpose, must be found by the
// same runs that find nothing in the real one.

#include <cerrno>

#include <gtest/gtest.h>

#include "tests/faults/fault_disk.h"
#include "tests/faults/store_workload.h"
#include "tests/support/temp_folder.h"

namespace bathside::store {
namespace {

using test::DiskOp;
using test::FaultDisk;
using test::StoreWorkload;
using test::TempFolder;

enum class Bug : std::uint8_t {
    None,
    NoSync,             // synchronous=OFF
    AcknowledgesFirst,  // says stored and stores with the next tap
    SwallowsFailures,   // says stored although the commit failed
    RepeatsBlindly,     // merges without looking what is there
    ForgetsTheSpool,    // takes a spool for merged as soon as it is made
    SkipsATap,          // loses one tap in seven
};

class BuggyStore final : public TrailStore {
public:
    BuggyStore(Bug bug, std::unique_ptr<TrailStore> store)
        : m_bug(bug), m_store(std::move(store)), m_head(m_store->head())
    {
        if (m_bug == Bug::NoSync) {
            EXPECT_TRUE(
                dynamic_cast<TrailDb&>(*m_store).connection().run("PRAGMA synchronous = OFF"));
        }
    }

    Head head() const override { return m_head; }

    Result<void, StoreTrouble> append(std::span<const Entry> entries) override
    {
        if (m_bug == Bug::SkipsATap && !entries.empty() && ++m_count % 7 == 0)
            return acknowledge(entries);
        if (m_bug == Bug::AcknowledgesFirst) {
            std::ignore = m_store->append(m_late);
            m_late.assign(entries.begin(), entries.end());
            return acknowledge(entries);
        }
        const auto kept = m_store->append(entries);
        if (kept || m_bug == Bug::SwallowsFailures)
            return acknowledge(entries);
        return kept;
    }

    Result<void, StoreTrouble> read(Seq from, Seq to,
                                    const std::function<bool(const Entry&)>& take) const override
    {
        if (m_bug == Bug::RepeatsBlindly)
            return {};
        return m_store->read(from, to, take);
    }

private:
    Result<void, StoreTrouble> acknowledge(std::span<const Entry> entries)
    {
        if (!entries.empty())
            m_head = {entries.back().seq, entries.back().hash};
        return {};
    }

    Bug m_bug;
    std::unique_ptr<TrailStore> m_store;
    Head m_head;
    std::vector<Entry> m_late;
    int m_count = 0;
};

class BuggyFiles final : public TrailFiles {
public:
    BuggyFiles(Bug bug, DiskFiles::Places places) : m_bug(bug), m_files(std::move(places)) {}

    Result<std::unique_ptr<TrailStore>, StoreTrouble> openTrail() override
    {
        auto store = m_files.openTrail();
        if (!store)
            return store;
        return std::make_unique<BuggyStore>(m_bug, std::move(*store));
    }
    Result<Spool, StoreTrouble> makeSpool(const Head& after) override
    {
        auto spool = m_files.makeSpool(after);
        if (spool && m_bug == Bug::ForgetsTheSpool)
            m_files.markMerged(spool->name);
        return spool;
    }
    std::vector<std::string> unmerged() override { return m_files.unmerged(); }
    Result<Spool, StoreTrouble> openSpool(const std::string& name) override
    {
        return m_files.openSpool(name);
    }
    void markMerged(const std::string& name) override { m_files.markMerged(name); }

private:
    Bug m_bug;
    DiskFiles m_files;
};

enum class Way : std::uint8_t { PowerCut, SyncFails };

// One run; what is wrong afterwards, and whether the fault came about at all.
std::pair<std::string, bool> run(Bug bug, Way way, int at)
{
    const TempFolder folder;
    Seq acknowledged = 0;
    bool struck = false;
    {
        FaultDisk disk;
        StoreWorkload work(folder.path(), std::make_unique<BuggyFiles>(
                                              bug, StoreWorkload::placesIn(folder.path())));
        EXPECT_TRUE(work.start());
        if (way == Way::PowerCut)
            disk.cutPowerAt(at);
        else
            disk.plan({.op = DiskOp::Sync,
                       .nth = at,
                       .always = true,
                       .error = EIO,
                       .onlyIn = "trail.db-wal"});
        for (int i = 0; i < 10 && !disk.isDead(); ++i) {
            work.tap();
            acknowledged = std::max(acknowledged, work.acknowledged());
            if (disk.struck())
                disk.heal();
        }
        struck = way == Way::PowerCut ? disk.isDead() : disk.struck();
        std::mt19937 random(static_cast<unsigned>(at));
        disk.leaveTo(folder / "left", random);
    }
    const FaultDisk next;
    return {test::faultAfterRestart(folder / "left", acknowledged), struck};
}

std::string firstFault(Bug bug)
{
    for (const Way way : {Way::PowerCut, Way::SyncFails}) {
        for (int at = 1;; ++at) {
            const auto [fault, struck] = run(bug, way, at);
            if (!fault.empty())
                return fault;
            if (!struck)
                break;
        }
    }
    return {};
}

struct Planted {
    const char* name;
    Bug bug;
};

class PlantedBug : public testing::TestWithParam<Planted> {};

TEST_P(PlantedBug, isFound)
{
    const std::string fault = firstFault(GetParam().bug);
    EXPECT_NE(fault, "");
    std::cout << GetParam().name << ": " << fault << "\n";
}

INSTANTIATE_TEST_SUITE_P(Store, PlantedBug,
                         testing::Values(Planted{"noSync", Bug::NoSync},
                                         Planted{"acknowledgesFirst", Bug::AcknowledgesFirst},
                                         Planted{"swallowsFailures", Bug::SwallowsFailures},
                                         Planted{"repeatsBlindly", Bug::RepeatsBlindly},
                                         Planted{"forgetsTheSpool", Bug::ForgetsTheSpool},
                                         Planted{"skipsATap", Bug::SkipsATap}),
                         [](const auto& test) { return std::string(test.param.name); });

TEST(PlantedBugsTest, nothingIsFoundWhereNothingIsPlanted) { EXPECT_EQ(firstFault(Bug::None), ""); }

}  // namespace
}  // namespace bathside::store
