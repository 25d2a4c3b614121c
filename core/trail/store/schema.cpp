#include "core/trail/store/schema.h"

#include <array>
#include <map>

namespace bathside::store {
namespace {

struct Thing {
    std::string_view name;
    std::string_view sql;
};

constexpr std::array kThings{
    // Where the chain of this file begins: seq 0 and 32 zero bytes, or what it continues.
    Thing{"origin", R"(CREATE TABLE origin (
  one INTEGER PRIMARY KEY CHECK (one = 1),
  role TEXT NOT NULL CHECK (role IN ('trail', 'spool')),
  seq INTEGER NOT NULL,
  hash BLOB NOT NULL CHECK (length(hash) = 32),
  continues TEXT
) STRICT)"},
    Thing{"event", R"(CREATE TABLE event (
  seq INTEGER PRIMARY KEY,
  at TEXT NOT NULL,
  boot_us INTEGER NOT NULL,
  boot_id TEXT NOT NULL,
  station TEXT NOT NULL,
  person TEXT,
  proof TEXT,
  tap TEXT NOT NULL,
  place TEXT,
  by_receipt INTEGER NOT NULL CHECK (by_receipt IN (0, 1)),
  card TEXT,
  kind TEXT NOT NULL,
  payload TEXT NOT NULL,
  spool_seq INTEGER,
  spool_hash BLOB,
  hash BLOB NOT NULL UNIQUE CHECK (length(hash) = 32)
) STRICT)"},
    Thing{"event_tap", "CREATE INDEX event_tap ON event (tap)"},
    Thing{"event_grows_at_its_end", R"(CREATE TRIGGER event_grows_at_its_end BEFORE INSERT ON event
WHEN NEW.seq IS NOT coalesce((SELECT max(seq) FROM event), (SELECT seq FROM origin)) + 1
  OR EXISTS (SELECT 1 FROM event WHERE hash = NEW.hash)
BEGIN SELECT RAISE(ABORT, 'the trail only grows at its end'); END)"},
    Thing{"event_stays", R"(CREATE TRIGGER event_stays BEFORE DELETE ON event
BEGIN SELECT RAISE(ABORT, 'the trail is append-only'); END)"},
    Thing{"event_is_fixed", R"(CREATE TRIGGER event_is_fixed BEFORE UPDATE ON event
BEGIN SELECT RAISE(ABORT, 'the trail is append-only'); END)"},
    Thing{"origin_is_one", R"(CREATE TRIGGER origin_is_one BEFORE INSERT ON origin
WHEN EXISTS (SELECT 1 FROM origin)
BEGIN SELECT RAISE(ABORT, 'the trail has one origin'); END)"},
    Thing{"origin_stays", R"(CREATE TRIGGER origin_stays BEFORE DELETE ON origin
BEGIN SELECT RAISE(ABORT, 'the trail is append-only'); END)"},
    Thing{"origin_is_fixed", R"(CREATE TRIGGER origin_is_fixed BEFORE UPDATE ON origin
BEGIN SELECT RAISE(ABORT, 'the trail is append-only'); END)"},
    Thing{"shift", R"(CREATE TABLE shift (
  opened_seq INTEGER PRIMARY KEY,
  closed_seq INTEGER,
  zone TEXT NOT NULL,
  opened_at TEXT NOT NULL,
  closed_at TEXT
) STRICT)"},
    Thing{"shift_opened_at", "CREATE INDEX shift_opened_at ON shift (opened_at)"},
    // Events outside any shift.
    Thing{"loose", R"(CREATE TABLE loose (
  seq INTEGER PRIMARY KEY,
  at TEXT NOT NULL
) STRICT)"},
    Thing{"loose_at", "CREATE INDEX loose_at ON loose (at)"},
    // `what` counts as SubjectOf does (queries.h).
    Thing{"subject_index", R"(CREATE TABLE subject_index (
  what INTEGER NOT NULL,
  id TEXT NOT NULL,
  seq INTEGER NOT NULL,
  PRIMARY KEY (what, id, seq)
) STRICT, WITHOUT ROWID)"},
};

using Found = std::map<std::string, std::string, std::less<>>;

Result<Found, StoreTrouble> found(Connection& db)
{
    auto query = db.prepared("SELECT name, sql FROM sqlite_schema WHERE sql IS NOT NULL");
    if (!query)
        return failure(query.error());
    if (const auto done = db.run(*query, {}); !done)
        return failure(done.error());
    Found things;
    while (query->next())
        things[query->value(0).toString().toStdString()] = query->value(1).toString().toStdString();
    return things;
}

}  // namespace

Result<Identity, StoreTrouble> identityOf(Connection& db)
{
    const auto application = db.value("PRAGMA application_id");
    if (!application)
        return failure(application.error());
    const auto version = db.value("PRAGMA user_version");
    const auto things = db.value("SELECT count(*) FROM sqlite_schema");
    if (!version || !things)
        return failure(version ? things.error() : version.error());
    if (application->toInt() == kApplicationId)
        return version->toInt() > kUserVersion    ? Identity::Newer
               : version->toInt() == kUserVersion ? Identity::Trail
               : version->toInt() > 0             ? Identity::Older
                                                  : Identity::Foreign;
    const bool untouched =
        application->toInt() == 0 && version->toInt() == 0 && things->toInt() == 0;
    return untouched ? Identity::Empty : Identity::Foreign;
}

Result<void, StoreTrouble> makeSchema(Connection& db)
{
    for (const Thing& thing : kThings) {
        if (const auto made = db.run(thing.sql); !made)
            return made;
    }
    if (const auto named = db.run("PRAGMA application_id = " + std::to_string(kApplicationId));
        !named)
        return named;
    return db.run("PRAGMA user_version = " + std::to_string(kUserVersion));
}

Result<std::string, StoreTrouble> schemaDifference(Connection& db)
{
    auto things = found(db);
    if (!things)
        return failure(things.error());
    for (const Thing& thing : kThings) {
        const auto there = things->find(thing.name);
        if (there == things->end() || there->second != thing.sql)
            return std::string(thing.name);
        things->erase(there);
    }
    return things->empty() ? std::string() : things->begin()->first;
}

}  // namespace bathside::store
