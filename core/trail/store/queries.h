#pragma once

// What the station, its Record page and the command line ask of a trail.
//
// Each answers from the projections and reads only the events it gives, so that none slows down
// with years of history. Instants are UTC; what a local day is, the caller says (LocalDays). On the
// trail's thread; a failure is the store's.

#include <set>
#include <string>
#include <vector>

#include "core/record/days.h"
#include "core/trail/seq_range.h"
#include "core/trail/store/trail_db.h"

namespace bathside::store {

/// What `subject_index` knows events by; the numbers stand in the file.
enum class SubjectOf : std::uint8_t {
    Kind = 1,
    Person = 2,
    Bag = 3,
    Ampoule = 4,
    Lot = 5,
    Line = 6,
    Pointed = 7,  // by its seq: what later entries point at (core/facts/points_at.h)
};

/// 0 where there was no shift yet.
[[nodiscard]] Result<Seq, StoreTrouble> openingOfLastShift(const TrailDb& trail);

/// The entries of these kinds before that seq, in order: cards and probes that outlive shifts. Of
/// what comes every day only the latest; of corrections those of what is carried.
[[nodiscard]] Result<std::vector<Entry>, StoreTrouble> carried(
    const TrailDb& trail, const std::vector<std::string>& kinds, Seq before);

[[nodiscard]] Result<std::vector<Entry>, StoreTrouble> entriesFrom(const TrailDb& trail, Seq from);

/// The entries of these seqs that there are, in order.
[[nodiscard]] Result<std::vector<Entry>, StoreTrouble> entriesAt(const TrailDb& trail,
                                                                 const std::set<Seq>& seqs);

[[nodiscard]] Result<bool, StoreTrouble> hasTap(const TrailDb& trail, const TapId& tap);

/// The shifts opened at from <= instant < to.
[[nodiscard]] Result<std::vector<ShiftSpan>, StoreTrouble> shiftsOpened(const TrailDb& trail,
                                                                        WallTime from, WallTime to);

/// The record of a day: the whole shifts opened in it, and the events outside any shift that fall
/// in it; in order, neighbours joined. Read them with `TrailDb::read`, in as short slices as is
/// wished.
[[nodiscard]] Result<std::vector<SeqRange>, StoreTrouble> rangesOf(const TrailDb& trail,
                                                                   WallTime from, WallTime to);

/// The entries that point at one of these and come after the shift it belongs to, in order: what
/// was corrected, reviewed, commented on or signed later.
[[nodiscard]] Result<std::vector<Entry>, StoreTrouble> pointingBackAt(
    const TrailDb& trail, const std::vector<SeqRange>& runs);

/// These, and the first day's seal after the runs: what an export of them is told with.
[[nodiscard]] Result<std::vector<Entry>, StoreTrouble> saidLater(const TrailDb& trail,
                                                                 const std::vector<SeqRange>& runs);

}  // namespace bathside::store
