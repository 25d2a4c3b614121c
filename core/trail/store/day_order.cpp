#include "core/trail/store/day_order.h"

#include "core/trail/event_form.h"

namespace bathside::store {
namespace {

ExportFault fault(const StoreTrouble& trouble)
{
    return {.kind = ExportFault::Kind::Trail, .seq = 0, .trouble = trouble, .sink = {}};
}

}  // namespace

Result<std::string, StoreTrouble> zoneOf(const TrailDb& trail)
{
    const auto opening = openingOfLastShift(trail);
    if (!opening)
        return failure(opening.error());
    std::string zone = "UTC";
    if (*opening == 0)
        return zone;
    const auto read = trail.read(*opening, *opening, [&](const Entry& entry) {
        if (const auto event = eventOf(entry)) {
            if (const auto* opened = std::get_if<ShiftOpened>(&event->fact))
                zone = opened->zone;
        }
        return true;
    });
    if (!read)
        return failure(read.error());
    return zone;
}

Result<ExportOrder, ExportFault> orderFor(const TrailDb& trail, const LocalDays& days,
                                          const DaysWanted& wanted)
{
    auto zone = wanted.zone.empty() ? zoneOf(trail) : wanted.zone;
    if (!zone)
        return failure(fault(zone.error()));
    const auto period = periodOf(days, *zone, wanted.first, wanted.last);
    if (!period)
        return failure(period.error());
    auto runs = rangesOf(trail, period->start, period->end);
    if (!runs)
        return failure(fault(runs.error()));
    const Seq first = runs->empty() ? trail.head().seq + 1 : runs->front().first;
    auto context = carried(trail, {kContextKinds.begin(), kContextKinds.end()}, first);
    if (!context)
        return failure(fault(context.error()));
    auto later = saidLater(trail, *runs);
    if (!later)
        return failure(fault(later.error()));
    return ExportOrder{.zone = std::move(*zone),
                       .firstDay = wanted.first,
                       .lastDay = wanted.last,
                       .version = wanted.version,
                       .runs = std::move(*runs),
                       .context = std::move(*context),
                       .later = std::move(*later),
                       .origin = trail.origin().after,
                       .lines = wanted.lines,
                       .sheets = wanted.sheets,
                       .book = nullptr,
                       .key = wanted.key};
}

}  // namespace bathside::store
