#pragma once

// Numbers as people type and read them. The only place where they are parsed or formatted.
//
// Typed: the locale's decimal sign or a point, no group signs, no exponent, no sign but a leading
// minus. Whatever is not sure is nothing, never a guess: "1.000,5" is refused. State holds typed
// values; nothing that was displayed is ever parsed again.

#include <QLocale>
#include <QString>
#include <QStringView>
#include <optional>

#include "core/base/units.h"

namespace bathside::ui {

[[nodiscard]] std::optional<double> parseDecimal(QStringView typed, const QLocale& locale);
/// Exact: "28.1" with 3 decimals is 28100; nothing when more decimals were typed or it is too
/// large.
[[nodiscard]] std::optional<qint64> parseScaled(QStringView typed, int decimals,
                                                const QLocale& locale);

/// `value` in units of 10^-decimals, shown with `shown` decimals (rounded half away from zero), no
/// group signs.
[[nodiscard]] QString scaledText(qint64 value, int decimals, int shown, const QLocale& locale);
[[nodiscard]] QString countText(qint64 count,
                                const QLocale& locale);  // with the locale's group signs

/// With their unit, in the language of the screen (QLocale() default).
[[nodiscard]] QString temperatureText(MilliCelsius value);  // "28.1 °C"
/// "28.1 ± 0.2 °C", with as many decimals as it takes to show more than "± 0.0".
[[nodiscard]] QString temperatureText(MilliCelsius value, MilliCelsius expanded);
[[nodiscard]] QString volumeText(MicroLitres value);  // "400 mL", "0.2 mL"

}  // namespace bathside::ui
