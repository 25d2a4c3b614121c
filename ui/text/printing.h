#pragma once

// How printing went, in words short enough for one line of the bench.

#include "ui/models/printing.h"
#include "ui/theme/role.h"

namespace bathside::ui {

struct PrintNews {
    Role role = Role::Neutral;
    QString word, text;

    [[nodiscard]] QString sentence() const;
};

[[nodiscard]] PrintNews printNews(const PrintOutcome& outcome);

/// "100 × 50 mm"
[[nodiscard]] QString paperText(Paper paper);
/// A file's path, the person's own folder as "~"; a long one with its end only.
[[nodiscard]] QString shownPath(const QString& path);

}  // namespace bathside::ui
