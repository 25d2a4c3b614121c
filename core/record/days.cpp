#include "core/record/days.h"

#include <algorithm>

#include "core/facts/codec.h"

namespace bathside {
namespace {

template <typename T>
T factOf(const Entry& entry)
{
    const auto fact = factFrom(entry.kind, entry.payload);
    const T* found = fact ? std::get_if<T>(&*fact) : nullptr;
    return found ? *found : T{};
}

}  // namespace

void DayFinder::take(const Entry& entry)
{
    if (entry.kind == ShiftOpened::kKind)
        open(entry);
    else if (entry.kind == FactTakenBack::kKind && !m_shifts.empty())
        takeBack(entry);
    else if (entry.kind == ShiftClosed::kKind && !m_shifts.empty())
        m_ends.push_back(entry.seq);
    place(entry);
}

void DayFinder::open(const Entry& entry)
{
    m_ends.clear();
    m_shifts.push_back({.opened = entry.seq,
                        .last = entry.seq,
                        .closed = false,
                        .openedAt = entry.at,
                        .zone = factOf<ShiftOpened>(entry).zone});
}

void DayFinder::takeBack(const Entry& entry)
{
    for (const Seq seq : factOf<FactTakenBack>(entry).seqs) {
        std::erase(m_ends, seq);
        if (seq == m_shifts.back().opened)
            m_ends.push_back(entry.seq);
    }
}

// Within the last shift, as it ends by what is known now, or outside any.
void DayFinder::place(const Entry& entry)
{
    m_loose.push_back({entry.seq, entry.at});
    if (m_shifts.empty())
        return;
    ShiftSpan& shift = m_shifts.back();
    shift.closed = !m_ends.empty();
    shift.last = shift.closed ? m_ends.front() : entry.seq;
    const auto first = std::ranges::lower_bound(m_loose, shift.opened, {}, &Loose::seq);
    const auto past = std::ranges::upper_bound(m_loose, shift.last, {}, &Loose::seq);
    m_loose.erase(first, std::max(first, past));
}

std::vector<SeqRange> DayFinder::record(WallTime from, WallTime to) const
{
    std::vector<SeqRange> ranges;
    for (const ShiftSpan& shift : m_shifts) {
        if (shift.openedAt >= from && shift.openedAt < to)
            ranges.push_back({shift.opened, shift.last});
    }
    for (const Loose& loose : m_loose) {
        if (loose.at >= from && loose.at < to)
            ranges.push_back({loose.seq, loose.seq});
    }
    return joined(std::move(ranges));
}

}  // namespace bathside
