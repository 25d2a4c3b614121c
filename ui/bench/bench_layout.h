#pragma once

// Where everything stands on the bench page, in pixels, from the page's size and the panel's pitch
// alone.
//
// Every target is at least 20 mm, those in daily use 25 mm, with 5 mm between them; the step is at
// least 60 × 40 mm. Nothing depends on what is shown, so nothing moves. Pure. (Spec: the bench
// screen.)

#include <QRect>
#include <vector>

#include "ui/theme/metrics.h"

namespace bathside::ui {

struct BenchLayout {
    QRect left;                   // lanes, lines, questions, choices
    QRect whole;                  // for pads: left and right together
    QRect facts;                  // the last facts, or a refusal, in the gap above the bottom row
    QRect clock;                  // right, above the step
    QRect step;                   // right
    QRect side;                   // beside the step: a later one
    QRect takeBack, heard, more;  // bottom
    std::vector<QRect> tiles;     // bottom, for bags
};

/// `clockWidth`: what the big clock asks for, px.
[[nodiscard]] BenchLayout benchLayout(QSize page, const Metrics& metrics, int clockWidth);

/// The lanes' places within `area`: one column while `used` of them fit in it, else two.
[[nodiscard]] std::vector<QRect> lanePlaces(const QRect& area, const Metrics& metrics, int used,
                                            int most);

}  // namespace bathside::ui
