#pragma once

// The settings that durability and safety rest on, set on a connection and read back.
//
// Exclusive locking comes before WAL: one process, one connection (SQLite's WAL-reset fault, in
// every version to 3.51.2, needs two). Checkpoints are the trail's own, so that a failed one is
// seen. (Spec: the trail; SQLite, pragma.html, wal.html.)

#include <string>

#include "core/trail/store/connection.h"

namespace bathside::store {

struct Unset {
    StoreTrouble trouble;  // `Unsafe`: it was taken but reads back otherwise
    std::string setting;
};

/// Defensive mode and the like, and the lock: changes nothing in the file.
[[nodiscard]] Result<void, Unset> guard(Connection& db, Connection::Access access);

/// What a file that is written to needs, after it was found to be a trail or empty.
[[nodiscard]] Result<void, Unset> makeDurable(Connection& db);

}  // namespace bathside::store
