#pragma once

// The bench of whole shifts as flat sheets: one row per ampoule, per bag and per deviation.
//
// Folded from the events by the same `evolve` as everything else, so that corrections and
// take-backs count, later ones and reviews too. Durations are those the limits were judged by (boot
// clock within one boot, else wall time, marked uncertain), cut off to ms: 9.999 s is 9.999. Values
// are in s, mL and °C with three decimals.

#include <string>
#include <vector>

#include "core/base/local_days.h"
#include "core/record/csv.h"
#include "core/record/shift_fold.h"

namespace bathside {

/// The three sheets in one dialect, as far as they have been written.
struct Sheets {
    explicit Sheets(CsvDialect dialect);

    CsvWriter ampoules;
    CsvWriter bags;
    CsvWriter deviations;
};

class SheetFold {
public:
    /// `zone`: for events before the first shift; a shift brings its own.
    /// `later`: see ShiftFold.
    SheetFold(const LocalDays& days, std::string zone, std::vector<CsvDialect> dialects,
              const std::vector<Entry>& later = {});

    /// From now on into three further tables of that book, too.
    void alsoInto(Book& book);
    /// What went before and is no part of the sheets: cards, probes, the last start.
    void begin(const Event& event);
    void take(const Event& event);
    /// The sheets, in the order of the dialects, once nothing more comes.
    [[nodiscard]] std::vector<Sheets> finish();

    [[nodiscard]] const State& state() const noexcept { return m_fold.state(); }
    /// An instant as local time, by the zone of the shift.
    [[nodiscard]] LocalInstant local(WallTime at) const;

private:
    struct Tables {
        Table *ampoules = nullptr, *bags = nullptr, *deviations = nullptr;
    };

    void write(const State& shift);
    void write(const State& shift, Table& ampoules, Table& bags, Table& deviations);

    const LocalDays& m_days;
    std::string m_zone;
    std::vector<Sheets> m_sheets;
    Tables m_also;  // of the book
    ShiftFold m_fold;
};

}  // namespace bathside
