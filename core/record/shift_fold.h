#pragma once

// The shifts of a record, each as it stands in the end.
//
// A shift is handed out when another opens or nothing more comes, with what later entries, of
// whatever day, corrected, reviewed, commented on or signed in it; its card is the one that was in
// force as it closed. The entries of the record come in order and are not kept.

#include <optional>
#include <vector>

#include "core/bench/state.h"
#include "core/trail/entry.h"

namespace bathside {

class ShiftFold {
public:
    /// `later`: the entries that point back into a shift before their own, in order.
    explicit ShiftFold(const std::vector<Entry>& later);

    /// What went before and is no part of the record: cards, probes, the last start.
    void begin(const Event& event);
    /// The shift that ended as this one opens; none where there was none, or none opens.
    [[nodiscard]] std::optional<State> take(const Event& event);
    /// The last shift; none where there was none.
    [[nodiscard]] std::optional<State> finish() const;

    /// As far as it has been read.
    [[nodiscard]] const State& state() const noexcept { return m_state; }

private:
    std::vector<Event> m_later;
    State m_state;
    Seq m_first = 0, m_last = 0;         // of the shift, so far
    std::shared_ptr<const Card> m_card;  // as it closed
};

/// The last shift of `entries`, with what `context` says before it and `later` of it; none where
/// they have none.
[[nodiscard]] std::optional<State> shiftOf(const std::vector<Entry>& context,
                                           const std::vector<Entry>& entries,
                                           const std::vector<Entry>& later);

}  // namespace bathside
