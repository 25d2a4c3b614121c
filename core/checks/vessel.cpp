#include "core/checks/vessel.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace bathside {

Result<Dipstick, DipstickFault> Dipstick::from(std::vector<Row> rows)
{
    if (rows.size() < 2)
        return failure(DipstickFault::TooFew);
    constexpr double kErrorMillimetres = 5;
    std::vector<Piecewise::Point> points;
    double steepest = 0;  // L/mm
    for (const Row& row : rows) {
        if (!points.empty() &&
            (row.millimetres <= points.back().x || row.litres <= points.back().y))
            return failure(DipstickFault::NotRising);
        if (!points.empty())
            steepest = std::max(
                steepest, (row.litres - points.back().y) / (row.millimetres - points.back().x));
        points.push_back({row.millimetres, row.litres});
    }
    return Dipstick(Piecewise(std::move(points)), kErrorMillimetres * steepest);
}

std::optional<double> Dipstick::litresAt(double millimetres) const
{
    if (millimetres < m_table.first().x || millimetres > m_table.last().x)
        return std::nullopt;
    return m_table.at(millimetres);
}

namespace {

struct Slopes {
    std::vector<double> all;  // L/day lost, sorted
    double variance = 0;      // of Kendall's score
};

void addStretch(Slopes& slopes, std::span<const LevelReading> stretch)
{
    for (std::size_t i = 0; i < stretch.size(); ++i)
        for (std::size_t j = i + 1; j < stretch.size(); ++j)
            slopes.all.push_back((stretch[i].litres - stretch[j].litres) /
                                 (stretch[j].day - stretch[i].day));
    const auto n = static_cast<double>(stretch.size());
    slopes.variance += n * (n - 1) * (2 * n + 5) / 18;
}

Slopes slopesOf(std::span<const LevelReading> log)
{
    Slopes slopes;
    while (!log.empty()) {
        const auto next = std::ranges::find_if(log.subspan(1), &LevelReading::afterFill);
        const auto length = static_cast<std::size_t>(next - log.subspan(1).begin()) + 1;
        addStretch(slopes, log.first(length));
        log = log.subspan(length);
    }
    std::ranges::sort(slopes.all);
    return slopes;
}

double medianOf(const std::vector<double>& sorted)
{
    const std::size_t half = sorted.size() / 2;
    return sorted.size() % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}

// Sen's ranks, from both ends alike; none where they fall off an end.
std::optional<Interval> rankInterval(const Slopes& slopes, double confidence)
{
    const double width = normalQuantile(upperTail(confidence)) * std::sqrt(slopes.variance);
    const double below = std::round((static_cast<double>(slopes.all.size()) - width) / 2);
    if (below < 1)
        return std::nullopt;
    const auto rank = static_cast<std::size_t>(below) - 1;
    return Interval{slopes.all[rank], slopes.all[slopes.all.size() - 1 - rank]};
}

}  // namespace

std::optional<Evaporation> evaporationOf(std::span<const LevelReading> log, double confidence)
{
    const Slopes slopes = slopesOf(log);
    if (slopes.all.empty())
        return std::nullopt;
    return Evaporation{medianOf(slopes.all), rankInterval(slopes, confidence), slopes.all.size()};
}

std::vector<LevelReading> withFillsSeen(std::vector<LevelReading> log, double error)
{
    for (std::size_t i = 1; i < log.size(); ++i)
        log[i].afterFill = log[i].afterFill || log[i].litres - log[i - 1].litres > error;
    return log;
}

namespace {

/// From one reading to a later one, without a fill between them.
struct Leg {
    double days = 0;
    double lost = 0;  // L
    bool isTooMuch = false;

    [[nodiscard]] double rate() const { return lost / days; }
};

Leg legOf(const LevelReading& from, const LevelReading& to, double alarm, double error)
{
    Leg leg{to.day - from.day, from.litres - to.litres};
    leg.isTooMuch = leg.lost - alarm * leg.days > error;
    return leg;
}

}  // namespace

std::optional<Evaporation> lossOfLate(std::span<const LevelReading> log, double alarm, double error)
{
    constexpr double kShortest = 20.0 / 24;  // days; a reading at the usual hour is a day's
    Leg before, last;
    const LevelReading* from = nullptr;
    for (const LevelReading& to : log) {
        const bool begins = from == nullptr || to.afterFill;
        const Leg leg = begins ? Leg{} : legOf(*from, to, alarm, error);
        if (!begins && leg.days < kShortest && !leg.isTooMuch)
            continue;
        if (!begins)
            before = std::exchange(last, leg);
        from = &to;
    }
    if (!last.isTooMuch)
        return std::nullopt;
    if (!before.isTooMuch)
        return Evaporation{last.rate(), std::nullopt, 1};
    const auto [low, high] = std::minmax(before.rate(), last.rate());
    return Evaporation{(before.lost + last.lost) / (before.days + last.days), Interval{low, high},
                       2};
}

std::optional<Evaporation> lossOfDays(std::span<const LevelReading> log, double alarm)
{
    constexpr std::size_t kFewest = 8, kMost = 14;
    constexpr double kBeyondDoubt = 0.998;
    for (std::size_t count = kFewest; count <= std::min(kMost, log.size()); ++count) {
        const auto loss = evaporationOf(log.last(count), kBeyondDoubt);
        if (loss && loss->interval && loss->interval->low > alarm)
            return loss;
    }
    return std::nullopt;
}

std::optional<Refill> refillIn(const Evaporation& evaporation, double litres, double minimum)
{
    if (litres <= minimum)
        return Refill{0, 0, 0};
    if (evaporation.rate <= 0)
        return std::nullopt;
    const auto at = [&](double rate) { return (litres - minimum) / rate; };
    const Interval rates = evaporation.interval.value_or(Interval{0, evaporation.rate});
    Refill refill{at(evaporation.rate), at(std::max(rates.high, evaporation.rate)), std::nullopt};
    if (rates.low > 0)
        refill.latest = at(rates.low);
    return refill;
}

std::optional<Vacuum> judged(const Evaporation& evaporation, double alarm)
{
    if (evaporation.rate <= 0)
        return std::nullopt;
    if (evaporation.rate <= alarm)
        return Vacuum::Sound;
    return evaporation.interval && evaporation.interval->low > alarm ? Vacuum::Failing
                                                                     : Vacuum::Suspect;
}

}  // namespace bathside
