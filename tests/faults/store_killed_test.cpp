// A program that is killed with SIGKILL at any moment keeps every event that it called recorded.
//
// The parent reads what is acknowledged through a pipe and kills after a random number of lines, so
// nothing waits for a time. All rounds go on with the same trail.

#include <csignal>
#include <iostream>
#include <random>

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include "tests/faults/store_workload.h"
#include "tests/support/temp_folder.h"

namespace bathside::store {
namespace {

class Victim {
public:
    Victim(const std::filesystem::path& folder, int round)
    {
        int ends[2]{};
        EXPECT_EQ(pipe(ends), 0);
        m_child = fork();
        if (m_child == 0) {
            dup2(ends[1], STDOUT_FILENO);
            close(ends[0]);
            close(ends[1]);
            execl(BATHSIDE_STORE_VICTIM, BATHSIDE_STORE_VICTIM, folder.c_str(),
                  std::to_string(round).c_str(), nullptr);
            _exit(127);
        }
        close(ends[1]);
        m_lines = fdopen(ends[0], "r");
    }
    Victim(const Victim&) = delete;
    Victim& operator=(const Victim&) = delete;
    ~Victim() { std::fclose(m_lines); }

    /// The last seq it called recorded, of so many; fewer if it ended by itself.
    Seq read(int lines)
    {
        long long seq = 0;
        while (lines-- > 0 && std::fscanf(m_lines, "%lld", &seq) == 1) {
        }
        return seq;
    }

    /// What was said before the end came.
    Seq kill()
    {
        ::kill(m_child, SIGKILL);
        const Seq last = read(1 << 30);
        int status = 0;
        waitpid(m_child, &status, 0);
        EXPECT_TRUE(WIFSIGNALED(status)) << "it ended by itself";
        return last;
    }

private:
    pid_t m_child = -1;
    std::FILE* m_lines = nullptr;
};

TEST(StoreKilledTest, nothingAcknowledgedIsLost)
{
    const int rounds = test::isLong() ? 10'000 : 100;
    const test::TempFolder folder;
    std::filesystem::create_directory(folder / "stick");
    std::mt19937 random(11);
    int more = 0;
    for (int round = 1; round <= rounds; ++round) {
        Victim victim(folder.path(), round);
        const Seq early = victim.read(1 + static_cast<int>(random() % 40));
        const Seq acknowledged = std::max(early, victim.kill());
        ASSERT_GT(acknowledged, 0) << "round " << round;
        const auto trail = TrailDb::open(folder / "trail.db", Mode::Existing);
        ASSERT_TRUE(trail) << trail.error().detail;
        ASSERT_GE((*trail)->head().seq, acknowledged) << "round " << round;
        more += (*trail)->head().seq > acknowledged ? 1 : 0;
    }
    std::cout << rounds << " rounds, in " << more << " of them more was there than acknowledged\n";
    EXPECT_EQ(test::faultAfterRestart(folder.path(), 1), "");
}

}  // namespace
}  // namespace bathside::store
