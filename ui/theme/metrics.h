#pragma once

// Every size on the screen, in millimetres, and how many pixels that is on this panel.
//
// Pixels are Qt's device-independent ones. The pitch comes from the screen's own description
// (EDID), which often lies: what is beyond sanity is replaced by 5.9 px/mm, and set-up can correct
// it against a bank card (ISO/IEC 7810 ID-1, 85.60 × 53.98 mm). Sizes of targets: Colle & Hiszem,
// Ergonomics 47(13), 2004: 20 mm suffice for bare fingers; 25 % more for gloves. Height of letters:
// 20 to 22 minutes of arc (ISO 9241-3, quoted second hand): 10 mm capitals at 1.5 m, 3.2 mm at 0.5
// m.

#include <QFont>
#include <QSizeF>

class QScreen;

namespace bathside::ui {

enum class Weight {
    Regular,
    Strong,
    Narrow,  // strong and condensed: for the big clock's digits
};

class Metrics {
public:
    static constexpr double kCardWidth = 85.60;  // mm; ISO/IEC 7810 ID-1
    static constexpr double kCardHeight = 53.98;

    // Targets, mm.
    static constexpr double kStepWidth = 60, kStepHeight = 40;  // the next step's button, at least
    static constexpr double kPrimary = 25;                      // targets in daily use, at least
    static constexpr double kMinimum = 20;                      // any target, at least
    static constexpr double kGap = 5;                           // between targets
    static constexpr double kStrip = 14;  // a line of status that is no target

    // Height of capitals, mm.
    static constexpr double kCaps = 10;    // what matters at 1.5 m
    static constexpr double kWords = 5;    // other words of the bench
    static constexpr double kSmall = 3.2;  // the smallest there is

    // Drawing, mm.
    static constexpr double kCorner = 2.5, kInset = 3, kEdge = 0.6, kFocusEdge = 1.2;

    /// A panel of that size with that pitch (device-independent px per mm).
    Metrics(double pxPerMm, QSizeF panelMm);
    /// 217 × 136 mm at 5.9 px/mm: a 10-inch panel of 1280 × 800.
    Metrics();
    /// From the screen's description, times the correction of set-up (1: none).
    [[nodiscard]] static Metrics of(const QScreen& screen, double correction = 1);
    /// The correction that makes a card drawn `drawnMm` wide measure 85.60 mm; 1 when out of all
    /// reason.
    [[nodiscard]] static double correctionFor(double drawnMm);

    [[nodiscard]] double pxPerMm() const noexcept { return m_pxPerMm; }
    [[nodiscard]] QSizeF panelMm() const noexcept { return m_panelMm; }
    [[nodiscard]] double px(double mm) const noexcept { return mm * m_pxPerMm; }
    /// Whole pixels, never fewer than the millimetres asked for.
    [[nodiscard]] int ceilPx(double mm) const;
    [[nodiscard]] int gapPx() const { return ceilPx(kGap); }
    [[nodiscard]] double mm(double px) const noexcept { return px / m_pxPerMm; }

    /// Height of the big clock's digits, mm: 30 on a 10-inch panel, 60 on a 15.6-inch one, between
    /// by diagonal.
    [[nodiscard]] double digitsMm() const;

    /// A font whose capitals (and digits) are at least that high; tabular digits.
    [[nodiscard]] QFont font(double capMm, Weight weight = Weight::Regular) const;
    [[nodiscard]] static QFont fontOfCapPx(double capPx, Weight weight);

    friend bool operator==(const Metrics&, const Metrics&) = default;

private:
    double m_pxPerMm;
    QSizeF m_panelMm;
};

}  // namespace bathside::ui
