#include "core/checks/coverage.h"

namespace bathside {
namespace {

constexpr int kMost = 1'000'000;
constexpr double kRounding = 1e-12;

double lowerBound(const Looked& looked, double alpha)
{
    return looked.good == 0 ? 0 : betaQuantile(alpha, looked.good, looked.birds - looked.good + 1);
}

double upperBound(const Looked& looked, double alpha)
{
    return looked.good == looked.birds
               ? 1
               : betaQuantile(1 - alpha, looked.good + 1, looked.birds - looked.good);
}

bool isShown(const Looked& looked, double target, double confidence)
{
    return lowerBound(looked, 1 - confidence) >= target - kRounding;
}

}  // namespace

Interval shareGood(const Looked& looked, double confidence)
{
    const double alpha = 1 - upperTail(confidence);
    return {lowerBound(looked, alpha), upperBound(looked, alpha)};
}

CoverageVerdict judged(const Looked& looked, double target, double confidence)
{
    if (isShown(looked, target, confidence))
        return CoverageVerdict::Shown;
    return upperBound(looked, 1 - confidence) < target ? CoverageVerdict::Missed
                                                       : CoverageVerdict::Undecided;
}

// The lower bound rises with every bird more that is good.
std::optional<int> birdsNeeded(double target, double confidence, int misses)
{
    const auto enough = [&](int birds) {
        return isShown({birds - misses, birds}, target, confidence);
    };
    if (!enough(kMost))
        return std::nullopt;
    int low = misses;  // not enough: none is good
    int high = kMost;
    while (high - low > 1) {
        const int middle = low + (high - low) / 2;
        (enough(middle) ? high : low) = middle;
    }
    return high;
}

}  // namespace bathside
