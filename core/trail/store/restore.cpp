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

/// What of the files read so far a start needs.
struct Gathered {
    std::vector<Entry> carried;  // before the last opening of a shift
    std::vector<Entry> since;

    // What is not carried is forgotten as soon as the next shift opens.
    void openShift()
    {
        const auto& kinds = carriedKinds();
        for (Entry& entry : since) {
            if (std::ranges::find(kinds, entry.kind) != kinds.end())
                carried.push_back(std::move(entry));
        }
        since.clear();
    }
};

void add(std::vector<Entry>& to, std::vector<Entry> entries)
{
    std::ranges::move(entries, std::back_inserter(to));
}

// One walk over the events alone: what follows from them may be damaged, too. It never steps
// beyond `last`, where the next page may be.
Result<void, StoreTrouble> gather(const TrailDb& file, Seq last, Gathered& all)
{
    bool readable = true;
    const auto done =
        readRows(file.connection(), std::numeric_limits<Seq>::min(), last, [&](const Row& row) {
            readable = row.entry != nullptr;
            if (!readable)
                return false;
            if (row.entry->kind == ShiftOpened::kKind)
                all.openShift();
            all.since.push_back(*row.entry);
            return row.seq < last;
        });
    if (!done || !readable)
        return failure(done ? StoreTrouble{StoreFault::Damaged, 0} : done.error());
    return {};
}

Result<Gathered, StoreTrouble> gathered(std::span<const SoundPart> parts)
{
    Gathered all;
    for (const SoundPart& part : parts) {
        const auto file = TrailDb::open(part.file, Mode::Salvage);
        if (!file)
            return failure(file.error().trouble);
        if (const auto done = gather(**file, part.last, all); !done)
            return failure(done.error());
    }
    return all;
}

Result<State, StoreTrouble> stateFrom(const Gathered& all)
{
    const auto older = eventsOf(all.carried, std::numeric_limits<Seq>::max());
    const auto newer = eventsOf(all.since, std::numeric_limits<Seq>::max());
    if (!older || !newer)
        return failure(older ? newer.error() : older.error());
    return restored(*older, *newer);
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

Result<State, StoreTrouble> stateOf(const TrailDb& trail, std::span<const SoundPart> earlier)
{
    if (earlier.empty())
        return stateOf(trail);
    auto all = gathered(earlier);
    if (!all)
        return failure(all.error());
    const auto opening = openingOfLastShift(trail);
    if (!opening)
        return failure(opening.error());
    auto before = carried(trail, carriedKinds(), *opening);
    auto since = entriesFrom(trail, std::max<Seq>(1, *opening));
    if (!before || !since)
        return failure(before ? since.error() : before.error());
    if (*opening > 0)
        all->openShift();
    add(all->carried, std::move(*before));
    add(all->since, std::move(*since));
    return stateFrom(*all);
}

Result<State, StoreTrouble> stateOf(std::span<const SoundPart> parts)
{
    const auto all = gathered(parts);
    return all ? stateFrom(*all) : failure(all.error());
}

}  // namespace bathside::store
