#pragma once

// What is kept beside the events so that a day, a lot or a bag is found without reading all of
// them.
//
// `shift`: each shift's first and last seq. `loose`: the events outside any shift. `subject_index`:
// which events name a kind, person, bag, ampoule, lot or line. All three follow from the events by
// the same statements, whether one tap is added or everything is rebuilt; they are written in the
// transaction of the events, and can be thrown away. A taken-back closing opens its shift again.

#include <optional>
#include <span>

#include "core/trail/store/connection.h"

namespace bathside::store {

/// Brings in events just inserted, within the caller's transaction. Must not outlive the
/// connection.
class Projector {
public:
    explicit Projector(Connection& db) : m_db(db) {}
    [[nodiscard]] Result<void, StoreTrouble> bringIn(std::span<const Entry> added);

private:
    [[nodiscard]] Result<void, StoreTrouble> runKept(std::optional<QSqlQuery>& query,
                                                     std::string_view sql,
                                                     const QVariantList& span);

    Connection& m_db;
    std::optional<QSqlQuery> m_subjects;  // prepared once: they run with every tap
    std::optional<QSqlQuery> m_loose;
};

/// Throws all three away and makes them anew, in one transaction of its own; the file is of this
/// version then.
[[nodiscard]] Result<void, StoreTrouble> rebuild(Connection& db);

/// Makes them anew beside the kept ones and compares, row by row, in both directions.
[[nodiscard]] Result<bool, StoreTrouble> projectionsAgree(Connection& db);

}  // namespace bathside::store
