#include "ui/theme/metrics.h"

#include <QFontMetricsF>
#include <QScreen>
#include <algorithm>
#include <cmath>
#include <map>

namespace bathside::ui {
namespace {

// What a screen may say of itself and be believed.
constexpr double kLowestPitch = 2.0, kHighestPitch = 16.0;  // px/mm: 51 to 406 dpi
constexpr double kUsualPitch = 5.9;                         // 1280 × 800 on 10 inch
constexpr double kLowestCorrection = 0.5, kHighestCorrection = 2.0;

// Panels between which the digits grow: diagonal and height of digits, mm.
constexpr double kSmallPanel = 256, kSmallDigits = 30;  // 10.1 inch
constexpr double kLargePanel = 396, kLargeDigits = 60;  // 15.6 inch

bool sane(double pitch) { return pitch >= kLowestPitch && pitch <= kHighestPitch; }

// Pixels are square on every panel made today: a description that says otherwise lies.
double pitchOf(const QScreen& screen)
{
    const QSizeF mm = screen.physicalSize(), px = screen.geometry().size();
    const double across = px.width() / mm.width(), down = px.height() / mm.height();
    const bool square = std::abs(across - down) < 0.1 * across;
    return square && sane(across) ? across : kUsualPitch;
}

QFont plain(Weight weight)
{
    QStringList families{QStringLiteral("Open Sans"), QStringLiteral("Noto Sans"),
                         QStringLiteral("DejaVu Sans")};
    if (weight == Weight::Narrow)
        families.prepend(QStringLiteral("Open Sans Condensed"));
    QFont font;
    font.setFamilies(families);
    font.setWeight(weight == Weight::Regular ? QFont::Normal : QFont::Bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setKerning(false);  // digits keep one width each
    return font;
}

// Height of capitals as a share of the font's pixel size.
double capShare(Weight weight)
{
    static std::map<Weight, double> known;
    const auto [found, isNew] = known.try_emplace(weight, 0);
    if (isNew) {
        QFont font = plain(weight);
        font.setPixelSize(1000);
        found->second = std::max(0.5, QFontMetricsF(font).capHeight() / 1000);
    }
    return found->second;
}

}  // namespace

Metrics::Metrics(double pxPerMm, QSizeF panelMm) : m_pxPerMm(pxPerMm), m_panelMm(panelMm) {}

Metrics::Metrics() : Metrics(kUsualPitch, {217, 136}) {}

Metrics Metrics::of(const QScreen& screen, double correction)
{
    const double corrected = pitchOf(screen) * correction;
    const double pitch = sane(corrected) ? corrected : kUsualPitch;
    return {pitch, QSizeF(screen.geometry().size()) / pitch};
}

double Metrics::correctionFor(double drawnMm)
{
    const double correction = drawnMm / kCardWidth;
    return correction >= kLowestCorrection && correction <= kHighestCorrection ? correction : 1;
}

// A hair's breadth over a whole pixel is no reason for one more.
int Metrics::ceilPx(double mm) const { return static_cast<int>(std::ceil(px(mm) - 1e-6)); }

double Metrics::digitsMm() const
{
    const double diagonal = std::hypot(m_panelMm.width(), m_panelMm.height());
    const double share = (diagonal - kSmallPanel) / (kLargePanel - kSmallPanel);
    const double digits = kSmallDigits + share * (kLargeDigits - kSmallDigits);
    return std::clamp(digits, kCaps, 2 * kLargeDigits);
}

QFont Metrics::font(double capMm, Weight weight) const { return fontOfCapPx(px(capMm), weight); }

QFont Metrics::fontOfCapPx(double capPx, Weight weight)
{
    QFont font = plain(weight);
    font.setPixelSize(std::max(1, static_cast<int>(std::ceil(capPx / capShare(weight) - 1e-6))));
    if (QFontMetricsF(font).capHeight() < capPx)  // hinting took some of it
        font.setPixelSize(font.pixelSize() + 1);
    return font;
}

}  // namespace bathside::ui
