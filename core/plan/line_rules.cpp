#include "core/plan/line_rules.h"

#include <algorithm>

namespace bathside::plan {
namespace {

constexpr Millis kOneMilli{1};

}  // namespace

LineRules::LineRules(const DayInput& input, const Line& line)
    : m_clock(line.breaks, line.ratePerHour),
      m_birds(std::max<Count>(line.birds - line.birdsDone, 0)),
      m_start(input.now ? std::max(line.start, *input.now) : line.start),
      m_changeover(input.changeover),
      m_longestIdle(input.longestIdle),
      m_life(input.useLimit - input.hangTime - input.diluteTime - input.benchSlack),
      m_dose(input.dose),
      m_residual(input.residual),
      m_prime(input.prime),
      m_tubes(line.birdsDone > 0 || line.openBag ? Tubes::Full : Tubes::Empty)
{
    if (input.now)
        m_firstNew = *input.now + input.prepareTime + input.hangTime;
    readReady(input, line);
}

void LineRules::readReady(const DayInput& input, const Line& line)
{
    if (line.openBag)
        m_ready.push_back(
            {*line.openBag, m_start, line.openBag->firstInDiluent + input.useLimit, true});
    for (const MadeBag& bag : line.mixedBags)
        m_ready.push_back({bag, bag.firstInDiluent + input.diluteTime + input.hangTime,
                           bag.firstInDiluent + input.useLimit, false});
}

DayTime LineRules::firstNew(DayTime free) const
{
    return m_clock.working(m_firstNew ? std::max(free, *m_firstNew) : free);
}

Count LineRules::birdsIn(MicroLitres left, Tubes tubes) const
{
    const MicroLitres usable = left - m_residual - (tubes == Tubes::Full ? MicroLitres{} : m_prime);
    return std::max<Count>(usable.count, 0) / m_dose.count;
}

Count LineRules::mostBirds(MicroLitres volume, Tubes tubes) const
{
    const Millis work = std::max(m_life - kOneMilli, Millis(0));
    return std::min(birdsIn(volume, tubes), m_clock.birdsIn(work));
}

Count LineRules::birdsBeyondReady(std::size_t first, Count toDo) const
{
    for (std::size_t bag = first; bag < m_ready.size(); ++bag)
        toDo -= birdsIn(m_ready[bag].bag.left, Tubes::Full);
    return std::max<Count>(toDo, 0);
}

Turn LineRules::turn(DayTime firstBird, DayTime end, Count atMost) const
{
    const Count inTime = m_clock.birdsIn(m_clock.workBetween(firstBird, end - kOneMilli));
    const Count birds = std::min(atMost, inTime);
    return {firstBird, m_clock.endOf(firstBird, m_clock.workFor(birds)), birds, {}};
}

std::optional<DayTime> LineRules::afterNextBreak(DayTime free) const
{
    const Break* next = m_clock.breakAfter(free);
    if (next == nullptr || next->from - free > m_longestIdle)
        return std::nullopt;
    return next->to;
}

/// `endOf` says, for a first bird, before when the last must be.
template <typename EndOf>
Turns LineRules::turnsFrom(DayTime atOnce, std::optional<DayTime> later, Count atMost,
                           EndOf endOf) const
{
    Turns turns;
    if (const Turn now = turn(atOnce, endOf(atOnce), atMost); now.birds > 0)
        turns.add(now);
    if (!later)
        return turns;
    Turn then = turn(*later, endOf(*later), atMost);
    then.idle = m_clock.workBetween(atOnce, *later);
    if (then.birds > 0)
        turns.add(then);
    return turns;
}

Turns LineRules::newBag(MicroLitres volume, DayTime free, Count toDo) const
{
    const DayTime atOnce = firstNew(free);
    return turnsFrom(atOnce, afterNextBreak(atOnce), std::min(birdsIn(volume, tubes(toDo)), toDo),
                     [&](DayTime firstBird) { return firstBird + m_life; });
}

Turns LineRules::readyBag(const ReadyBag& bag, DayTime free, Count toDo) const
{
    const DayTime atOnce = m_clock.working(std::max(free, bag.ready));
    return turnsFrom(atOnce, bag.hangs ? std::nullopt : afterNextBreak(atOnce),
                     std::min(birdsIn(bag.bag.left, tubes(toDo)), toDo),
                     [&](DayTime) { return bag.end; });
}

}  // namespace bathside::plan
