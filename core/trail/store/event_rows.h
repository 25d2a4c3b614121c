#pragma once

// Entries to and from rows of the table `event`.
//
// Every column holds the very text that is hashed, so that an auditor can rebuild it with SQL
// alone; reading is as strict: a column in any other form makes the row unreadable and is named.
// Both ways go through SQLite's own interface: Qt Sql carries text as UTF-16, which is not always
// the same bytes again, and is several times slower over a trail of years (tests/speed prints the
// two side by side).

#include <functional>
#include <memory>
#include <span>
#include <string>
#include <string_view>

#include "core/trail/store/connection.h"

struct sqlite3_stmt;

namespace bathside::store {

struct FinalizeStatement {
    void operator()(sqlite3_stmt* statement) const;
};
using Statement = std::unique_ptr<sqlite3_stmt, FinalizeStatement>;

struct Row {
    Seq seq = 0;
    const Entry* entry = nullptr;  // null: no entry can be made of it
    std::string_view column;       // then: the first column that is not as it must be
};

using TakeRow = std::function<bool(const Row&)>;

/// Rows with from <= seq <= to in order, until `take` returns false.
[[nodiscard]] Result<void, StoreTrouble> readRows(const Connection& db, Seq from, Seq to,
                                                  const TakeRow& take);

/// Rows whose seqs a statement gives in its first column; it must give them in order.
[[nodiscard]] Result<void, StoreTrouble> readRowsOf(const Connection& db, std::string_view seqsSql,
                                                    std::span<const std::string> bound,
                                                    const TakeRow& take);

/// Inserts rows, within the caller's transaction. Must not outlive the connection.
class RowWriter {
public:
    [[nodiscard]] static Result<RowWriter, StoreTrouble> on(const Connection& db);
    [[nodiscard]] Result<void, StoreTrouble> write(const Entry& entry);

private:
    RowWriter(const Connection& db, Statement statement)
        : m_db(&db), m_statement(std::move(statement))
    {
    }

    const Connection* m_db;
    Statement m_statement;
};

}  // namespace bathside::store
