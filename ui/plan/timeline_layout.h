#pragma once

// Where the timeline's rows, bars, hours and the line of now stand in a rectangle. Pure; pixels.
//
// Axis at the top, the legend's line at the foot. Rows share what is between, none higher than is
// good to look at. Of more lines than have room, `first` on are shown; the bench always is. Under a
// line's bars run the lives of its bags, in two tracks by turns, because they overlap.

#include <QRectF>
#include <optional>
#include <vector>

#include "ui/plan/timeline.h"
#include "ui/theme/metrics.h"

namespace bathside::ui {

struct PlacedBar {
    TimelineBar bar;
    QRectF plate;
    QRectF age;     // of the life: from the first ampoule in diluent to the last bird
    QRectF margin;  // from there to the limit
};

struct PlacedRow {
    std::size_t row = 0;  // of the timeline
    QRectF room;          // head and track
    QRectF head;
    QRectF track;  // inside it stand all bars and lives
    std::vector<PlacedBar> bars;
    std::vector<QRectF> breaks;
};

struct TimelineLayout {
    struct Hour {
        plan::DayTime at{};
        double x = 0;
        QRectF text;  // none overlap
    };
    QRectF axis, legend;
    std::vector<PlacedRow> rows;
    std::vector<Hour> hours;
    std::optional<double> now;  // x; none: it is not within what is shown
};

/// Lines that have room at once, at least one.
[[nodiscard]] std::size_t linesThatFit(const Timeline& timeline, const QRectF& room,
                                       const Metrics& metrics);
[[nodiscard]] TimelineLayout layOut(const Timeline& timeline, std::size_t first, const QRectF& room,
                                    const Metrics& metrics);

}  // namespace bathside::ui
