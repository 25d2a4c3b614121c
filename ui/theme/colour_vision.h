#pragma once

// How a colour looks to somebody who lacks one kind of cone, and how far two colours are apart.
//
// Used to check the palette, not to draw. Source: H. Brettel, F. Viénot, J. Mollon, "Computerized
// simulation of color appearance for dichromats", J. Opt. Soc. Am. A 14 (1997), and F. Viénot, H.
// Brettel, J. Mollon, "Digital video colourmaps for checking the legibility of displays by
// dichromats", Color Res. Appl. 24 (1999); matrices for linear sRGB, from memory. Distance: CIE
// 1976 L*a*b* difference, D65.

#include <QColor>

namespace bathside::ui {

enum class Vision { Full, Protanopia, Deuteranopia, Tritanopia };

[[nodiscard]] QColor seenWith(Vision vision, const QColor& colour);
[[nodiscard]] double colourDistance(const QColor& a, const QColor& b);

}  // namespace bathside::ui
