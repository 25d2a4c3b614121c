#include "ui/sound/sounder.h"

#include <gtest/gtest.h>

#include "tests/ui/sound/stand_ins.h"

namespace bathside::ui {

namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;
using test::FakeOut;
using test::FakeSpeaker;
using Kind = SounderChange::Kind;

// Three paths that can be told to fail, and a clock of our own.
struct SounderTest : testing::Test {
    std::shared_ptr<FakeSpeaker> first = named("first");
    std::shared_ptr<FakeSpeaker> second = named("second");
    std::shared_ptr<FakeSpeaker> third = named("third");
    BootTime now{seconds{100}};
    Sounder sounder{paths()};

    static std::shared_ptr<FakeSpeaker> named(const std::string& name)
    {
        auto speaker = std::make_shared<FakeSpeaker>();
        speaker->name = name;
        return speaker;
    }
    std::vector<std::unique_ptr<AudioOut>> paths()
    {
        std::vector<std::unique_ptr<AudioOut>> all;
        for (const auto& speaker : {first, second, third})
            all.push_back(std::make_unique<FakeOut>(speaker));
        return all;
    }
    // As the alarm thread does: a look now and one each `step`, for `time`; what changed.
    std::vector<SounderChange> lookFor(Micros time, Micros step = milliseconds{500})
    {
        std::vector<SounderChange> all = sounder.look(now);
        for (const BootTime end = now + time; now < end;) {
            now += step;
            for (SounderChange& change : sounder.look(now))
                all.push_back(std::move(change));
        }
        return all;
    }
    static void breakDown(FakeSpeaker& speaker, OutFault fault = OutFault::NoServer)
    {
        speaker.afterOpen = OutState::Failed;
        speaker.faultAfterOpen = fault;
        speaker.become(OutState::Failed, fault);
    }
    static void mend(FakeSpeaker& speaker)
    {
        speaker.afterOpen = OutState::Ready;
        speaker.faultAfterOpen.reset();
    }
};

TEST_F(SounderTest, opensTheFirstPathAndNoOther)
{
    const auto changes = lookFor(seconds{3});
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].kind, Kind::Found);
    EXPECT_EQ(changes[0].to, "first");
    EXPECT_EQ(second->opened, 0);
}

TEST_F(SounderTest, usesTheNextPathAndComesBack)
{
    (void)lookFor(seconds{1});
    breakDown(*first);
    auto changes = lookFor(seconds{2});
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].kind, Kind::Moved);
    EXPECT_EQ(changes[0].to, "second");

    mend(*first);
    changes = lookFor(seconds{2});
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].to, "first");
    EXPECT_EQ(second->status.state, OutState::Closed);
}

TEST_F(SounderTest, reportsLossOnceAndTheReturn)
{
    (void)lookFor(seconds{1});
    for (const auto& speaker : {first, second, third})
        breakDown(*speaker, OutFault::WriteLost);
    auto changes = lookFor(seconds{5});
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].kind, Kind::Lost);
    EXPECT_EQ(changes[0].from, "first");
    EXPECT_EQ(changes[0].fault, OutFault::WriteLost);
    EXPECT_FALSE(sounder.isReady());

    mend(*third);
    changes = lookFor(seconds{2});
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].kind, Kind::Found);
    EXPECT_EQ(changes[0].to, "third");
}

TEST_F(SounderTest, reportsThatThereNeverWasADevice)
{
    for (const auto& speaker : {first, second, third})
        breakDown(*speaker, OutFault::NoServer);
    const auto changes = lookFor(seconds{1});
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].kind, Kind::Lost);
    EXPECT_TRUE(changes[0].from.empty());
}

// A path that cannot tell a muted device must not hide that all are muted.
TEST_F(SounderTest, aPathThatCannotHelpIsNotTried)
{
    breakDown(*first, OutFault::Muted);
    (void)lookFor(seconds{2});
    EXPECT_EQ(second->opened, 0);
    EXPECT_FALSE(sounder.isReady());
}

TEST_F(SounderTest, aPathThatDoesNotComeIsGivenUp)
{
    first->afterOpen = OutState::Opening;
    EXPECT_TRUE(sounder.look(now).empty());
    EXPECT_FALSE(sounder.isReady());
    const auto changes = lookFor(Sounder::kPatience);
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].to, "second");
}

TEST_F(SounderTest, aDeviceThatTakesNoSamplesIsLeft)
{
    (void)lookFor(seconds{1});
    first->isStuck = true;
    first->afterOpen = OutState::Failed;
    const auto changes = lookFor(seconds{3});
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].kind, Kind::Moved);
    EXPECT_GE(first->closed, 1);
}

// After a suspend the device has had no time to ask: it is not the one that slept.
TEST_F(SounderTest, aStoppedProgramDoesNotBlameTheDevice)
{
    (void)lookFor(seconds{1});
    first->isStuck = true;
    now += seconds{120};
    EXPECT_TRUE(sounder.look(now).empty());
    first->isStuck = false;
    EXPECT_TRUE(lookFor(seconds{3}).empty());
}

TEST_F(SounderTest, anotherDeviceBeginsAnotherGeneration)
{
    (void)lookFor(seconds{1});
    const auto before = sounder.generation();
    first->name = "other";
    first->become(OutState::Ready);
    const auto changes = sounder.look(now);
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].kind, Kind::Moved);
    EXPECT_EQ(changes[0].from, "first");
    EXPECT_EQ(changes[0].to, "other");
    EXPECT_GT(sounder.generation(), before);
}

TEST_F(SounderTest, holdsTheVolumeOnEveryPath)
{
    sounder.holdVolume(0.7);
    for (const auto& speaker : {first, second, third})
        EXPECT_EQ(speaker->held, 0.7);
}

}  // namespace

}  // namespace bathside::ui
