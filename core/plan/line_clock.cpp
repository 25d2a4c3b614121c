#include "core/plan/line_clock.h"

#include <algorithm>
#include <utility>

namespace bathside::plan {
namespace {

constexpr Count kMillisPerHour = 3'600'000;

std::vector<Break> joined(std::vector<Break> breaks)
{
    std::erase_if(breaks, [](const Break& pause) { return pause.to <= pause.from; });
    std::ranges::sort(breaks, {}, &Break::from);
    std::vector<Break> apart;
    for (const Break& pause : breaks) {
        if (!apart.empty() && pause.from <= apart.back().to)
            apart.back().to = std::max(apart.back().to, pause.to);
        else
            apart.push_back(pause);
    }
    return apart;
}

}  // namespace

LineClock::LineClock(std::vector<Break> breaks, Count ratePerHour)
    : m_breaks(joined(std::move(breaks))), m_rate(ratePerHour)
{
}

std::vector<Break>::const_iterator LineClock::firstAfter(DayTime at) const
{
    return std::ranges::upper_bound(m_breaks, at, {}, &Break::to);
}

const Break* LineClock::breakAfter(DayTime at) const
{
    const auto next = firstAfter(at);
    return next == m_breaks.end() ? nullptr : &*next;
}

Count LineClock::breaksAfter(DayTime at) const { return m_breaks.end() - firstAfter(at); }

DayTime LineClock::working(DayTime at) const
{
    const Break* next = breakAfter(at);
    return next != nullptr && next->from <= at ? next->to : at;
}

DayTime LineClock::endOf(DayTime from, Millis work) const
{
    if (work == Millis(0))
        return from;
    DayTime end = working(from) + work;
    for (auto next = firstAfter(working(from)); next != m_breaks.end() && next->from < end; ++next)
        end += next->to - next->from;
    return end;
}

Millis LineClock::workBetween(DayTime from, DayTime to) const
{
    Millis work = std::max(to - from, Millis(0));
    for (auto next = firstAfter(from); next != m_breaks.end() && next->from < to; ++next)
        work -= std::min(next->to, to) - std::max(next->from, from);
    return work;
}

Millis LineClock::workFor(Count birds) const
{
    return Millis((birds * kMillisPerHour + m_rate - 1) / m_rate);
}

Count LineClock::birdsIn(Millis work) const { return work.count() * m_rate / kMillisPerHour; }

}  // namespace bathside::plan
