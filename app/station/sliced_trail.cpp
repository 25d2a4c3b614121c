#include "app/station/sliced_trail.h"

#include <algorithm>

#include "app/station/trail_tell.h"

namespace bathside::app {

SlicedTrail::SlicedTrail(store::StoreThread& store, Head head, std::vector<Entry> earlier,
                         Stop stop)
    : m_store(store), m_head(head), m_earlier(std::move(earlier)), m_stop(std::move(stop))
{
}

Result<void, StoreTrouble> SlicedTrail::append(std::span<const Entry>)
{
    return failure(StoreTrouble{StoreFault::ReadOnly, 0});
}

Result<std::vector<Entry>, StoreTrouble> SlicedTrail::slice(SeqRange range) const
{
    if (m_stop->load())
        return failure(StoreTrouble{StoreFault::InUse, 0});
    return m_store
        .ask([range](store::TrailDb& trail) -> Result<std::vector<Entry>, StoreTrouble> {
            std::vector<Entry> entries;
            const auto read = trail.read(range.first, range.last, [&](const Entry& entry) {
                entries.push_back(entry);
                return true;
            });
            if (!read)
                return failure(read.error());
            return entries;
        })
        .get();
}

Result<void, StoreTrouble> SlicedTrail::read(Seq from, Seq to,
                                             const std::function<bool(const Entry&)>& take) const
{
    auto early = std::ranges::lower_bound(m_earlier, from, {}, &Entry::seq);
    for (; early != m_earlier.end() && early->seq <= to; ++early) {
        if (!take(*early))
            return {};
    }
    Seq next = m_earlier.empty() ? from : std::max(from, m_earlier.back().seq + 1);
    const Seq last = std::min(to, m_head.seq);
    for (; next <= last; next += kSlice) {
        const auto entries = slice({next, std::min(last, next + kSlice - 1)});
        if (!entries)
            return failure(entries.error());
        for (const Entry& entry : *entries) {
            if (!take(entry))
                return {};
        }
    }
    return {};
}

}  // namespace bathside::app
