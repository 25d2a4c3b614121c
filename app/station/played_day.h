#pragma once

// A script played through the real window on a clock of its own: what `--play` does.
//
// The trail is new, kept in memory of nobody else: a temporary folder. Pictures are taken of the
// first time each thing is said, just after it; the record of the days played is exported at the
// end. Needs a QApplication. Ends with one line that says what was played, or what went wrong and
// where.

#include <QString>

#include "app/station/options.h"
#include "core/base/result.h"

namespace bathside::app {

/// What was played, in words; or what went wrong.
[[nodiscard]] Result<QString, QString> playDay(const Options& options);

}  // namespace bathside::app
