#include "core/trail/store/connection.h"

#include <QSqlDriver>
#include <QSqlError>
#include <QUrl>
#include <atomic>
#include <cerrno>

#include <sqlite3.h>
#include <unistd.h>

namespace bathside::store {
namespace {

QString freshName()
{
    static std::atomic<int> count{0};
    return QStringLiteral("bathside-trail-%1").arg(++count);
}

int noteLog(void* pages, sqlite3*, const char*, int count)
{
    *static_cast<int*>(pages) = count;
    return SQLITE_OK;
}

// Asks without opening the file: closing another descriptor of it would drop SQLite's locks.
StoreTrouble whyNotOpened(const std::filesystem::path& file, Connection::Access access)
{
    const int wanted = access == Connection::Access::ReadWrite ? R_OK | W_OK : R_OK;
    std::error_code none;
    const bool there = std::filesystem::exists(file, none);
    const std::filesystem::path& asked =
        there || access != Connection::Access::ReadWrite ? file : file.parent_path();
    errno = 0;
    if (::access(asked.c_str(), wanted) != 0)
        return troubleOfSystem(errno);
    return {StoreFault::WriteFailed, std::filesystem::is_directory(file, none) ? EISDIR : 0};
}

}  // namespace

QString toQString(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

Connection::Connection(const std::filesystem::path& file, Access access)
    : m_name(freshName()), m_db(QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_name))
{
    const QString path = QString::fromStdString(file.string());
    // Short: whoever holds a trail holds it for as long as it runs.
    const QString patience = QStringLiteral("QSQLITE_BUSY_TIMEOUT=200");
    if (access == Access::Frozen) {
        m_db.setDatabaseName(QString::fromLatin1(QUrl::fromLocalFile(path).toEncoded()) +
                             QStringLiteral("?immutable=1"));
        m_db.setConnectOptions(patience +
                               QStringLiteral(";QSQLITE_OPEN_READONLY;QSQLITE_OPEN_URI"));
        return;
    }
    m_db.setDatabaseName(path);
    m_db.setConnectOptions(access == Access::ReadOnly
                               ? patience + QStringLiteral(";QSQLITE_OPEN_READONLY")
                               : patience);
}

Connection::~Connection()
{
    m_db.close();
    m_db = QSqlDatabase();
    QSqlDatabase::removeDatabase(m_name);
}

Result<std::unique_ptr<Connection>, StoreTrouble> Connection::open(
    const std::filesystem::path& file, Access access)
{
    std::unique_ptr<Connection> made(new Connection(file, access));
    if (!made->m_db.open() || !made->takeNative())
        return failure(whyNotOpened(file, access));
    if (access == Access::ReadWrite && sqlite3_db_readonly(made->m_native, "main") == 1) {
        const StoreTrouble why = whyNotOpened(file, access);
        return failure(why.fault == StoreFault::NotPermitted
                           ? why
                           : StoreTrouble{StoreFault::ReadOnly, EROFS});
    }
    return made;
}

bool Connection::takeNative()
{
    const QVariant handle = m_db.driver()->handle();
    if (!handle.isValid() || qstrcmp(handle.typeName(), "sqlite3*") != 0)
        return false;
    m_native = *static_cast<sqlite3* const*>(handle.data());
    sqlite3_wal_hook(m_native, noteLog, &m_logPages);  // and no checkpoints but ours
    return sqlite3_db_config(m_native, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr) == SQLITE_OK;
}

void Connection::closeClean()
{
    sqlite3_db_config(m_native, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 0, nullptr);
}

Result<void, StoreTrouble> Connection::run(std::string_view sql, Moment moment)
{
    QSqlQuery query(m_db);
    if (!query.exec(toQString(sql)))
        return failure(trouble(query.lastError(), moment));
    return {};
}

Result<QVariant, StoreTrouble> Connection::value(std::string_view sql, const QVariantList& bound)
{
    auto query = prepared(sql);
    if (!query)
        return failure(query.error());
    if (const auto done = run(*query, bound); !done)
        return failure(done.error());
    return query->next() ? query->value(0) : QVariant();
}

Result<QSqlQuery, StoreTrouble> Connection::prepared(std::string_view sql)
{
    QSqlQuery query(m_db);
    query.setForwardOnly(true);
    if (!query.prepare(toQString(sql)))
        return failure(trouble(query.lastError(), Moment::BeforeCommit));
    return query;
}

Result<void, StoreTrouble> Connection::run(QSqlQuery& query, const QVariantList& bound)
{
    for (qsizetype i = 0; i < bound.size(); ++i)
        query.bindValue(static_cast<int>(i), bound[i]);
    if (!query.exec())
        return failure(trouble(query.lastError(), Moment::BeforeCommit));
    return {};
}

void Connection::rollBack()
{
    if (sqlite3_get_autocommit(m_native) == 0)
        std::ignore = run("ROLLBACK");
}

Result<void, StoreTrouble> Connection::checkpoint()
{
    if (sqlite3_wal_checkpoint_v2(m_native, "main", SQLITE_CHECKPOINT_TRUNCATE, nullptr, nullptr) !=
        SQLITE_OK)
        return failure(nativeTrouble());
    m_logPages = 0;
    return {};
}

StoreTrouble Connection::nativeTrouble() const
{
    return troubleOf(sqlite3_extended_errcode(m_native), sqlite3_system_errno(m_native),
                     Moment::BeforeCommit);
}

StoreTrouble Connection::trouble(const QSqlError& error, Moment moment) const
{
    return troubleOf(error.nativeErrorCode().toInt(), sqlite3_system_errno(m_native), moment);
}

}  // namespace bathside::store
