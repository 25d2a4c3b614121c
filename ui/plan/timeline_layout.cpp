#include "ui/plan/timeline_layout.h"

#include <algorithm>

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;
using plan::DayTime;

// All in mm.
constexpr double kAxis = 7, kLegend = 7, kHead = 36, kBetween = 1.5;
constexpr double kLeastLine = 11.5, kMostLine = 40, kLeastLane = 6.5, kMostLane = 14;
constexpr double kLife = 1.6, kLives = 4;  // one track of lives; both with the space above them
constexpr double kHourText = 15;

std::size_t lanesOfBench(const Timeline& timeline) { return timeline.rows.back().lanes; }

std::size_t linesOf(const Timeline& timeline) { return timeline.rows.size() - 1; }

/// Time to pixels, cut off at the ends of what is shown.
class Scale {
public:
    Scale(const Timeline& timeline, const QRectF& track)
        : m_from(timeline.from), m_span(timeline.to - timeline.from), m_track(track)
    {
    }

    [[nodiscard]] double x(DayTime at) const
    {
        const auto part = static_cast<double>((at - m_from).count()) /
                          static_cast<double>(std::max<std::int64_t>(1, m_span.count()));
        return m_track.left() + std::clamp(part, 0.0, 1.0) * m_track.width();
    }
    [[nodiscard]] QRectF span(DayTime from, DayTime to, double top, double height) const
    {
        return {QPointF(x(from), top), QPointF(x(to), top + height)};
    }

private:
    DayTime m_from;
    Millis m_span;
    QRectF m_track;
};

QRectF trackOf(const QRectF& room, const Metrics& metrics)
{
    return room.adjusted(metrics.px(kHead), 0, -metrics.px(1), 0);
}

PlacedBar onLine(const TimelineBar& bar, std::size_t number, const QRectF& track,
                 const Scale& scale, const Metrics& metrics)
{
    const double lives = metrics.px(kLives), life = metrics.px(kLife);
    PlacedBar placed{.bar = bar, .plate = {}, .age = {}, .margin = {}};
    placed.plate = scale.span(bar.from, bar.to, track.top(), track.height() - lives);
    const double top = track.bottom() - (number % 2 == 0 ? 2 * life + metrics.px(0.3) : life);
    placed.age = scale.span(bar.born, bar.to, top, life);
    placed.margin = scale.span(bar.to, bar.limit, top, life);
    return placed;
}

PlacedBar onBench(const TimelineBar& bar, std::size_t lanes, const QRectF& track,
                  const Scale& scale)
{
    const double high = track.height() / static_cast<double>(lanes);
    const double top = track.top() + high * static_cast<double>(bar.lane);
    return {.bar = bar, .plate = scale.span(bar.from, bar.to, top, high), .age = {}, .margin = {}};
}

PlacedRow place(const Timeline& timeline, std::size_t number, const QRectF& room,
                const Metrics& metrics)
{
    const TimelineRow& row = timeline.rows[number];
    PlacedRow placed{.row = number,
                     .room = room,
                     .head = {},
                     .track = trackOf(room, metrics),
                     .bars = {},
                     .breaks = {}};
    placed.head = QRectF(room.left(), room.top(), metrics.px(kHead - 1), room.height());
    const Scale scale(timeline, placed.track);
    for (std::size_t i = 0; i < row.bars.size(); ++i) {
        if (row.bars[i].to > timeline.from || row.bars[i].limit > timeline.from)
            placed.bars.push_back(row.line ? onLine(row.bars[i], i, placed.track, scale, metrics)
                                           : onBench(row.bars[i], row.lanes, placed.track, scale));
    }
    for (const plan::Break& pause : row.breaks) {
        const QRectF where = scale.span(pause.from, pause.to, placed.track.top(),
                                        placed.track.height() - metrics.px(kLives));
        if (where.width() > 0)
            placed.breaks.push_back(where);
    }
    return placed;
}

// Every hour, or every second, fourth … one where their texts would else overlap.
std::vector<TimelineLayout::Hour> hoursOf(const Timeline& timeline, const QRectF& axis,
                                          const Metrics& metrics)
{
    const QRectF track = trackOf(axis, metrics);
    const Scale scale(timeline, track);
    const double text = metrics.px(kHourText);
    auto step = std::chrono::hours(1);
    while (scale.x(timeline.from + step) - track.left() < text && step < 24h)
        step *= 2;
    std::vector<TimelineLayout::Hour> marks;
    const auto whole = std::chrono::floor<std::chrono::hours>(timeline.from);
    for (DayTime at = whole; at <= timeline.to; at += step) {
        const double x = scale.x(at);
        if (at >= timeline.from)
            marks.push_back({at, x, QRectF(x - text / 2, axis.top(), text, axis.height())});
    }
    return marks;
}

double heightOfBench(const Timeline& timeline, double lane)
{
    return lane * static_cast<double>(lanesOfBench(timeline));
}

}  // namespace

std::size_t linesThatFit(const Timeline& timeline, const QRectF& room, const Metrics& metrics)
{
    const double left = metrics.mm(room.height()) - kAxis - kLegend - kBetween -
                        heightOfBench(timeline, kLeastLane);
    const auto fit = static_cast<std::int64_t>(left / (kLeastLine + kBetween));
    return std::clamp<std::size_t>(static_cast<std::size_t>(std::max<std::int64_t>(fit, 1)), 1,
                                   std::max<std::size_t>(1, linesOf(timeline)));
}

TimelineLayout layOut(const Timeline& timeline, std::size_t first, const QRectF& room,
                      const Metrics& metrics)
{
    TimelineLayout all;
    const double axis = metrics.px(kAxis), legend = metrics.px(kLegend), gap = metrics.px(kBetween);
    all.axis = QRectF(room.left(), room.top(), room.width(), axis);
    all.legend = QRectF(room.left(), room.bottom() - legend, room.width(), legend);
    const std::size_t lines =
        std::min(linesThatFit(timeline, room, metrics), linesOf(timeline) - first);
    const double middle = room.height() - axis - legend;
    const double lane =
        std::clamp(metrics.mm(middle) / static_cast<double>(2 * lines + 2 * lanesOfBench(timeline)),
                   kLeastLane, kMostLane);
    const double bench = metrics.px(heightOfBench(timeline, lane));
    const double line =
        std::min(metrics.px(kMostLine), (middle - bench - gap) / static_cast<double>(lines) - gap);
    double top = all.axis.bottom();
    for (std::size_t i = first; i < first + lines; ++i, top += line + gap)
        all.rows.push_back(place(timeline, i, {room.left(), top, room.width(), line}, metrics));
    all.rows.push_back(
        place(timeline, linesOf(timeline), {room.left(), top, room.width(), bench}, metrics));
    all.hours = hoursOf(timeline, all.axis, metrics);
    if (timeline.now >= timeline.from && timeline.now <= timeline.to)
        all.now = Scale(timeline, trackOf(room, metrics)).x(timeline.now);
    return all;
}

}  // namespace bathside::ui
