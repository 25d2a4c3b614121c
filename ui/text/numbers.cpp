#include "ui/text/numbers.h"

#include <QCoreApplication>
#include <cmath>
#include <limits>

namespace bathside::ui {
namespace {

struct Typed {
    bool negative = false;
    QString whole, decimals;  // digits only
};

bool isAsciiDigit(QChar c) { return c >= u'0' && c <= u'9'; }

// Digits, at most one sign (the locale's or a point), digits on at least one side.
std::optional<Typed> taken(QStringView typed, const QLocale& locale)
{
    const QString sign = locale.decimalPoint();
    QStringView rest = typed.trimmed();
    Typed result;
    if (rest.startsWith(u'-')) {
        result.negative = true;
        rest = rest.mid(1);
    }
    bool behind = false;
    for (const QChar c : rest) {
        if (isAsciiDigit(c))
            (behind ? result.decimals : result.whole) += c;
        else if (!behind && (c == u'.' || QStringView(sign) == QStringView(&c, 1)))
            behind = true;
        else
            return std::nullopt;
    }
    const bool trailing = behind && result.decimals.isEmpty();
    if (result.whole.isEmpty() || trailing)
        return std::nullopt;
    return result;
}

qint64 powerOfTen(int n)
{
    qint64 power = 1;
    while (n-- > 0)
        power *= 10;
    return power;
}

// value / 10^drop, half away from zero.
qint64 rounded(qint64 value, int drop)
{
    const qint64 unit = powerOfTen(drop), half = unit / 2;
    return drop == 0 ? value : (value >= 0 ? value + half : value - half) / unit;
}

}  // namespace

std::optional<double> parseDecimal(QStringView typed, const QLocale& locale)
{
    const auto parts = taken(typed, locale);
    if (!parts)
        return std::nullopt;
    const QString plain = (parts->negative ? QStringLiteral("-") : QString()) + parts->whole +
                          u'.' + parts->decimals + u'0';
    bool ok = false;
    const double value = QLocale::c().toDouble(plain, &ok);
    if (!ok || !std::isfinite(value))
        return std::nullopt;
    return value;
}

std::optional<qint64> parseScaled(QStringView typed, int decimals, const QLocale& locale)
{
    const auto parts = taken(typed, locale);
    if (!parts || parts->decimals.size() > decimals)
        return std::nullopt;
    bool ok = false;
    const qint64 value =
        (parts->whole + parts->decimals.leftJustified(decimals, u'0')).toLongLong(&ok);
    if (!ok)
        return std::nullopt;
    return parts->negative ? -value : value;
}

QString scaledText(qint64 value, int decimals, int shown, const QLocale& locale)
{
    const int kept = std::min(decimals, shown);
    const qint64 number = rounded(value, decimals - kept);
    const qint64 unit = powerOfTen(kept), size = std::abs(number);
    QString text = QString::number(size / unit);
    if (kept > 0)
        text += locale.decimalPoint() + QString::number(size % unit).rightJustified(kept, u'0');
    return number < 0 ? QStringLiteral("−") + text : text;
}

QString countText(qint64 count, const QLocale& locale) { return locale.toString(count); }

// The space before a unit does not break (SI brochure, 9th edition, 5.4.3).
QString temperatureText(MilliCelsius value)
{
    return QStringLiteral("%1\u00a0°C").arg(scaledText(value.count, 3, 1, QLocale()));
}

QString temperatureText(MilliCelsius value, MilliCelsius expanded)
{
    if (expanded.count == 0)
        return temperatureText(value);
    int shown = 1;
    while (rounded(expanded.count, 3 - shown) == 0)
        ++shown;
    return QStringLiteral("%1\u00a0±\u00a0%2\u00a0°C")
        .arg(scaledText(value.count, 3, shown, QLocale()),
             scaledText(expanded.count, 3, shown, QLocale()));
}

// In mL with as few decimals as it takes.
QString volumeText(MicroLitres value)
{
    int shown = 3;
    while (shown > 0 && value.count % powerOfTen(4 - shown) == 0)
        --shown;
    return QStringLiteral("%1\u00a0mL").arg(scaledText(value.count, 3, shown, QLocale()));
}

}  // namespace bathside::ui
