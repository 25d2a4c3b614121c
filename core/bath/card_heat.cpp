#include "core/bath/card_heat.h"

#include <cmath>
#include <set>
#include <utility>

#include "core/bath/heat_matter.h"

namespace bathside {
namespace {

constexpr double kMilli = 1e-3;
constexpr double kMicro = 1e-6;
constexpr double kMicroLitre = 1e-9;  // m³
constexpr double kApart = 4;          // °C between two runs of the model, at most

double celsius(MilliCelsius value) { return static_cast<double>(value.count) * kMilli; }

/// From `low` to `high`, `target` among them.
std::set<double> stations(double low, double high, double target)
{
    std::set<double> all{low, high, target};
    for (double at = low + kApart; at < high; at += kApart)
        all.insert(at);
    return all;
}

double rateOf(const HeatRules& rules, double bath, double film)
{
    ThawSetting setting = thawSettingOf(rules, bath);
    setting.film = film;
    const auto slush = thawed(setting).slush;
    return slush ? 1 / *slush : 0;
}

std::vector<Piecewise::Point> ratesOf(const HeatRules& rules, double target, double film)
{
    std::vector<Piecewise::Point> points;
    for (const double bath : stations(celsius(rules.cueLowest), celsius(rules.cueHighest), target))
        points.push_back({bath, rateOf(rules, bath, film)});
    return points;
}

double perSecond(Millis slush) { return 1 / std::chrono::duration<double>(slush).count(); }
Millis slushOf(double perSecond) { return Millis(std::llround(1'000 / perSecond)); }

std::vector<Piecewise::Point> ratesOf(const std::vector<SlushScale::Point>& points)
{
    std::vector<Piecewise::Point> rates;
    for (const SlushScale::Point& point : points)
        rates.push_back({celsius(point.bath), perSecond(point.slush)});
    return rates;
}

}  // namespace

HeatBudget budgetOf(const HeatRules& rules, double start)
{
    const double fill =
        static_cast<double>(rules.fill.count) * kMicroLitre * Cryoprotected{}.density;
    return {.ampoule = {fill, static_cast<double>(rules.glassMilligrams) * kMicro},
            .bath = {.water = static_cast<double>(rules.waterGrams) * kMilli,
                     .heater = static_cast<double>(rules.heaterWatts),
                     .holding = static_cast<double>(rules.holdingWatts)},
            .start = start,
            .cryogen = kCryogenCelsius,
            .glassHeat = kGlassHeat};
}

ThawSetting thawSettingOf(const HeatRules& rules, double bath)
{
    Cryoprotected contents;
    contents.freezing = celsius(rules.freezing);
    ThawSetting setting;
    setting.shape = {static_cast<double>(rules.diameterMicrometres) * kMicro,
                     static_cast<double>(rules.wallMicrometres) * kMicro,
                     static_cast<double>(rules.fill.count) * kMicroLitre};
    setting.contents = cryoprotected(contents);
    setting.start = kCryogenCelsius;
    setting.bath = bath;
    setting.film = static_cast<double>(rules.film);
    return setting;
}

Tolerance toleranceOf(const BathRules& rules)
{
    return {celsius(rules.target), celsius(rules.tolerance),
            static_cast<double>(rules.guardPercent) / 100};
}

SlushScale::SlushScale(const HeatRules& rules, MilliCelsius target)
    : m_lowest(rules.cueLowest),
      m_highest(rules.cueHighest),
      m_points(ratesOf(rules, celsius(target), static_cast<double>(rules.film))),
      m_rate(m_points),
      m_rateAtTarget(m_rate.at(celsius(target)))
{
}

SlushScale::SlushScale(const HeatRules& rules, MilliCelsius target, double film)
    : m_lowest(rules.cueLowest),
      m_highest(rules.cueHighest),
      m_points(ratesOf(rules, celsius(target), film)),
      m_rate(m_points),
      m_rateAtTarget(rateOf(rules, celsius(target), static_cast<double>(rules.film)))
{
}

SlushScale::SlushScale(Millis usual, std::vector<Point> points)
    : m_lowest(points.front().bath),
      m_highest(points.back().bath),
      m_points(ratesOf(points)),
      m_rate(m_points),
      m_rateAtTarget(perSecond(usual))
{
}

Millis SlushScale::usual() const { return slushOf(m_rateAtTarget); }

std::vector<SlushScale::Point> SlushScale::points() const
{
    std::vector<Point> points;
    for (const Piecewise::Point& point : m_points) {
        if (point.y > 0)
            points.push_back({{std::llround(point.x * 1'000)}, slushOf(point.y)});
    }
    return points;
}

std::optional<double> SlushScale::at(MilliCelsius bath) const
{
    const double rate = m_rate.at(celsius(bath));
    if (bath < m_lowest || bath > m_highest || rate <= 0 || m_rateAtTarget <= 0)
        return std::nullopt;
    return m_rateAtTarget / rate;
}

std::shared_ptr<const SlushScale> slushScaleOf(const Card::Content& card)
{
    constexpr MilliCelsius kUsual{28'000};
    static const auto usual = std::make_shared<const SlushScale>(HeatRules{}, kUsual);
    if (card.heat == HeatRules{} && card.bath.target == kUsual)
        return usual;
    return std::make_shared<const SlushScale>(card.heat, card.bath.target);
}

}  // namespace bathside
