#pragma once

// Sound trails of any length: random events of every kind, chained; a seal among them seals what
// went before it.

#include <string>
#include <vector>

#include "core/facts/codec.h"
#include "core/trail/entry.h"
#include "core/trail/event_form.h"
#include "core/trail/seal.h"
#include "tests/support/random_facts.h"

namespace bathside::test {

inline Entry sampleEntry(RandomFacts& random, Seq seq)
{
    const WallTime morning(Millis(1772690400000));  // 2026-03-05T06:00:00Z
    Event event;
    event.seq = seq;
    event.at.wall =
        morning + Millis(seq * 731 + random.whole(-3000, 3000));  // wall clocks go back, too
    event.at.boot = Micros(90'000'000 + seq * 731'000 + random.whole(0, 999));
    event.at.bootId = {0x3f, 0x2b, 0x90, 0x1c, 0x7d, 0x11, 0x4e, 0x5a,
                       0x9c, 0x40, 1,    2,    3,    4,    5,    6};
    event.byReceipt = random.below(10) == 0;
    if (random.below(5) != 0)
        event.person =
            Person{{random.below(2) == 0 ? "AB" : "Ñ\"C"}, static_cast<Proof>(random.below(2))};
    event.tap = {"tap-" + std::to_string(seq)};
    event.place = {random.below(3) == 0 ? "" : "step"};
    event.card = {random.below(3) == 0 ? "" : std::string(64, 'c')};
    event.fact = random.fact();
    Entry entry = entryOf(event, {"bench 1"});
    if (random.below(50) == 0)
        entry.spool = SpoolOrigin{seq, sha256(entry.tap.text)};
    return entry;
}

inline std::vector<Entry> sampleLog(Seq count, std::uint64_t seed = 1,
                                    const std::string& station = "bench 1")
{
    RandomFacts random(seed);
    std::vector<Entry> log;
    Hash before{};
    for (Seq seq = 1; seq <= count; ++seq) {
        Entry entry = sampleEntry(random, seq);
        while (entry.kind == TrailContinued::kKind)  // only ever the first of a file
            entry = sampleEntry(random, seq);
        if (entry.kind == DaySealed::kKind)
            entry.payload = payloadOf(sealOf({seq - 1, before}, SealKey::from({})));
        entry.station = {station};
        chain(entry, before);
        before = entry.hash;
        log.push_back(std::move(entry));
    }
    return log;
}

}  // namespace bathside::test
