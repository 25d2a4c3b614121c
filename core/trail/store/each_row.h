#pragma once

// The rows that a statement gives, one after the other; for this room's queries.

#include "core/trail/store/event_rows.h"
#include "core/trail/store/trail_db.h"

namespace bathside::store {

[[nodiscard]] inline QVariant number(Seq seq) { return QVariant::fromValue<qint64>(seq); }
[[nodiscard]] inline QVariant text(std::string_view value) { return toQString(value); }

template <typename Take>
[[nodiscard]] Result<void, StoreTrouble> eachRow(const TrailDb& trail, std::string_view sql,
                                                 const QVariantList& bound, Take take)
{
    auto query = trail.connection().prepared(sql);
    if (!query)
        return failure(query.error());
    if (const auto done = trail.connection().run(*query, bound); !done)
        return done;
    while (query->next())
        take(*query);
    return {};
}

/// The entries that `readTo` hands out as rows, all readable.
template <typename ReadTo>
[[nodiscard]] Result<std::vector<Entry>, StoreTrouble> collected(const ReadTo& readTo)
{
    std::vector<Entry> entries;
    bool readable = true;
    const Result<void, StoreTrouble> done = readTo([&](const Row& row) {
        readable = row.entry != nullptr;
        if (readable)
            entries.push_back(*row.entry);
        return readable;
    });
    if (!done || !readable)
        return failure(done ? StoreTrouble{StoreFault::Damaged, 0} : done.error());
    return entries;
}

}  // namespace bathside::store
