#pragma once

// Which entries are the record of a day: the whole shifts opened in it, and the events outside any
// shift that fall in it. Order is seq; a shift's events belong to it whatever their clock says.
//
// A shift reaches from its opening to its first closing that was not taken back, or to the taking
// back of its opening, or to just before the next opening, or to where the trail stands. This is
// the rule itself, over all entries; the store's projection gives the same answer without reading
// them all. (Spec: the trail, local days.)

#include <string>
#include <vector>

#include "core/base/time.h"
#include "core/trail/entry.h"
#include "core/trail/seq_range.h"

namespace bathside {

struct ShiftSpan {
    Seq opened = 0;
    Seq last = 0;  // its closing, or where it stands
    bool closed = false;
    WallTime openedAt{};
    std::string zone;
    friend bool operator==(const ShiftSpan&, const ShiftSpan&) = default;
};

class DayFinder {
public:
    /// One after the other, from the trail's first.
    void take(const Entry& entry);

    [[nodiscard]] const std::vector<ShiftSpan>& shifts() const noexcept { return m_shifts; }

    /// The record of [from, to): in order, neighbours joined.
    [[nodiscard]] std::vector<SeqRange> record(WallTime from, WallTime to) const;

private:
    struct Loose {
        Seq seq = 0;
        WallTime at{};
    };

    void open(const Entry& entry);
    void takeBack(const Entry& entry);
    void place(const Entry& entry);

    std::vector<ShiftSpan> m_shifts;
    std::vector<Seq> m_ends;  // of the last shift: what ended it, in order
    std::vector<Loose> m_loose;
};

}  // namespace bathside
