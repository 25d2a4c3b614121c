#include "core/trail/store/projections.h"

#include <algorithm>
#include <array>
#include <string>

#include "core/trail/store/schema.h"

namespace bathside::store {
namespace {

// In the statements, {s} stands before a projection's name: empty for the kept ones, or what names
// those made for comparison. Each takes two numbers: the first and the last seq to bring in.

// A correction names what it says, too. `what`: 1 kind, 2 person, 3 bag, 4 ampoule, 5 lot, 6 line,
// 7 pointed at (SubjectOf in queries.h).
constexpr std::string_view kSubjects = R"(
WITH span (first, last) AS (SELECT ?, ?),
  e AS (SELECT seq, kind, person, payload FROM event, span
    WHERE seq BETWEEN first AND last AND json_valid(payload)),
  named (key, what) AS (VALUES ('person', 2), ('by', 2), ('bag', 3), ('lot', 5), ('diluent_lot', 5), ('line', 6)),
  corrected (field, what) AS (VALUES ('bag', 3), ('lot', 5), ('line', 6)),
  about (word, what) AS (VALUES ('bag', 3), ('ampoule', 4), ('line', 6)),
  pointing (kind, path) AS (VALUES ('deviation', '$.from'), ('rejudged', '$.from'), ('bag.released', '$.of'), ('deviation.reviewed', '$.of'),
    ('note.commented', '$.of'), ('record.signed', '$.of'), ('fact.corrected', '$.seq'), ('fact.taken-back', '$.seqs'))
INSERT OR IGNORE INTO {s}subject_index (what, id, seq)
SELECT 1, kind, seq FROM e
UNION ALL SELECT 2, person, seq FROM e WHERE person IS NOT NULL
UNION ALL SELECT what, j.atom, seq FROM e, json_each(e.payload) j JOIN named ON named.key = j.key
  WHERE j.type = 'text'
UNION ALL SELECT what, payload ->> '$.value', seq FROM e JOIN corrected ON corrected.field = payload ->> '$.field'
  WHERE kind = 'fact.corrected' AND json_type(payload, '$.value') = 'text'
UNION ALL SELECT 4, (payload ->> '$.pull') || '/' || (payload ->> '$.ampoule'), seq FROM e
  WHERE json_type(payload, '$.pull') = 'integer' AND json_type(payload, '$.ampoule') = 'integer'
UNION ALL SELECT what, substr(payload ->> '$.subject', length(word) + 2), seq FROM e
  JOIN about ON payload ->> '$.subject' LIKE word || ':%'
UNION ALL SELECT 7, printf('%019d', j.atom), seq FROM e JOIN pointing ON pointing.kind = e.kind,
  json_each(e.payload, pointing.path) j WHERE j.type = 'integer')";

constexpr std::string_view kShifts = R"(
WITH span (first, last) AS (SELECT ?, ?)
INSERT INTO {s}shift (opened_seq, closed_seq, zone, opened_at, closed_at)
SELECT event.seq, NULL, coalesce(payload ->> '$.zone', ''), at, NULL
FROM span, {s}subject_index i JOIN event ON event.seq = i.seq
WHERE i.what = 1 AND i.id = 'shift.opened' AND i.seq BETWEEN first AND last)";

// A shift ends at its first closing that was not taken back, or where its own opening was; all
// before the next opening.
constexpr std::string_view kEnds = R"(
WITH span (first, last) AS (SELECT ?, ?),
  until (opened, next) AS (
    SELECT opened_seq, coalesce(lead(opened_seq) OVER (ORDER BY opened_seq), last + 1)
    FROM {s}shift, span WHERE opened_seq BETWEEN first AND last),
  back (opened, seq, undone) AS (
    SELECT opened, i.seq, j.value FROM until
    JOIN {s}subject_index i ON i.what = 1 AND i.id = 'fact.taken-back' AND i.seq > opened AND i.seq < next
    JOIN event ON event.seq = i.seq, json_each(event.payload, '$.seqs') j),
  ends (opened, seq) AS (
    SELECT opened, i.seq FROM until
    JOIN {s}subject_index i ON i.what = 1 AND i.id = 'shift.closed' AND i.seq > opened AND i.seq < next
    UNION SELECT opened, seq FROM back WHERE undone = opened),
  firstEnd (opened, seq) AS (
    SELECT opened, min(seq) FROM ends WHERE NOT EXISTS (
      SELECT 1 FROM back WHERE back.opened = ends.opened AND back.undone = ends.seq AND back.seq > ends.seq)
    GROUP BY opened)
UPDATE {s}shift SET closed_seq = event.seq, closed_at = event.at
FROM firstEnd JOIN event ON event.seq = firstEnd.seq
WHERE {s}shift.opened_seq = firstEnd.opened)";

constexpr std::string_view kLoose = R"(
WITH span (first, last) AS (SELECT ?, ?)
INSERT INTO {s}loose (seq, at)
SELECT seq, at FROM event, span
WHERE seq BETWEEN first AND last AND NOT EXISTS (
  SELECT 1 FROM {s}shift WHERE opened_seq = (SELECT max(opened_seq) FROM {s}shift WHERE opened_seq <= event.seq)
    AND coalesce(closed_seq, event.seq) >= event.seq))";

constexpr std::string_view kEndsChanged = R"(
SELECT EXISTS (SELECT 1 FROM event, json_each(event.payload, '$.seqs') j
  JOIN subject_index i ON i.what = 1 AND i.id IN ('shift.opened', 'shift.closed', 'fact.taken-back') AND i.seq = j.value
  WHERE event.seq BETWEEN ? AND ? AND event.kind = 'fact.taken-back'))";

struct Span {
    Seq first = 0;
    Seq last = 0;
    [[nodiscard]] QVariantList bound() const
    {
        return {QVariant::fromValue<qint64>(first), QVariant::fromValue<qint64>(last)};
    }
};

// A plain name is what `{s}` may be: a prefix for tables of the temporary schema.
constexpr std::string_view kKept;
constexpr std::string_view kMadeAnew = "anew_";

std::string into(std::string_view prefix, std::string_view sql)
{
    std::string text(sql);
    for (auto at = text.find("{s}"); at != std::string::npos; at = text.find("{s}", at))
        text.replace(at, 3, prefix);
    return text;
}

Result<void, StoreTrouble> run(Connection& db, std::string_view prefix, std::string_view sql,
                               Span span)
{
    auto query = db.prepared(into(prefix, sql));
    if (!query)
        return failure(query.error());
    return db.run(*query, span.bound());
}

Result<void, StoreTrouble> runAll(Connection& db, std::string_view prefix,
                                  std::span<const std::string_view> all, Span span)
{
    for (const std::string_view sql : all) {
        if (const auto done = run(db, prefix, sql, span); !done)
            return done;
    }
    return {};
}

// Shifts and what lies outside them, from `span.first` on, which must be no later than the last
// opening.
Result<void, StoreTrouble> shiftsAnew(Connection& db, Span span)
{
    static constexpr std::array<std::string_view, 3> kAll{kShifts, kEnds, kLoose};
    const std::string from = std::to_string(span.first);
    if (const auto gone = db.run("DELETE FROM shift WHERE opened_seq >= " + from); !gone)
        return gone;
    if (const auto gone = db.run("DELETE FROM loose WHERE seq >= " + from); !gone)
        return gone;
    return runAll(db, kKept, kAll, span);
}

bool opensOrCloses(const Entry& entry)
{
    return entry.kind == "shift.opened" || entry.kind == "shift.closed";
}
bool takesBack(const Entry& entry) { return entry.kind == "fact.taken-back"; }

Result<bool, StoreTrouble> movesShifts(Connection& db, std::span<const Entry> added, Span span)
{
    if (std::ranges::any_of(added, opensOrCloses))
        return true;
    if (std::ranges::none_of(added, takesBack))
        return false;
    const auto changed = db.value(kEndsChanged, span.bound());
    if (!changed)
        return failure(changed.error());
    return changed->toBool();
}

Result<void, StoreTrouble> rebuildWithin(Connection& db, Span all)
{
    if (const auto gone = db.run("DELETE FROM subject_index"); !gone)
        return gone;
    if (const auto made = run(db, kKept, kSubjects, all); !made)
        return made;
    return shiftsAnew(db, all);
}

Result<Span, StoreTrouble> everything(Connection& db)
{
    const auto last = db.value("SELECT coalesce(max(seq), 0) FROM event");
    if (!last)
        return failure(last.error());
    return Span{0, last->toLongLong()};
}

constexpr std::array<std::string_view, 3> kTables{"shift", "loose", "subject_index"};

Result<void, StoreTrouble> makeAnew(Connection& db, Span all)
{
    static constexpr std::array<std::string_view, 4> kAll{kSubjects, kShifts, kEnds, kLoose};
    for (const std::string_view table : kTables) {
        // WITHOUT ROWID or not, the key is what keeps equal rows apart and finds them.
        const std::string columns =
            table == "shift"
                ? "(opened_seq INTEGER PRIMARY KEY, closed_seq, zone, opened_at, closed_at)"
            : table == "loose" ? "(seq INTEGER PRIMARY KEY, at)"
                               : "(what, id, seq, PRIMARY KEY (what, id, seq)) WITHOUT ROWID";
        if (const auto made = db.run("CREATE TEMP TABLE " + std::string(kMadeAnew) +
                                     std::string(table) + columns);
            !made)
            return made;
    }
    return runAll(db, kMadeAnew, kAll, all);
}

Result<bool, StoreTrouble> sameRows(Connection& db, std::string_view table)
{
    const std::string kept(table);
    const std::string anew = std::string(kMadeAnew) + kept;
    const auto differs =
        db.value("SELECT EXISTS (SELECT * FROM " + kept + " EXCEPT SELECT * FROM " + anew +
                 ") OR EXISTS (SELECT * FROM " + anew + " EXCEPT SELECT * FROM " + kept + ")");
    if (!differs)
        return failure(differs.error());
    return !differs->toBool();
}

// A file of an older version has not all of this one's subjects.
Result<void, StoreTrouble> leaveOutUnknown(Connection& db)
{
    const auto version = db.value("PRAGMA user_version");
    if (!version)
        return failure(version.error());
    if (version->toInt() >= kUserVersion)
        return {};
    const std::string subjects = std::string(kMadeAnew) + "subject_index";
    return db.run("DELETE FROM " + subjects + " WHERE what = 7 OR (what IN (3, 5, 6) AND seq IN " +
                  "(SELECT seq FROM " + subjects + " WHERE what = 1 AND id = 'fact.corrected'))");
}

Result<bool, StoreTrouble> compare(Connection& db)
{
    if (const auto done = leaveOutUnknown(db); !done)
        return failure(done.error());
    for (const std::string_view table : kTables) {
        const auto same = sameRows(db, table);
        if (!same || !*same)
            return same;
    }
    return true;
}

void dropAnew(Connection& db)
{
    for (const std::string_view table : kTables)
        std::ignore =
            db.run("DROP TABLE IF EXISTS temp." + std::string(kMadeAnew) + std::string(table));
}

}  // namespace

Result<void, StoreTrouble> Projector::runKept(std::optional<QSqlQuery>& query, std::string_view sql,
                                              const QVariantList& span)
{
    if (!query) {
        auto prepared = m_db.prepared(into(kKept, sql));
        if (!prepared)
            return failure(prepared.error());
        query = std::move(*prepared);
    }
    return m_db.run(*query, span);
}

Result<void, StoreTrouble> Projector::bringIn(std::span<const Entry> added)
{
    const Span span{added.front().seq, added.back().seq};
    if (const auto made = runKept(m_subjects, kSubjects, span.bound()); !made)
        return made;
    const auto moved = movesShifts(m_db, added, span);
    if (!moved)
        return failure(moved.error());
    if (!*moved)
        return runKept(m_loose, kLoose, span.bound());
    const auto opening = m_db.value("SELECT max(opened_seq) FROM shift WHERE opened_seq < ?",
                                    {span.bound().front()});
    if (!opening)
        return failure(opening.error());
    return shiftsAnew(m_db, {opening->isNull() ? span.first : opening->toLongLong(), span.last});
}

Result<void, StoreTrouble> rebuild(Connection& db)
{
    if (const auto begun = db.run("BEGIN IMMEDIATE"); !begun)
        return begun;
    const auto all = everything(db);
    const auto made =
        all ? rebuildWithin(db, *all) : Result<void, StoreTrouble>(failure(all.error()));
    const auto named =
        made ? db.run("PRAGMA user_version = " + std::to_string(kUserVersion)) : made;
    const auto done = named ? db.run("COMMIT", Moment::AtCommit) : named;
    if (!done)
        db.rollBack();
    return done;
}

Result<bool, StoreTrouble> projectionsAgree(Connection& db)
{
    dropAnew(db);
    const auto all = everything(db);
    const auto made = all ? makeAnew(db, *all) : Result<void, StoreTrouble>(failure(all.error()));
    const auto same = made ? compare(db) : Result<bool, StoreTrouble>(failure(made.error()));
    dropAnew(db);
    return same;
}

}  // namespace bathside::store
