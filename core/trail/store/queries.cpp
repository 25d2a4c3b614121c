#include "core/trail/store/queries.h"

#include <algorithm>
#include <limits>
#include <set>

#include "core/base/rfc3339.h"
#include "core/facts/facts.h"
#include "core/station/station.h"
#include "core/trail/store/each_row.h"

namespace bathside::store {
namespace {

constexpr int kAll = -1;  // as SQLite has it

bool amends(std::string_view kind)
{
    return kind == FactCorrected::kKind || kind == FactTakenBack::kKind;
}

/// What amends one of `seqs`, or an amendment of it.
Result<void, StoreTrouble> addAmendments(const TrailDb& trail,
                                         const std::vector<std::string>& kinds, Seq before,
                                         std::set<Seq>& seqs)
{
    std::vector<Seq> waiting(seqs.begin(), seqs.end());
    while (!kinds.empty() && !waiting.empty()) {
        const Seq at = waiting.back();
        waiting.pop_back();
        for (const std::string& kind : kinds) {
            const auto done = eachRow(
                trail,
                "SELECT p.seq FROM subject_index p JOIN subject_index k ON k.what = 1 AND k.id "
                "= ? AND k.seq = p.seq WHERE p.what = 7 AND p.id = printf('%019d', ?) AND "
                "p.seq < ?",
                {text(kind), number(at), number(before)}, [&](const QSqlQuery& row) {
                    const Seq seq = row.value(0).toLongLong();
                    if (seqs.insert(seq).second)
                        waiting.push_back(seq);
                });
            if (!done)
                return done;
        }
    }
    return {};
}

}  // namespace

Result<Seq, StoreTrouble> openingOfLastShift(const TrailDb& trail)
{
    const auto seq = trail.connection().value("SELECT coalesce(max(opened_seq), 0) FROM shift");
    if (!seq)
        return failure(seq.error());
    return seq->toLongLong();
}

Result<std::vector<Entry>, StoreTrouble> carried(const TrailDb& trail,
                                                 const std::vector<std::string>& kinds, Seq before)
{
    std::set<Seq> seqs;
    std::vector<std::string> amending;
    for (const std::string& kind : kinds) {
        if (amends(kind)) {
            amending.push_back(kind);
            continue;
        }
        const auto done =
            eachRow(trail,
                    "SELECT seq FROM subject_index WHERE what = 1 AND id = ? AND seq < ? "
                    "ORDER BY seq DESC LIMIT ?",
                    {text(kind), number(before), latestThatMatter(kind).value_or(kAll)},
                    [&](const QSqlQuery& row) { seqs.insert(row.value(0).toLongLong()); });
        if (!done)
            return failure(done.error());
    }
    if (const auto done = addAmendments(trail, amending, before, seqs); !done)
        return failure(done.error());
    return entriesAt(trail, seqs);
}

Result<std::vector<Entry>, StoreTrouble> entriesAt(const TrailDb& trail, const std::set<Seq>& seqs)
{
    constexpr int kTogether = 1000;  // in one statement
    std::vector<Entry> entries;
    for (auto at = seqs.begin(); at != seqs.end();) {
        std::string list;
        for (int i = 0; i < kTogether && at != seqs.end(); ++i, ++at)
            list += (list.empty() ? "" : ", ") + std::to_string(*at);
        auto read = collected(
            [&](const TakeRow& take) { return readRowsOf(trail.connection(), list, {}, take); });
        if (!read)
            return read;
        std::ranges::move(*read, std::back_inserter(entries));
    }
    return entries;
}

Result<std::vector<Entry>, StoreTrouble> entriesFrom(const TrailDb& trail, Seq from)
{
    return collected([&](const TakeRow& take) {
        return readRows(trail.connection(), from, std::numeric_limits<Seq>::max(), take);
    });
}

Result<bool, StoreTrouble> hasTap(const TrailDb& trail, const TapId& tap)
{
    const auto found = trail.connection().value("SELECT EXISTS (SELECT 1 FROM event WHERE tap = ?)",
                                                {text(tap.text)});
    if (!found)
        return failure(found.error());
    return found->toBool();
}

Result<std::vector<ShiftSpan>, StoreTrouble> shiftsOpened(const TrailDb& trail, WallTime from,
                                                          WallTime to)
{
    // A shift that was never closed reaches to the next opening.
    static constexpr std::string_view kSql = R"(
SELECT opened_seq, closed_seq, zone, opened_at,
  (SELECT min(opened_seq) FROM shift later WHERE later.opened_seq > shift.opened_seq)
FROM shift WHERE opened_at >= ? AND opened_at < ? ORDER BY opened_seq)";
    std::vector<ShiftSpan> shifts;
    const auto done = eachRow(
        trail, kSql, {text(toRfc3339(from)), text(toRfc3339(to))}, [&](const QSqlQuery& row) {
            const bool closed = !row.value(1).isNull();
            const Seq open =
                row.value(4).isNull() ? trail.head().seq : row.value(4).toLongLong() - 1;
            shifts.push_back(
                {.opened = row.value(0).toLongLong(),
                 .last = closed ? row.value(1).toLongLong() : open,
                 .closed = closed,
                 .openedAt =
                     fromRfc3339(row.value(3).toString().toStdString()).value_or(WallTime{}),
                 .zone = row.value(2).toString().toStdString()});
        });
    if (!done)
        return failure(done.error());
    return shifts;
}

Result<std::vector<SeqRange>, StoreTrouble> rangesOf(const TrailDb& trail, WallTime from,
                                                     WallTime to)
{
    const auto shifts = shiftsOpened(trail, from, to);
    if (!shifts)
        return failure(shifts.error());
    std::vector<SeqRange> ranges;
    for (const ShiftSpan& shift : *shifts)
        ranges.push_back({shift.opened, shift.last});
    const auto done =
        eachRow(trail, "SELECT seq FROM loose WHERE at >= ? AND at < ?",
                {text(toRfc3339(from)), text(toRfc3339(to))}, [&](const QSqlQuery& row) {
                    ranges.push_back({row.value(0).toLongLong(), row.value(0).toLongLong()});
                });
    if (!done)
        return failure(done.error());
    return joined(std::move(ranges));
}

Result<std::vector<Entry>, StoreTrouble> pointingBackAt(const TrailDb& trail,
                                                        const std::vector<SeqRange>& runs)
{
    static constexpr std::string_view kSql = R"(
SELECT seq FROM subject_index i WHERE what = 7 AND id BETWEEN printf('%019d', ?) AND printf('%019d', ?)
  AND (seq > (SELECT coalesce(closed_seq,
        (SELECT min(opened_seq) - 1 FROM shift later WHERE later.opened_seq > shift.opened_seq))
      FROM shift WHERE opened_seq <= CAST(i.id AS INTEGER) ORDER BY opened_seq DESC LIMIT 1)
    OR NOT EXISTS (SELECT 1 FROM shift WHERE opened_seq <= CAST(i.id AS INTEGER))))";
    std::set<Seq> seqs;
    for (const SeqRange& run : runs) {
        const auto done =
            eachRow(trail, kSql, {number(run.first), number(run.last)},
                    [&](const QSqlQuery& row) { seqs.insert(row.value(0).toLongLong()); });
        if (!done)
            return failure(done.error());
    }
    return entriesAt(trail, seqs);
}

Result<std::vector<Entry>, StoreTrouble> saidLater(const TrailDb& trail,
                                                   const std::vector<SeqRange>& runs)
{
    auto entries = pointingBackAt(trail, runs);
    if (!entries || runs.empty())
        return entries;
    const auto seal = trail.connection().value(
        "SELECT min(seq) FROM subject_index WHERE what = 1 AND id = 'day.sealed' AND seq > ?",
        {number(runs.back().last)});
    if (!seal)
        return failure(seal.error());
    if (seal->isNull())
        return entries;
    const auto sealed = entriesAt(trail, {seal->toLongLong()});
    if (!sealed)
        return sealed;
    std::ranges::copy(*sealed, std::back_inserter(*entries));
    std::ranges::sort(*entries, {}, &Entry::seq);
    return entries;
}

}  // namespace bathside::store
