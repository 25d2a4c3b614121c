#pragma once

// A delivery as a CSV file, and what the stores make of it line by line.
//
// The head line names the columns, in any order: kind (ampoule, diluent, consumable), item (a
// component's or a consumable's name), lot, doses (per ampoule), volume_ml (of a bag), count,
// expires (YYYY-MM-DD), titre_pfu (per dose), vessel, canister, cane, delivery (e.g. a note's
// number). Only kind and count must be there. Right lines are taken, wrong ones are reported; a
// line that was received before, or stands in the file twice, is not taken again.

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/stores/stores.h"

namespace bathside {

enum class IntakeExpects : std::uint8_t {
    Utf8,            // the file is not UTF-8
    ClosedQuote,     // a quote is not closed, or text follows it
    HeadLine,        // nothing is in the file
    KnownColumn,     // the head line names a column that there is not
    ColumnOnce,      // ... one twice
    NeededColumn,    // `column` is missing in the head line
    AsManyCells,     // more cells than columns
    KindWord,        // ampoule, diluent or consumable
    Something,       // the cell may not be empty
    Nothing,         // the cell does not belong to that kind
    KnownComponent,  // a component of the procedure card
    PlainText,       // at most 120 characters without control characters
    WholeNumber,     // from 1 to 1,000,000 (a titre: 1,000,000,000)
    Millilitres,     // above 0, at most three decimals
    Day,             // YYYY-MM-DD
    AsBefore,        // what the stores have of that lot says otherwise
};

struct IntakeFault {
    int line = 0;        // from 1
    std::string column;  // may be empty
    std::string found;   // shortened
    IntakeExpects expected{};
    friend bool operator==(const IntakeFault&, const IntakeFault&) = default;
};

struct IntakeLine {
    int line = 0;
    StoreReceived received;
};

struct Intake {
    std::vector<IntakeLine> taken;
    std::vector<IntakeLine> doubled;  // received before, or a second time in this file
    std::vector<IntakeFault> faults;  // by line
};

/// `components`: those of the procedure card; empty: any will do.
[[nodiscard]] Intake intakeFrom(std::string_view csv, const Stores& stores,
                                const std::vector<ComponentId>& components);

/// What is wrong with such a receipt; nothing when it can be taken. The same rule for a typed one.
struct ReceiptFault {
    std::string column;
    IntakeExpects expected{};
};
[[nodiscard]] std::optional<ReceiptFault> faultOf(const StoreReceived& received,
                                                  const Stores& stores);

/// Text that may stand in the trail as a name: at most 120 bytes of UTF-8, no control characters.
[[nodiscard]] bool isPlainName(std::string_view text);

}  // namespace bathside
