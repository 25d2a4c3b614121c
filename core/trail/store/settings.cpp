#include "core/trail/store/settings.h"

#include <array>

#include <sqlite3.h>

namespace bathside::store {
namespace {

struct Pragma {
    std::string_view name;
    std::string_view set;
    std::string_view reads;
};

constexpr std::array kGuards{
    Pragma{"foreign_keys", "ON", "1"},    Pragma{"recursive_triggers", "ON", "1"},
    Pragma{"trusted_schema", "OFF", "0"}, Pragma{"cell_size_check", "ON", "1"},
    Pragma{"mmap_size", "0", "0"},
};

constexpr Pragma kLock{"locking_mode", "EXCLUSIVE", "exclusive"};

constexpr std::array kDurable{
    Pragma{"journal_mode", "WAL", "wal"},
    Pragma{"synchronous", "FULL", "2"},
    Pragma{"journal_size_limit", "16777216", "16777216"},
};

struct Switch {
    int op;
    int on;
    std::string_view name;
};

constexpr std::array kSwitches{
    Switch{SQLITE_DBCONFIG_DEFENSIVE, 1, "defensive"},
    Switch{SQLITE_DBCONFIG_DQS_DML, 0, "dqs_dml"},
    Switch{SQLITE_DBCONFIG_DQS_DDL, 0, "dqs_ddl"},
};

Result<void, Unset> setPragma(Connection& db, const Pragma& pragma)
{
    const std::string name = "PRAGMA " + std::string(pragma.name);
    if (const auto set = db.value(name + " = " + std::string(pragma.set)); !set)
        return failure(Unset{set.error(), std::string(pragma.name)});
    const auto read = db.value(name);
    if (!read)
        return failure(Unset{read.error(), std::string(pragma.name)});
    if (read->toString() != toQString(pragma.reads))
        return failure(Unset{{StoreFault::Unsafe, 0}, std::string(pragma.name)});
    return {};
}

Result<void, Unset> setSwitch(Connection& db, const Switch& wanted)
{
    int now = -1;
    sqlite3_db_config(db.native(), wanted.op, wanted.on, nullptr);
    sqlite3_db_config(db.native(), wanted.op, -1, &now);
    if (now != wanted.on)
        return failure(Unset{{StoreFault::Unsafe, 0}, std::string(wanted.name)});
    return {};
}

}  // namespace

Result<void, Unset> guard(Connection& db, Connection::Access access)
{
    for (const Switch& wanted : kSwitches) {
        if (const auto set = setSwitch(db, wanted); !set)
            return set;
    }
    if (access == Connection::Access::ReadWrite) {
        if (const auto locked = setPragma(db, kLock); !locked)
            return locked;
    }
    for (const Pragma& pragma : kGuards) {
        if (const auto set = setPragma(db, pragma); !set)
            return set;
    }
    return {};
}

Result<void, Unset> makeDurable(Connection& db)
{
    for (const Pragma& pragma : kDurable) {
        if (const auto set = setPragma(db, pragma); !set)
            return set;
    }
    return {};
}

}  // namespace bathside::store
