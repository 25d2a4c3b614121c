#include "core/station/reading_change.h"

#include <algorithm>

namespace bathside {
namespace {

constexpr auto kTraceEvery =
    std::chrono::seconds(10);  // a steady thermometer is written this often

bool isAmpouleInBath(const Bench& bench)
{
    const Pull* pull = bench.openPull();
    return pull && std::ranges::any_of(pull->ampoules, [](const Ampoule& ampoule) {
               return ampoule.isOpen() && ampoule.reached() == Step::Bath;
           });
}

}  // namespace

// Outside a shift only what changes is written: nobody works by it. A good reading after a fault
// is, though of another thermometer: it is what the bath goes by again.
ReadingNews newsOf(const Bench& bench, const ReadingTaken& taken, const Stamp& at)
{
    const auto found = bench.latest.find(taken.probe);
    if (found == bench.latest.end())
        return ReadingNews::AtOnce;
    const auto& [before, last] = found->second;
    if (taken.fault)
        return last.fault == taken.fault ? ReadingNews::None : ReadingNews::Change;
    if (last.fault || (bench.readingFault() && bench.isOfBath(taken.probe)))
        return ReadingNews::AtOnce;
    if (last.verdict != taken.verdict)
        return ReadingNews::Change;
    const bool isDue = bench.shiftIsOpen() && elapsed(before, at).time >= kTraceEvery;
    return isDue ? ReadingNews::AtOnce : ReadingNews::None;
}

Patience patienceWith(const Bench& bench, const ReadingTaken& taken)
{
    const bool isGone = taken.fault == ReadingFault::Lost || taken.fault == ReadingFault::Empty;
    const bool isBad = taken.fault || taken.verdict == Verdict::Outside;
    if (isGone || (isBad && isAmpouleInBath(bench)))
        return Patience::Urgent;
    const auto written = bench.latest.find(taken.probe);
    const bool isBetter = !taken.fault && written != bench.latest.end() &&
                          taken.verdict < written->second.fact.verdict;
    return isBetter ? Patience::Better : Patience::Worse;
}

std::optional<BootTime> dueAt(const ReadingChange& change)
{
    if (change.patience == Patience::Urgent)
        return change.since.boot + kUrgentTime;
    if (change.readings < kLastingReadings)
        return std::nullopt;
    return change.since.boot + (change.patience == Patience::Better ? kBetterTime : kWorseTime);
}

}  // namespace bathside
