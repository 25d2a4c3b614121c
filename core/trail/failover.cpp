#include "core/trail/failover.h"

#include <algorithm>
#include <limits>
#include <numeric>

#include "core/trail/event_form.h"
#include "core/trail/merge.h"

namespace bathside {
namespace {

constexpr std::size_t kTogether = 256;  // events in one append, when many wait

// An acknowledged entry must still be there, or the trail is not the one that was acknowledged.
bool stillHolds(const TrailStore& trail, const Head& head)
{
    if (trail.head() == head)
        return true;
    if (trail.head().seq <= head.seq)
        return false;
    bool same = true;  // a head that a file begins with has no entry in it
    const auto read = trail.read(head.seq, head.seq, [&](const Entry& entry) {
        same = entry.hash == head.hash;
        return false;
    });
    return read.has_value() && same;
}

// Whether a spool that begins there continues this trail: its first entry may follow one of the
// trail's, or one of an earlier spool's that is in the trail by now. Neither moves to a lower seq.
bool leadsOnFrom(const TrailStore& trail, const Head& after)
{
    bool found = trail.head() == after;
    const SpoolOrigin origin{after.seq, after.hash};
    const auto read =
        trail.read(after.seq, std::numeric_limits<Seq>::max(), [&](const Entry& entry) {
            const bool follows = entry.seq == after.seq + 1 &&
                                 chained(after.hash, canonicalText(entry)) == entry.hash;
            found = found || follows || entry.spool == origin;
            return !found;
        });
    return read.has_value() && found;
}

Result<std::vector<Entry>, StoreTrouble> allOf(const TrailStore& store)
{
    std::vector<Entry> entries;
    const auto read = store.read(1, std::numeric_limits<Seq>::max(), [&](const Entry& entry) {
        entries.push_back(entry);
        return true;
    });
    if (!read)
        return failure(read.error());
    return entries;
}

}  // namespace

Result<void, StoreTrouble> Failover::start()
{
    auto opened = m_files.openTrail();
    if (!opened)
        return failure(opened.error());
    if (const auto merged = mergeFound(**opened); !merged)
        return merged;
    m_trail = std::move(*opened);
    m_head = m_trailHead = m_trail->head();
    return {};
}

// Only what the trail itself refuses stops the start.
Result<void, StoreTrouble> Failover::mergeFound(TrailStore& trail)
{
    std::int64_t count = 0;
    for (const std::string& name : m_files.unmerged()) {
        const auto spool = m_files.openSpool(name);
        const auto entries = spool ? allOf(*spool->store) : failure(spool.error());
        if (!entries) {
            m_told.trouble = entries.error();
            continue;
        }
        if (!leadsOnFrom(trail, spool->after))
            continue;
        const auto merged = merge(trail, *entries, spool->after.seq);
        if (!merged)
            return failure(merged.error());
        count += *merged;
        m_spoolNames.push_back(name);
    }
    if (!m_spoolNames.empty())
        noteMerged(count);
    return {};
}

void Failover::noteMerged(std::int64_t count)
{
    ++m_told.merges;
    m_told.merged = count;
    m_told.mergedSpool = m_spoolNames.empty() ? std::string() : m_spoolNames.back();
    for (const std::string& name : m_spoolNames)
        m_files.markMerged(name);
    m_spoolNames.clear();
    m_told.spool.clear();
}

void Failover::take(std::vector<Event> batch)
{
    if (!batch.empty())
        m_waiting.push_back({m_station, std::move(batch)});
}

// Whole batches only, so that a tap's events stay all or none.
std::vector<Entry> Failover::nextGroup(const Head& head, std::size_t& batches) const
{
    std::vector<Entry> entries;
    Hash before = head.hash;
    for (batches = 0; batches < m_waiting.size() && entries.size() < kTogether; ++batches) {
        const auto& [station, events] = m_waiting[batches];
        for (const Event& event : events) {
            entries.push_back(entryOf(event, station));
            chain(entries.back(), before);
            before = entries.back().hash;
        }
    }
    return entries;
}

void Failover::store()
{
    while (!m_waiting.empty() && !m_stuck) {
        TrailStore* const to = m_trail ? m_trail.get() : m_spool.get();
        if (!to)
            return;
        std::size_t batches = 0;
        std::vector<Entry> entries = nextGroup(m_head, batches);
        if (const auto kept = to->append(entries); !kept) {
            if (!fallBack(kept.error()))
                return;
            continue;
        }
        m_head = {entries.back().seq, entries.back().hash};
        m_waiting.erase(m_waiting.begin(),
                        m_waiting.begin() + static_cast<std::ptrdiff_t>(batches));
        if (m_trail)
            m_trailHead = m_head;
        else
            m_spooled.insert(m_spooled.end(), std::make_move_iterator(entries.begin()),
                             std::make_move_iterator(entries.end()));
    }
}

// Whether there is somewhere else to go on at once.
bool Failover::fallBack(const StoreTrouble& trouble)
{
    m_told.trouble = trouble;
    if (trouble.fault ==
        StoreFault::OutOfStep) {  // nothing wrong with the file, and no other would take it
        m_stuck = true;
        return false;
    }
    if (m_trail) {
        m_trail.reset();
        ++m_told.failures;
        m_stuck = !openFreshSpool();
        return !m_stuck;
    }
    if (trouble.fault == StoreFault::Unconfirmed)
        m_spool.reset();
    m_stuck = true;
    return false;
}

bool Failover::openFreshSpool()
{
    auto spool = m_files.makeSpool(m_head);
    if (!spool)
        return false;
    m_spool = std::move(spool->store);
    m_spoolNames.push_back(spool->name);
    m_told.spool = std::move(spool->name);
    return true;
}

void Failover::retry()
{
    m_stuck = false;
    if (!m_trail) {
        if (const auto back = reopen(); !back) {
            m_told.trouble = back.error();
            m_stuck = !m_spool && !openFreshSpool();
        }
    }
    store();
}

Result<void, StoreTrouble> Failover::reopen()
{
    auto opened = m_files.openTrail();
    if (!opened)
        return failure(opened.error());
    TrailStore& trail = **opened;
    if (!stillHolds(trail, m_trailHead))
        return failure(StoreTrouble{StoreFault::Damaged, 0});
    const auto merged = merge(trail, m_spooled, m_trailHead.seq);
    if (!merged)
        return failure(merged.error());
    if (const auto dropped = dropWhatIsThere(trail); !dropped)
        return dropped;
    m_spool.reset();
    m_spooled.clear();
    m_trail = std::move(*opened);
    m_head = m_trailHead = m_trail->head();
    noteMerged(*merged);
    return {};
}

// A batch whose outcome was unknown, and that no spool took either, may be in the trail.
Result<void, StoreTrouble> Failover::dropWhatIsThere(const TrailStore& trail)
{
    auto present = Presence::of(trail, m_head.seq);
    if (!present)
        return failure(present.error());
    const auto isThere = [&](const Batch& batch) {
        return std::ranges::all_of(batch.events, [&](const Event& event) {
            return present->take(entryOf(event, batch.station));
        });
    };
    while (!m_waiting.empty() && isThere(m_waiting.front()))
        m_waiting.pop_front();
    return {};
}

RecordState Failover::state() const
{
    RecordState state = m_told;
    using Health = RecordState::Health;
    const bool nowhere = m_stuck || (!m_trail && !m_spool);
    state.health = nowhere   ? Health::NotRecorded
                   : m_trail ? Health::Recorded
                             : Health::NotConfirmed;
    state.recorded = m_head.seq;
    state.waiting = std::accumulate(m_waiting.begin(), m_waiting.end(), std::int64_t{0},
                                    [](std::int64_t sum, const Batch& batch) {
                                        return sum + static_cast<std::int64_t>(batch.events.size());
                                    });
    return state;
}

}  // namespace bathside
