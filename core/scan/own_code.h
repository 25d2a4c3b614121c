#pragma once

// Our own codes, as our labels and sheets carry them: a bag, a person, or a seal.
//
//   BSB.20260305.B4.D     bag B4, mixed on that local day; the last sign is the check character
//   BSP.MK.S              person MK
//   BSS.187.6E3F….T       the trail's head after 187 entries: its hash in 64 hex digits
//
// Capital letters and digits of an id stand as they are, any other byte as % and two hex digits. A
// scanner that types as a keyboard types by the keyboard's layout: the full stop is one of the few
// signs that most layouts have in the same place, and where letters are elsewhere the check
// character tells. Read in either case, as a locked Caps key inverts it. Ids are what the trail
// calls them; a bag's is unique within its shift only, hence the day.

#include <chrono>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>

#include "core/base/ids.h"
#include "core/base/result.h"
#include "core/scan/fault.h"

namespace bathside {

struct BagCode {
    BagId bag;
    std::chrono::year_month_day mixed{};  // a date of the years 0 to 9999
    friend bool operator==(const BagCode&, const BagCode&) = default;
};

struct PersonCode {
    PersonId person;
    friend bool operator==(const PersonCode&, const PersonCode&) = default;
};

/// The head that a trail had after so many entries, as a day sheet says it.
struct SealCode {
    std::int64_t count = 0;  // 1 or more
    std::string head;        // lower-case hex, 64 digits
    friend bool operator==(const SealCode&, const SealCode&) = default;
};

using OwnCode = std::variant<BagCode, PersonCode, SealCode>;

/// The ids must not be empty, the day must be one, the head a hash.
[[nodiscard]] std::string textOf(const OwnCode& code);

/// Whether `text` begins as one of ours.
[[nodiscard]] bool beginsAsOwnCode(std::string_view text);
/// Only what `textOf` writes, in either case. Faults: NotOurForm, CheckCharacter.
[[nodiscard]] Result<OwnCode, ScanFault> ownCodeFrom(std::string_view text);

}  // namespace bathside
