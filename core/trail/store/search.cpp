#include "core/trail/store/search.h"

#include <algorithm>
#include <array>

#include "core/facts/facts.h"
#include "core/trail/store/each_row.h"

namespace bathside::store {
namespace {

// The entries about a bag or a lot in the shifts that a stretch touches: that name it, those that a
// correction of whatever day says to be of it, and all of their shift that is about an ampoule
// which one of these puts in that bag or says to be of that lot. A name is used again on other
// days, so an ampoule counts in its own shift. Bound: the stretch's first seq twice and its last,
// the name twice.
constexpr std::string_view kAbout = R"({s}span (low, high) AS (
    SELECT coalesce((SELECT max(opened_seq) FROM shift WHERE opened_seq <= ?), ?),
      coalesce((SELECT min(opened_seq) - 1 FROM shift WHERE opened_seq > ?), 9223372036854775807)),
  {s}said (seq) AS (
    SELECT seq FROM {s}span CROSS JOIN subject_index
      WHERE what = {what} AND id = ? AND seq BETWEEN low AND high
    UNION SELECT payload ->> '$.seq' FROM {s}span CROSS JOIN subject_index k JOIN event USING (seq)
      WHERE k.what = 1 AND k.id = 'fact.corrected' AND EXISTS (
          SELECT 1 FROM subject_index n WHERE n.what = {what} AND n.id = ? AND n.seq = k.seq)
        AND payload ->> '$.field' = '{field}' AND payload ->> '$.seq' BETWEEN low AND high),
  {s}ampoule (id, first, last) AS (
    SELECT DISTINCT (payload ->> '$.pull') || '/' || (payload ->> '$.ampoule'),
      (SELECT max(opened_seq) FROM shift WHERE opened_seq <= seq),
      (SELECT coalesce(min(opened_seq) - 1, 9223372036854775807) FROM shift WHERE opened_seq > seq)
    FROM {s}said JOIN event USING (seq) WHERE kind = '{kind}'),
  {s}about (seq) AS (
    SELECT seq FROM {s}said
    UNION SELECT i.seq FROM {s}ampoule JOIN subject_index i
      ON i.what = 4 AND i.id = {s}ampoule.id AND i.seq BETWEEN first AND last))";

struct Named {
    std::string_view table, kind, field;
    SubjectOf what{};
};
constexpr Named kBag{"bag_", AmpouleBagged::kKind, "bag", SubjectOf::Bag};
constexpr Named kLot{"lot_", AmpouleOut::kKind, "lot", SubjectOf::Lot};

std::string with(std::string_view sql, const Named& named)
{
    std::string filled(sql);
    const std::array<std::pair<std::string_view, std::string>, 4> places{
        {{"{s}", std::string(named.table)},
         {"{what}", std::to_string(static_cast<int>(named.what))},
         {"{kind}", std::string(named.kind)},
         {"{field}", std::string(named.field)}}};
    for (const auto& [place, value] : places) {
        for (auto at = filled.find(place); at != std::string::npos; at = filled.find(place, at))
            filled.replace(at, place.size(), value);
    }
    return filled;
}

/// A piece of a statement and what is bound in it.
struct Piece {
    std::string sql;
    QVariantList bound;
    void add(std::string_view more, const QVariantList& values = {})
    {
        sql += more;
        bound += values;
    }
};

/// What the newest are taken from, one after the other: entries `x` that hold one of the wishes.
using Source = Piece;  // … WHERE … AND

/// What a correction or a take-back is of.
constexpr std::string_view kMended =
    "(SELECT payload ->> '$.seq' AS seq FROM subject_index JOIN event USING (seq) "
    "WHERE what = 1 AND id = 'fact.corrected' UNION "
    "SELECT j.value FROM subject_index k JOIN event e ON e.seq = k.seq, "
    "json_each(e.payload, '$.seqs') j WHERE k.what = 1 AND k.id = 'fact.taken-back')";

constexpr std::string_view kIndexed = "subject_index x WHERE x.what = ? AND x.id = ? AND ";

Source indexed(SubjectOf what, std::string_view id)
{
    return {std::string(kIndexed), {static_cast<int>(what), text(id)}};
}

void addIsIndexed(Piece& sql, SubjectOf what, const std::vector<std::string>& ids)
{
    sql.add(
        "EXISTS (SELECT 1 FROM subject_index o WHERE o.what = ? AND o.seq = x.seq AND o.id IN "
        "(",
        {static_cast<int>(what)});
    for (const std::string& id : ids)
        sql.add(&id == &ids.front() ? "?" : ", ?", {text(id)});
    sql.add("))");
}

/// Whether the index has fewer than so many of it.
Result<bool, StoreTrouble> isRare(const TrailDb& trail, SubjectOf what, std::string_view id)
{
    static constexpr int kFew = 50'000;
    const auto count = trail.connection().value(
        "SELECT count(*) FROM (SELECT 1 FROM subject_index WHERE what = ? AND id = ? LIMIT ?)",
        {static_cast<int>(what), text(id), kFew});
    if (!count)
        return failure(count.error());
    return count->toInt() < kFew;
}

class Searcher {
public:
    Searcher(const TrailDb& trail, const Search& wanted) : m_trail(trail), m_wanted(wanted) {}

    /// By what there is least of: a bag's and a lot's, a person's, those of a kind.
    Result<void, StoreTrouble> prepare()
    {
        bool byPerson = !m_wanted.person.empty();
        if (!m_wanted.bag.empty() || !m_wanted.lot.empty()) {
            name(kBag, m_wanted.bag);
            name(kLot, m_wanted.lot);
            byPerson = false;
        } else if (byPerson && !m_wanted.kinds.empty()) {
            const auto rare = isRare(m_trail, SubjectOf::Person, m_wanted.person);
            if (!rare)
                return failure(rare.error());
            byPerson = *rare;
        }
        const bool byKind = m_sources.empty() && !byPerson;
        if (byPerson)
            m_sources.push_back(indexed(SubjectOf::Person, m_wanted.person));
        else if (!m_wanted.person.empty())
            addOther(SubjectOf::Person, {m_wanted.person});
        if (byKind)
            addKinds();
        else if (!m_wanted.kinds.empty())
            addOther(SubjectOf::Kind, m_wanted.kinds);
        return {};
    }

    Result<std::set<Seq>, StoreTrouble> newestIn(SeqRange run, int limit) const
    {
        std::set<Seq> found;
        if (m_sources.empty()) {
            for (Seq seq = std::max(run.first, run.last - limit + 1); seq <= run.last; ++seq)
                found.insert(found.end(), seq);
        }
        for (const Source& source : m_sources) {
            Piece all = tablesFor(run);
            all.add("SELECT x.seq FROM ");
            all.add(source.sql, source.bound);
            all.add("x.seq BETWEEN ? AND ?", {number(run.first), number(run.last)});
            all.add(m_others.sql, m_others.bound);
            all.add(" ORDER BY x.seq DESC LIMIT ?", {limit});
            const auto done = eachRow(m_trail, all.sql, all.bound, [&](const QSqlQuery& row) {
                found.insert(row.value(0).toLongLong());
            });
            if (!done)
                return failure(done.error());
        }
        while (std::ssize(found) > limit)
            found.erase(found.begin());
        return found;
    }

private:
    void addKinds()
    {
        for (const std::string& kind : m_wanted.kinds)
            m_sources.push_back(indexed(SubjectOf::Kind, kind));
        if (!m_wanted.kinds.empty() && m_wanted.orMended)
            m_sources.push_back({std::string(kMended) + " x WHERE ", {}});
    }

    void addOther(SubjectOf what, const std::vector<std::string>& ids)
    {
        const bool orMended = what == SubjectOf::Kind && m_wanted.orMended;
        m_others.add(" AND (");
        addIsIndexed(m_others, what, ids);
        if (orMended)
            m_others.add(" OR x.seq IN " + std::string(kMended));
        m_others.add(")");
    }

    /// A bag or a lot: the first is what the newest are taken from, the other holds besides.
    void name(const Named& named, const std::string& id)
    {
        if (id.empty())
            return;
        m_named.emplace_back(&named, id);
        const std::string table = std::string(named.table) + "about";
        if (m_sources.empty())
            m_sources.push_back({table + " x WHERE ", {}});
        else
            m_others.add(" AND x.seq IN (SELECT seq FROM " + table + ")");
    }

    [[nodiscard]] Piece tablesFor(SeqRange run) const
    {
        Piece tables;
        for (const auto& [named, id] : m_named) {
            tables.add(tables.sql.empty() ? "WITH " : ", ");
            tables.add(with(kAbout, *named), {number(run.first), number(run.first),
                                              number(run.last), text(id), text(id)});
        }
        if (!tables.sql.empty())
            tables.add(" ");
        return tables;
    }

    const TrailDb& m_trail;
    const Search& m_wanted;
    std::vector<Source> m_sources;  // none: everything
    Piece m_others;
    std::vector<std::pair<const Named*, std::string>> m_named;
};

constexpr Seq kGrowth = 4;

/// Adds what a run has of it, until there are `limit`.
Result<void, StoreTrouble> addFrom(const Searcher& searcher, SeqRange run, int limit, Seq& stretch,
                                   std::set<Seq>& found)
{
    while (run.first <= run.last && std::ssize(found) < limit) {
        const SeqRange last{std::max(run.first, run.last - stretch + 1), run.last};
        auto more = searcher.newestIn(last, limit - static_cast<int>(found.size()));
        if (!more)
            return failure(more.error());
        found.merge(*more);
        run.last = last.first - 1;
        stretch *= kGrowth;
    }
    return {};
}

}  // namespace

Result<std::set<Seq>, StoreTrouble> search(const TrailDb& trail, const Search& wanted,
                                           const std::vector<SeqRange>& runs, Seq before, int limit,
                                           Seq stretch)
{
    Searcher searcher(trail, wanted);
    if (const auto done = searcher.prepare(); !done)
        return failure(done.error());
    std::set<Seq> found;
    for (auto run = runs.rbegin(); run != runs.rend(); ++run) {
        const SeqRange within{run->first, std::min({run->last, before - 1, trail.head().seq})};
        if (const auto done = addFrom(searcher, within, limit, stretch, found); !done)
            return failure(done.error());
    }
    return found;
}

Result<std::vector<Entry>, StoreTrouble> pointingAt(const TrailDb& trail, const std::set<Seq>& seqs)
{
    std::set<Seq> pointing;
    for (const Seq seq : seqs) {
        const auto done = eachRow(
            trail, "SELECT seq FROM subject_index WHERE what = ? AND id = printf('%019d', ?)",
            {static_cast<int>(SubjectOf::Pointed), number(seq)},
            [&](const QSqlQuery& row) { pointing.insert(row.value(0).toLongLong()); });
        if (!done)
            return failure(done.error());
    }
    return entriesAt(trail, pointing);
}

// From one kind to the next by the index, without the entries between.
Result<std::vector<std::string>, StoreTrouble> kindsIn(const TrailDb& trail)
{
    static constexpr std::string_view kSql = R"(
WITH RECURSIVE kind (id) AS (
  SELECT min(id) FROM subject_index WHERE what = 1
  UNION ALL SELECT (SELECT min(id) FROM subject_index WHERE what = 1 AND id > kind.id)
    FROM kind WHERE kind.id IS NOT NULL)
SELECT id FROM kind WHERE id IS NOT NULL)";
    std::vector<std::string> kinds;
    const auto done = eachRow(trail, kSql, {}, [&](const QSqlQuery& row) {
        kinds.push_back(row.value(0).toString().toStdString());
    });
    if (!done)
        return failure(done.error());
    return kinds;
}

}  // namespace bathside::store
