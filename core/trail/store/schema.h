#pragma once

// The tables of a trail, and whether a file has exactly these.
//
// `event` and `origin` only grow at their end: triggers refuse everything else, which stops
// accidents; evidence is the chain. `shift`, `loose` and `subject_index` follow from `event` and
// can be thrown away (projections.h). A trail of another version has another `user_version`; what
// an older one lacks is made when it is opened for writing. (Spec: the trail; SQLite,
// lang_conflict.html: REPLACE passes delete triggers unless recursive_triggers is on.)

#include <string>

#include "core/trail/store/connection.h"

namespace bathside::store {

inline constexpr int kApplicationId = 0x42746853;
/// 1: `subject_index` did not know yet what later entries point at.
inline constexpr int kUserVersion = 2;

enum class Identity : std::uint8_t { Empty, Trail, Older, Foreign, Newer };

[[nodiscard]] Result<Identity, StoreTrouble> identityOf(Connection& db);

/// Within the caller's transaction.
[[nodiscard]] Result<void, StoreTrouble> makeSchema(Connection& db);

/// The name of the first table, index or trigger that is missing, changed or too many; empty: none.
[[nodiscard]] Result<std::string, StoreTrouble> schemaDifference(Connection& db);

}  // namespace bathside::store
