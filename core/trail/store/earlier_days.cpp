#include "core/trail/store/earlier_days.h"

#include <algorithm>

#include "core/facts/points_at.h"
#include "core/trail/event_form.h"
#include "core/trail/store/queries.h"

namespace bathside::store {
namespace {

bool isOfContext(const Entry& entry)
{
    return std::ranges::find(kContextKinds, entry.kind) != kContextKinds.end();
}

const ShiftSpan* shiftOf(const std::vector<ShiftSpan>& shifts, Seq seq)
{
    const auto found = std::ranges::find_if(
        shifts, [&](const ShiftSpan& shift) { return shift.opened <= seq && seq <= shift.last; });
    return found == shifts.end() ? nullptr : &*found;
}

bool pointsBack(const Entry& entry, const DayFinder& finder, const std::vector<SeqRange>& runs)
{
    const auto event = eventOf(entry);
    return event && std::ranges::any_of(pointsAt(event->fact), [&](Seq seq) {
               const ShiftSpan* shift = shiftOf(finder.shifts(), seq);
               return contain(runs, seq) && (!shift || entry.seq > shift->last);
           });
}

}  // namespace

void readEarlier(const std::vector<SoundPart>& parts, const std::function<void(const Entry&)>& take)
{
    Seq from = 1;
    for (const SoundPart& part : parts) {
        const auto file = TrailDb::open(part.file, Mode::Salvage);
        if (!file)
            continue;
        std::ignore = readRows((*file)->connection(), from, part.last, [&](const Row& row) {
            if (row.entry)
                take(*row.entry);
            return row.seq < part.last;
        });
        from = part.last + 1;
    }
}

std::optional<Entry> entryIn(const std::vector<SoundPart>& parts, Seq seq)
{
    std::optional<Entry> found;
    const auto part = std::ranges::lower_bound(parts, seq, {}, &SoundPart::last);
    const auto file =
        part == parts.end() ? nullptr : TrailDb::open(part->file, Mode::Salvage).value_or(nullptr);
    if (file)
        std::ignore = readRows(file->connection(), seq, seq, [&](const Row& row) {
            if (row.entry)
                found = *row.entry;
            return false;
        });
    return found;
}

EarlierDays earlierDays(const std::vector<SoundPart>& parts, const LocalDay& period)
{
    EarlierDays days;
    if (parts.empty())
        return days;
    if (const auto first = TrailDb::open(parts.front().file, Mode::Salvage))
        days.origin = (*first)->origin().after;
    DayFinder finder;
    readEarlier(parts, [&](const Entry& entry) {
        finder.take(entry);
        if (isOfContext(entry))
            days.context.push_back(entry);
    });
    days.runs = finder.record(period.start, period.end);
    readEarlier(parts, [&](const Entry& entry) {
        const bool isWanted = contain(days.runs, entry.seq) || contain(days.runs, entry.seq + 1);
        if (isWanted || entry.seq == parts.back().last)
            days.entries.push_back(entry);
        if (!days.runs.empty() && entry.seq > days.runs.front().first &&
            pointsBack(entry, finder, days.runs))
            days.later.push_back(entry);
    });
    return days;
}

Result<void, StoreTrouble> prepend(const EarlierDays& earlier, const TrailDb& last,
                                   ExportOrder& order)
{
    order.origin = earlier.origin;
    order.runs.insert(order.runs.begin(), earlier.runs.begin(), earlier.runs.end());
    order.runs = joined(std::move(order.runs));
    auto later = saidLater(last, order.runs);
    if (!later)
        return failure(later.error());
    order.later = earlier.later;
    std::ranges::move(*later, std::back_inserter(order.later));
    order.context.insert(order.context.begin(), earlier.context.begin(), earlier.context.end());
    if (!order.runs.empty())
        std::erase_if(order.context, [first = order.runs.front().first](const Entry& entry) {
            return entry.seq >= first;
        });
    return {};
}

std::string zoneOf(const std::vector<SoundPart>& parts)
{
    DayFinder finder;
    readEarlier(parts, [&](const Entry& entry) { finder.take(entry); });
    return finder.shifts().empty() ? "UTC" : finder.shifts().back().zone;
}

std::optional<WallTime> openingFor(const std::vector<SoundPart>& parts, Seq seq)
{
    DayFinder finder;
    std::optional<WallTime> at;
    readEarlier(parts, [&](const Entry& entry) {
        finder.take(entry);
        if (entry.seq == seq)
            at = entry.at;
    });
    const ShiftSpan* shift = at ? shiftOf(finder.shifts(), seq) : nullptr;
    return shift ? shift->openedAt : at;
}

}  // namespace bathside::store
