#include "core/trail/event_form.h"

namespace bathside {

Entry entryOf(const Event& event, const StationId& station)
{
    return {.seq = event.seq,
            .at = event.at.wall,
            .boot = event.at.boot,
            .bootId = event.at.bootId,
            .station = station,
            .person = event.person,
            .tap = event.tap,
            .place = event.place,
            .byReceipt = event.byReceipt,
            .card = event.card,
            .kind = std::string(kindOf(event.fact)),
            .payload = payloadOf(event.fact),
            .spool = std::nullopt,
            .hash = {}};
}

Result<Event, PayloadFault> eventOf(const Entry& entry)
{
    auto fact = factFrom(entry.kind, entry.payload);
    if (!fact)
        return failure(std::move(fact.error()));
    return Event{.seq = entry.seq,
                 .at = {.wall = entry.at, .boot = entry.boot, .bootId = entry.bootId},
                 .byReceipt = entry.byReceipt,
                 .person = entry.person,
                 .tap = entry.tap,
                 .place = entry.place,
                 .card = entry.card,
                 .fact = std::move(*fact)};
}

void chain(Entry& entry, const Hash& before) { entry.hash = chained(before, canonicalText(entry)); }

}  // namespace bathside
