#include "core/trail/failover.h"

#include <random>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/trail/event_form.h"
#include "core/trail/merge.h"
#include "core/trail/verify.h"
#include "tests/support/memory_files.h"

namespace bathside {
namespace {

using Health = RecordState::Health;
using test::MemoryDisk;
using test::MemoryFiles;
using test::Outcome;

// A station's side: events numbered as the service numbers them, and what it was told.
class FailoverTest : public testing::Test {
protected:
    FailoverTest() { EXPECT_TRUE(m_failover->start()); }

    /// One tap of so many events.
    void tap(int events = 1)
    {
        std::vector<Event> batch;
        for (int i = 0; i < events; ++i) {
            ++m_seq;
            Event event;
            event.seq = m_seq;
            event.at.boot = Micros(m_seq);
            event.tap = {"tap-" + std::to_string(m_seq - i)};
            event.fact = NoteMade{"fact " + std::to_string(m_seq)};
            batch.push_back(std::move(event));
        }
        m_failover->take(std::move(batch));
        m_failover->store();
    }

    void restart()
    {
        m_failover.emplace(m_files, StationId{"bench 1"});
        EXPECT_TRUE(m_failover->start());
        m_seq = m_failover->state().recorded;
    }

    [[nodiscard]] RecordState state() const { return m_failover->state(); }

    std::vector<std::string> wordsInTrail() const
    {
        std::vector<std::string> words;
        for (const Entry& entry : m_disk.trail.entries)
            words.push_back(std::get<NoteMade>(eventOf(entry)->fact).text);
        return words;
    }

    /// Every fact once and in order, and a chain that verifies.
    void expectAllInTrail(Seq facts) const
    {
        std::vector<std::string> all;
        for (Seq seq = 1; seq <= facts; ++seq)
            all.push_back("fact " + std::to_string(seq));
        EXPECT_EQ(wordsInTrail(), all);
        Verifier verifier;
        for (const Entry& entry : m_disk.trail.entries)
            verifier.take(entry);
        EXPECT_FALSE(verifier.finish().flaw);
    }

    MemoryDisk m_disk;
    MemoryFiles m_files{m_disk};
    std::optional<Failover> m_failover{std::in_place, m_files, StationId{"bench 1"}};
    Seq m_seq = 0;
};

TEST_F(FailoverTest, recordsInTheTrail)
{
    tap();
    tap(3);
    EXPECT_EQ(state().health, Health::Recorded);
    EXPECT_EQ(state().recorded, 4);
    EXPECT_EQ(state().waiting, 0);
    expectAllInTrail(4);
    EXPECT_TRUE(m_disk.spools.empty());
}

TEST_F(FailoverTest, eachTapHasTheNameOfItsTime)
{
    tap();
    m_disk.trailOpens = false;
    m_disk.appends = {Outcome::Lands};
    m_disk.spoolsOpen = false;
    tap();  // landed, and not known to
    m_failover->call({"bench 2"});
    tap();
    m_disk.trailOpens = true;
    m_failover->retry();
    expectAllInTrail(3);
    std::vector<std::string> names;
    for (const Entry& entry : m_disk.trail.entries)
        names.push_back(entry.station.text);
    EXPECT_EQ(names, (std::vector<std::string>{"bench 1", "bench 1", "bench 2"}));
}

struct Failure {
    const char* name;
    Outcome outcome;
    StoreFault told;
};

class TrailFails : public FailoverTest, public testing::WithParamInterface<Failure> {};

TEST_P(TrailFails, goesOnInASpoolAndComesBack)
{
    tap(2);
    m_disk.trailOpens = false;
    m_disk.appends = {GetParam().outcome};
    tap(2);
    EXPECT_EQ(state().health, Health::NotConfirmed);
    EXPECT_EQ(state().trouble.fault, GetParam().told);
    EXPECT_EQ(state().failures, 1);
    EXPECT_EQ(state().recorded, 4) << "durable in the spool";
    EXPECT_EQ(state().spool, "spool-1");
    tap();
    m_failover->retry();
    EXPECT_EQ(state().health, Health::NotConfirmed);
    EXPECT_EQ(m_disk.spools["spool-1"].after.seq, 2);
    EXPECT_EQ(m_disk.spools["spool-1"].head().seq, 5) << "numbered on";

    m_disk.trailOpens = true;
    m_failover->retry();
    EXPECT_EQ(state().health, Health::Recorded);
    EXPECT_EQ(state().merges, 1);
    EXPECT_EQ(state().merged, GetParam().outcome == Outcome::Lands ? 1 : 3)
        << "what was there is not doubled";
    EXPECT_EQ(state().mergedSpool, "spool-1");
    EXPECT_EQ(state().spool, "");
    EXPECT_TRUE(m_disk.spools["spool-1"].merged);
    tap();
    expectAllInTrail(6);
}

TEST_P(TrailFails, whatWasMergedNamesItsPlaceInTheSpool)
{
    m_disk.appends = {GetParam().outcome};
    tap(2);
    tap();
    m_failover->retry();
    const Entry& merged = m_disk.trail.entries.back();
    const Entry& spooled = m_disk.spools["spool-1"].entries.back();
    EXPECT_EQ(merged.spool, (SpoolOrigin{spooled.seq, spooled.hash}));
    EXPECT_EQ(merged.seq, spooled.seq) << "so that what names a seq still names the same event";
    EXPECT_NE(merged.hash, spooled.hash);
}

TEST_P(TrailFails, staysInMemoryWhereNoSpoolOpens)
{
    tap();
    m_disk.trailOpens = m_disk.spoolsOpen = false;
    m_disk.appends = {GetParam().outcome};
    tap(2);
    tap();
    EXPECT_EQ(state().health, Health::NotRecorded);
    EXPECT_EQ(state().recorded, 1);
    EXPECT_EQ(state().waiting, 3);
    m_failover->retry();
    EXPECT_EQ(state().health, Health::NotRecorded);

    m_disk.trailOpens = true;
    m_failover->retry();
    EXPECT_EQ(state().health, Health::Recorded);
    EXPECT_EQ(state().waiting, 0);
    EXPECT_EQ(state().merges, 1);
    EXPECT_EQ(state().merged, 0);
    expectAllInTrail(4);
}

TEST_P(TrailFails, aSpoolThatOpensLaterTakesWhatWaits)
{
    m_disk.trailOpens = m_disk.spoolsOpen = false;
    m_disk.appends = {GetParam().outcome};
    tap(2);
    m_disk.spoolsOpen = true;
    m_failover->retry();
    EXPECT_EQ(state().health, Health::NotConfirmed);
    EXPECT_EQ(state().recorded, 2);
    m_disk.trailOpens = true;
    m_failover->retry();
    expectAllInTrail(2);
}

TEST_P(TrailFails, whatIsLeftInASpoolIsMergedAtTheNextStart)
{
    tap();
    m_disk.trailOpens = false;
    m_disk.appends = {GetParam().outcome};
    tap(2);
    tap(2);
    m_disk.trailOpens = true;
    restart();
    EXPECT_EQ(state().merges, 1);
    EXPECT_EQ(state().recorded, 5);
    tap();
    expectAllInTrail(6);
}

TEST_P(TrailFails, theSpoolMayFailTheSameWay)
{
    tap();
    m_disk.trailOpens = false;
    m_disk.appends = {GetParam().outcome, Outcome::Stored, GetParam().outcome};
    tap();
    tap(2);
    EXPECT_EQ(state().health, Health::NotRecorded) << "until it is tried again";
    EXPECT_EQ(state().recorded, 2);
    m_failover->retry();
    EXPECT_EQ(state().health, Health::NotConfirmed);
    EXPECT_EQ(state().recorded, 4);
    m_disk.trailOpens = true;
    m_failover->retry();
    expectAllInTrail(4);
}

TEST_P(TrailFails, inTheMiddleOfAMergeWhichIsDoneAgain)
{
    tap();
    m_disk.trailOpens = false;
    m_disk.appends = {GetParam().outcome};
    for (int i = 0; i < 300; ++i)  // more than goes in together
        tap();
    m_disk.trailOpens = true;
    m_disk.appends = {Outcome::Stored, GetParam().outcome};
    m_failover->retry();
    EXPECT_EQ(state().health, Health::NotConfirmed);
    m_failover->retry();
    EXPECT_EQ(state().health, Health::Recorded);
    expectAllInTrail(301);
}

INSTANTIATE_TEST_SUITE_P(
    Failover, TrailFails,
    testing::Values(Failure{"noSpace", Outcome::Refused, StoreFault::NoSpace},
                    Failure{"unconfirmedAndLost", Outcome::Lost, StoreFault::Unconfirmed},
                    Failure{"unconfirmedButThere", Outcome::Lands, StoreFault::Unconfirmed}),
    [](const auto& test) { return std::string(test.param.name); });

TEST_F(FailoverTest, neverUsesAHandleAgainAfterAFailedSync)
{
    m_disk.appends = {Outcome::Lost};
    tap();
    EXPECT_EQ(m_disk.handlesOpen, 1) << "the spool's alone";
}

TEST_F(FailoverTest, aTrailThatLostWhatItHadAcknowledgedIsNotTrusted)
{
    tap(3);
    m_disk.appends = {Outcome::Refused};
    tap();
    m_disk.trail.entries.pop_back();
    m_failover->retry();
    EXPECT_EQ(state().health, Health::NotConfirmed);
    EXPECT_EQ(state().trouble.fault, StoreFault::Damaged);
}

TEST_F(FailoverTest, aTrailThatWasExchangedIsNotTrusted)
{
    tap(3);
    m_disk.appends = {Outcome::Refused};
    tap();
    Entry& last = m_disk.trail.entries.back();
    last.payload = R"({"text":"another"})";
    chain(last, m_disk.trail.entries[1].hash);
    m_failover->retry();
    EXPECT_EQ(state().trouble.fault, StoreFault::Damaged);
}

TEST_F(FailoverTest, aSpoolThatCannotBeReadIsLeftAndTold)
{
    tap();
    m_disk.trailOpens = false;
    m_disk.appends = {Outcome::Refused};
    tap();
    m_disk.trailOpens = true;
    m_disk.spoolsOpen = false;
    restart();
    EXPECT_EQ(state().health, Health::Recorded);
    EXPECT_EQ(state().merges, 0);
    EXPECT_EQ(state().trouble.fault, StoreFault::Damaged);
    EXPECT_FALSE(m_disk.spools["spool-1"].merged);
}

TEST_F(FailoverTest, aSpoolOfAnotherTrailIsLeft)
{
    tap(2);
    m_disk.spools["spool-1"].after = {2, sha256("another trail")};
    restart();
    EXPECT_EQ(state().merges, 0);
    EXPECT_FALSE(m_disk.spools["spool-1"].merged);
}

TEST_F(FailoverTest, aSpoolFoundLateComesInUnderNewSeqs)
{
    tap();
    m_disk.trailOpens = false;
    m_disk.appends = {Outcome::Refused};
    tap();  // fact 2, in the spool only
    const auto spool = m_disk.spools["spool-1"];
    m_disk.spools.clear();
    m_disk.trailOpens = true;
    restart();
    m_seq = 10;
    Event event;
    event.seq = 2;
    event.tap = {"later"};
    event.fact = NoteMade{"later"};
    m_failover->take({event});
    m_failover->store();
    m_disk.spools["spool-1"] = spool;
    restart();
    EXPECT_THAT(wordsInTrail(), testing::ElementsAre("fact 1", "later", "fact 2"));
    EXPECT_EQ(m_disk.trail.entries.back().seq, 3);
    EXPECT_EQ(m_disk.trail.entries.back().spool, (SpoolOrigin{2, spool.entries.back().hash}));
}

TEST_F(FailoverTest, anEventOutOfStepIsKeptAndTold)
{
    ++m_seq;
    tap();
    EXPECT_EQ(state().health, Health::NotRecorded);
    EXPECT_EQ(state().trouble.fault, StoreFault::OutOfStep);
    EXPECT_EQ(state().waiting, 1);
    EXPECT_TRUE(m_disk.spools.empty());
}

TEST_F(FailoverTest, twoEqualFactsOfOneTapAreTwo)
{
    Event event;
    event.tap = {"tap"};
    event.fact = NoteMade{"same"};
    std::vector<Event> batch{event, event};
    batch[0].seq = 1;
    batch[1].seq = 2;
    m_disk.appends = {Outcome::Lost};
    m_failover->take(batch);
    m_failover->store();
    m_failover->retry();
    EXPECT_THAT(wordsInTrail(), testing::ElementsAre("same", "same"));
}

// Whatever fails in whatever order: in the end every fact is there once, in order; and at no time
// is anything called recorded that neither trail nor spool holds.
class AnyOrder : public FailoverTest, public testing::WithParamInterface<unsigned> {
protected:
    bool isDurable(Seq seq) const
    {
        const std::string words = R"({"text":"fact )" + std::to_string(seq) + R"("})";
        const auto holds = [&](const MemoryDisk& disk) {
            const auto has = [&](const test::MemoryFile& file) {
                return std::ranges::any_of(
                    file.entries, [&](const Entry& entry) { return entry.payload == words; });
            };
            return has(disk.trail) || std::ranges::any_of(disk.spools, [&](const auto& spool) {
                       return has(spool.second);
                   });
        };
        return holds(m_disk);
    }
};

TEST_P(AnyOrder, ofFailuresLosesNothing)
{
    std::mt19937 random(GetParam());
    const auto chance = [&](unsigned inTen) { return random() % 10 < inTen; };
    for (int step = 0; step < 200; ++step) {
        if (chance(4))
            m_disk.appends.push_back(static_cast<Outcome>(random() % 4));
        m_disk.trailOpens = chance(6);
        m_disk.spoolsOpen = chance(7);
        if (chance(7))
            tap(1 + static_cast<int>(random() % 3));
        else
            m_failover->retry();
        ASSERT_TRUE(state().recorded == 0 || isDurable(state().recorded));
        const Seq waiting = m_seq - state().recorded;
        ASSERT_EQ(state().waiting, waiting);
        // A kill in this state: what was called recorded is there after the next start.
        if (state().waiting == 0 && chance(1)) {
            m_disk.trailOpens = m_disk.spoolsOpen = true;
            m_disk.appends.clear();
            const Seq before = m_seq;
            restart();
            ASSERT_EQ(m_seq, before);
        }
    }
    m_disk.appends.clear();
    m_disk.trailOpens = m_disk.spoolsOpen = true;
    m_failover->retry();
    EXPECT_EQ(state().health, Health::Recorded);
    expectAllInTrail(m_seq);
}

INSTANTIATE_TEST_SUITE_P(Failover, AnyOrder, testing::Range(1U, 101U));

}  // namespace
}  // namespace bathside
