#include "core/bath/thaw_fit.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include <boost/math/tools/minima.hpp>

namespace bathside {
namespace {

constexpr int kBits = 10;       // of the logarithm: 0.1 %
constexpr double kEdge = 0.05;  // of the logarithm: as good as at the range's end

/// Where there is no slush within the longest time, that time.
double slushOf(ThawSetting setting, const LoggedThaw& log, double film)
{
    setting.bath = log.bath;
    setting.shape = log.shape;
    setting.film = film;
    return thawed(setting).slush.value_or(setting.longest);
}

std::vector<double> predictedFor(const ThawSetting& setting, const std::vector<LoggedThaw>& logs,
                                 double film)
{
    std::vector<double> all;
    for (auto log = logs.begin(); log != logs.end(); ++log) {
        const auto same = std::find_if(logs.begin(), log, [&](const LoggedThaw& other) {
            return other.bath == log->bath && other.shape == log->shape;
        });
        all.push_back(same == log ? slushOf(setting, *log, film)
                                  : all[static_cast<std::size_t>(same - logs.begin())]);
    }
    return all;
}

double squares(const std::vector<double>& predicted, const std::vector<LoggedThaw>& logs)
{
    double sum = 0;
    for (std::size_t i = 0; i < logs.size(); ++i)
        sum += std::pow(predicted[i] - logs[i].slush, 2);
    return sum;
}

/// What a rise of the film's logarithm by 1 does to the predictions, squared and added up.
double slopeSquares(const ThawSetting& setting, const std::vector<LoggedThaw>& logs,
                    double logarithm)
{
    constexpr double kNudge = 0.05;
    const auto above = predictedFor(setting, logs, std::exp(logarithm + kNudge));
    const auto below = predictedFor(setting, logs, std::exp(logarithm - kNudge));
    double sum = 0;
    for (std::size_t i = 0; i < logs.size(); ++i)
        sum += std::pow((above[i] - below[i]) / (2 * kNudge), 2);
    return sum;
}

void addInterval(FilmFit& fit, const ThawSetting& setting, const std::vector<LoggedThaw>& logs,
                 double residuals)
{
    const double best = std::log(fit.film);
    const double slopes = slopeSquares(setting, logs, best);
    if (logs.size() < 2 || slopes <= 0)
        return;
    const auto count = static_cast<double>(logs.size());
    const double quantile = studentQuantile(upperTail(0.95), count - 1);
    const double half = quantile * std::sqrt(residuals / (count - 1) / slopes);
    fit.interval = Interval{std::max(std::exp(best - half), kFilmRange.low),
                            std::min(std::exp(best + half), kFilmRange.high)};
    const double mean = std::accumulate(fit.predicted.begin(), fit.predicted.end(), 0.0) / count;
    fit.sureTo = half * std::sqrt(slopes / count) / mean;
}

}  // namespace

Result<FilmFit, FilmFault> fittedFilm(const ThawSetting& setting,
                                      const std::vector<LoggedThaw>& logs)
{
    if (logs.empty())
        return failure(FilmFault::NoData);
    const auto misfit = [&](double logarithm) {
        return squares(predictedFor(setting, logs, std::exp(logarithm)), logs);
    };
    const double low = std::log(kFilmRange.low);
    const double high = std::log(kFilmRange.high);
    const double best = boost::math::tools::brent_find_minima(misfit, low, high, kBits).first;
    if (best < low + kEdge)
        return failure(FilmFault::TooSlow);
    if (best > high - kEdge)
        return failure(FilmFault::TooFast);

    FilmFit fit;
    fit.film = std::exp(best);
    fit.predicted = predictedFor(setting, logs, fit.film);
    const double residuals = squares(fit.predicted, logs);
    fit.rms = std::sqrt(residuals / static_cast<double>(logs.size()));
    addInterval(fit, setting, logs, residuals);
    return fit;
}

Millis slushCue(double slush, Millis limit, Millis handling)
{
    const auto predicted = std::chrono::floor<Millis>(std::chrono::duration<double>(slush));
    return std::max(std::min(predicted, limit - handling), Millis(0));
}

}  // namespace bathside
