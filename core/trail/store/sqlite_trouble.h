#pragma once

// What one of SQLite's result codes means for the record.
//
// After a failed commit nobody knows whether the events are there, except where SQLite says that
// the disk was full (the frame that commits was then never written). Before the commit nothing is
// there. (SQLite, rescode.html; spec: the trail, faults.)

#include "core/trail/ports.h"

namespace bathside::store {

enum class Moment : std::uint8_t {
    BeforeCommit,
    AtCommit,
};

/// `code` is an extended result code, `error` the system's errno behind it or 0.
[[nodiscard]] StoreTrouble troubleOf(int code, int error, Moment moment);

/// For a failure of the system itself, outside SQLite.
[[nodiscard]] StoreTrouble troubleOfSystem(int error);

}  // namespace bathside::store
