// What the trail costs, each figure beside its peer or bound from the same run. Printed, not
// asserted.

#include <QCoreApplication>
#include <algorithm>
#include <cstdio>
#include <semaphore>

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include "core/record/days.h"
#include "core/trail/json_lines.h"
#include "core/trail/store/check.h"
#include "core/trail/store/disk_files.h"
#include "core/trail/store/queries.h"
#include "core/trail/store/store_thread.h"
#include "tests/support/big_trail.h"
#include "tests/support/temp_folder.h"

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

// --- a trail of years ---

std::unique_ptr<TrailDb> openedOf(const std::filesystem::path& file)
{
    auto trail = TrailDb::open(file, Mode::Station);
    return trail ? std::move(*trail) : nullptr;
}

void verifySpeed(TrailDb& trail)
{
    std::printf("verify, from the database\n");
    auto start = Clock::now();
    const auto verified = verifyChain(trail);
    const double verifying = since(start);
    if (!must(verified && !verified->flaw, "verify"))
        return;
    std::vector<std::string> texts;
    std::ignore = trail.read(1, 200'000, [&](const Entry& entry) {
        texts.push_back(canonicalText(entry));
        return true;
    });
    start = Clock::now();
    Hash hash{};
    std::size_t bytes = 0;
    for (const std::string& text : texts) {
        hash = chained(hash, text);
        bytes += text.size();
    }
    const double hashing = since(start);
    const double rate = static_cast<double>(verified->count) / verifying;
    const double bound = static_cast<double>(texts.size()) / hashing;
    std::printf("  verify %40.0f events/s (%lld events)\n", rate,
                static_cast<long long>(verified->count));
    std::printf(
        "  hashing the same bytes with libcrypto (bound) %.0f events/s (%.0f bytes each); ratio "
        "%.2f\n",
        bound, static_cast<double>(bytes) / static_cast<double>(texts.size()), rate / bound);
}

void readingSpeed(TrailDb& trail)
{
    std::printf("reading rows: SQLite's own interface, and Qt Sql (peer)\n");
    constexpr Seq kRows = 100'000;
    auto start = Clock::now();
    std::size_t bytes = 0;
    std::ignore = trail.read(1, kRows, [&](const Entry& entry) {
        bytes += entry.payload.size();
        return true;
    });
    const double own = since(start);
    start = Clock::now();
    auto query =
        trail.connection().prepared("SELECT * FROM event WHERE seq <= 100000 ORDER BY seq");
    if (!must(query && query->exec(), "query"))
        return;
    while (query->next()) {
        for (int column = 0; column < 16; ++column)
            bytes += static_cast<std::size_t>(query->value(column).toByteArray().size());
    }
    const double qt = since(start);
    std::printf("  own %.0f rows/s, Qt Sql %.0f rows/s; ratio %.1f\n",
                static_cast<double>(kRows) / own, static_cast<double>(kRows) / qt, qt / own);
}

double openOnce(const std::filesystem::path& file, Seq& events)
{
    const auto start = Clock::now();
    const auto trail = openedOf(file);
    const auto opening = openingOfLastShift(*trail);
    const auto since_ = entriesFrom(*trail, std::max<Seq>(1, opening.value_or(0)));
    std::ignore = carried(*trail, {"card.adopted", "probe.described"}, opening.value_or(0));
    events = since_ ? static_cast<Seq>(since_->size()) : 0;
    return since(start) * 1e3;
}

void openSpeed(const char* name, const std::filesystem::path& file)
{
    std::vector<double> ms;
    Seq events = 0;
    for (int i = 0; i < 7; ++i)
        ms.push_back(openOnce(file, events));
    std::ranges::sort(ms);
    std::printf("  %-44s p50 %6.1f  max %6.1f ms (%lld events since the last opening)\n", name,
                ms[3], ms.back(), static_cast<long long>(events));
}

double exportDay(TrailDb& trail, WallTime from)
{
    const auto start = Clock::now();
    const auto ranges = rangesOf(trail, from, from + std::chrono::hours(24));
    Sha256 sum;
    if (!ranges)
        return 0;
    for (const SeqRange& range : *ranges) {
        std::ignore = trail.read(range.first, range.last, [&](const Entry& entry) {
            sum.add(toLine({entry, std::nullopt}));
            return true;
        });
    }
    std::ignore = sum.finish();
    return since(start) * 1e3;
}

void daySpeed(TrailDb& trail, int days)
{
    std::printf("the lines of one day of %d events\n", test::kEventsADay);
    for (const int day : {0, days / 2, days - 1}) {
        double best = 1e9;
        for (int i = 0; i < 5; ++i)
            best = std::min(best,
                            exportDay(trail, test::kFirstMorning + std::chrono::hours(24 * day)));
        std::printf("  day %5d of %5d %38.1f ms\n", day + 1, days, best);
    }
}

void projectionSpeed(TrailDb& trail)
{
    const auto start = Clock::now();
    const auto agree = projectionsAgree(trail.connection());
    std::printf("projections made anew and compared: %.2f s, %s\n", since(start),
                agree && *agree ? "they agree" : "THEY DIFFER");
}

void yearsOfTrail()
{
    const test::TempFolder folder;
    const Seq wanted = isLong() ? 1'000'000 : 200'000;
    const auto start = Clock::now();
    const Seq events = test::writeBigTrail(folder / "big.db", wanted);
    std::printf("a trail of %lld events was written in %.1f s, %.0f bytes an event\n",
                static_cast<long long>(events), since(start),
                static_cast<double>(std::filesystem::file_size(folder / "big.db")) /
                    static_cast<double>(events));
    std::ignore = test::writeBigTrail(folder / "day.db", 1);
    std::ignore = openedOf(folder / "empty.db");
    std::printf("open, and read what the state is folded from\n");
    openSpeed("an empty trail (peer)", folder / "empty.db");
    openSpeed("a trail of one day (peer)", folder / "day.db");
    openSpeed("the long trail", folder / "big.db");
    const auto trail = openedOf(folder / "big.db");
    if (!must(trail != nullptr, "open"))
        return;
    verifySpeed(*trail);
    readingSpeed(*trail);
    daySpeed(*trail, static_cast<int>(events / test::kEventsADay));
    projectionSpeed(*trail);
}

}  // namespace

int main(int argc, char** argv)
{
    const QCoreApplication app(argc, argv);
    tapToDurable();
    yearsOfTrail();
    return 0;
}
