#include "core/trail/store/restore.h"

#include <algorithm>
#include <limits>

#include "core/trail/event_form.h"
#include "core/trail/store/queries.h"

namespace bathside::store {
namespace {

Result<std::vector<Event>, StoreTrouble> eventsOf(const std::vector<Entry>& entries, Seq last)
{
    std::vector<Event> events;
    events.reserve(entries.size());
    for (const Entry& entry : entries) {
        if (entry.seq > last)
            break;
        auto event = eventOf(entry);
        if (!event)
            return failure(StoreTrouble{StoreFault::Newer, 0});
        events.push_back(std::move(*event));
    }
    return events;
}

}  // namespace

Result<State, StoreTrouble> stateOf(const TrailDb& trail)
{
    const auto opening = openingOfLastShift(trail);
    if (!opening)
        return failure(opening.error());
    return stateOf(trail, *opening, std::numeric_limits<Seq>::max());
}

Result<State, StoreTrouble> stateOf(const TrailDb& trail, Seq opening, Seq last)
{
    const Seq from = std::max<Seq>(1, opening);
    const auto before = carried(trail, carriedKinds(), from);
    if (!before)
        return failure(before.error());
    const auto since = entriesFrom(trail, from);
    if (!since)
        return failure(since.error());
    const auto older = eventsOf(*before, last);
    const auto newer = eventsOf(*since, last);
    if (!older || !newer)
        return failure(older ? newer.error() : older.error());
    return restored(*older, *newer);
}

}  // namespace bathside::store
