#pragma once

// What is wrong with the trail, a card, a probe, the record, a scan or a print, as whole sentences
// with what to do next.

#include <QString>

#include "core/bath/probe.h"
#include "core/card/read.h"
#include "core/facts/words.h"
#include "core/scan/fault.h"
#include "core/trail/ports.h"
#include "ui/print/fault.h"

namespace bathside::ui {

[[nodiscard]] QString faultText(StoreFault fault);
[[nodiscard]] QString faultText(
    const StoreTrouble& trouble);  // with the system's error number, if any
[[nodiscard]] QString cardFaultText(const CardFault& fault);
[[nodiscard]] QString probeFaultText(const ProbeFault& fault);
[[nodiscard]] QString faultText(const ScanFault& fault);
[[nodiscard]] QString faultText(PrintFault fault);
/// What the banner says while the record is not whole; empty while it is.
[[nodiscard]] QString recordText(const RecordState& record);

}  // namespace bathside::ui
