#pragma once

// One connection to SQLite: owned by QSqlDatabase, with what Qt Sql lacks through its native handle
// (extended codes with the system's errno, defensive mode, the length of the log).
//
// Needs a QCoreApplication, and must live and die on one thread. Nothing is checkpointed on closing
// unless `closeClean()` was said, so that a handle that failed is never synced again (findings of
// the ATC'20 study of failed syncs; DEVELOPERS.md).

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QVariant>
#include <filesystem>
#include <memory>
#include <string_view>

#include "core/base/result.h"
#include "core/trail/store/sqlite_trouble.h"

struct sqlite3;

namespace bathside::store {

class Connection {
public:
    enum class Access : std::uint8_t {
        ReadWrite,  // makes the file if there is none
        ReadOnly,
        Frozen,  // nobody writes to the file meanwhile: no locks, no log; for a read-only folder
    };

    [[nodiscard]] static Result<std::unique_ptr<Connection>, StoreTrouble> open(
        const std::filesystem::path& file, Access access);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    /// One statement without parameters.
    [[nodiscard]] Result<void, StoreTrouble> run(std::string_view sql,
                                                 Moment moment = Moment::BeforeCommit);
    /// The first column of the first row; an invalid QVariant where there is no row.
    [[nodiscard]] Result<QVariant, StoreTrouble> value(std::string_view sql,
                                                       const QVariantList& bound = {});
    /// Binds in order and runs; the query stays usable.
    [[nodiscard]] Result<void, StoreTrouble> run(QSqlQuery& query, const QVariantList& bound);
    [[nodiscard]] Result<QSqlQuery, StoreTrouble> prepared(std::string_view sql);
    /// Ends a transaction that failed; whatever it answers, nothing of it stays.
    void rollBack();

    [[nodiscard]] sqlite3* native() const noexcept { return m_native; }
    [[nodiscard]] StoreTrouble nativeTrouble() const;
    /// Pages that the write-ahead log holds since the last checkpoint.
    [[nodiscard]] int logPages() const noexcept { return m_logPages; }
    /// Empties the log into the file, synced, or says why not.
    [[nodiscard]] Result<void, StoreTrouble> checkpoint();
    void closeClean();

private:
    Connection(const std::filesystem::path& file, Access access);
    [[nodiscard]] StoreTrouble trouble(const QSqlError& error, Moment moment) const;
    [[nodiscard]] bool takeNative();

    QString m_name;
    QSqlDatabase m_db;
    sqlite3* m_native = nullptr;
    int m_logPages = 0;
};

[[nodiscard]] QString toQString(std::string_view text);

}  // namespace bathside::store
