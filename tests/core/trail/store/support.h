#pragma once

// For the store's tests: opening with the reason in the failure's text, and a tool that works on
// the file past the store, as anybody's would.

#include <limits>
#include <string>
#include <utility>
#include <vector>

#include <gtest/gtest.h>
#include <sqlite3.h>

#include "core/trail/store/trail_db.h"

namespace bathside::store {

inline constexpr Seq kAll = std::numeric_limits<Seq>::max();

inline std::unique_ptr<TrailDb> opened(const std::filesystem::path& file, Mode mode = Mode::Station)
{
    auto trail = TrailDb::open(file, mode);
    EXPECT_TRUE(trail.has_value())
        << nameOf(trail.error().trouble.fault) << " " << trail.error().detail;
    return trail ? std::move(*trail) : nullptr;
}

inline std::vector<Entry> contentOf(const TrailStore& trail)
{
    std::vector<Entry> entries;
    EXPECT_TRUE(trail.read(1, kAll, [&](const Entry& entry) {
        entries.push_back(entry);
        return true;
    }));
    return entries;
}

/// Runs SQL on a file with SQLite's own defaults; the result code and message.
inline std::pair<int, std::string> tool(const std::filesystem::path& file, const std::string& sql)
{
    sqlite3* db = nullptr;
    EXPECT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
    char* message = nullptr;
    const int code = sqlite3_exec(db, sql.c_str(), nullptr, nullptr, &message);
    std::pair<int, std::string> result{code, message ? message : ""};
    sqlite3_free(message);
    sqlite3_close(db);
    return result;
}

/// The same, with the triggers out of the way while it runs: what somebody would do who wants to.
inline std::pair<int, std::string> tamper(const std::filesystem::path& file, const std::string& sql)
{
    static constexpr std::string_view kTriggers = R"(
CREATE TRIGGER event_grows_at_its_end BEFORE INSERT ON event
WHEN NEW.seq IS NOT coalesce((SELECT max(seq) FROM event), (SELECT seq FROM origin)) + 1
  OR EXISTS (SELECT 1 FROM event WHERE hash = NEW.hash)
BEGIN SELECT RAISE(ABORT, 'the trail only grows at its end'); END;
CREATE TRIGGER event_stays BEFORE DELETE ON event
BEGIN SELECT RAISE(ABORT, 'the trail is append-only'); END;
CREATE TRIGGER event_is_fixed BEFORE UPDATE ON event
BEGIN SELECT RAISE(ABORT, 'the trail is append-only'); END;)";
    return tool(file,
                "DROP TRIGGER event_grows_at_its_end; DROP TRIGGER event_stays; DROP TRIGGER "
                "event_is_fixed;" +
                    sql + ";" + std::string(kTriggers));
}

inline std::filesystem::path written(const std::filesystem::path& file,
                                     const std::vector<Entry>& entries)
{
    EXPECT_TRUE(opened(file)->append(entries));
    return file;
}

}  // namespace bathside::store
