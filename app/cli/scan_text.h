#pragma once

// Scanned codes in the command line's words: JSON for programs, English for people.

#include <string>

#include "core/scan/scanned_code.h"

namespace bathside::cli {

/// {"kind": "elements" | "item" | "bag" | "person" | "plain", "symbology", …} in one line.
/// Elements:
/// [{"ai", "data", "value"}], with "decimals" where there may be some; and what matters by name:
/// "gtin", "lot", "expiry", "serial", "count".
[[nodiscard]] std::string jsonOf(const ScannedCode& code);
/// {"kind": "fault", "fault", "at": byte from 0, "ai"}
[[nodiscard]] std::string jsonOf(const ScanFault& fault);

/// Lines.
[[nodiscard]] std::string wordsOf(const ScannedCode& code);
/// Without a full stop.
[[nodiscard]] std::string sentenceOf(const ScanFault& fault);

}  // namespace bathside::cli
