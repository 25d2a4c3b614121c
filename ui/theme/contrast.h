#pragma once

// Contrast of two colours. Source: WCAG 2.2, definitions of relative luminance and contrast ratio
// (w3.org/TR/WCAG22). Never rounded: 4.4781 is not 4.5.

#include <QColor>

namespace bathside::ui {

inline constexpr double kTextContrast = 4.5;  // success criterion 1.4.3
inline constexpr double kTimedContrast =
    7.0;  // success criterion 1.4.6; here for all that is timed
inline constexpr double kShapeContrast = 3.0;  // success criterion 1.4.11

/// 0 for black to 1 for white; alpha is ignored.
[[nodiscard]] double relativeLuminance(const QColor& colour);
/// 1 to 21, whichever is the lighter.
[[nodiscard]] double contrastRatio(const QColor& a, const QColor& b);

}  // namespace bathside::ui
