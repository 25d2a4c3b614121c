#include "core/trail/merge.h"

#include <limits>
#include <vector>

#include "core/trail/event_form.h"

namespace bathside {
namespace {

constexpr std::size_t kGroup = 256;  // entries in one append

std::string identityOf(const Entry& entry)
{
    Entry bare = entry;
    bare.seq = 0;
    bare.spool.reset();
    return canonicalText(bare);
}

Entry brought(const Entry& spooled, const Head& after)
{
    Entry entry = spooled;
    entry.seq = after.seq + 1;
    entry.spool = SpoolOrigin{spooled.seq, spooled.hash};
    chain(entry, after.hash);
    return entry;
}

}  // namespace

Result<Presence, StoreTrouble> Presence::of(const TrailStore& trail, Seq after)
{
    Presence presence;
    const auto read =
        trail.read(after + 1, std::numeric_limits<Seq>::max(), [&](const Entry& entry) {
            ++presence.m_counts[identityOf(entry)];
            return true;
        });
    if (!read)
        return failure(read.error());
    return presence;
}

bool Presence::take(const Entry& entry)
{
    const auto found = m_counts.find(identityOf(entry));
    if (found == m_counts.end() || found->second == 0)
        return false;
    --found->second;
    return true;
}

Result<std::int64_t, StoreTrouble> merge(TrailStore& trail, std::span<const Entry> spooled,
                                         Seq after)
{
    auto present = Presence::of(trail, after);
    if (!present)
        return failure(present.error());
    std::int64_t count = 0;
    std::vector<Entry> group;
    const auto flush = [&]() -> Result<void, StoreTrouble> {
        const auto kept = trail.append(group);
        count += static_cast<std::int64_t>(group.size());
        group.clear();
        return kept;
    };
    for (const Entry& entry : spooled) {
        if (present->take(entry))
            continue;
        group.push_back(brought(
            entry, group.empty() ? trail.head() : Head{group.back().seq, group.back().hash}));
        if (group.size() < kGroup)
            continue;
        if (const auto kept = flush(); !kept)
            return failure(kept.error());
    }
    if (const auto kept = flush(); !kept)
        return failure(kept.error());
    return count;
}

}  // namespace bathside
