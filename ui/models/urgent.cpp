#include "ui/models/urgent.h"

#include <algorithm>

#include "ui/models/lanes.h"

namespace bathside::ui {
namespace {

std::optional<Urgent> urgentAmpoule(const Bench& bench, const Alarms& due, const Stamp& now)
{
    std::optional<Urgent> found;
    const Pull* pull = bench.openPull();
    if (!pull)
        return found;
    for (const Ampoule& ampoule : pull->ampoules) {
        const auto running = countdown(bench, ampoule, now);
        if (!running || (found && found->left <= running->left))
            continue;
        found = Urgent{.of = Urgent::Of::Ampoule,
                       .limit = running->limit,
                       .subject = subjectOf(ampoule.ref),
                       .left = running->left,
                       .level = levelFor(due, running->limit, subjectOf(ampoule.ref)),
                       .certain = running->certain};
    }
    return found;
}

std::optional<Urgent> urgentPull(const Bench& bench, const Alarms& due, const Stamp& now)
{
    if (!bench.nextPull || bench.openPull())
        return std::nullopt;
    const Subject subject{SubjectKind::Bench, {}};
    return Urgent{.of = Urgent::Of::NextPull,
                  .limit = LimitName::NextPull,
                  .subject = subject,
                  .left = *bench.nextPull - now.wall,
                  .level = levelFor(due, LimitName::NextPull, subject),
                  .certain = true};
}

std::optional<Urgent> urgentBag(const Bench& bench, const Alarms& due, const Stamp& now)
{
    std::optional<Urgent> found;
    for (const Bag& bag : bench.bags) {
        const auto left = bagLeft(bag, now);
        if (!bag.isOpen() || !left || (found && found->left <= left->time))
            continue;
        found = Urgent{.of = Urgent::Of::Bag,
                       .limit = LimitName::InUse,
                       .subject = subjectOf(bag.id),
                       .left = left->time,
                       .level = levelFor(due, LimitName::InUse, subjectOf(bag.id)),
                       .certain = left->certain};
    }
    return found;
}

}  // namespace

std::optional<Urgent> mostUrgent(const Bench& bench, const Alarms& due, const Stamp& now)
{
    if (const auto ampoule = urgentAmpoule(bench, due, now))
        return ampoule;
    const auto pull = urgentPull(bench, due, now);
    const auto bag = urgentBag(bench, due, now);
    if (!pull || (bag && bag->left < pull->left))
        return bag;
    return pull;
}

std::optional<Elapsed> bagLeft(const Bag& bag, const Stamp& now)
{
    if (!bag.firstDiluent || !bag.card)
        return std::nullopt;
    const auto& at = bag.card->limit(LimitName::InUse).time.at;
    if (!at)
        return std::nullopt;
    const Elapsed age = elapsed(bag.firstDiluent->at, now);
    return Elapsed{Micros{*at} - age.time, age.certain};
}

std::optional<Micros> swirlLeft(const Bag& bag, const Stamp& now)
{
    if (!bag.swirled || !bag.card)
        return std::nullopt;
    const auto& at = bag.card->limit(LimitName::Swirl).time.at;
    if (!at)
        return std::nullopt;
    return Micros{*at} - elapsed(bag.swirled->at, now).time;
}

std::optional<Level> levelFor(const Alarms& due, LimitName limit, const Subject& subject)
{
    const auto found = std::ranges::find_if(due.due, [&](const Alarm& alarm) {
        const auto* cause = std::get_if<LimitName>(&alarm.cause);
        return cause && *cause == limit && alarm.subject == subject;
    });
    return found == due.due.end() ? std::nullopt : std::optional(found->level);
}

std::optional<Level> worstFor(const Alarms& due, const Subject& subject)
{
    const auto found = std::ranges::find(due.due, subject, &Alarm::subject);  // worst first
    return found == due.due.end() ? std::nullopt : std::optional(found->level);
}

}  // namespace bathside::ui
