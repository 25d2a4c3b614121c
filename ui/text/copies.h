#pragma once

// How it stands with copies of the record, in words.

#include <QString>

#include "ui/models/copies.h"
#include "ui/theme/role.h"

namespace bathside::ui {

/// A whole sentence: what is going on, what went wrong and what to do, or how old the last one is.
[[nodiscard]] QString copyText(const CopyNews& news, const Stamp& now);
/// The same in few words: "3 h ago".
[[nodiscard]] QString copyLine(const CopyNews& news, const Stamp& now);
/// Why it could not be written, and what to do.
[[nodiscard]] QString copyFaultText(const StoreTrouble& trouble);
/// Why it is no good: it, or the record itself.
[[nodiscard]] QString copyCheckText(const VerifyAnswer& check);
/// Under which names earlier files of the record lie beside it, where those are not their own.
[[nodiscard]] QString renamedText(const QStringList& names);
/// "41 min ago", "3 h ago", "5 days ago".
[[nodiscard]] QString agoText(Micros age);

[[nodiscard]] Role roleOf(const CopyNews& news);

}  // namespace bathside::ui
