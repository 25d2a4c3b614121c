#include "core/trail/store/event_rows.h"

#include <cstring>
#include <memory>

#include <sqlite3.h>

#include "core/base/rfc3339.h"
#include "core/trail/boot_id.h"

namespace bathside::store {
namespace {

#define BATHSIDE_COLUMNS                                                                      \
    "seq, at, boot_us, boot_id, station, person, proof, tap, place, by_receipt, card, kind, " \
    "payload, spool_seq, spool_hash, hash"

enum Column : int {
    kSeq,
    kAt,
    kBootUs,
    kBootId,
    kStation,
    kPerson,
    kProof,
    kTap,
    kPlace,
    kByReceipt,
    kCard,
    kKind,
    kPayload,
    kSpoolSeq,
    kSpoolHash,
    kHash
};

Result<Statement, StoreTrouble> prepare(const Connection& db, std::string_view sql)
{
    sqlite3_stmt* made = nullptr;
    if (sqlite3_prepare_v2(db.native(), sql.data(), static_cast<int>(sql.size()), &made, nullptr) !=
        SQLITE_OK)
        return failure(db.nativeTrouble());
    return Statement(made);
}

class Cells {
public:
    explicit Cells(sqlite3_stmt* row) : m_row(row) {}

    [[nodiscard]] bool isNull(Column at) const
    {
        return sqlite3_column_type(m_row, at) == SQLITE_NULL;
    }
    [[nodiscard]] std::int64_t number(Column at) const { return sqlite3_column_int64(m_row, at); }

    [[nodiscard]] std::string_view bytes(Column at) const
    {
        const void* data = sqlite3_column_blob(m_row, at);
        return {static_cast<const char*>(data),
                static_cast<std::size_t>(sqlite3_column_bytes(m_row, at))};
    }

    [[nodiscard]] bool hash(Column at, Hash& hash) const
    {
        const std::string_view found = bytes(at);
        if (found.size() != hash.size())
            return false;
        std::memcpy(hash.data(), found.data(), hash.size());
        return true;
    }

    /// NULL and nothing else stands for an empty text.
    [[nodiscard]] bool absentOrText(Column at, std::string& text) const
    {
        text.clear();
        if (isNull(at))
            return true;
        text = bytes(at);
        return !text.empty();
    }

private:
    sqlite3_stmt* m_row;
};

bool readTime(const Cells& cells, WallTime& at)
{
    const std::string_view text = cells.bytes(kAt);
    const auto read = fromRfc3339(text);
    if (!read || toRfc3339(*read) != text)
        return false;
    at = *read;
    return true;
}

bool readBootId(const Cells& cells, BootId& id)
{
    const auto read = bootIdFromText(cells.bytes(kBootId));
    if (read)
        id = *read;
    return read.has_value();
}

bool readPerson(const Cells& cells, std::optional<Person>& person)
{
    person.reset();
    if (cells.isNull(kPerson) && cells.isNull(kProof))
        return true;
    const auto proof = named<Proof>(cells.bytes(kProof));
    if (cells.isNull(kPerson) || !proof)
        return false;
    person = Person{{std::string(cells.bytes(kPerson))}, *proof};
    return true;
}

bool readSpool(const Cells& cells, std::optional<SpoolOrigin>& spool)
{
    spool.reset();
    if (cells.isNull(kSpoolSeq) && cells.isNull(kSpoolHash))
        return true;
    SpoolOrigin read{cells.number(kSpoolSeq), {}};
    if (cells.isNull(kSpoolSeq) || !cells.hash(kSpoolHash, read.hash))
        return false;
    spool = read;
    return true;
}

// The name of the first column that is not as it must be; empty: all are.
std::string_view readEntry(const Cells& cells, Entry& entry)
{
    entry.seq = cells.number(kSeq);
    if (!readTime(cells, entry.at))
        return "at";
    entry.boot = Micros(cells.number(kBootUs));
    if (!readBootId(cells, entry.bootId))
        return "boot_id";
    entry.station.text = cells.bytes(kStation);
    if (!readPerson(cells, entry.person))
        return "person";
    entry.tap.text = cells.bytes(kTap);
    if (!cells.absentOrText(kPlace, entry.place.text))
        return "place";
    if (cells.number(kByReceipt) != 0 && cells.number(kByReceipt) != 1)
        return "by_receipt";
    entry.byReceipt = cells.number(kByReceipt) == 1;
    if (!cells.absentOrText(kCard, entry.card.text))
        return "card";
    entry.kind = cells.bytes(kKind);
    entry.payload = cells.bytes(kPayload);
    if (!readSpool(cells, entry.spool))
        return "spool";
    return cells.hash(kHash, entry.hash) ? "" : "hash";
}

Result<void, StoreTrouble> handOut(const Connection& db, sqlite3_stmt* statement,
                                   const TakeRow& take)
{
    Entry entry;
    int step = sqlite3_step(statement);
    for (; step == SQLITE_ROW; step = sqlite3_step(statement)) {
        const std::string_view wrong = readEntry(Cells(statement), entry);
        if (!take(Row{entry.seq, wrong.empty() ? &entry : nullptr, wrong}))
            return {};
    }
    if (step != SQLITE_DONE)
        return failure(db.nativeTrouble());
    return {};
}

// Binds in the order of the columns. Texts are not copied: they live until the row is written.
class Binder {
public:
    explicit Binder(sqlite3_stmt* statement) : m_statement(statement) {}

    void number(std::int64_t value) { sqlite3_bind_int64(m_statement, ++m_at, value); }
    void null() { sqlite3_bind_null(m_statement, ++m_at); }
    void hash(const Hash& hash)
    {
        sqlite3_bind_blob(m_statement, ++m_at, hash.data(), static_cast<int>(hash.size()),
                          SQLITE_STATIC);
    }
    void text(std::string_view text)
    {
        sqlite3_bind_text(m_statement, ++m_at, text.data(), static_cast<int>(text.size()),
                          SQLITE_STATIC);
    }
    void textOrNull(std::string_view text_) { text_.empty() ? null() : text(text_); }

private:
    sqlite3_stmt* m_statement;
    int m_at = 0;
};

// What an entry's columns hold where the entry itself has it in another form.
struct Texts {
    std::string at, bootId;
};

void bindRow(sqlite3_stmt* statement, const Entry& entry, const Texts& texts)
{
    Binder to(statement);
    to.number(entry.seq);
    to.text(texts.at);
    to.number(entry.boot.count());
    to.text(texts.bootId);
    to.text(entry.station.text);
    entry.person ? to.text(entry.person->id.text) : to.null();
    entry.person ? to.text(nameOf(entry.person->proof)) : to.null();
    to.text(entry.tap.text);
    to.textOrNull(entry.place.text);
    to.number(entry.byReceipt ? 1 : 0);
    to.textOrNull(entry.card.text);
    to.text(entry.kind);
    to.text(entry.payload);
    entry.spool ? to.number(entry.spool->seq) : to.null();
    entry.spool ? to.hash(entry.spool->hash) : to.null();
    to.hash(entry.hash);
}

}  // namespace

void FinalizeStatement::operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }

Result<void, StoreTrouble> readRows(const Connection& db, Seq from, Seq to, const TakeRow& take)
{
    const auto statement = prepare(
        db, "SELECT " BATHSIDE_COLUMNS " FROM event WHERE seq >= ?1 AND seq <= ?2 ORDER BY seq");
    if (!statement)
        return failure(statement.error());
    sqlite3_bind_int64(statement->get(), 1, from);
    sqlite3_bind_int64(statement->get(), 2, to);
    return handOut(db, statement->get(), take);
}

Result<void, StoreTrouble> readRowsOf(const Connection& db, std::string_view seqsSql,
                                      std::span<const std::string> bound, const TakeRow& take)
{
    const std::string sql = "SELECT " BATHSIDE_COLUMNS " FROM event WHERE seq IN (" +
                            std::string(seqsSql) + ") ORDER BY seq";
    const auto statement = prepare(db, sql);
    if (!statement)
        return failure(statement.error());
    int at = 0;
    for (const std::string& text : bound)
        sqlite3_bind_text(statement->get(), ++at, text.data(), static_cast<int>(text.size()),
                          SQLITE_TRANSIENT);
    return handOut(db, statement->get(), take);
}

Result<RowWriter, StoreTrouble> RowWriter::on(const Connection& db)
{
    auto statement = prepare(db, "INSERT INTO event (" BATHSIDE_COLUMNS
                                 ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
    if (!statement)
        return failure(statement.error());
    return RowWriter(db, std::move(*statement));
}

Result<void, StoreTrouble> RowWriter::write(const Entry& entry)
{
    const Texts texts{toRfc3339(entry.at), toText(entry.bootId)};
    bindRow(m_statement.get(), entry, texts);
    const bool written = sqlite3_step(m_statement.get()) == SQLITE_DONE;
    const StoreTrouble trouble = written ? StoreTrouble{} : m_db->nativeTrouble();
    sqlite3_reset(m_statement.get());
    sqlite3_clear_bindings(m_statement.get());
    if (!written)
        return failure(trouble);
    return {};
}

}  // namespace bathside::store
