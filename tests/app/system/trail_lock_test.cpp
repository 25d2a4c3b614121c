#include "app/system/trail_lock.h"

#include <csignal>
#include <fstream>
#include <optional>

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include "tests/support/temp_folder.h"

namespace bathside::app {
namespace {

// Another process that holds the lock until it is told to go, or killed.
class OtherProgram {
public:
    explicit OtherProgram(const std::filesystem::path& trail)
    {
        int ready[2];
        EXPECT_EQ(pipe(ready), 0);
        m_process = fork();
        if (m_process == 0) {
            const auto lock = TrailLock::take(trail);
            const char got = lock ? 'y' : 'n';
            [[maybe_unused]] const ssize_t said = write(ready[1], &got, 1);
            pause();
            _exit(0);
        }
        char got = 'n';
        EXPECT_EQ(read(ready[0], &got, 1), 1);
        EXPECT_EQ(got, 'y');
        close(ready[0]);
        close(ready[1]);
    }

    ~OtherProgram() { end(); }

    void end()
    {
        if (m_process > 0) {
            kill(m_process, SIGKILL);
            waitpid(m_process, nullptr, 0);
        }
        m_process = 0;
    }

    [[nodiscard]] long process() const { return m_process; }

private:
    pid_t m_process = 0;
};

class TrailLockTest : public testing::Test {
protected:
    [[nodiscard]] std::filesystem::path trail() const { return m_folder.path() / "trail.db"; }

private:
    test::TempFolder m_folder;
};

TEST_F(TrailLockTest, isForOneProgram)
{
    const OtherProgram other(trail());
    const auto lock = TrailLock::take(trail());
    ASSERT_FALSE(lock.has_value());
    EXPECT_EQ(lock.error().why, LockFault::Why::Taken);
    EXPECT_EQ(lock.error().holder, other.process());
}

TEST_F(TrailLockTest, isFreeAgainWhenTheOtherWasKilled)
{
    OtherProgram other(trail());
    other.end();
    EXPECT_TRUE(TrailLock::take(trail()).has_value());
}

TEST_F(TrailLockTest, isHeldWhileItLivesAndNoLonger)
{
    std::optional<TrailLock> kept;
    {
        auto lock = TrailLock::take(trail());
        ASSERT_TRUE(lock.has_value());
        kept = std::move(*lock);
    }
    EXPECT_EQ(TrailLock::take(trail()).error().why, LockFault::Why::Taken);
    kept.reset();
    EXPECT_TRUE(TrailLock::take(trail()).has_value());
}

TEST_F(TrailLockTest, isPerTrail)
{
    const auto first = TrailLock::take(trail());
    const auto second = TrailLock::take(trail().parent_path() / "rehearsal.db");
    EXPECT_TRUE(first.has_value());
    EXPECT_TRUE(second.has_value());
}

TEST_F(TrailLockTest, saysWhyThereCanBeNone)
{
    const auto lock = TrailLock::take(trail() / "no" / "such" / "folder");
    ASSERT_FALSE(lock.has_value());
    EXPECT_EQ(lock.error().why, LockFault::Why::Unwritable);
    EXPECT_EQ(lock.error().errorNumber, ENOENT);
}

}  // namespace
}  // namespace bathside::app
