#include "core/bath/thaw_fit.h"

#include <algorithm>
#include <cmath>

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
    for (const LoggedThaw& log : logs)
        all.push_back(slushOf(setting, log, film));
    return all;
}

double squares(const std::vector<double>& predicted, const std::vector<LoggedThaw>& logs)
{
    double sum = 0;
    for (std::size_t i = 0; i < logs.size(); ++i)
        sum += std::pow(predicted[i] - logs[i].slush, 2);
    return sum;
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
    fit.rms = std::sqrt(squares(fit.predicted, logs) / static_cast<double>(logs.size()));
    return fit;
}

Millis slushCue(double slush, Millis limit, Millis handling)
{
    const auto predicted = std::chrono::floor<Millis>(std::chrono::duration<double>(slush));
    return std::max(std::min(predicted, limit - handling), Millis(0));
}

}  // namespace bathside
