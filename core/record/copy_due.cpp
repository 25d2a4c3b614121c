#include "core/record/copy_due.h"

namespace bathside {
namespace {

/// `time` and then `grace` have gone by since. Where the clock went back over a restart nobody can
/// tell: the time counts as gone by, and the grace from this boot on.
bool hasLasted(const Stamp& since, const Stamp& now, Millis time, Millis grace)
{
    return wentBackOverRestart(since, now) ? now.boot >= grace
                                           : elapsed(since, now).time >= time + grace;
}

bool isClockDue(const CopyPlan& plan, const Bench& bench, const Stamp& now, Millis grace)
{
    if (plan.every <= Millis(0))
        return false;
    return !bench.backedUp || hasLasted(bench.backedUp->at, now, plan.every, grace);
}

bool isShiftDue(const CopyPlan& plan, const Bench& bench, const Stamp& now, Millis grace)
{
    if (!plan.atShiftEnd || !bench.shift || !bench.shift->closed)
        return false;
    const Moment& closed = *bench.shift->closed;
    if (bench.backedUp && bench.backedUp->seq > closed.seq)
        return false;
    const bool isSealed = bench.sealed && *bench.sealed > closed.seq;
    const Millis wait = isSealed ? Millis(0) : kSealPatience;
    return hasLasted(closed.at, now, wait, grace);
}

}  // namespace

bool isTimeForCopies(const Bench& bench, const Stamp& now)
{
    return !bench.openPull() && !inCriticalWindow(bench, now);
}

bool isCopyDue(const CopyPlan& plan, const Bench& bench, const Stamp& now)
{
    return isTimeForCopies(bench, now) &&
           (isClockDue(plan, bench, now, Millis(0)) || isShiftDue(plan, bench, now, Millis(0)));
}

bool isCopyLate(const CopyPlan& plan, const Bench& bench, const Stamp& now)
{
    return isClockDue(plan, bench, now, kCopyPatience) ||
           isShiftDue(plan, bench, now, kCopyPatience);
}

}  // namespace bathside
