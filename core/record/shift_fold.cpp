#include "core/record/shift_fold.h"

#include <algorithm>
#include <tuple>

#include "core/facts/points_at.h"
#include "core/trail/event_form.h"

namespace bathside {

ShiftFold::ShiftFold(const std::vector<Entry>& later)
{
    for (const Entry& entry : later) {
        if (auto event = eventOf(entry))
            m_later.push_back(std::move(*event));
    }
}

void ShiftFold::begin(const Event& event) { m_state = evolve(std::move(m_state), event); }

std::optional<State> ShiftFold::take(const Event& event)
{
    std::optional<State> ended;
    if (std::holds_alternative<ShiftOpened>(event.fact)) {
        ended = finish();
        m_first = event.seq;
    }
    m_state = evolve(std::move(m_state), event);
    m_last = event.seq;
    if (m_state.bench.shiftIsOpen() || std::holds_alternative<ShiftClosed>(event.fact))
        m_card = m_state.bench.card;
    return ended;
}

std::optional<State> ShiftFold::finish() const
{
    if (!m_state.bench.shift)
        return std::nullopt;
    State state = m_state;
    for (const Event& event : m_later) {
        const auto isHere = [&](Seq seq) {
            return (m_first <= seq && seq <= m_last) ||
                   state.bench.reviews.deviations.contains(seq);  // or still open from before
        };
        if (event.seq > m_last && std::ranges::any_of(pointsAt(event.fact), isHere))
            state = evolve(std::move(state), event);
    }
    state.bench.card = m_card;
    return state;
}

std::optional<State> shiftOf(const std::vector<Entry>& context, const std::vector<Entry>& entries,
                             const std::vector<Entry>& later)
{
    ShiftFold fold(later);
    for (const Entry& entry : context) {
        if (const auto event = eventOf(entry))
            fold.begin(*event);
    }
    for (const Entry& entry : entries) {
        if (const auto event = eventOf(entry))
            std::ignore = fold.take(*event);
    }
    return fold.finish();
}

}  // namespace bathside
