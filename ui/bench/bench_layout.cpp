#include "ui/bench/bench_layout.h"

#include <algorithm>

namespace bathside::ui {
namespace {

constexpr double kStepColumn = 87;  // mm: 60 for the step, 22 beside it
constexpr double kMostForStep = 0.48;
constexpr double kSideShare = 0.252;
constexpr double kFacts = 6, kHair = 0.6;          // the facts fill the gap above the bottom row
constexpr double kTile = 30;                       // a bag's tile, at least
constexpr double kRoomyRow = 30, kRoomyFacts = 9;  // bottom row of a larger panel
constexpr double kClockShare = 1.35;  // of the digits' height: what stands under them, too
constexpr double kTallPanel = 150;    // mm; from here on there is room to spare

/// `n` equal parts of `span` px with `gap` between; the first ones take the odd pixels.
std::vector<std::pair<int, int>> parts(int from, int span, int n, int gap)
{
    std::vector<std::pair<int, int>> found;
    const int free = span - (n - 1) * gap;
    int at = from;
    for (int i = 0; i < n; ++i) {
        const int size = free / n + (i < free % n ? 1 : 0);
        found.emplace_back(at, size);
        at += size + gap;
    }
    return found;
}

void placeBottom(BenchLayout& layout, const QRect& row, const Metrics& metrics)
{
    const int gap = metrics.gapPx();
    const int cell = metrics.ceilPx(kTile);
    const int cells = std::clamp((row.width() + gap) / (cell + gap), 4, 8);
    std::vector<QRect> places;
    for (const auto& [x, wide] : parts(row.left(), row.width(), cells, gap))
        places.emplace_back(x, row.top(), wide, row.height());
    layout.takeBack = places.front();
    layout.heard = places[1];
    layout.more = places.back();
    layout.tiles.assign(places.begin() + 2, places.end() - 1);
}

}  // namespace

BenchLayout benchLayout(QSize page, const Metrics& metrics, int clockWidth)
{
    const int gap = metrics.gapPx();
    const int hair = metrics.ceilPx(kHair);
    const bool tall = metrics.panelMm().height() > kTallPanel;
    const int bottom = metrics.ceilPx(tall ? kRoomyRow : Metrics::kPrimary);
    const int facts = metrics.ceilPx(tall ? kRoomyFacts : kFacts);
    const int middle = page.height() - bottom - facts;
    const int least = metrics.ceilPx(kStepColumn);
    const int right =
        std::clamp(clockWidth, least, std::max(least, qRound(page.width() * kMostForStep)));
    const int leftWidth = page.width() - right - gap;
    const int x = leftWidth + gap;
    const int step = std::max(metrics.ceilPx(Metrics::kStepHeight),
                              middle - hair - qRound(metrics.px(metrics.digitsMm() * kClockShare)));
    const int side = std::max(metrics.ceilPx(Metrics::kMinimum), qRound(right * kSideShare));

    BenchLayout layout;
    layout.left = {0, 0, leftWidth, middle};
    layout.whole = {0, 0, page.width(), middle};
    layout.facts = {0, middle, page.width(), facts};
    layout.step = {x, middle - step, right - side - gap, step};
    layout.side = {page.width() - side, middle - step, side, step};
    layout.clock = {x, 0, right, middle - step - hair};
    placeBottom(layout, {0, page.height() - bottom, page.width(), bottom}, metrics);
    return layout;
}

std::vector<QRect> lanePlaces(const QRect& area, const Metrics& metrics, int used, int most)
{
    constexpr int kFewestRows = 3;
    const int gap = metrics.gapPx();
    const int wanted = (area.height() + gap) / (metrics.ceilPx(Metrics::kPrimary) + gap);
    const int rows = std::clamp(wanted, kFewestRows, std::max(kFewestRows, most));
    const int columns = used > rows ? 2 : 1;
    std::vector<QRect> places;
    for (const auto& [x, wide] : parts(area.left(), area.width(), columns, gap)) {
        for (const auto& [y, high] : parts(area.top(), area.height(), rows, gap))
            places.emplace_back(x, y, wide, high);
    }
    return places;
}

}  // namespace bathside::ui
