#pragma once

// Events to and from entries: the one place where a fact becomes a row of the trail and back.
//
// `entryOf` keeps the event's seq and leaves hash and spool origin empty; `eventOf` ignores both.
// Reading is strict: what could not have been written is a fault that names the member.

#include "core/base/result.h"
#include "core/facts/codec.h"
#include "core/facts/event.h"
#include "core/trail/entry.h"

namespace bathside {

[[nodiscard]] Entry entryOf(const Event& event, const StationId& station);
[[nodiscard]] Result<Event, PayloadFault> eventOf(const Entry& entry);

/// The entry's hash set so that it continues `before`; its seq is the caller's.
void chain(Entry& entry, const Hash& before);

}  // namespace bathside
