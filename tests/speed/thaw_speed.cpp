// How long the thaw model takes, against its bound: a reading comes every second at most, and the
// prediction is made anew for each.

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <vector>

#include "core/bath/card_heat.h"
#include "core/bath/heat_matter.h"
#include "core/bath/thaw_fit.h"

namespace {

using namespace bathside;

constexpr double kBoundMs = 100;  // a tenth of the fastest reading's interval

template <typename Work>
double medianMs(int rounds, const Work& work)
{
    using Clock = std::chrono::steady_clock;
    std::vector<double> times;
    for (int round = 0; round < rounds; ++round) {
        const auto from = Clock::now();
        work();
        times.push_back(std::chrono::duration<double, std::milli>(Clock::now() - from).count());
    }
    std::ranges::nth_element(times, times.begin() + rounds / 2);
    return times[times.size() / 2];
}

}  // namespace

int main()
{
    const int rounds = std::getenv("BATHSIDE_LONG") != nullptr ? 501 : 31;
    const AmpouleShape small{0.01075, 0.0005, 2e-6};
    ThawSetting setting{small, cryoprotected(), kCryogenCelsius, 28, 1900};
    const double once = medianMs(rounds, [&] { (void)thawed(setting); });
    const double fit = medianMs(3, [&] { (void)fittedFilm(setting, {{28, 80, small}}); });
    std::printf("thaw model, %d rings, %d rounds\n", setting.rings, rounds);
    std::printf("  slush time           median %7.2f ms, bound %.0f ms\n", once, kBoundMs);
    std::printf("  film fit to one log  median %7.2f ms, %.0f x the model\n", fit, fit / once);
    const double scale = medianMs(5, [] { (void)SlushScale(HeatRules{}, {28'000}); });
    std::printf("  a card's slush scale median %7.2f ms, %.0f x the model\n", scale, scale / once);
    for (const int rings : {10, 40}) {
        setting.rings = rings;
        const double other = medianMs(rounds, [&] { (void)thawed(setting); });
        std::printf("  with %d rings        median %7.2f ms\n", rings, other);
    }
    return once < kBoundMs ? 0 : 1;
}
