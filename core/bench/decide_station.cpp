// Rows of `decide`: what the program itself has to say.

#include <algorithm>

#include "core/bench/decide_rows.h"
#include "core/card/read.h"

namespace bathside::rows {
namespace {

/// Bags whose age can no longer be known after a start with an untrusted clock.
std::vector<BagId> agelessBags(const Context& now)
{
    std::vector<BagId> ids;
    const bool inPull = now.bench.openPull() != nullptr;
    for (const Bag& bag : now.bench.bags) {
        const bool running = bag.firstDiluent || (inPull && bag.isBeingMadeUp());
        if (bag.isOpen() && !bag.held() && running)
            ids.push_back(bag.id);
    }
    return ids;
}

}  // namespace

Decision on(const Context& now, const StartStation& meant)
{
    std::vector<Fact> said{StationStarted{meant.version, meant.head, meant.rehearsal},
                           ClockChecked{meant.synchronised, meant.offset}};
    const bool otherBoot = now.bench.boot && *now.bench.boot != now.tap.at.bootId;
    const bool lostTrack =
        otherBoot && (!meant.synchronised || now.tap.at.wall < now.bench.last.wall);
    if (lostTrack) {
        for (const BagId& bag : agelessBags(now))
            said.emplace_back(BagHeld{bag, HoldReason::AgeUnknown, {}});
    }
    return said;
}

Decision on(const Context&, const StopStation&) { return facts(StationStopped{}); }
Decision on(const Context&, const NoteClockStep& meant) { return facts(ClockStepped{meant.by}); }

Decision on(const Context& now, const ProveSound& meant)
{
    if (now.bench.soundProven && !now.bench.soundLost)
        return std::vector<Fact>{};
    return facts(SoundProven{meant.device});
}

Decision on(const Context& now, const LoseSound& meant)
{
    if (now.bench.soundLost)
        return std::vector<Fact>{};
    return facts(SoundLost{meant.device});
}

Decision on(const Context& now, const FindSound& meant)
{
    if (!now.bench.soundLost)
        return std::vector<Fact>{};
    return facts(SoundFound{meant.device});
}

Decision on(const Context&, const NoteStoreFailure& meant)
{
    return facts(StoreFailed{meant.fault, meant.errorNumber, meant.spool});
}

Decision on(const Context&, const NoteStoreRecovery& meant)
{
    return facts(StoreRecovered{meant.merged, meant.spool});
}

Decision on(const Context&, const AdoptCard& meant)
{
    const auto card = cardFrom(meant.document);
    if (!card)
        return refuse(RefusalCode::BadDocument, {}, card.error().key);
    return facts(CardAdopted{{card->document()}});
}

Decision on(const Context&, const DescribeProbe& meant)
{
    const auto probe = probeFrom(meant.document);
    if (!probe)
        return refuse(RefusalCode::BadDocument, {}, probe.error().key);
    return facts(ProbeDescribed{meant.probe, {documentOf(*probe)}});
}

Decision on(const Context& now, const RaiseAlarm& meant)
{
    const auto standing = now.bench.alarms.find(meant.alarm);
    if (standing != now.bench.alarms.end() && standing->second.level == meant.level)
        return std::vector<Fact>{};
    return facts(AlarmRaised{meant.alarm, meant.level, meant.subject});
}

Decision on(const Context& now, const NoteSounded& meant)
{
    const auto standing = now.bench.alarms.find(meant.alarm);
    const bool isNews = standing != now.bench.alarms.end() &&
                        standing->second.level == meant.level && !standing->second.sounded;
    if (!isNews)
        return std::vector<Fact>{};
    return facts(AlarmSounded{meant.alarm, meant.level, meant.device, meant.late});
}

Decision on(const Context& now, const EndAlarm& meant)
{
    if (!now.bench.alarms.contains(meant.alarm))
        return refuse(RefusalCode::NoSuchAlarm, {}, meant.alarm);
    return facts(AlarmEnded{meant.alarm});
}

Decision on(const Context& now, const HearAlarm& meant)
{
    std::vector<Fact> said;
    for (const auto& [id, alarm] : now.bench.alarms) {
        if (meant.alarm.empty() || id == meant.alarm)
            said.emplace_back(AlarmHeard{id});
    }
    if (said.empty())
        return refuse(RefusalCode::NoSuchAlarm, {}, meant.alarm);
    return said;
}

}  // namespace bathside::rows
