#include "core/trail/store/trail_db.h"

#include <QStorageInfo>
#include <cerrno>
#include <cstring>
#include <limits>

#include "core/trail/event_form.h"
#include "core/trail/store/disk.h"
#include "core/trail/store/schema.h"
#include "core/trail/store/settings.h"

namespace bathside::store {
namespace {

using Access = Connection::Access;

constexpr Seq kNoLimit = std::numeric_limits<Seq>::max();

bool writes(Mode mode) { return mode != Mode::ReadOnly && mode != Mode::Salvage; }

OpenFault fault(StoreTrouble trouble, Check check, std::string detail = {})
{
    return {trouble, check, std::move(detail)};
}

std::string_view wordOf(Role role) { return role == Role::Trail ? "trail" : "spool"; }

QByteArray bytesOf(const Hash& hash)
{
    QByteArray bytes(static_cast<qsizetype>(hash.size()), Qt::Uninitialized);
    std::memcpy(bytes.data(), hash.data(), hash.size());
    return bytes;
}

/// By its own word: an archive, say. The system does not hold it against root.
bool isWriteProtected(const std::filesystem::path& file)
{
    using std::filesystem::perms;
    constexpr perms kAnyWrites = perms::owner_write | perms::group_write | perms::others_write;
    std::error_code none;
    const auto status = std::filesystem::status(file, none);
    return !none && (status.permissions() & kAnyWrites) == perms::none;
}

Result<void, OpenFault> checkPlace(const std::filesystem::path& file, Mode mode)
{
    std::error_code error;
    const bool there = std::filesystem::exists(file, error);
    if (error)
        return failure(fault(troubleOfSystem(error.value()), Check::Place));
    if (mode == Mode::New && there)
        return failure(fault({StoreFault::NotPermitted, EEXIST}, Check::Place));
    if (!there && (mode == Mode::Existing || !writes(mode)))
        return failure(fault({StoreFault::WriteFailed, ENOENT}, Check::Place));
    if (there && writes(mode) && isWriteProtected(file))
        return failure(fault({StoreFault::NotPermitted, EACCES}, Check::Access));
    const QStorageInfo storage(
        QString::fromStdString(std::filesystem::absolute(file).parent_path().string()));
    const std::string type = storage.fileSystemType().toStdString();
    if (writes(mode) && isNetworkFileSystem(type))
        return failure(fault({StoreFault::NotLocal, 0}, Check::Place, type));
    return {};
}

// A trail last written with a log needs a writable folder, even to be read; without a log beside
// it, it can be read as it lies.
Result<std::unique_ptr<Connection>, StoreTrouble> connect(const std::filesystem::path& file,
                                                          Mode mode)
{
    auto db = Connection::open(file, writes(mode) ? Access::ReadWrite : Access::ReadOnly);
    if (!db || writes(mode))
        return db;
    const auto readable = (*db)->value("SELECT count(*) FROM sqlite_schema");
    const bool needsLog = !readable && (readable.error().fault == StoreFault::NotPermitted ||
                                        readable.error().fault == StoreFault::ReadOnly ||
                                        readable.error().fault == StoreFault::WriteFailed);
    std::error_code none;
    const auto log = std::filesystem::path(file.string() + "-wal");
    if (needsLog &&
        !(std::filesystem::exists(log, none) && std::filesystem::file_size(log, none) > 0))
        return Connection::open(file, Access::Frozen);
    return db;
}

}  // namespace

TrailDb::TrailDb(std::filesystem::path file, std::unique_ptr<Connection> db)
    : m_file(std::move(file)), m_db(std::move(db)), m_projector(*m_db)
{
}

// An orderly end leaves one file without a log; a handle that failed is let go as it is.
TrailDb::~TrailDb()
{
    m_writer.reset();
    if (m_writes && !m_spent && m_db->checkpoint())
        m_db->closeClean();
}

Result<std::unique_ptr<TrailDb>, OpenFault> TrailDb::open(const std::filesystem::path& file,
                                                          Mode mode, const Origin& origin)
{
    if (const auto fit = checkPlace(file, mode); !fit)
        return failure(fit.error());
    auto db = connect(file, mode);
    if (!db)
        return failure(fault(db.error(), Check::Access));
    std::unique_ptr<TrailDb> trail(new TrailDb(file, std::move(*db)));
    if (const auto started = trail->start(mode, origin); !started) {
        trail->m_spent = started.error().trouble;  // what was found damaged is left as it is
        return failure(started.error());
    }
    return trail;
}

Result<void, OpenFault> TrailDb::start(Mode mode, const Origin& origin)
{
    if (const auto set = guard(*m_db, writes(mode) ? Access::ReadWrite : Access::ReadOnly); !set)
        return failure(fault(set.error().trouble, Check::Settings, set.error().setting));
    const auto identity = identityOf(*m_db);
    if (!identity)
        return failure(fault(identity.error(), Check::Header));
    if (*identity == Identity::Newer)
        return failure(fault({StoreFault::Newer, 0}, Check::Header));
    if (*identity == Identity::Foreign ||
        (*identity == Identity::Empty && (!writes(mode) || mode == Mode::Existing)))
        return failure(fault({StoreFault::Foreign, 0}, Check::Header));
    m_writes = writes(mode);
    if (m_writes) {
        if (const auto set = makeDurable(*m_db); !set)
            return failure(fault(set.error().trouble, Check::Settings, set.error().setting));
        if (const auto rewritten = m_db->checkpoint(); !rewritten)
            return failure(fault(rewritten.error(), Check::Access));
    }
    if (*identity == Identity::Empty) {
        if (const auto made = make(origin); !made)
            return made;
    }
    const auto difference = schemaDifference(*m_db);
    if (mode != Mode::Salvage && (!difference || !difference->empty()))
        return failure(fault(difference ? StoreTrouble{StoreFault::Damaged, 0} : difference.error(),
                             Check::Schema, difference.value_or("")));
    if (m_writes && *identity == Identity::Older) {
        if (const auto made = rebuild(*m_db); !made)
            return failure(fault(made.error(), Check::Schema));
    }
    if (const auto read = readOrigin(); !read)
        return read;
    return readTail(mode);
}

Result<void, OpenFault> TrailDb::make(const Origin& origin)
{
    const auto within = [&]() -> Result<void, StoreTrouble> {
        if (const auto begun = m_db->run("BEGIN IMMEDIATE"); !begun)
            return begun;
        if (const auto made = makeSchema(*m_db); !made)
            return made;
        const QVariant continues = origin.continues.empty()
                                       ? QVariant(QMetaType(QMetaType::QString))
                                       : QVariant(toQString(origin.continues));
        const auto put = m_db->value(
            "INSERT INTO origin (one, role, seq, hash, continues) VALUES (1, ?, ?, ?, ?)",
            {toQString(wordOf(origin.role)), QVariant::fromValue<qint64>(origin.after.seq),
             bytesOf(origin.after.hash), continues});
        if (!put)
            return failure(put.error());
        return m_db->run("COMMIT", Moment::AtCommit);
    };
    if (const auto made = within(); !made) {
        m_db->rollBack();
        return failure(fault(made.error(), Check::Access));
    }
    if (const auto synced = syncPath(std::filesystem::absolute(m_file).parent_path()); !synced)
        return failure(fault(synced.error(), Check::Access));
    return {};
}

Result<void, OpenFault> TrailDb::readOrigin()
{
    auto query = m_db->prepared("SELECT role, seq, hash, continues FROM origin");
    if (!query)
        return failure(fault(query.error(), Check::Tail, "origin"));
    if (const auto done = m_db->run(*query, {}); !done)
        return failure(fault(done.error(), Check::Tail, "origin"));
    if (!query->next() ||
        query->value(2).toByteArray().size() != static_cast<qsizetype>(m_head.hash.size()))
        return failure(fault({StoreFault::Damaged, 0}, Check::Tail, "origin"));
    m_origin.role =
        query->value(0).toString() == toQString(wordOf(Role::Spool)) ? Role::Spool : Role::Trail;
    m_origin.after.seq = query->value(1).toLongLong();
    std::memcpy(m_origin.after.hash.data(), query->value(2).toByteArray().constData(),
                m_origin.after.hash.size());
    m_origin.continues = query->value(3).toString().toStdString();
    return {};
}

// Follows the chain over the last entries. The one before them is taken at its word.
Result<void, OpenFault> TrailDb::readTail(Mode mode)
{
    m_head = m_origin.after;
    const auto last = m_db->value("SELECT max(seq) FROM event");
    if (mode == Mode::Salvage)
        return {};
    if (!last)
        return failure(fault(last.error(), Check::Tail));
    if (last->isNull())
        return {};
    bool trusted = last->toLongLong() - kTail <= m_origin.after.seq;
    Seq expected = trusted ? m_origin.after.seq + 1 : last->toLongLong() - kTail;
    bool sound = true;
    const auto read = readRows(
        *m_db, trusted ? std::numeric_limits<Seq>::min() : expected, kNoLimit, [&](const Row& row) {
            sound =
                row.entry && row.seq == expected &&
                (!trusted || chained(m_head.hash, canonicalText(*row.entry)) == row.entry->hash);
            if (!sound)
                return false;
            m_head = {row.seq, row.entry->hash};
            trusted = true;
            ++expected;
            return true;
        });
    if (!read || !sound || expected != last->toLongLong() + 1)
        return failure(fault(read ? StoreTrouble{StoreFault::Damaged, 0} : read.error(),
                             Check::Tail, std::to_string(expected)));
    return {};
}

bool TrailDb::continuesHead(std::span<const Entry> entries) const
{
    Head head = m_head;
    for (const Entry& entry : entries) {
        if (entry.seq != head.seq + 1 || entry.hash != chained(head.hash, canonicalText(entry)))
            return false;
        head = {entry.seq, entry.hash};
    }
    return true;
}

Result<void, StoreTrouble> TrailDb::append(std::span<const Entry> entries)
{
    if (m_spent)
        return failure(*m_spent);
    if (entries.empty())
        return {};
    if (!continuesHead(entries))
        return failure(StoreTrouble{StoreFault::OutOfStep, 0});
    const auto written = write(entries);
    const auto kept = written ? m_db->run("COMMIT", Moment::AtCommit) : written;
    if (!kept) {
        m_db->rollBack();
        if (kept.error().fault == StoreFault::Unconfirmed)
            m_spent = kept.error();
        return kept;
    }
    m_head = {entries.back().seq, entries.back().hash};
    tidy(kLongLog);
    return {};
}

Result<void, StoreTrouble> TrailDb::write(std::span<const Entry> entries)
{
    if (const auto begun = m_db->run("BEGIN IMMEDIATE"); !begun)
        return begun;
    if (!m_writer) {
        auto writer = RowWriter::on(*m_db);
        if (!writer)
            return failure(writer.error());
        m_writer = std::move(*writer);
    }
    for (const Entry& entry : entries) {
        if (const auto written = m_writer->write(entry); !written)
            return written;
    }
    return m_projector.bringIn(entries);
}

// What was acknowledged stays safe in the log whatever happens here; but after a failed sync this
// handle does nothing more, and the next append is told why.
void TrailDb::tidy(int pages)
{
    if (m_spent || m_db->logPages() <= pages)
        return;
    if (const auto done = m_db->checkpoint(); !done)
        m_spent = done.error();
}

Result<void, StoreTrouble> TrailDb::read(Seq from, Seq to,
                                         const std::function<bool(const Entry&)>& take) const
{
    if (m_spent)
        return failure(*m_spent);
    bool readable = true;
    const auto done = readRows(*m_db, from, to, [&](const Row& row) {
        readable = row.entry != nullptr;
        return readable && take(*row.entry);
    });
    if (done && !readable)
        return failure(StoreTrouble{StoreFault::Damaged, 0});
    return done;
}

Result<void, StoreTrouble> TrailDb::copyTo(const std::filesystem::path& target)
{
    if (m_spent)
        return failure(*m_spent);
    std::error_code error;
    if (std::filesystem::exists(target, error) || error)
        return failure(StoreTrouble{StoreFault::NotPermitted, error ? error.value() : EEXIST});
    const std::filesystem::path partial(target.string() + ".partial");
    std::filesystem::remove(partial, error);  // of a copy that was cut short
    const auto copied = m_db->value("VACUUM INTO ?", {QString::fromStdString(partial.string())});
    const auto synced =
        copied ? syncPath(partial) : Result<void, StoreTrouble>(failure(copied.error()));
    const auto named = synced ? renameDurably(partial, target) : synced;
    if (!named)
        std::filesystem::remove(partial, error);
    return named;
}

}  // namespace bathside::store
