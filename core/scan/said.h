#pragma once

// What a scanned code says about the thing it is on.

#include <chrono>
#include <cstdint>
#include <optional>

#include "core/base/ids.h"
#include "core/scan/scanned_code.h"

namespace bathside {

[[nodiscard]] std::optional<LotId> lotSaid(const ScannedCode& code);       // (10)
[[nodiscard]] std::optional<gs1::Gtin> gtinSaid(const ScannedCode& code);  // (01), (02), EAN
[[nodiscard]] std::optional<std::chrono::year_month_day> expirySaid(
    const ScannedCode& code);                                                  // (17), (7003)
[[nodiscard]] std::optional<std::string> serialSaid(const ScannedCode& code);  // (21)
[[nodiscard]] std::optional<std::int64_t> countSaid(const ScannedCode& code);  // (30), (37)
[[nodiscard]] std::optional<BagCode> bagSaid(const ScannedCode& code);
[[nodiscard]] std::optional<PersonId> personSaid(const ScannedCode& code);
[[nodiscard]] std::optional<SealCode> sealSaid(const ScannedCode& code);

enum class LotMatch : std::uint8_t {
    Same,
    Other,    // the code names a lot, and it is another
    NotSaid,  // the code names no lot
};
/// Plain text that is the lot to the letter is that lot; other plain text says nothing, for it may
/// be any number on the glass.
[[nodiscard]] LotMatch compared(const ScannedCode& code, const LotId& expected);

}  // namespace bathside
