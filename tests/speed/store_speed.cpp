// What a tap costs until it is recorded, each figure beside its peer or bound from the same run.
// Printed, not asserted.

#include <QCoreApplication>
#include <algorithm>
#include <cstdio>
#include <semaphore>

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include "core/trail/store/disk_files.h"
#include "core/trail/store/store_thread.h"
#include "tests/support/temp_folder.h"
#include "tests/support/trail_days.h"

namespace {

using namespace bathside;
using namespace bathside::store;
using Clock = std::chrono::steady_clock;

bool isLong() { return std::getenv("BATHSIDE_LONG") != nullptr; }

double since(Clock::time_point start)
{
    return std::chrono::duration<double>(Clock::now() - start).count();
}

struct Times {
    std::vector<double> us;

    void add(Clock::time_point start) { us.push_back(since(start) * 1e6); }
    double at(double share)
    {
        std::ranges::sort(us);
        return us[std::min(us.size() - 1,
                           static_cast<std::size_t>(share * static_cast<double>(us.size())))];
    }
    void print(const char* name)
    {
        std::printf("  %-44s p50 %7.0f  p95 %7.0f  p99 %7.0f  max %7.0f us\n", name, at(0.5),
                    at(0.95), at(0.99), at(1));
    }
};

bool must(bool ok, const char* what)
{
    if (!ok)
        std::printf("  failed: %s\n", what);
    return ok;
}

// --- tap to durable ---

// The peer: one row with the same bytes in a table without index, trigger or chain.
class BareCommit {
public:
    explicit BareCommit(const std::filesystem::path& file)
    {
        sqlite3_open(file.c_str(), &m_db);
        for (const char* const sql :
             {"PRAGMA locking_mode = EXCLUSIVE", "PRAGMA journal_mode = WAL",
              "PRAGMA synchronous = FULL", "PRAGMA cell_size_check = ON", "PRAGMA mmap_size = 0",
              "CREATE TABLE t (id INTEGER PRIMARY KEY, text TEXT) STRICT"})
            sqlite3_exec(m_db, sql, nullptr, nullptr, nullptr);
        sqlite3_prepare_v2(m_db, "INSERT INTO t (text) VALUES (?)", -1, &m_insert, nullptr);
    }
    BareCommit(const BareCommit&) = delete;
    BareCommit& operator=(const BareCommit&) = delete;
    ~BareCommit()
    {
        sqlite3_finalize(m_insert);
        sqlite3_close(m_db);
    }

    bool commit(const std::string& text)
    {
        sqlite3_exec(m_db, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr);
        sqlite3_bind_text(m_insert, 1, text.data(), static_cast<int>(text.size()), SQLITE_STATIC);
        const bool stepped = sqlite3_step(m_insert) == SQLITE_DONE;
        sqlite3_reset(m_insert);
        return sqlite3_exec(m_db, "COMMIT", nullptr, nullptr, nullptr) == SQLITE_OK && stepped;
    }

private:
    sqlite3* m_db = nullptr;
    sqlite3_stmt* m_insert = nullptr;
};

// The bound: the same bytes at the end of a file, synced.
class BareFile {
public:
    explicit BareFile(const std::filesystem::path& file)
        : m_file(open(file.c_str(), O_CREAT | O_WRONLY | O_APPEND | O_CLOEXEC, 0644))
    {
    }
    BareFile(const BareFile&) = delete;
    BareFile& operator=(const BareFile&) = delete;
    ~BareFile() { close(m_file); }

    bool append(const std::string& text)
    {
        return write(m_file, text.data(), text.size()) == static_cast<ssize_t>(text.size()) &&
               fdatasync(m_file) == 0;
    }

private:
    int m_file;
};

struct Marks {
    Times tap, bare, file;
};

bool measureTaps(StoreThread& thread, std::binary_semaphore& durable,
                 const test::TempFolder& folder, Marks& marks)
{
    BareCommit bare(folder / "bare.db");
    BareFile file(folder / "bare.txt");
    test::TrailDays days;
    const int rounds = isLong() ? 20'000 : 2'000;
    for (int i = 0; i < rounds; ++i) {
        const Event event = days.event(AmpouleInBath{{i, 1}, true});
        const std::string text = canonicalText(days.entry(event.fact));
        auto start = Clock::now();
        thread.record({event});
        durable.acquire();
        marks.tap.add(start);
        start = Clock::now();
        if (!bare.commit(text))
            return false;
        marks.bare.add(start);
        start = Clock::now();
        if (!file.append(text))
            return false;
        marks.file.add(start);
    }
    return true;
}

void tapToDurable()
{
    std::printf("tap to durable, through the store's thread, interleaved with its peers\n");
    const test::TempFolder folder;
    std::binary_semaphore durable(0);
    Seq last = 0;
    auto files = std::make_unique<DiskFiles>(DiskFiles::Places{folder / "trail.db", {}});
    StoreThread thread(std::move(files), {.station = {"bench 1"}}, [&](const RecordState& state) {
        if (state.recorded > last) {
            last = state.recorded;
            durable.release();
        }
    });
    Marks marks;
    if (!must(thread.start().has_value(), "start") ||
        !must(measureTaps(thread, durable, folder, marks), "commit"))
        return;
    marks.tap.print("tap to durable");
    marks.bare.print("bare SQLite commit, same pragmas (peer)");
    marks.file.print("append and fdatasync (bound)");
    std::printf("  ratio to the peer: p50 %.2f, p99 %.2f; to the bound: p50 %.2f\n",
                marks.tap.at(0.5) / marks.bare.at(0.5), marks.tap.at(0.99) / marks.bare.at(0.99),
                marks.tap.at(0.5) / marks.file.at(0.5));
}

}  // namespace

int main(int argc, char** argv)
{
    const QCoreApplication app(argc, argv);
    tapToDurable();
    return 0;
}
