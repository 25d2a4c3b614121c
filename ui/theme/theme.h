#pragma once

// How everything looks now: sizes and colours, asked for at each paint, changed at run time.
//
// For page authors: `theme().metrics().px(Metrics::kGap)`, `theme().tone(Role::Good).fill`. Ask
// when painting or laying out, keep nothing. Controls follow `changed()` by themselves; a page that
// sets margins or fixed sizes in pixels sets them again in a slot of `changed()`. GUI thread only.

#include <QObject>

#include "ui/theme/metrics.h"
#include "ui/theme/palette.h"

class QApplication;

namespace bathside::ui {

class Theme final : public QObject {
    Q_OBJECT

public:
    [[nodiscard]] const Metrics& metrics() const noexcept { return m_metrics; }
    [[nodiscard]] Scheme scheme() const noexcept { return m_scheme; }
    [[nodiscard]] const Palette& palette() const { return Palette::of(m_scheme); }
    [[nodiscard]] const Tone& tone(Role role) const { return palette().tone(role); }

    void setMetrics(const Metrics& metrics);
    void setScheme(Scheme scheme);

    /// Style, font and palette for what is not ours (tables, scroll bars), now and at each change.
    void dress(QApplication& application);

signals:
    void changed();

private:
    friend Theme& theme();
    Theme() = default;

    Metrics m_metrics;
    Scheme m_scheme = Scheme::Light;
};

/// The one theme of the program.
[[nodiscard]] Theme& theme();

}  // namespace bathside::ui
